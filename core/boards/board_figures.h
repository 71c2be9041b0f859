#pragma once

#include "core/boards/board_numbers.h"

#include <string>

// How a board's numbers are written.
namespace frontwright::boards {

/// For what is less than a fraction can show: "0.038 in", "0.96 mm".
std::string fine(Length, LengthStyle);
std::string number(double, int decimals, LengthStyle);
std::string number(Ratio, LengthStyle);
std::string degrees(Angle, LengthStyle);
std::string shownMoment(Moment, LengthStyle);

/// How far out the board is safe, and what ends it.
BoardNumber safePullOutNumber(const FittedBoard&, LengthStyle);

Source statics();
Source friction();

} // namespace frontwright::boards
