#pragma once

#include "core/words/phrase.h"

#include <string>
#include <string_view>
#include <vector>

namespace frontwright {

/// Capitals of 2.5 mm are 9.7 pt type: above the 8 pt that print without loss (ISO 3098 series).
inline constexpr double smallText = 2.5;
inline constexpr double titleText = 3.5;
/// From base line to base line.
constexpr double linePitch(double capHeight) {
    return 1.6 * capHeight;
}

/// Lines no wider than `width` mm, broken at spaces, never between a figure and its
/// fraction or unit. What is wider by itself stays whole.
std::vector<std::string> wrapped(std::string_view utf8, double capHeight, double width);

/// "A2, B1 and B2": for a few names; "A2, B1 and 7 more" past `most`.
Phrase listed(const std::vector<std::string>& names, std::size_t most);

} // namespace frontwright
