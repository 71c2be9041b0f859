#pragma once

#include "core/drawings/elevation.h"
#include "core/edits/placed_part.h"
#include "core/geometry/mm.h"

#include <optional>

namespace frontwright {

/// What lies under the pointer, nearest first.
struct Hit {
    std::optional<MemberId> member; ///< would be grabbed
    std::optional<PlacedPart> part; ///< would be grabbed, where `member` would not
    std::optional<OpeningId> opening;
    std::optional<std::uint32_t> mountingHole; ///< of `opening`
    std::optional<std::uint32_t> handleHole;   ///< of `opening`
    friend bool operator==(const Hit&, const Hit&) = default;
};

/// `at` in the case's frame; `reach` is the grab zone in mm (8 px at the present zoom). A member
/// can be grabbed within `reach` of its middle line, or anywhere that it shows; a mounting hole
/// within `reach` of its centre or its rim, a handle within `reach` of its base. Of several the
/// nearest; `skip` of them are passed over, so that Tab cycles through the rest. Holes that are not
/// shown are not grabbed.
Hit hitAt(const Plan&, const PointMm& at, double reach, int skip = 0, Shown holes = Shown::Yes);

} // namespace frontwright
