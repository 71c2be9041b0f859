#pragma once

#include "core/plan/quantity.h"
#include "core/results/result.h"

namespace frontwright {

/// Sets the decision behind a number so that the number becomes `typed`: a front's width through
/// its opening, an opening through its rule, an overlay or a gap through the front's fit, a depth
/// through its spec. The error of a number that only follows from others says from which.
Result<Project> setQuantity(const Project&, const Plan&, Quantity, WrittenLength typed);

/// Imperative name of that edit for the undo list: "Set front width". Empty where the number cannot
/// be typed.
Text typedEditName(QuantityKind);

} // namespace frontwright
