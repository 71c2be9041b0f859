#pragma once

#include "core/amounts/percent.h"
#include "core/lengths/length.h"
#include "core/results/source.h"
#include "core/wood/stock.h"

#include <cstdint>
#include <optional>

namespace frontwright {

/// Change of a size per 1 % of moisture, as a part of the size: millionths, so that 3690 is
/// 0.00369.
struct MovementCoefficients {
    std::int64_t radial = 0;
    std::int64_t tangential = 0;
    Source source;
    friend bool operator==(const MovementCoefficients&, const MovementCoefficients&) = default;
};

/// From green to ovendry, as a part of the green size.
struct Shrinkage {
    Percent radial;
    Percent tangential;
    std::optional<Percent> volumetric;
    Percent start = Percent::whole(30); ///< moisture at which it begins: 30 %, of some cedars 22 %
    Source source;
    friend bool operator==(const Shrinkage&, const Shrinkage&) = default;
};

/// What is known of a wood's movement. Coefficients win: for some woods they are a group's, and do
/// not follow from the one wood's shrinkage.
struct WoodFigures {
    std::optional<MovementCoefficients> coefficients;
    std::optional<Shrinkage> shrinkage;
    friend bool operator==(const WoodFigures&, const WoodFigures&) = default;
};

/// Moisture between which the coefficients are stated: 6 to 14 % (Wood Handbook, chapter 13).
inline constexpr Percent leastOfCoefficient = Percent::whole(6);
inline constexpr Percent greatestOfCoefficient = Percent::whole(14);
/// Above it wood no longer swells; a meter reading beyond it is refused.
inline constexpr Percent fibreSaturation = Percent::whole(30);

/// C = 1 / (100 × start / S − start + 10): what the handbook's table 13-5 is made from, the wider
/// formula at 10 % moisture. Precondition: shrinkage > 0.
double coefficientFrom(Percent shrinkage, Percent start);

/// Across the face of a board of that cut: tangential of a flat-sawn one, radial of a quarter-sawn
/// one; rift: their mean, since at 45° both count alike (common practice, no source). nullopt where
/// the wood's figures are not known.
std::optional<double> coefficientOf(const WoodFigures&, Cut);

/// Of a front across its grain. Along the grain wood is taken not to move: from green to ovendry it
/// shrinks by 0.1 to 0.2 % (Wood Handbook, chapter 4, from memory), a fiftieth of the rest. Stable
/// stock is taken not to move either: common practice, no source. nullopt as above.
std::optional<double> coefficientOf(const WoodFigures&, const Stock&);

/// ΔD / D = C × (M2 − M1), Wood Handbook, chapter 13, stated for 6 to 14 % moisture.
double linearChange(double coefficient, double from, double to);
/// ΔD / D = (M2 − M1) / (100 × start / S − start + M1), for the whole range below fibre saturation;
/// by the coefficient, which is the same at 10 %: (M2 − M1) / (1 / C − 10 + M1).
double wideChange(Percent shrinkage, Percent start, double from, double to);
double wideChange(double coefficient, double from, double to);

/// Whether the wider formula is asked at either end.
bool isBeyondCoefficient(double from, double to);
/// ΔD / D from one moisture to another: linear between 6 and 14 %, the wider formula for what lies
/// beyond, joined at the ends of the range so that it is monotone and without a step. Going there
/// and back by the linear part returns within (C × ΔM)², a thousandth of the size at most.
double relativeChange(double coefficient, double from, double to);

/// The length's share of it, to the nearest nanometre.
Length partOf(Length, double relative);

} // namespace frontwright
