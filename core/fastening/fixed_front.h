#pragma once

#include "core/fastening/mounting.h"

namespace frontwright {

/// What a front without a box is screwed to, from the case's inside: the members round its opening.
/// Its holes stand in its own frame: `on.box` is the front's outline, as thick as the face frame.
struct FixedPlace {
    const MountingPlace& on;
    PerSide<Length> overlay;   ///< over the opening's edge; negative for inset
    PerSide<Length> member;    ///< width of the member at that side; 0 where none is built
    PerSide<Length> fromEdges; ///< least distances of a screw from the front's own edges
};

/// What a screw keeps from a member's edges: the tool that sets it cuts full wood, and the head
/// bears with its margin.
Length fromMemberEdge(const MountingSpec&, const WoodScrew&, const Limits&);

/// The least overlay at a side over which screws find wood: from the member's edge and from the
/// front's.
Length leastOverlay(const MountingSpec&, const WoodScrew&, const Limits&, Length fromFrontEdge);

/// Screws through the members into the front. The region is the front, away from its edges and its
/// thin rim, less the opening and what lies near the members' edges. FourCorners and Six stand in
/// the middle of the strips that are left, or where there is none at a side as near to the front's
/// edge as the grid lets them; no hole where there is no region. ByHand as placed, in the front's
/// frame. Rows typed for boxes have no meaning here.
MountingPlan planFixedMounting(const MountingSpec&, const WoodScrew&, const Limits&,
                               const FixedPlace&);

} // namespace frontwright
