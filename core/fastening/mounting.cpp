#include "core/fastening/mounting.h"

#include "core/fastening/bounds.h"
#include "core/fastening/pattern.h"

#include <algorithm>

namespace frontwright {
namespace {

Length gridFor(const MountingPlace& place) {
    if (place.rowGrid > Length{})
        return place.rowGrid;
    const bool inInches = place.front.thickness.nanometres() % Length::nanometresPer64th == 0;
    return inInches ? Length::inches(0, 8) : Length::millimetres(1);
}

Length thicknessBehind(const MountingPlace& place, WallPoint at) {
    const FrontStock& front = place.front;
    const FrontPoint p = toFront(place.box, at);
    if (front.front.contains(p) && front.field.contains(p))
        return front.thickness;
    return localThickness(*front.profile, front.front, front.thickness, p);
}

void placeHoles(MountingPlan& plan, const MountingSpec& spec, const Limits& limits,
                const MountingPlace& place) {
    const std::vector<WallPoint> points =
        placePattern(spec, {place.box.width, place.box.height, plan.allowed, gridFor(place),
                            plan.clearanceHole + limits.holeToHole});
    plan.holes.reserve(points.size());
    for (WallPoint at : points)
        plan.holes.push_back({at, thicknessBehind(place, at), {}, {}, plan.allowed.contains(at)});
}

/// Holes off the front carry nothing; where no other is left, the front's own thickness counts.
Length thinnestPlace(const std::vector<MountingHole>& holes, Length frontThickness) {
    Length result = frontThickness;
    for (const MountingHole& hole : holes)
        if (hole.thickness > Length{})
            result = least(result, hole.thickness);
    return result;
}

std::optional<Length> longestStocked(const WoodScrew& screw, Span window) {
    const auto above = std::upper_bound(screw.lengths.begin(), screw.lengths.end(), window.high);
    if (above == screw.lengths.begin() || *std::prev(above) < window.low)
        return std::nullopt;
    return *std::prev(above);
}

void chooseLength(MountingPlan& plan, const MountingSpec& spec, const Limits& limits,
                  Length frontThickness) {
    const Length throughWall = plan.wall - plan.recess;
    plan.leastLength = throughWall + limits.leastPenetration;
    plan.greatestLength =
        throughWall + thinnestPlace(plan.holes, frontThickness) - limits.leastTipCover;
    if (spec.length)
        plan.length = *spec.length;
    else
        plan.length = longestStocked(*plan.screw, {plan.leastLength, plan.greatestLength});
    for (MountingHole& hole : plan.holes) {
        hole.penetration = plan.length ? *plan.length - throughWall : Length{};
        hole.tipCover = hole.thickness - hole.penetration;
    }
}

/// The discs round the handle's holes come first.
bool nearHardware(const WallRegion& allowed, const MountingPlace& place, WallPoint p) {
    const auto discs = place.hardware ? static_cast<std::ptrdiff_t>(place.hardware->holes.size())
                                      : std::ptrdiff_t{0};
    return std::any_of(allowed.withoutDiscs.begin(), allowed.withoutDiscs.begin() + discs,
                       [p](const WallDisc& disc) { return isWithin(p, disc.centre, disc.radius); });
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
    if (nearHardware(plan.allowed, place, p))
        return place.hardware->chosen == MountingWay::FrontAccessHole ? Obstacle::AccessHole
                                                                      : Obstacle::HardwareHole;
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
