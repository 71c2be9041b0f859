#pragma once

#include "core/amounts/amounts.h"
#include "core/catalogue/catalogue.h"

namespace frontwright {

// Withdrawal of wood screws from side grain, of dry wood, with a pilot hole as the rules ask for
// one. Both equations are p = c G² D L with D the shank's diameter and L the thread in the wood;
// they differ in what they are: an average of what broke, and a value to design with.

/// Wood Handbook, chapter 8, average ultimate load: c = 15 700 (lb, in) = 108.25 (N, mm); G on
/// volume at 12 % moisture.
inline constexpr double ultimateCoefficient = 108.25;
/// National Design Specification (NDS), reference design value, about a fifth of the ultimate:
/// c = 2850 (lb, in) = 19.65 (N, mm); G on ovendry volume. It allows no withdrawal from end grain.
inline constexpr double designCoefficient = 19.65;

Force ultimateWithdrawal(double gravityAt12, Length shank, Length thread);
Force designWithdrawal(double gravityOvendry, Length shank, Length thread);

/// Thread that is in the wood: what went in, at most two thirds of the screw (a trade reference;
/// a British text says 0.6).
Length threadInWood(Length penetration, Length screw);

/// Whether gauge and length are in the range of the handbook's tests; outside it the loads are
/// likely to be less than the equation's. Wood Handbook, chapter 8, from memory: gauges 1 to 6 at
/// 1/2 in, 2 to 11 at 3/4, 3 to 12 at 1, 5 to 14 at 1 1/2, 7 to 16 at 2, 9 to 18 at 2 1/2 and 12
/// to 20 at 3 in. Between two of these lengths both must hold the gauge.
bool isInTestedRange(Length shank, Length screw);

/// Gauge of an inch screw by its diameter: D = 0.060 + 0.013 n in (ASME B18.6.1).
double gaugeOf(Length shank);

} // namespace frontwright
