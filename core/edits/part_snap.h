#pragma once

#include "core/edits/placed_part.h"

namespace frontwright {

/// What one coordinate of a dragged hole or handle lies on, best first where two are equally near.
enum class PartSnapTo : std::uint8_t {
    Grid,        ///< a whole multiple of the grid from the wall's (a handle: the front's) corner
    Start,       ///< where it was before the drag
    FrontCentre, ///< centre line of the front
    WallCentre,  ///< centre line of the box's wall
    FieldCentre, ///< centre line of the field; handles only
    AllowedEdge, ///< edge of the region that is allowed to mounting holes
    FieldEdge,   ///< a handle's base lies just within the field
    SameLine,    ///< in line with a part of its kind, on this front or another
    SameHeight,  ///< as high on its own front as one of the same bank is on its front
    Mirrored     ///< as far from one side as another part of this front is from the other
};

/// One coordinate of where it comes to lie.
struct PartSnap {
    Length at; ///< case frame; exact, never a pixel's worth
    PartSnapTo to = PartSnapTo::Grid;
    std::optional<PlacedPart> like; ///< SameLine, SameHeight, Mirrored: the other part
    friend bool operator==(const PartSnap&, const PartSnap&) = default;
};
struct SnappedPart {
    PartSnap x;
    PartSnap y;
    [[nodiscard]] CasePoint at() const { return {x.at, y.at}; }
};

/// How near a coordinate has to be; apart, since what has snapped takes a little more to get away.
struct PartReach {
    Length x;
    Length y;
};

/// Where a part that the pointer holds at `wanted` comes to lie. Each coordinate goes to the
/// nearest of what it may snap to within its reach, else to the grid. Pure: the plan is the one
/// from before the drag; parts that move along are no lines to snap to. With no reach at all only
/// the grid counts.
SnappedPart snapPart(const Plan&, const PlacedPart&, CasePoint wanted, PartReach, Length grid,
                     Together = Together::Alone);

} // namespace frontwright
