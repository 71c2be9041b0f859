#pragma once

#include "core/geometry/mm.h"
#include "core/plan/plan.h"

#include <optional>

namespace frontwright {

/// What lies under the pointer, nearest first.
struct Hit {
    std::optional<MemberId> member; ///< may be grabbed
    std::optional<OpeningId> opening;
    std::optional<std::uint32_t> mountingHole; ///< of `opening`
    std::optional<std::uint32_t> handleHole;   ///< of `opening`
    friend bool operator==(const Hit&, const Hit&) = default;
};

/// `at` in the case's frame; `reach` is the grab zone in mm (8 px at the present zoom). A member
/// can be grabbed within `reach` of its middle line, or anywhere that it shows. Of several members
/// the nearest; `skip` of them are passed over, so that Tab cycles through the rest.
Hit hitAt(const Plan&, const PointMm& at, double reach, int skip = 0);

} // namespace frontwright
