#pragma once

#include "core/plan/plan.h"

namespace frontwright {

/// Sets the rows of mounting screws, which of them holds the front, and the clearance hole that
/// each of the others needs. Common practice, no source: of rows the lowest holds, for it carries
/// the front and so every front of a bank goes the same way; of columns the one nearest the middle.
/// A front without screws is held in its middle. Drills: whole 64ths of an inch, or tenths of a
/// millimetre.
void addRows(FrontSeason&, const FrontPlan&, Grain, Unit);

/// The next drill that is not smaller: whole 64ths of an inch, or tenths of a millimetre.
Length nextDrill(Length hole, Unit);

/// The row that asks for the largest clearance hole. Precondition: there are rows.
std::uint32_t rowOfLargestHole(const FrontSeason&);

} // namespace frontwright
