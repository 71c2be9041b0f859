#pragma once

#include "core/geometry/frames.h"

#include <cstdint>
#include <optional>

namespace frontwright {

/// Where the first hole of a row is measured from.
enum class HoleDatum : std::uint8_t {
    CaseBottom,  ///< the case's lower edge, where the side panels end
    InsideBottom ///< the upper face of the bottom panel
};

/// Rows of holes up the panels' faces, in which runners, hinge plates and shelves are fastened.
/// The measures of a new one are common practice, no source.
struct SystemHoles {
    HoleDatum datum = HoleDatum::CaseBottom;
    WrittenLength first;               ///< the lowest hole's centre above the datum
    WrittenLength pitch;               ///< from centre to centre
    WrittenLength setback;             ///< of the front row, from the panels' front edge
    std::optional<WrittenLength> rear; ///< of a second row, from the panels' front edge
    WrittenLength diameter;
    friend bool operator==(const SystemHoles&, const SystemHoles&) = default;
};

/// Holes at the pitch do not run into one another, and can be bored.
inline bool isPossiblePitch(const SystemHoles& holes) {
    return holes.pitch.length >= Length::millimetres(1) &&
           holes.pitch.length > holes.diameter.length;
}

/// 5 mm holes every 32 mm, 37 mm behind the front edge. The first stands at half the thickness of
/// the bottom panel, where the bottom's own dowels go. Common practice, no source.
SystemHoles usualSystemHoles(Length bottomPanel);

} // namespace frontwright
