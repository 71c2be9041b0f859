#include "core/sheets/check_dimensions.h"
#include "core/sheets/part_templates.h"

#include "core/hardware/way_words.h"
#include "core/lengths/format.h"
#include "core/sheets/template_draft.h"
#include "core/sheets/text_lines.h"

namespace frontwright {

namespace {

bool boresTheFront(const HardwarePlan& hardware) {
    return hardware.chosen != MountingWay::ThroughWall &&
           hardware.chosenWay().counterbore > Length{};
}

void addHoles(TemplateDraft& draft, const TemplateSource& source, const HardwarePlan& hardware) {
    const double radius = hardware.holeDiameter.inMillimetres() / 2;
    const double bore = hardware.counterboreDiameter.inMillimetres() / 2;
    for (std::size_t i = 0; i < hardware.holes.size(); ++i) {
        const PointMm at = toMm(hardware.holes[i]);
        std::vector<Phrase> lines{
            phrase("%1: drill %2", number(i), drill(source, hardware.holeDiameter)),
            text("through, show face")};
        if (boresTheFront(hardware)) {
            lines.push_back(phrase("counterbore %1", drill(source, hardware.counterboreDiameter)));
            lines.push_back(phrase("%1 deep, from the back",
                                   shown(hardware.chosenWay().counterbore, source.style)));
            draft.circle(Layer::Counterbore, {at, bore}, "counterbore " + number(i));
        }
        draft.hole(Layer::Hole, {at, radius}, "hole " + number(i), lines);
    }
}

void addProfileLine(TemplateDraft& draft, const FrontPlan& front) {
    const FrontRect whole = FrontRect::atOrigin(front.rect.width(), front.rect.height());
    if (front.field == whole || front.field.isEmpty())
        return;
    const BoxMm field = toMm(front.field);
    draft.rectangle(Layer::ProfileLine, field, "field");
    draft.label({text("field begins")}, LineMark{{field.min().x(), field.max().y()}, field.max()},
                "field's upper edge", TemplateLabel::Prefer::Low);
}

void addChecksOf(TemplateDraft& draft, const TemplateSource& source, const FrontPlan& front) {
    CheckedStretch across, upright;
    PointMm throughHole = draft.partBox().center();
    if (front.hardware) {
        const auto& holes = front.hardware->holes;
        across = firstToLast(holes, [](const FrontPoint& p) { return p.x; });
        upright = firstToLast(holes, [](const FrontPoint& p) { return p.y; });
        if (!holes.empty())
            throughHole = toMm(holes.front());
    } else if (front.fittings && !front.fittings->empty()) {
        throughHole = toMm(front.fittings->front().centre);
    }
    addChecks(draft, source.style, front.rect.width(), front.rect.height(), across, upright,
              throughHole);
}

} // namespace

Template frontTemplate(const TemplateSource& source, const Alike& alike) {
    const FrontPlan& front = source.plan.fronts[alike.front()];
    const FrontRect whole = FrontRect::atOrigin(front.rect.width(), front.rect.height());
    TemplateDraft draft(TemplateKind::Front, phrase("Front %1", label(source.project, front)),
                        toMm(whole), front.opening, source.language);
    draft.outline(Layer::FrontEdge);
    addProfileLine(draft, front);
    draft.centreLines();
    if (front.hardware)
        addHoles(draft, source, *front.hardware);
    if (front.fittings)
        addFittings(draft, source, *front.fittings);
    addChecksOf(draft, source, front);
    draft.parameter(phrase("%1: %2 wide, %3 high, %4 thick.", servesWhat(source, alike),
                           shown(front.rect.width(), source.style),
                           shown(front.rect.height(), source.style),
                           shown(front.thickness, source.style)));
    if (front.hardware)
        draft.parameter(orderOfWork(front.hardware->chosenWay()));
    return draft.finished(text("Read from the show face"), text("the front's top edge is up"),
                          openingsOf(source.plan, alike));
}

bool haveSameFront(const FrontPlan& a, const FrontPlan& b) {
    return a.rect.width() == b.rect.width() && a.rect.height() == b.rect.height() &&
           a.thickness == b.thickness && *a.profile == *b.profile && a.hardware == b.hardware &&
           a.fittings == b.fittings;
}

} // namespace frontwright
