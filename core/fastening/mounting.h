#pragma once

#include "core/boxes/box.h"
#include "core/catalogue/catalogue.h"
#include "core/fastening/mounting_spec.h"
#include "core/fastening/thin_rim.h"
#include "core/fronts/profile.h"
#include "core/geometry/region.h"
#include "core/hardware/bolts.h"
#include "core/hardware/fittings.h"
#include "core/limits/limits.h"
#include "core/results/result.h"

namespace frontwright {

/// One hole for a mounting screw, judged by the front's local thickness behind it.
///   penetration p = L + r − w;  tip cover = t − p
/// Where no length fits, p is 0 and the tip cover is t.
struct MountingHole {
    WallPoint at;
    Length thickness;    ///< t: local thickness of the front behind the hole; 0 off the front
    Length penetration;  ///< p
    Length tipCover;     ///< t − p; <= 0 ruins the front
    bool allowed = true; ///< lies in the allowed region
    friend bool operator==(const MountingHole&, const MountingHole&) = default;
};

/// Why a place on the wall is not allowed for a mounting screw. A hole whose head would meet the
/// panel is at the Bottom; one that clears it is stopped by its RecessTool where that would touch;
/// one that clears both, but by less than the margin, is at the Bottom again.
enum class Obstacle : std::uint8_t {
    None,
    Bottom,       ///< the hole would meet the bottom panel
    RecessTool,   ///< the hole clears the bottom, but what cuts its recess does not
    BoxSide,      ///< tool meets the box's side
    TopEdge,      ///< too near the wall's upper edge
    HardwareHole, ///< too near a bolt's hole or its counterbore
    AccessHole,   ///< too near an access hole
    Fitting,      ///< too near what a fitting takes out of the front
    ThinRim,      ///< the front is too thin there, or is not there at all
    Runner        ///< a part of the runner is in the way (no runner kind tells of one yet)
};

struct MountingPlan {
    const WoodScrew* screw = nullptr; ///< into the Catalogue; never null
    Length wall;                      ///< w
    Length recess;                    ///< r
    Length leastLength;               ///< window of L, for the thinnest place that carries a hole:
    Length greatestLength; ///< w − r + least penetration … w − r + t − least tip cover
    std::optional<Length> length; ///< as given, else the longest stocked one in the window
    WallRegion allowed;
    Length leastHeight; ///< hole centre above the box's lower edge: bottom's top + the larger of
                        ///< head radius + margin and the tool's radius
    Length leastHeightForHole; ///< the same without the tool: bottom's top + head radius + margin
    std::vector<MountingHole> holes; ///< lower row first, left to right; as placed where by hand
    Length clearanceHole;            ///< drill in the wall
    Length pilotHole;                ///< drill in the front
    friend bool operator==(const MountingPlan&, const MountingPlan&) = default;
};

/// What a screw's head bears on, all round its clearance hole: half of what the head is wider. Not
/// more than 0 where it goes through.
Length headBearing(const MountingPlan&);

/// What the screws have to keep clear of; the front's stock in its own frame.
struct MountingPlace {
    const BoxPlan& box;
    FrontStock front;
    const HardwarePlan* hardware = nullptr; ///< null where there is no handle
    /// Of this profile and thickness, for least penetration + least tip cover; null: it is solved
    /// on the way, front by front.
    const ThinRim* rim = nullptr;
    /// Computed rows lie a whole number of these from the wall's edges. 0: 1/8 in where the
    /// front's thickness is a whole number of 64ths of an inch, else 1 mm.
    Length rowGrid;
    /// What the wood asks for; none: the catalogue's for the screw, which is for hardwood.
    std::optional<Length> pilotHole = std::nullopt;
    /// Held by screws from the front's faces; null where there are none.
    const std::vector<FittingPlan>* fittings = nullptr;
};

/// Holes of FourCorners and Six: as near to the allowed region's edges as its grid lets them, alike
/// on both sides; moved along their row, towards the middle, where a bolt or an access hole is in
/// the way. One row (or column) where two would crowd each other. What the maker typed is kept, be
/// it allowed or not; so is the order of holes placed by hand.
MountingPlan planMounting(const MountingSpec&, const WoodScrew&, const Limits&,
                          const MountingPlace&);

/// Error: the screw is not in the catalogue.
Result<MountingPlan> planMounting(const MountingSpec&, const Catalogue&, const Limits&,
                                  const MountingPlace&);

/// What is in the way at that point; the gravest where several are: first what spoils a part
/// (bottom, front's thin rim, bolt and access holes), then what cannot be cut. None exactly where
/// the plan's allowed region contains the point.
Obstacle obstacleAt(const MountingSpec&, const MountingPlan&, const Limits&, const MountingPlace&,
                    WallPoint);

} // namespace frontwright
