#include "core/fastening/bounds.h"

namespace frontwright {
namespace {

WallRect thickPart(const Limits& limits, const MountingPlace& place) {
    const FrontStock& front = place.front;
    if (place.rim)
        return toWall(place.box, place.rim->thickPart(front.front));
    const Length needed = limits.leastPenetration.length + limits.leastTipCover.length;
    return toWall(place.box,
                  thinRim(*front.profile, front.thickness, needed).thickPart(front.front));
}

std::optional<WallRect> ownPart(const MountingPlace& place) {
    if (!place.part)
        return std::nullopt;
    const auto& [wall, from] = *place.part;
    return WallRect{wall.left + from.left, wall.bottom + from.bottom, wall.right - from.right,
                    wall.top - from.top};
}

/// Radius of a disc round one of the handle's holes, the wood between holes aside.
Length reach(const HardwarePlan& hardware, const WoodScrew& screw, Length tool) {
    const Length counterbore = hardware.counterboreDiameter.half();
    switch (hardware.chosen) {
    case MountingWay::FrontCounterbore:
        return counterbore + screw.shankDiameter.half();
    case MountingWay::FrontAccessHole:
        return hardware.accessDiameter.half() + tool;
    case MountingWay::ThroughWall:
        break;
    }
    const Length hole = hardware.holeDiameter.half();
    const bool sunk = !hardware.chosenWay().counterbore.isZero();
    return (sunk ? greatest(hole, counterbore) : hole) + tool;
}

} // namespace

WallRect MountingBounds::common() const {
    const WallRect all = WallRect{sides.low, bottom(), sides.high, top}.common(thick);
    return own ? all.common(*own) : all;
}

Length toolRadius(const MountingSpec& spec, const WoodScrew& screw) {
    return greatest(spec.toolDiameter.length.half(), screw.headDiameter.half());
}

MountingBounds boundsOf(const MountingSpec& spec, const WoodScrew& screw, const Limits& limits,
                        const MountingPlace& place) {
    const BoxPlan& box = place.box;
    const Length tool = toolRadius(spec, screw);
    const Length head = screw.headDiameter.half();
    const Length headWithMargin = head + limits.screwMargin;
    MountingBounds bounds;
    bounds.forHead = box.bottomTop + head;
    bounds.forMargin = box.bottomTop + headWithMargin;
    bounds.forTool = box.bottomTop + tool;
    bounds.sides = {box.sideThickness + tool, box.width - box.sideThickness - tool};
    bounds.top = box.height - greatest(tool, headWithMargin);
    bounds.thick = thickPart(limits, place);
    bounds.own = ownPart(place);
    return bounds;
}

std::vector<WallDisc> discsRoundHardware(const MountingSpec& spec, const WoodScrew& screw,
                                         const Limits& limits, const MountingPlace& place) {
    std::vector<WallDisc> discs;
    if (!place.hardware)
        return discs;
    const Length radius =
        reach(*place.hardware, screw, toolRadius(spec, screw)) + limits.holeToHole;
    discs.reserve(place.hardware->holes.size());
    for (FrontPoint hole : place.hardware->holes)
        discs.push_back({toWall(place.box, hole), radius});
    return discs;
}

std::vector<WallRect> rectsAtRunner(const MountingSpec& spec, const WoodScrew& screw,
                                    const MountingPlace& place) {
    std::vector<WallRect> rects;
    if (!place.runner)
        return rects;
    const Length tool = toolRadius(spec, screw);
    for (const auto& parts : {place.runner->clearZones, place.runner->wallNotches})
        for (const WallRect& part : parts)
            rects.push_back(part.inset(-tool));
    return rects;
}

void keepClearOfFittings(WallRegion& region, const WoodScrew& screw, const Limits& limits,
                         const MountingPlace& place) {
    if (!place.fittings)
        return;
    const Length round = screw.shankDiameter.half() + limits.holeToHole;
    for (const FittingCut& cut : cutsOf(*place.fittings))
        if (cut.shape == FootprintShape::Round)
            region.withoutDiscs.push_back(
                {toWall(place.box, cut.around.centre()), cut.around.width().half() + round});
        else
            region.withoutRects.push_back(toWall(place.box, cut.around).inset(-round));
}

} // namespace frontwright
