#include "core/plan/own_part.h"

#include "core/plan/chosen.h"

namespace frontwright {

PerSide<Length> fromFrontEdges(const Project& project, const FrontPlan& front) {
    const MountingSpec& spec = chosenMounting(project, front);
    const bool hasPilot = !spec.pilotHole || spec.pilotHole->length > Length{};
    const ScrewDistances least = screwDistances(front.mounting.screw->shankDiameter,
                                                hasPilot ? Prebored::Yes : Prebored::No);
    const Grain grain = chosenStock(project, front).grain;
    PerSide<Length> distances;
    for (const Side side : allSides)
        distances[side] = isEnd(side, grain) ? least.toEnd : least.toEdge;
    return distances;
}

std::optional<OwnPart> ownPartOf(const Project& project, const FrontPlan& front) {
    if (!front.face || !front.hasBox())
        return std::nullopt;
    const WallRect own =
        toWall(front.box, FrontRect::atOrigin(front.rect.width(), front.rect.height()));
    const WallRect& wall = front.box.wall;
    const PerSide<Length> least = fromFrontEdges(project, front);
    const PerSide<bool> goesOn{own.left > wall.left, own.right<wall.right, own.bottom> wall.bottom,
                               own.top < wall.top};
    OwnPart part{wall.common(own), {}};
    for (const Side side : allSides)
        if (goesOn[side])
            part.fromEdges[side] = least[side];
    return part;
}

} // namespace frontwright
