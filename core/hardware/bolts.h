#pragma once

#include "core/boxes/box.h"
#include "core/catalogue/catalogue.h"
#include "core/fronts/profile.h"
#include "core/hardware/hardware_spec.h"
#include "core/limits/limits.h"
#include "core/results/result.h"

#include <array>
#include <optional>
#include <vector>

namespace frontwright {

/// How one way of mounting turns out for a bolt of a given length.
enum class BoltVerdict : std::uint8_t {
    Fits,
    TooShort,   ///< less than the least engagement
    BottomsOut, ///< longer than grip + thread depth
    TooDeep,    ///< the counterbore in force, or the one that would make a short bolt fit, leaves
                ///< too little wood under the head
    NoneStocked ///< no length was given and no stocked one fits
};

/// One of the three ways, computed for one handle hole (the worst of its holes).
///   grip = front's local thickness (+ wall where it goes through the wall) − counterbore
///   grip + least engagement <= length <= grip + thread depth
struct WayPlan {
    MountingWay way = MountingWay::ThroughWall;
    Length throughWood;           ///< t (+ w): wood without any counterbore
    Length counterbore;           ///< depth in force for this way
    Length grip;                  ///< throughWood − counterbore
    Length leastLength;           ///< grip + least engagement
    Length greatestLength;        ///< grip + thread depth
    std::optional<Length> length; ///< the given bolt, or the shortest stocked one that fits
    BoltVerdict verdict = BoltVerdict::Fits;
    Length shortBy; ///< TooShort: what is missing; BottomsOut: what is too much
    std::optional<Length> curingCounterbore; ///< TooShort: depth that makes it fit
    Length leftUnderHead;                    ///< wood under the head with curingCounterbore, or now
    std::optional<Length> curingWashers;     ///< BottomsOut: stack that cures it
    std::optional<Length> curingStock;       ///< a stocked length that would fit as it is
    friend bool operator==(const WayPlan&, const WayPlan&) = default;
};

struct HandlePlan {
    FrontPoint centre;
    FrontRect footprint; ///< bounding rectangle of base or backplate
    friend bool operator==(const HandlePlan&, const HandlePlan&) = default;
};

/// Handles of one front: places, holes, the three ways, what goes into the wall.
struct HardwarePlan {
    const HardwareForm* form = nullptr; ///< into the Catalogue; never null
    const Bolt* bolt = nullptr;         ///< into the Catalogue; never null
    std::vector<HandlePlan> handles;    ///< one, two or three
    std::vector<FrontPoint> holes;      ///< handle by handle, each one's from left to right
    Length holeDiameter;                ///< the bolt's clearance hole
    Length thickness; ///< least local thickness behind the holes, for the chosen way: under the
                      ///< counterbore's disc where one is cut in the front
    std::array<WayPlan, 3> ways; ///< in the order of allMountingWays
    MountingWay chosen = MountingWay::ThroughWall;
    Length counterboreDiameter;
    Length accessDiameter;
    [[nodiscard]] const WayPlan& chosenWay() const {
        return ways[static_cast<std::size_t>(chosen)];
    }
    friend bool operator==(const HardwarePlan&, const HardwarePlan&) = default;
};

/// What hardware is judged and placed in. `front` at the frame's origin.
struct FrontStock {
    FrontRect front;
    FrontRect field;
    Length thickness;
    const Profile* profile = nullptr; ///< never null
    Length wallThickness;
};

/// One centre, or two or three past the widths at which the spec asks for them, left to right.
/// CentredInField is centred in both directions; the other placings are centred across the front.
/// Two share the front's width; a third lies in its middle. A handle placed by hand is alone.
std::vector<FrontPoint> handleCentres(const HardwareSpec&, const FrontStock&);

/// For callers that look form and bolt up once for many fronts. nullopt where `form` is null;
/// `bolt` may then be null too, else it is `form`'s.
std::optional<HardwarePlan> planHardware(const HardwareSpec&, const HardwareForm* form,
                                         const Bolt* bolt, const Limits&, const FrontStock&);

/// Error: form or bolt is not in the catalogue. nullopt where the spec names no form.
Result<std::optional<HardwarePlan>> planHardware(const HardwareSpec&, const Catalogue&,
                                                 const Limits&, const FrontStock&);

/// One way for one bolt: the arithmetic by itself, for the comparison table and its tests.
/// `frontThickness` is the local one behind the hole. The result does not depend on `spec.way`:
/// ways[i] is what the chosen way becomes when the maker chooses i and changes nothing else.
/// Depth of the counterbore where the spec gives none:
///   ThroughWall and FrontAccessHole: 0
///   FrontCounterbore: the bolt's head height, so that the head lies flush with the front's back,
///   or t + least engagement − L, whichever is deeper (L as given; where none is given and no
///   stocked length fits at head height, the longest stocked one that a deeper one makes fit).
WayPlan planWay(MountingWay, const HardwareSpec&, const HardwareForm&, const Bolt&, const Limits&,
                Length frontThickness, Length wallThickness);

} // namespace frontwright
