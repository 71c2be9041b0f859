#pragma once

#include "core/lengths/length.h"
#include "core/results/result.h"

#include <string>
#include <string_view>

namespace frontwright {

/// What was understood from a maker's text.
struct UnderstoodLength {
    WrittenLength length;
    Phrase echo;        ///< how it was read, in both units: "= 12 5/8 in = 320.675 mm"
    bool isSum = false; ///< an expression was computed, not a plain length
};

/// Whether 1,234 can be meant as one thousand two hundred and thirty-four. Point and comma are both
/// decimal marks in every language; in one that groups digits by comma, a comma between one to
/// three digits (not beginning with 0) and exactly three more is refused with a hint, not guessed.
/// Numbers with two marks (1,234.5; 1,234,567) are always refused.
enum class CommaGrouping : std::uint8_t { Decimal, Ambiguous };

/// Reads what a maker writes: 12 5/8, 12-5/8, 12.625", 1' 2 1/2", ¾, 321 mm, 32,1 cm,
/// 12 5/8 + 2*1/4. Bare numbers are in `bareUnit` where they stand as lengths and plain numbers
/// where they multiply or divide. The error's place is "position N" (in characters, from 1) and
/// says what was expected there; nothing is guessed. The grammar is in core/lengths/grammar.h.
/// 1-1/2 is one and a half, 1 - 1/2 a subtraction, 1 -1/2 refused. Sums are computed in exact
/// fractions and rounded once, at the end, to the nearest nanometre, halves away from zero; where
/// that changed anything the echo says ≈. Refused: more than 64 characters, beyond ±1000 m, zero
/// denominators, areas. Negative lengths are read; who owns the field judges them.
Result<UnderstoodLength> parseLength(std::string_view text, Unit bareUnit,
                                     CommaGrouping grouping = CommaGrouping::Decimal);

/// The same with a current value, so that "+=1/4", "-=1/4", "*=2" and "/=2" are understood too.
Result<UnderstoodLength> parseLengthChange(std::string_view text, Unit bareUnit, Length current,
                                           CommaGrouping grouping = CommaGrouping::Decimal);

/// For documents: a plain length with its unit written ("12 5/8 in", "321 mm"), no sum. What is not
/// a whole number of nanometres (1/3 in) is refused, so that no document changes by being read.
/// Everything that `written` writes is read without allocating.
Result<WrittenLength> parseWrittenLength(std::string_view text);

} // namespace frontwright
