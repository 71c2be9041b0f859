#pragma once

#include "core/lengths/parse.h"
#include "core/lengths/rational.h"

#include <cstddef>
#include <string_view>
#include <vector>

namespace frontwright::reading {

enum class TokenKind : std::uint8_t {
    Whole,    ///< 12
    Decimal,  ///< 12.625, 12,625, .5
    Fraction, ///< a fraction character: ¾
    Unit,     ///< in, ", ft, ', mm, cm, m
    Slash,    ///< may join two whole numbers to a fraction
    Divide,   ///< ÷: divides and never joins
    Plus,
    Minus,
    Times,
    Open,
    Close,
    Equals, ///< only in +=, -=, *=, /=
    Unknown,
    End
};

enum class TypedUnit : std::uint8_t { Inch, Foot, Millimetre, Centimetre, Metre };

/// What a sign turned out to be; found by the grammar, told by the echo.
enum class Role : std::uint8_t {
    Undecided,
    Operator,    ///< between two values
    Sign,        ///< before a value
    Joiner,      ///< the hyphen of 12-5/8 and 12'-2"
    FractionBar, ///< the slash of 5/8
    OfChange     ///< += and its kin
};

struct Token {
    TokenKind kind = TokenKind::End;
    Role role = Role::Undecided;
    TypedUnit unit = TypedUnit::Inch; ///< of a Unit
    bool spaceBefore = false;
    std::size_t position = 1; ///< of its first character, from 1
    Rational value;           ///< of Whole, Decimal and Fraction
    std::string_view source;  ///< as it stands in the text; lives as long as the text does
};

/// The tokens of a text, the last one being End. Refuses what charactersOf refuses, numbers of more
/// than 18 digits, and numbers with grouped digits (1,234.5; 1,234,567; see CommaGrouping).
Result<std::vector<Token>> tokensOf(std::string_view text, CommaGrouping grouping);

} // namespace frontwright::reading
