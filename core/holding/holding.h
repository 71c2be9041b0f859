#pragma once

#include "core/amounts/amounts.h"
#include "core/catalogue/catalogue.h"
#include "core/fastening/mounting.h"
#include "core/holding/pilot_hole.h"
#include "core/wood/stock.h"

#include <optional>
#include <vector>

namespace frontwright {

/// The pull that a handle and what holds it must bear: 50 lbf (222 N), "pull on a drawer or door
/// pull", Architectural Woodwork Standards, 1st ed., 2009.
inline constexpr double pullTestPoundsForce = 50;
/// The force that working a drawer may ask for: 5 lbf (22.2 N), 2010 ADA Standards 309.4.
inline constexpr double workingPullPoundsForce = 5;

/// Least distances of a screw in wood, in shank diameters; NDS commentary, table for wood screws,
/// from memory. With a pilot hole and without; the front bears no load along its grain, so that the
/// lower of the two values for end distance counts.
struct ScrewDistances {
    Length toEdge;      ///< across the grain: 2.5 D
    Length toEnd;       ///< along the grain: 5 D, 10 D without a pilot hole
    Length inRow;       ///< between screws one behind the other along the grain: 10 D, 15 D
    Length betweenRows; ///< 3 D, 5 D: nearer than that, two count as in one row
    friend bool operator==(const ScrewDistances&, const ScrewDistances&) = default;
};
/// Whether the grain runs out at that side of a front: there it has an end, elsewhere an edge.
bool isEnd(Side, Grain);

enum class Prebored : std::uint8_t { Yes, No };
ScrewDistances screwDistances(Length shank, Prebored);

/// One mounting screw as it holds in the front.
struct HoleHolding {
    Length toEdge;                 ///< to the front's nearest edge across the grain
    Length toEnd;                  ///< to its nearest end along the grain
    std::optional<Length> toNext;  ///< to the nearest screw of its row along the grain
    std::optional<Force> ultimate; ///< none where wood or screw length are not known
    std::optional<Force> design;
    /// Its share of the pull test at the handle (the worse of two): by the statics of a stiff front
    /// on equal screws, common practice. None where the bolts go through the wall and carry it.
    std::optional<Force> pull;
    friend bool operator==(const HoleHolding&, const HoleHolding&) = default;
};

struct HoldingPlan {
    std::vector<HoleHolding> holes;   ///< as in MountingPlan::holes
    Length thread;                    ///< in the front; 0 where no length fits
    Grain grain = Grain::AlongLength; ///< of the front, which tells its ends from its edges
    ScrewDistances least;
    std::optional<PilotRule> pilot; ///< none where the wood's specific gravity is not known
    /// Least over the holes of what holds over what pulls.
    std::optional<Ratio> safety;
    std::optional<Ratio> designSafety;
    friend bool operator==(const HoldingPlan&, const HoldingPlan&) = default;
};

/// What bolts go through, where they are not sunk in the front.
enum class BoltsHold : std::uint8_t {
    Wall, ///< and the front: they carry the pull into the box past the screws
    Front ///< alone: the screws carry it all
};

struct HoldingPlace {
    const MountingPlan& mounting;
    FrontRect front;
    FrontPoint wallOnFront;                 ///< the wall's lower left corner in the front's frame
    const HardwarePlan* hardware = nullptr; ///< null where there is no handle
    const Species* wood = nullptr;          ///< null where it is not known
    Unit steps = Unit::Inch;                ///< of drills
    Grain grain = Grain::AlongLength;       ///< of the front
    BoltsHold bolts = BoltsHold::Wall;
};

HoldingPlan planHolding(const HoldingPlace&);

/// Thread of the bolt inside the handle: length − grip, at most the thread's depth; 0 where the
/// bolt does not reach. None where no bolt fits.
std::optional<Length> engagementOf(const WayPlan&, const HardwareForm&);

} // namespace frontwright
