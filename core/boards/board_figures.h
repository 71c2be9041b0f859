#pragma once

#include "core/boards/board_numbers.h"

#include <string>

// How a board's numbers are written.
namespace frontwright::boards {

/// "FIGURES = 17 7/8 in", "FIGURES ≈ 17 7/8 in"
std::string equals(const std::string& figures, Length value, LengthStyle);
/// For what is less than a fraction can show: "0.038 in", "0.96 mm".
std::string fine(Length, LengthStyle);
std::string number(double, int decimals, LengthStyle);
std::string number(Ratio, LengthStyle);
std::string degrees(Angle, LengthStyle);
std::string shownMoment(Moment, LengthStyle);

Source statics();
Source friction();

} // namespace frontwright::boards
