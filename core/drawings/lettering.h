#pragma once

#include "core/drawings/drawing.h"

#include <array>
#include <string_view>

namespace frontwright {

/// Capitals of DejaVu Sans, the drawings' typeface, are 0.729 em high.
inline constexpr double capHeightPerEm = 0.729;
/// How far letters reach below the base line and above it, as parts of the capitals' height:
/// 0.236 em for descenders; capitals and their overshoot.
inline constexpr double descent = 0.325;
inline constexpr double ascent = 1.05;

/// Advance of a line of UTF-8 text in mm on paper, for capitals of that height. Advances of DejaVu
/// Sans, rounded up, so that a text is never wider than this; letters beyond ASCII count 1 em.
double textWidth(std::string_view text, double capHeight);

/// What a text covers, from below its descenders to above its capitals, as a rectangle that turns
/// with it, in drawn mm: lower left, lower right, upper right, upper left as it is read.
std::array<PointMm, 4> textCorners(const TextMark& text, double paperScale);

/// The axis-parallel box round textCorners.
BoxMm textBox(const TextMark& text, double paperScale);

} // namespace frontwright
