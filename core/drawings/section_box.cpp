#include "core/drawings/section_parts.h"

namespace frontwright {

namespace {

using Points = std::vector<PointMm>;

constexpr Hatching bottomHatching{30, 1.4};
constexpr Hatching sideHatching{45, 1.8};

/// The box goes on inside: a line with a zigzag where the drawing ends.
void drawBreak(Sketch& sketch, const SectionSubject& subject, const Part& part) {
    const double end = subject.boxEnd(), low = subject.boxFoot();
    const double high = low + subject.boxLength();
    const double beyond = sketch.forPaper(2), zig = sketch.forPaper(1.5);
    const double middle = (low + high) / 2;
    sketch.path(Layer::MemberEdge,
                {{end, low - beyond},
                 {end, middle - zig},
                 {end - zig, middle - zig / 2},
                 {end + zig, middle + zig / 2},
                 {end, middle + zig},
                 {end, high + beyond}},
                PathMark::End::Open, part);
}

/// Cut from the wall to the break, open there.
void drawBroken(Sketch& sketch, const BoxMm& box, const Hatching& hatching,
                const std::vector<Points>& free, const Part& part) {
    drawHatch(sketch, cornersOf(box), hatching, free, part);
    sketch.path(
        Layer::CutEdge,
        {{box.max().x(), box.min().y()}, box.min(), {box.min().x(), box.max().y()}, box.max()},
        PathMark::End::Open, part);
}

/// Both sides, butting against the wall's back: how the corner is joined is the maker's.
void drawSides(Sketch& sketch, const SectionSubject& subject) {
    const double side = subject.front.box.sideThickness.inMillimetres();
    const double low = subject.boxFoot(), high = low + subject.boxLength();
    if (!(side > 0) || high - low < 2 * side)
        return;
    const Part part{subject.front.opening, std::nullopt, "box side"};
    for (const double at : {low, high - side})
        drawBroken(sketch, {PointMm(subject.wall(), at), PointMm(subject.boxEnd(), at + side)},
                   sideHatching, {}, part);
}

} // namespace

/// The bottom's groove reaches half the wall's thickness (common practice, no source).
BoxMm bottomBox(const SectionSubject& subject) {
    if (subject.isLevel())
        return {};
    const BoxPlan& box = subject.front.box;
    return {PointMm(subject.wall() / 2, subject.boxFoot() + box.bottomUnderside.inMillimetres()),
            PointMm(subject.boxEnd(), subject.boxFoot() + box.bottomTop.inMillimetres())};
}

void drawBoxInside(Sketch& sketch, const SectionSubject& subject, const std::vector<Points>& free) {
    const Part side{subject.front.opening, std::nullopt, "box side"};
    if (subject.isLevel()) {
        drawSides(sketch, subject);
        drawBreak(sketch, subject, side);
        return;
    }
    const BoxMm bottom = bottomBox(subject);
    if (bottom.min().y() < bottom.max().y())
        drawBroken(sketch, bottom, bottomHatching, free,
                   {subject.front.opening, std::nullopt, "bottom"});
    const double foot = subject.boxFoot();
    for (const double y : {foot, foot + subject.boxLength()})
        sketch.line(Layer::MemberEdge, {subject.wall(), y}, {subject.boxEnd(), y}, side);
    drawBreak(sketch, subject, side);
}

} // namespace frontwright
