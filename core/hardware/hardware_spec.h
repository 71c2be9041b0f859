#pragma once

#include "core/geometry/frames.h"

#include <optional>
#include <string>
#include <vector>

namespace frontwright {

/// Where the handle's centre lies up the front. Across, it is centred, or two share the width.
enum class Placing : std::uint8_t {
    CentredOnFront,
    CentredInField,
    FromTop,      ///< `distance` below the front's top edge
    OpticalCentre ///< above the middle by 1/`opticalPart` of the height, so that it looks centred
};

/// How the handle is held. See design: the three are always compared.
enum class MountingWay : std::uint8_t {
    ThroughWall,      ///< bolt goes through box wall and front
    FrontCounterbore, ///< bolt in the front only, head in a counterbore in the front's back
    FrontAccessHole   ///< bolt in the front only, reached through an access hole in the wall
};
inline constexpr std::array<MountingWay, 3> allMountingWays{
    MountingWay::ThroughWall, MountingWay::FrontCounterbore, MountingWay::FrontAccessHole};

/// Where a fitting's centre lies across the front, and up it. A lock's height is its own.
enum class FittingAcross : std::uint8_t {
    Middle,
    FromLeft,
    FromRight,
    BothSides ///< two of them, each so far from its side
};
enum class FittingUpright : std::uint8_t { Middle, FromTop, FromBottom };

/// A fitting held by screws, beside the handle or instead of one.
struct FittingSpec {
    std::string form; ///< id of a FittingForm
    FittingAcross across = FittingAcross::Middle;
    WrittenLength fromSide; ///< from the front's edge to the centre; not for Middle
    FittingUpright upright = FittingUpright::Middle;
    WrittenLength fromEdge;                   ///< likewise
    std::optional<WrittenLength> screwLength; ///< none: the longest stocked one that fits
    friend bool operator==(const FittingSpec&, const FittingSpec&) = default;
};

struct HardwareSpec {
    std::string form; ///< id of a HardwareForm; empty = no handle
    Placing placing = Placing::CentredOnFront;
    WrittenLength distance;               ///< FromTop only
    std::int64_t opticalPart = 20;        ///< OpticalCentre only: raised by height / opticalPart
    std::optional<WrittenLength> twoPast; ///< fronts wider than this carry two
    std::int64_t twoAtPercent = 25;       ///< with two: each centre at this per cent of the width
    MountingWay way = MountingWay::ThroughWall;
    std::optional<WrittenLength> boltLength;  ///< the bolt in the maker's hand; none: from stock
    std::optional<WrittenLength> counterbore; ///< depth; none: 0, or what FrontCounterbore needs
    std::optional<WrittenLength> counterboreDiameter; ///< none: head + 2 × allowance
    std::optional<WrittenLength> accessDiameter;      ///< none: head + 2 × allowance
    std::optional<FrontPoint> placedAt;               ///< a single handle's centre, placed by hand
    std::optional<WrittenLength> threePast = std::nullopt; ///< wider ones: a third in the middle
    std::vector<FittingSpec> fittings = {};
    friend bool operator==(const HardwareSpec&, const HardwareSpec&) = default;
};

} // namespace frontwright
