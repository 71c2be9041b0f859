#pragma once

#include "core/lengths/rational.h"
#include "core/results/result.h"

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace frontwright::reading {

/// One typed or pasted character.
struct Character {
    char32_t code = 0;    ///< as it was written
    char32_t plain = 0;   ///< the ASCII character it stands for, or `code` where there is none
    std::size_t byte = 0; ///< where it begins in the UTF-8 text
};

/// Longest text read as a length, in characters.
constexpr std::size_t longestText = 64;

/// The characters of UTF-8 text, with pasted look-alikes told in `plain`: no-break and thin spaces
/// as ' ', the minus sign and hyphens as '-', primes and curly quotes as '\'' and '"', the fraction
/// slash as '/', the multiplication sign as '*'. Refuses bad UTF-8 and text beyond `longestText`.
Result<std::vector<Character>> charactersOf(std::string_view typed);

/// The value of a fraction character: ¼ ½ ¾ (U+00BC to U+00BE) and U+2150 to U+215E.
std::optional<Rational> fractionCharacter(char32_t code);

/// An Error whose place is "position N", counted in characters from 1.
Error errorAt(std::size_t position, Phrase what, Phrase remedy);

} // namespace frontwright::reading
