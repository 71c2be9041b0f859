#pragma once

#include "core/plan/plan.h"

#include <vector>

namespace frontwright {

/// The Plan before boxes and holes, while overlays, gaps and blocks are worked out. Kept apart
/// because it is a fifth of the whole: the many passes over it stay in the processor's cache.
struct Arrangement {
    std::vector<MemberPlan> members;
    std::vector<FrontPlace> fronts;
    std::vector<Spacer> spacers;
    std::vector<Stop> stops;
};

/// The layout's members and openings; overlays, rects and the rest still empty.
Arrangement arranged(const Layout&);

} // namespace frontwright
