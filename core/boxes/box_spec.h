#pragma once

#include "core/geometry/frames.h"

#include <optional>
#include <string>

namespace frontwright {

/// The drawer box as the maker builds it. Clearances that are not given are the runner kind's.
struct BoxSpec {
    std::string runner;                         ///< id of a RunnerKind
    std::optional<WrittenLength> sideClearance; ///< each side, between box and opening
    std::optional<WrittenLength> clearanceBelow;
    std::optional<WrittenLength> clearanceAbove;
    std::optional<WrittenLength> height; ///< none: what the opening and the clearances leave
    WrittenLength depth;                 ///< front to back, outside
    WrittenLength wallThickness;         ///< the box's own front
    WrittenLength sideThickness;
    WrittenLength grooveHeight;    ///< the bottom's underside above the box's lower edge
    WrittenLength bottomThickness; ///< the panel's; grooveHeight + bottomThickness is its top
    friend bool operator==(const BoxSpec&, const BoxSpec&) = default;
};

} // namespace frontwright
