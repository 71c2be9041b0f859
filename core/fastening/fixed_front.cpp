#include "core/fastening/fixed_front.h"

#include "core/fastening/bounds.h"
#include "core/fastening/pattern.h"
#include "core/fastening/screw_length.h"

#include <algorithm>

namespace frontwright {
namespace {

constexpr Length nothing{};

/// The opening, and round it what lies too near to a member's edge; past the front where no member
/// is built.
WallRect openPart(const FixedPlace& place, Length clear) {
    const WallRect& front = place.on.box.wall;
    const auto past = [&](Side side) {
        return place.member[side] > nothing ? place.overlay[side] - clear : -clear;
    };
    return {front.left + past(Side::Left), front.bottom + past(Side::Bottom),
            front.right - past(Side::Right), front.top - past(Side::Top)};
}

/// The front, away from its own edges and from the members' far edges.
WallRect outerPart(const FixedPlace& place, Length clear, const WallRect& thick) {
    const auto from = [&](Side side) {
        const Length pastMember = place.member[side] > nothing
                                      ? place.overlay[side] - place.member[side] + clear
                                      : nothing;
        return greatest(place.fromEdges[side], pastMember);
    };
    const WallRect& front = place.on.box.wall;
    return WallRect{front.left + from(Side::Left), front.bottom + from(Side::Bottom),
                    front.right - from(Side::Right), front.top - from(Side::Top)}
        .common(thick);
}

/// Places along one axis, as distances from the front's lower or left edge: in the middle of the
/// strips at both ends, or where one has none, in from the region's end.
std::vector<Length> placesAlong(Span front, Span outer, Span open, Length grid) {
    const auto fromEnd = [&](Span strip, Length end) { // distances from that end of the front
        if (!strip.isEmpty())
            return middleOnGrid(strip, grid);
        const std::int64_t step = grid.nanometres();
        return Length::fromNanometres((end.nanometres() + step - 1) / step * step);
    };
    const Length low =
        fromEnd({outer.low - front.low, open.low - front.low}, outer.low - front.low);
    const Length high =
        fromEnd({front.high - outer.high, front.high - open.high}, front.high - outer.high);
    return {front.low + low, front.high - high};
}

std::vector<WallPoint> cornersIn(const MountingPlan& plan, const MountingSpec& spec,
                                 const FixedPlace& place) {
    const WallRect& front = place.on.box.wall;
    const WallRect& outer = plan.allowed.outer;
    const WallRect& open = plan.allowed.withoutRects.front();
    std::vector<WallPoint> points;
    if (outer.isEmpty())
        return points;
    std::vector<Length> columns =
        placesAlong(front.across(), outer.across(), open.across(), place.on.rowGrid);
    if (spec.pattern == ScrewPattern::Six)
        columns.insert(columns.begin() + 1, front.across().middle());
    for (const Length y :
         placesAlong(front.upright(), outer.upright(), open.upright(), place.on.rowGrid))
        for (const Length x : columns)
            if (plan.allowed.contains({x, y}))
                points.push_back({x, y});
    return points;
}

} // namespace

Length fromMemberEdge(const MountingSpec& spec, const WoodScrew& screw, const Limits& limits) {
    return greatest(toolRadius(spec, screw), screw.headDiameter.half() + limits.screwMargin);
}

Length leastOverlay(const MountingSpec& spec, const WoodScrew& screw, const Limits& limits,
                    Length fromFrontEdge) {
    return fromMemberEdge(spec, screw, limits) + fromFrontEdge;
}

MountingPlan planFixedMounting(const MountingSpec& spec, const WoodScrew& screw,
                               const Limits& limits, const FixedPlace& place) {
    const MountingPlace& on = place.on;
    const Length clear = fromMemberEdge(spec, screw, limits);
    MountingPlan plan;
    plan.screw = &screw;
    plan.wall = on.box.wallThickness;
    plan.recess = spec.recess;
    plan.clearanceHole = spec.clearanceHole ? spec.clearanceHole->length : screw.clearanceHole;
    plan.pilotHole =
        spec.pilotHole ? spec.pilotHole->length : on.pilotHole.value_or(screw.pilotHole);
    plan.allowed.outer = outerPart(place, clear, boundsOf(spec, screw, limits, on).thick);
    plan.allowed.withoutRects = {openPart(place, clear)};
    plan.allowed.withoutDiscs = discsRoundHardware(spec, screw, limits, on);
    keepClearOfFittings(plan.allowed, screw, limits, on);
    const std::vector<WallPoint> points =
        spec.pattern == ScrewPattern::ByHand ? spec.placed : cornersIn(plan, spec, place);
    for (const WallPoint at : points)
        plan.holes.push_back({at, thicknessBehind(on, at), {}, {}, plan.allowed.contains(at)});
    chooseLength(plan, spec, limits, on.front.thickness);
    return plan;
}

} // namespace frontwright
