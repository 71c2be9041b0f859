#pragma once

#include "core/geometry/frames.h"

#include <optional>
#include <string>
#include <vector>

namespace frontwright {

enum class ScrewPattern : std::uint8_t {
    FourCorners,
    Six,   ///< four corners and the middle of the upper and the lower row
    ByHand ///< the points in `placed`
};

/// The wood screws that hold the front, driven from inside the box through its wall.
struct MountingSpec {
    std::string screw;                   ///< id of a WoodScrew
    std::optional<WrittenLength> length; ///< none: the longest stocked one that fits
    WrittenLength recess;                ///< head's top below the wall's inner face
    WrittenLength toolDiameter; ///< of what cuts the recess: a countersink's collar, a chuck
    ScrewPattern pattern = ScrewPattern::FourCorners;
    std::optional<WrittenLength> fromSides;     ///< rows' distance from the box's outer sides
    std::optional<WrittenLength> fromBottom;    ///< lower row above the box's lower edge
    std::optional<WrittenLength> fromTop;       ///< upper row below the wall's upper edge
    std::vector<WallPoint> placed;              ///< ByHand only
    std::optional<WrittenLength> pilotHole;     ///< none: by the wood; 0: no pilot hole is drilled
    std::optional<WrittenLength> clearanceHole; ///< none: the catalogue's for the screw
    friend bool operator==(const MountingSpec&, const MountingSpec&) = default;
};

} // namespace frontwright
