#pragma once

#include "core/rules/rules.h"

namespace frontwright {

// Each adds the rows of one kind, in a fixed order.
void addEquations(std::vector<RuleRow>&);
void addNumbers(std::vector<RuleRow>&, const Catalogue& program, DecimalMark);
void addDecisions(std::vector<RuleRow>&, DecimalMark); ///< limits and defaults
void addEntries(std::vector<RuleRow>&, const Catalogue& program, DecimalMark);

} // namespace frontwright
