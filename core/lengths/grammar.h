#pragma once

#include "core/lengths/parse.h"
#include "core/lengths/tokens.h"

#include <string_view>
#include <vector>

namespace frontwright::reading {

/// What a text amounts to, before it is rounded to a whole number of nanometres.
struct Reading {
    Rational nanometres; ///< exact, within ±1000 m
    Notation notation = Notation::OfDocument;
    bool isSum = false;         ///< operators, brackets or a change of the current value
    bool isUnitWritten = false; ///< by the maker, as against taken from the field
    std::vector<Token> tokens;  ///< with the role of each sign; their sources point into the text
};

/// sum      = product { ("+" | "-") product }
/// product  = factor { ("*" | "/" | "÷") factor }
/// factor   = [ "+" | "-" ] ( bracket | measure )
/// bracket  = "(" sum ")" [ unit ]
/// measure  = feet [ "-" ] inches | number [ unit ]
/// number   = whole [ "-" ] fraction | fraction | whole | decimal
/// fraction = whole "/" whole (no spaces) | ¾
/// The hyphen of a mixed number, and of feet and inches, has no space on either side.
Result<Reading> readLength(std::string_view text, Unit bareUnit, CommaGrouping grouping);

/// change   = ( "+=" | "-=" | "*=" | "/=" ) sum
/// Precondition: text begins with a change (isChange).
Result<Reading> readChange(std::string_view text, Unit bareUnit, CommaGrouping grouping,
                           Length current);

/// Whether a text begins like a change of the current value.
bool isChange(std::string_view text);

} // namespace frontwright::reading
