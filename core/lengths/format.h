#pragma once

#include "core/lengths/length.h"

#include <string>

namespace frontwright {

/// Which way a shown fraction leaves the exact length: what is a least must not be shown less than
/// it is, nor what is a most more.
enum class Rounding : std::uint8_t {
    Nearest, ///< halves away from zero
    Up,
    Down
};

/// As shown to the maker: "12 5/8 in", "320.7 mm"; nearest shown fraction or 0.1 mm, or the
/// next one up or down, lowest terms, carries; preceded by "≈ " where the shown value is not the
/// exact one. Whole numbers, "0 in", never "-0".
std::string shown(Length length, LengthStyle style, Rounding rounding = Rounding::Nearest);

/// The same without the unit, for chains of dimensions on a drawing whose title states the unit.
std::string shownBare(Length length, LengthStyle style);

/// For terms of a sum, which has to come out right to the reader: exact in the style's fractions or
/// in 64ths of an inch, else as a decimal of the style's unit to 0.0001 in or 0.001 mm:
/// "0.1575 in". No mark of rounding.
std::string shownPrecisely(Length length, LengthStyle style);

/// The result of such a sum: precise, then as it is shown elsewhere where that differs:
/// "0.413 in ≈ 13/32 in", "123.45 mm ≈ 123.5 mm". Decimals that do not end are one digit shorter
/// than those of terms, so that rounded terms still come to it.
std::string shownAsResult(Length length, LengthStyle style, Rounding rounding = Rounding::Nearest);

/// What is set up, planed or drilled to just that size, in as many digits as it takes; the mark of
/// rounding only where no 64th and no 0.0001 in or 0.001 mm has it: "23/32 in", "≈ 0.0787 in".
std::string shownInFull(Length length, LengthStyle style);

/// What is less than a shown fraction: to 0.001 in or 0.01 mm, "0.038 in", "0.96 mm"; what is not 0
/// but less than that "< 0.001 in". An estimate, so without a mark.
std::string shownFinely(Length length, LengthStyle style);

/// Exact, always readable back to the same Length: fraction of an inch down to 1/64 where that is
/// exact in the style's unit, else decimal millimetres with as many digits as it takes.
std::string exact(Length length, Unit unit);

/// Exact text for a document, in the notation it was written in where that is still exact.
std::string written(const WrittenLength& length, Unit documentUnit);

/// The shown value differs from the exact one.
bool isApproximate(Length length, LengthStyle style);

} // namespace frontwright
