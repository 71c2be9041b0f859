#pragma once

#include "core/sheets/sheets.h"

namespace frontwright {

/// A bar that proves a page's scale: measured from outer tick to outer tick.
struct CheckBar {
    double length = 0;     ///< mm
    double tickEvery = 10; ///< mm between small ticks
    std::string text;      ///< "100 mm", "A, 250 mm"
};
/// The two that every page carries, in both directions.
inline constexpr double metricBar = 100;
inline constexpr double inchBar = 4 * 25.4;

enum class BarDirection : std::uint8_t { Level, Upright };

/// Bars in lines: 100 mm, 4 in, and one in the maker's unit as long as the room allows, up to
/// 250 mm or 10 in. Empty where there is no room for the first two.
std::vector<std::vector<CheckBar>> barLines(double room, Unit unit);

/// Breadth of a strip of that many lines.
double barStripBreadth(std::size_t lines);
inline constexpr std::size_t mostBarLines = 3;

/// How bars lie. `where` names their ends in the page's marks and tells strips of one direction
/// apart: "across", "across, far end".
struct BarsLaid {
    BarDirection direction = BarDirection::Level;
    std::string where;
    Language language = {}; ///< of the words beside them
};

/// Draws one bar from its left or lower end, and marks its ends.
void drawBar(Page& page, const CheckBar&, const PointMm& from, const BarsLaid&);

/// Draws the bars that fit in a strip, from its upper left corner, and marks their ends.
void drawBars(Page& page, const BoxMm& strip, const BarsLaid&, Unit unit);

} // namespace frontwright
