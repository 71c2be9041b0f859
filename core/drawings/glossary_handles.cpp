#include "core/drawings/glossary_parts.h"
#include "core/drawings/handle_shapes.h"

namespace frontwright::glossary {

namespace {

constexpr double halfSpread = 48;
constexpr double pullEnd = 52, pullRadius = 6, knobRadius = 17;

/// The bar of the pull, round at both ends.
std::vector<PointMm> barOutline() {
    auto outline = arc({pullEnd, 0}, pullRadius, -90, 90);
    for (const PointMm& p : arc({-pullEnd, 0}, pullRadius, 90, 270))
        outline.push_back(p);
    return outline;
}

HardwareForm formOf(Term term) {
    HardwareForm form;
    form.footprint = {FootprintShape::Rectangle, Length::millimetres(116), Length::millimetres(12)};
    form.kind = HardwareKind::Pull;
    form.holes = {{Length::millimetres(-48), {}}, {Length::millimetres(48), {}}};
    if (term == Term::Knob) {
        form.kind = HardwareKind::Knob;
        form.footprint = {FootprintShape::Round, Length::millimetres(34), {}};
        form.holes = {{}};
    } else if (term == Term::Backplate) {
        form.kind = HardwareKind::RingPull;
        form.footprint = {FootprintShape::Rectangle, Length::millimetres(90),
                          Length::millimetres(60)};
    }
    return form;
}

} // namespace

Drawing ofHandles(Term term) {
    Picture picture(0.35);
    const PointMm middle(0, 0);
    picture.part(box(-85, -45, 85, 45));
    if (term == Term::Backplate)
        picture.part(box(-45, -30, 45, 30), Look::Meant);
    if (term == Term::Pull)
        picture.part(barOutline(), Look::Meant);
    if (term == Term::Knob)
        picture.part(arc(middle, knobRadius, 0, 360), Look::Meant);
    drawHandle(picture.sketch(), formOf(term), middle, {});
    if (term == Term::CentreToCentre) {
        const PointMm left(-halfSpread, 0), right(halfSpread, 0);
        for (const PointMm& at : {left, right})
            picture.axis(at - PointMm(0, 16), at + PointMm(0, 16));
        picture.length(left, right, 9);
    }
    return picture.finished();
}

} // namespace frontwright::glossary
