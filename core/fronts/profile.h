#pragma once

#include "core/geometry/frames.h"

namespace frontwright {

/// The section of a front's edge, as thickness over the distance from the edge. `width` reaches
/// from the edge into the face, `depth` is what is missing at the edge itself.
///
///      field          |<- width ->|
///   ___________________
///                      \           |            (Chamfer)
///                       \__________| depth
///   ___________________________________ back
enum class ProfileFamily : std::uint8_t {
    Square,  ///< no loss
    Eased,   ///< small quarter round, width = depth; drawn like Round where they differ
    Chamfer, ///< straight slope
    Round,   ///< convex quarter ellipse, tangent to the field
    Raised,  ///< bevel that ends in a step up to the field (bevelled and raised)
    Cove     ///< concave quarter ellipse round the missing corner
};

struct Profile {
    ProfileFamily family = ProfileFamily::Square;
    WrittenLength width; ///< ignored for Square
    WrittenLength depth; ///< ignored for Square
    WrittenLength step;  ///< Raised only: height of the step at the field; 0 <= step <= depth
    PerSide<bool> sides = PerSide<bool>::all(true); ///< which edges carry it
    friend bool operator==(const Profile&, const Profile&) = default;
};

/// What the section lacks at `distance` from its edge (0 outside 0 … width). At distance = width
/// the field begins, with full thickness. With x = distance, w = width, d = depth, s = step:
///   Chamfer       d · (w − x) / w
///   Eased, Round  d · (1 − √(1 − ((w − x) / w)²))
///   Raised        s + (d − s) · (w − x) / w
///   Cove          d · √(1 − (x / w)²)
/// Plain geometry of the sections above; rounded once to the nearest nanometre.
Length lossAt(const Profile& profile, Length distance);

/// Thickness of the front behind a point of its face; edges meet in a mitre, so the greatest loss
/// of the four sides counts. Never negative; points off the front have thickness 0.
Length localThickness(const Profile& profile, FrontRect front, Length thickness, FrontPoint p);

/// Least local thickness under a disc (a screw, a counterbore): at its point nearest to an edge; 0
/// where it reaches off the front.
Length leastThickness(const Profile& profile, FrontRect front, Length thickness, FrontDisc disc);

/// Thickness at the very edge of a side; 0 where the profile is as deep as the front or deeper.
Length edgeThickness(const Profile& profile, Length thickness, Side side);

/// The flat, full-thickness part: the front less the profile's width at each side that carries it.
/// Empty where the profiles overlap in the middle, without area where they just meet.
FrontRect field(const Profile& profile, FrontRect front);

} // namespace frontwright
