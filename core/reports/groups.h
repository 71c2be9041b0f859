#pragma once

#include "core/plan/quantity.h"

#include <vector>

namespace frontwright {

/// The numbers of one thing (the case, a member, a front, a spacer, a filler strip, a stop, an
/// opening without a front), in shown order.
struct QuantityGroup {
    PlanPart kind = PlanPart::Case;
    std::uint32_t item = 0; ///< index into the plan's list of that kind
    Phrase title;           ///< "Front A2", "Rail 3"
    std::vector<Quantity> quantities;
};

/// All numbers of the plan that exist, grouped; the order is fixed.
std::vector<QuantityGroup> grouped(const Project&, const Plan&);

/// What a number is of: "Front A2", "Rail 3"; of a block where it is: "between A2 and A3".
Phrase partWords(const Project&, const Plan&, Quantity);

/// "screw", "wood": which hole, way or the like an indexed quantity means; empty where it has none.
Phrase indexName(Quantity);

} // namespace frontwright
