#pragma once

#include "core/boxes/box.h"
#include "core/catalogue/catalogue.h"
#include "core/fastening/mounting_spec.h"
#include "core/fronts/profile.h"
#include "core/geometry/region.h"
#include "core/hardware/bolts.h"
#include "core/limits/limits.h"
#include "core/results/result.h"

namespace frontwright {

/// One hole for a mounting screw, judged by the front's local thickness behind it.
///   penetration p = L + r − w;  tip cover = t − p
struct MountingHole {
    WallPoint at;
    Length thickness;    ///< t: local thickness of the front behind the hole; 0 off the front
    Length penetration;  ///< p
    Length tipCover;     ///< t − p; <= 0 ruins the front
    bool allowed = true; ///< lies in the allowed region
    friend bool operator==(const MountingHole&, const MountingHole&) = default;
};

/// Why a place on the wall is not allowed for a mounting screw.
enum class Obstacle : std::uint8_t {
    None,
    Bottom,       ///< the hole would meet the bottom panel
    RecessTool,   ///< the hole clears the bottom, but what cuts its recess does not
    BoxSide,      ///< tool meets the box's side
    TopEdge,      ///< too near the wall's upper edge
    HardwareHole, ///< too near a bolt's hole or its counterbore
    AccessHole,   ///< too near an access hole
    ThinRim,      ///< the front is too thin there, or is not there at all
    Runner        ///< a part of the runner is in the way
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
    std::vector<MountingHole> holes; ///< in reading order from the lower left
    Length clearanceHole;            ///< drill in the wall
    Length pilotHole;                ///< drill in the front
    friend bool operator==(const MountingPlan&, const MountingPlan&) = default;
};

/// What the screws have to keep clear of; the front's stock in its own frame.
struct MountingPlace {
    const BoxPlan& box;
    FrontStock front;
    const HardwarePlan* hardware = nullptr; ///< null where there is no handle
};

/// Error: the screw is not in the catalogue.
Result<MountingPlan> planMounting(const MountingSpec&, const Catalogue&, const Limits&,
                                  const MountingPlace&);

/// What is in the way at that point; the gravest where several are.
Obstacle obstacleAt(const MountingSpec&, const MountingPlan&, const Limits&, const MountingPlace&,
                    WallPoint);

} // namespace frontwright
