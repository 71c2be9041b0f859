#include "core/fastening/mounting.h"

#include "core/fastening/bounds.h"
#include "core/fastening/pattern.h"
#include "core/fastening/screw_length.h"

#include <algorithm>

namespace frontwright {
namespace {

Length gridFor(const MountingPlace& place) {
    if (place.rowGrid > Length{})
        return place.rowGrid;
    const bool inInches = place.front.thickness.nanometres() % Length::nanometresPer64th == 0;
    return inInches ? Length::inches(0, 8) : Length::millimetres(1);
}

WallRegion movedBy(WallRegion region, WallPoint by) {
    region.outer = region.outer.movedBy(by);
    for (WallDisc& disc : region.withoutDiscs)
        disc.centre = disc.centre + by;
    for (WallRect& rect : region.withoutRects)
        rect = rect.movedBy(by);
    return region;
}

/// Rows and columns of one of several fronts count from the edges of what it has of the wall.
std::vector<WallPoint> pointsFor(const MountingPlan& plan, const MountingSpec& spec,
                                 const MountingPlace& place, Length leastBetween) {
    const bool isAlone = !place.part || spec.pattern == ScrewPattern::ByHand;
    const WallRect own = isAlone ? place.box.wall : place.part->wall;
    const WallPoint from{own.left, own.bottom};
    const WallRegion allowed = isAlone ? plan.allowed : movedBy(plan.allowed, WallPoint{} - from);
    std::vector<WallPoint> points =
        placePattern(spec, {own.width(), own.height(), allowed, gridFor(place), leastBetween});
    if (!isAlone)
        for (WallPoint& point : points)
            point = point + from;
    return points;
}

void placeHoles(MountingPlan& plan, const MountingSpec& spec, const Limits& limits,
                const MountingPlace& place) {
    const std::vector<WallPoint> points =
        pointsFor(plan, spec, place, plan.clearanceHole + limits.holeToHole);
    plan.holes.reserve(points.size());
    for (WallPoint at : points)
        plan.holes.push_back({at, thicknessBehind(place, at), {}, {}, plan.allowed.contains(at)});
}

/// The discs round the handle's holes come first.
bool nearHardware(const WallRegion& allowed, const MountingPlace& place, WallPoint p) {
    const auto discs = place.hardware ? static_cast<std::ptrdiff_t>(place.hardware->holes.size())
                                      : std::ptrdiff_t{0};
    return std::any_of(allowed.withoutDiscs.begin(), allowed.withoutDiscs.begin() + discs,
                       [p](const WallDisc& disc) { return isWithin(p, disc.centre, disc.radius); });
}

bool atRunner(const MountingSpec& spec, const WoodScrew& screw, const MountingPlace& place,
              WallPoint p) {
    const std::vector<WallRect> rects = rectsAtRunner(spec, screw, place);
    return std::any_of(rects.begin(), rects.end(),
                       [p](const WallRect& rect) { return isInside(p, rect); });
}

/// Whatever else is taken out of the region.
bool nearFitting(const WallRegion& allowed, WallPoint p) {
    const WallRegion all{WallRect{p.x, p.y, p.x, p.y}, allowed.withoutRects, allowed.withoutDiscs};
    return !all.contains(p);
}

} // namespace

Length headBearing(const MountingPlan& mounting) {
    return (mounting.screw->headDiameter - mounting.clearanceHole).half();
}

MountingPlan planMounting(const MountingSpec& spec, const WoodScrew& screw, const Limits& limits,
                          const MountingPlace& place) {
    const MountingBounds bounds = boundsOf(spec, screw, limits, place);
    MountingPlan plan;
    plan.screw = &screw;
    plan.wall = place.box.wallThickness;
    plan.recess = spec.recess;
    plan.leastHeight = bounds.bottom();
    plan.leastHeightForHole = bounds.forMargin;
    plan.clearanceHole = spec.clearanceHole ? spec.clearanceHole->length : screw.clearanceHole;
    plan.pilotHole =
        spec.pilotHole ? spec.pilotHole->length : place.pilotHole.value_or(screw.pilotHole);
    plan.allowed.outer = bounds.common();
    plan.allowed.withoutRects = rectsAtRunner(spec, screw, place);
    plan.allowed.withoutDiscs = discsRoundHardware(spec, screw, limits, place);
    keepClearOfFittings(plan.allowed, screw, limits, place);
    placeHoles(plan, spec, limits, place);
    chooseLength(plan, spec, limits, place.front.thickness);
    return plan;
}

Result<MountingPlan> planMounting(const MountingSpec& spec, const Catalogue& catalogue,
                                  const Limits& limits, const MountingPlace& place) {
    const WoodScrew* screw = catalogue.woodScrew(spec.screw);
    if (!screw)
        return Error{std::string("mounting.screw"),
                     phrase("there is no wood screw \"%1\" in the catalogue", spec.screw),
                     text("choose one of the catalogue's or add your own")};
    return planMounting(spec, *screw, limits, place);
}

Obstacle obstacleAt(const MountingSpec& spec, const MountingPlan& plan, const Limits& limits,
                    const MountingPlace& place, WallPoint p) {
    const MountingBounds bounds = boundsOf(spec, *plan.screw, limits, place);
    if (p.y < bounds.forHead)
        return Obstacle::Bottom;
    if (bounds.thick.isEmpty() || !bounds.thick.contains(p))
        return Obstacle::ThinRim;
    if (bounds.own && !bounds.own->contains(p))
        return Obstacle::FrontEdge;
    if (nearHardware(plan.allowed, place, p))
        return place.hardware->chosen == MountingWay::FrontAccessHole ? Obstacle::AccessHole
                                                                      : Obstacle::HardwareHole;
    if (atRunner(spec, *plan.screw, place, p))
        return Obstacle::Runner;
    if (nearFitting(plan.allowed, p))
        return Obstacle::Fitting;
    if (p.y < bounds.forTool)
        return Obstacle::RecessTool;
    if (p.y < bounds.forMargin)
        return Obstacle::Bottom;
    if (!bounds.sides.contains(p.x))
        return Obstacle::BoxSide;
    if (p.y > bounds.top)
        return Obstacle::TopEdge;
    return Obstacle::None;
}

} // namespace frontwright
