#pragma once

#include "core/plan/plan.h"

namespace frontwright {

/// A solid front whose wood moves more between its rows of screws than their clearance holes let.
struct MovingFront {
    const FrontPlan* front = nullptr;
    Length apart;    ///< by the rule of thumb: from the lowest to the highest row; else 0
    Length movement; ///< at the screws
    Length play;     ///< that the clearance hole leaves
    Length lacks;    ///< that the hole is too small by
    Length drill;    ///< clearance hole that suffices: whole 64ths of an inch or 0.1 mm
};

/// All of them, the gravest first, then in the plan's order. By the wood's own figures where the
/// case has an air, else by the rule of thumb (1/8 in for each foot) where the grain runs from left
/// to right.
std::vector<MovingFront> movingFronts(const Project&, const Plan&);

} // namespace frontwright
