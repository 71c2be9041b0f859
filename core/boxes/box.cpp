#include "core/boxes/box.h"

namespace frontwright {
namespace {

struct Clearances {
    Length side;
    Length below;
    Length above;
};

Length given(const std::optional<WrittenLength>& own, const RunnerKind* runner,
             Length RunnerKind::*ofRunner) {
    if (own)
        return *own;
    return runner ? runner->*ofRunner : Length{};
}

Clearances clearancesOf(const BoxSpec& spec, const RunnerKind* runner) {
    return {given(spec.sideClearance, runner, &RunnerKind::sideClearance),
            given(spec.clearanceBelow, runner, &RunnerKind::clearanceBelow),
            given(spec.clearanceAbove, runner, &RunnerKind::clearanceAbove)};
}

} // namespace

BoxPlan planBox(const BoxSpec& spec, const RunnerKind* runner, CaseRect opening, CaseRect front,
                Length setback) {
    const Clearances clear = clearancesOf(spec, runner);
    const Length room = opening.height() - clear.below;
    BoxPlan box;
    box.width = opening.width() - 2 * clear.side;
    box.height = spec.height ? Length(*spec.height) : room - clear.above;
    box.depth = spec.depth;
    box.wallThickness = spec.wallThickness;
    box.sideThickness = spec.sideThickness;
    box.bottomUnderside = spec.grooveHeight;
    box.bottomTop = spec.grooveHeight.length + spec.bottomThickness.length;
    box.sideClearance = clear.side;
    box.clearanceBelow = clear.below;
    box.clearanceAbove = room - box.height;
    box.origin = opening.lowerLeft() + CasePoint{clear.side, clear.below};
    box.setback = setback;
    box.wall = WallRect::atOrigin(box.width, box.height);
    const CasePoint onFront = box.origin - front.lowerLeft();
    box.wallOnFront = {onFront.x, onFront.y};
    return box;
}

FrontPoint toFront(const BoxPlan& box, WallPoint p) {
    return FrontPoint{p.x, p.y} + box.wallOnFront;
}

WallPoint toWall(const BoxPlan& box, FrontPoint p) {
    const FrontPoint onWall = p - box.wallOnFront;
    return {onWall.x, onWall.y};
}

FrontRect toFront(const BoxPlan& box, WallRect r) {
    return FrontRect{r.left, r.bottom, r.right, r.top}.movedBy(box.wallOnFront);
}

WallRect toWall(const BoxPlan& box, FrontRect r) {
    const FrontRect onWall = r.movedBy(FrontPoint{} - box.wallOnFront);
    return {onWall.left, onWall.bottom, onWall.right, onWall.top};
}

WallPoint mirroredAcross(const BoxPlan& box, WallPoint p) {
    return {box.width - p.x, p.y};
}

} // namespace frontwright
