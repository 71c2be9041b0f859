#pragma once

#include "core/lengths/parse.h"
#include "core/lengths/tokens.h"

#include <optional>
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

/// text    = [ change ] sum
/// change  = "+=" | "-=" | "*=" | "/=" -- only where there is a current value
/// sum     = product { ("+" | "-") product }
/// product = factor { ("*" | "/" | "÷") factor }
/// factor  = [ "+" | "-" ] ( "(" sum ")" [ unit ] | measure )
/// measure = whole foot [ "-" ] number [ inch ] | number [ unit ]
/// number: see number_grammar.h. The hyphen between feet and inches has no space on either side.
Result<Reading> readLength(std::string_view text, Unit bareUnit, CommaGrouping grouping,
                           std::optional<Length> current = std::nullopt);

} // namespace frontwright::reading
