#pragma once

#include "core/plan/plan.h"

namespace frontwright {

/// How wide a new member between openings is where nothing is said of it: as the plan's first of
/// that kind (Rows: rail, Columns: stile), else as any between openings, else as the outer ones.
/// Without a face frame drawers lie one above the other with no shelf between them until there is
/// one.
WrittenLength usualMemberWidth(const Project&, const Plan&, Direction);

} // namespace frontwright
