#pragma once

#include "core/drawings/drawing.h"

#include <array>

namespace frontwright {

// How a dimension is laid out, in mm on paper. Its elements and the text's place follow ISO 129-1
// (from memory), the lettering ISO 3098; oblique strokes rather than arrow heads, because they
// stay clear in a chain of short dimensions.
namespace dimension {
inline constexpr double lettering = 2.5;
inline constexpr double textAboveLine = 0.9;  ///< clears descenders
inline constexpr double textBeyondTick = 1.4; ///< where it does not fit between the ticks
inline constexpr double spareBetweenTicks = 1.6;
inline constexpr double gapAtObject = 1.0; ///< before an extension line begins
inline constexpr double overrun = 1.5;     ///< of an extension line: 8 × the narrow line
inline constexpr double tickLength = 2.2;
inline constexpr double tickWidth = 0.35; ///< the wide line
} // namespace dimension

/// A dimension resolved into what can be drawn; all in drawn mm.
struct DimensionFigure {
    LineMark line; ///< prolonged under a text that stands outside
    std::vector<LineMark> extensions;
    std::array<std::array<PointMm, 4>, 2> ticks; ///< filled
    TextMark text;
};
DimensionFigure figureOf(const DimensionMark&, double paperScale);

/// Whether a text goes between ticks that lie so far apart on paper.
bool fitsBetweenTicks(std::string_view text, double onPaper);

/// How far a text that does not fit reaches beyond its tick, on paper.
double reachBeyondTick(std::string_view text);

} // namespace frontwright
