#pragma once

#include "core/findings/finding.h"
#include "core/plan/quantity.h"

namespace frontwright {

/// The number that a finding judges, to be asked how it came about; nullopt where it judges none
/// that the plan tells.
std::optional<Quantity> numberOf(const Finding&, const Plan&);

/// The decision that brings the finding about: where to go to change it by hand.
InputPlace causeOf(FindingCode);

} // namespace frontwright
