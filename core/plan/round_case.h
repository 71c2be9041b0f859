#pragma once

#include "core/plan/plan.h"

namespace frontwright {

/// Tells the plan how far its fronts may reach and how large the case is with all round it, and
/// each front how far it stays from what stands there. Needs members and fronts.
void addSurroundings(Plan&, const Case&);

/// Tells each front how far it is to the one above it in its bank.
void addSteps(Plan&);

/// How far the front's edge lies inside the case's outer face at that side; negative outside.
Length insideCase(const CaseRect& outline, const CaseRect& front, Side);

} // namespace frontwright
