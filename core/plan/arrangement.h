#pragma once

#include "core/plan/facing.h"
#include "core/plan/plan.h"

#include <vector>

namespace frontwright {

/// How the fronts lie on the members, while it is worked out: the Plan before boxes and holes. The
/// lists of the fronts have one entry for each of the layout's openings, in its order; they stand
/// apart so that each pass reads only what it needs, which stays in the processor's cache.
struct Arrangement {
    const Layout& layout;            ///< outlives this
    std::vector<Facing> facing;      ///< the layout's: the same however the fronts lie
    std::vector<MemberPlan> members; ///< as the layout's, with their reveals
    std::vector<PerSide<Fit>> fits;
    std::vector<PerSide<Length>> overlays;
    std::vector<CaseRect> rects;
    std::vector<PerSide<Neighbour>> neighbours;
    std::vector<Spacer> spacers;
    std::vector<Stop> stops;
};

/// Works out all of it, by the rules told at makePlan.
Arrangement arrange(const Layout&, const FrontFit& ofCase);

/// The same fronts with other overlays, of the layout's openings in its order: what follows from
/// them is worked out anew.
Arrangement rearranged(const Arrangement&, std::vector<PerSide<Length>> overlays);

} // namespace frontwright
