#pragma once

#include "core/amounts/amounts.h"
#include "core/geometry/frames.h"

#include <optional>
#include <string>

namespace frontwright {

/// What a drawer is for: the load that is counted on where the maker gives none.
enum class DrawerPurpose : std::uint8_t {
    Household, ///< 15 lb for each square foot of bottom (718 Pa): ANSI/KCMA A161.1, drawer load
    Clothing,  ///< 8.5 lb for each cubic foot: 87 FR 72598 (superseded before it took effect; the
               ///< same density recalled for ASTM F2057-23)
    School,    ///< 100 lb: practice for school and laboratory casework, drawer cycling load
    Empty      ///< nothing is counted on
};

/// Where the box's depth comes from.
enum class BoxDepthRule : std::uint8_t {
    AsGiven,
    AsRunner ///< the runner's length; as given where none fits
};

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
    DrawerPurpose purpose = DrawerPurpose::Household;
    std::optional<Mass> load; ///< the maker's own, in place of the purpose's
    BoxDepthRule depthRule = BoxDepthRule::AsGiven;
    std::optional<WrittenLength> runnerLength; ///< none: the longest stocked one that fits
    /// From the opening's edge to the case's side, or what else the runner is screwed to.
    std::optional<WrittenLength> toCaseSide;
    std::string wood; ///< id of the Species that its sides and walls are of; empty: not told
    friend bool operator==(const BoxSpec&, const BoxSpec&) = default;
};

} // namespace frontwright
