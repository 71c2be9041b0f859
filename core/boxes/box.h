#pragma once

#include "core/boxes/box_spec.h"
#include "core/catalogue/catalogue.h"
#include "core/geometry/frames.h"

namespace frontwright {

/// A drawer box in its opening, seen from the front. All lengths outside.
struct BoxPlan {
    Length width;
    Length height;
    Length depth;
    Length wallThickness;
    Length sideThickness;
    Length bottomUnderside; ///< of the panel, above the box's lower edge
    Length bottomTop;       ///< of the panel, above the box's lower edge
    Length sideClearance;
    Length clearanceBelow;
    Length clearanceAbove;  ///< what is left over the box; more than asked where height is given
    CasePoint origin;       ///< the wall's lower left corner in the elevation
    Length setback;         ///< box wall's front face behind the frame's face
    WallRect wall;          ///< {0, 0, width, height}
    FrontPoint wallOnFront; ///< the wall's lower left corner in the front's frame
    friend bool operator==(const BoxPlan&, const BoxPlan&) = default;
};

/// Box from opening, clearances and setback (0 where every side of the front lies on the frame's
/// face; the front's thickness where a side is inset, for then the front lies between the frame's
/// parts). `runner` may be null; a clearance that neither it nor the spec gives is 0. Sizes are
/// negative where there is no room: judged as a finding.
///   width = opening − 2 × side clearance; height = opening − below − above, or as given
BoxPlan planBox(const BoxSpec&, const RunnerKind* runner, CaseRect opening, CaseRect front,
                Length setback);

// The one passage between the two frames (design 5.4), and its inverse:
//   x_front = x_box + side clearance + left overlay
//   y_front = y_box + clearance below + bottom overlay
FrontPoint toFront(const BoxPlan&, WallPoint);
WallPoint toWall(const BoxPlan&, FrontPoint);
FrontRect toFront(const BoxPlan&, WallRect);
WallRect toWall(const BoxPlan&, FrontRect);

/// Left and right exchanged, as when drilling from inside the box: x → width − x. Its own inverse.
WallPoint mirroredAcross(const BoxPlan&, WallPoint);

} // namespace frontwright
