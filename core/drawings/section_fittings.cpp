#include "core/drawings/section_parts.h"

#include "core/drawings/fitting_shapes.h"
#include "core/drawings/handle_shapes.h"

#include <algorithm>

namespace frontwright {

namespace {

using Points = std::vector<PointMm>;

BoxMm across(double fromX, double toX, double low, double high) {
    return {PointMm(std::min(fromX, toX), std::min(low, high)),
            PointMm(std::max(fromX, toX), std::max(low, high))};
}

Span alongOf(const SectionSubject& subject, const FrontRect& rect) {
    return subject.isLevel() ? rect.across() : rect.upright();
}

/// Fittings that are seen one behind the other are drawn once.
std::vector<const FittingPlan*> seenFittings(const SectionSubject& subject) {
    std::vector<const FittingPlan*> seen;
    if (!subject.front.fittings)
        return seen;
    for (const FittingPlan& fitting : *subject.front.fittings)
        if (std::ranges::none_of(seen, [&](const FittingPlan* other) {
                return other->form == fitting.form &&
                       subject.along(other->centre) == subject.along(fitting.centre);
            }))
            seen.push_back(&fitting);
    return seen;
}

/// What is let in; none of a top edge's mortise in the level section.
std::optional<BoxMm> mortiseBox(const SectionSubject& subject, const FittingMortise& cut) {
    const double face = -subject.thickness(), depth = cut.depth.inMillimetres();
    const Span along = alongOf(subject, cut.place);
    const double low = along.low.inMillimetres(), high = along.high.inMillimetres();
    switch (cut.from) {
    case FrontFace::Show:
        return across(face, face + depth, low, high);
    case FrontFace::Back:
        return across(-depth, 0, low, high);
    case FrontFace::TopEdge:
        break;
    }
    if (subject.isLevel())
        return std::nullopt;
    const double top = subject.height();
    return across(face + std::max(0.0, cut.place.bottom.inMillimetres()),
                  std::min(0.0, face + cut.place.top.inMillimetres()), top - depth, top);
}

BoxMm boreBox(const SectionSubject& subject, const FittingBore& bore) {
    const double axis = subject.along(bore.at).inMillimetres();
    const double radius = bore.diameter.inMillimetres() / 2;
    const double face = -subject.thickness();
    const double depth = bore.depth ? bore.depth->inMillimetres() : subject.thickness();
    return bore.from == FrontFace::Back ? across(-depth, 0, axis - radius, axis + radius)
                                        : across(face, face + depth, axis - radius, axis + radius);
}

/// A countersunk screw from `head` along x (+1 into the box, −1 out of it), or down from the top
/// edge.
Points screwOutline(const WoodScrew& screw, double length, const PointMm& head,
                    const PointMm& way) {
    const PointMm side(-way.y(), way.x());
    const double shank = screw.shankDiameter.inMillimetres() / 2;
    const double wide = screw.headDiameter.inMillimetres() / 2;
    const double neck = std::min(screw.headHeight.inMillimetres(), length / 2);
    const double taper = std::max(length - 3 * shank, neck);
    return {
        head + side * wide,  head + way * neck + side * shank,  head + way * taper + side * shank,
        head + way * length, head + way * taper - side * shank, head + way * neck - side * shank,
        head - side * wide};
}

void drawScrews(Sketch& sketch, const SectionSubject& subject, const FittingPlan& fitting,
                const Part& part) {
    if (!fitting.screwLength)
        return;
    const double length = fitting.screwLength->inMillimetres();
    const double plate = fitting.form->plate.inMillimetres(), face = -subject.thickness();
    const bool fromBack = fitting.form->bearsOn == FrontFace::Back;
    if (fitting.form->bearsOn == FrontFace::TopEdge) {
        if (!subject.isLevel() && !fitting.screws.empty())
            sketch.path(
                Layer::Fastener,
                screwOutline(*fitting.screw, length,
                             {face + fitting.screws.front().at.y.inMillimetres(), subject.height()},
                             {0, -1}),
                PathMark::End::Closed, part);
        return;
    }
    std::vector<double> axes;
    for (const FittingScrew& screw : fitting.screws) {
        const double axis = subject.along(screw.at).inMillimetres();
        if (std::ranges::find(axes, axis) != axes.end())
            continue;
        axes.push_back(axis);
        const double sunk = subject.thickness() - screw.wood.inMillimetres();
        const double head = fromBack ? -sunk + plate : face + sunk - plate;
        sketch.path(Layer::Fastener,
                    screwOutline(*fitting.screw, length, {head, axis}, {fromBack ? -1.0 : 1.0, 0}),
                    PathMark::End::Closed, part);
    }
}

/// The body where it stands on its face.
void drawBody(Sketch& sketch, const SectionSubject& subject, const FittingPlan& fitting,
              const Part& part) {
    const FittingForm& form = *fitting.form;
    const double face = -subject.thickness(), out = form.projection.inMillimetres();
    const double centre = subject.along(fitting.centre).inMillimetres();
    if (out <= 0)
        return;
    if (const auto handle = likeHandle(form))
        return subject.isLevel() ? drawHandleFromAbove(sketch, *handle, face, centre, part)
                                 : drawHandleFromSide(sketch, *handle, face, centre, part);
    const Span along = alongOf(subject, fitting.footprint);
    const double low = along.low.inMillimetres(), high = along.high.inMillimetres();
    if (form.bearsOn == FrontFace::Show)
        sketch.rectangle(Layer::Handle, across(face - out, face, low, high), part);
    else if (form.bearsOn == FrontFace::TopEdge && !subject.isLevel())
        sketch.rectangle(Layer::Handle,
                         across(face - out, face + form.footprint.height.inMillimetres() - out,
                                high - form.plate.inMillimetres(), high + out),
                         part);
}

} // namespace

std::vector<Points> fittingVoids(const SectionSubject& subject) {
    std::vector<Points> voids;
    for (const FittingPlan* fitting : seenFittings(subject)) {
        for (const MortisePlan& mortise : fitting->mortises)
            if (const auto box = mortiseBox(subject, mortise.cut))
                voids.push_back(cornersOf(*box));
        for (const FittingBore& bore : fitting->bores)
            if (bore.from != FrontFace::TopEdge)
                voids.push_back(cornersOf(boreBox(subject, bore)));
    }
    return voids;
}

void drawFittingsInSection(Sketch& sketch, const SectionSubject& subject) {
    for (const FittingPlan* fitting : seenFittings(subject)) {
        const auto number = fitting - subject.front.fittings->data() + 1;
        const Part part{subject.front.opening, std::nullopt, "fitting " + std::to_string(number)};
        for (const MortisePlan& mortise : fitting->mortises)
            if (const auto box = mortiseBox(subject, mortise.cut))
                sketch.rectangle(Layer::Counterbore, *box, part);
        for (const FittingBore& bore : fitting->bores)
            if (bore.from != FrontFace::TopEdge)
                sketch.rectangle(Layer::Hole, boreBox(subject, bore), part);
        drawBody(sketch, subject, *fitting, part);
        drawScrews(sketch, subject, *fitting, part);
    }
}

} // namespace frontwright
