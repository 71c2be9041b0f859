#pragma once

#include "core/case/divisions.h"
#include "core/edits/choices.h"
#include "core/lengths/format.h"

namespace frontwright::testing {

/// 5 3/8 in is in(5, 24).
constexpr Length in(std::int64_t whole, std::int64_t over64 = 0) {
    return Length::inches(whole, over64);
}
/// In 64ths of an inch.
constexpr Length n64(std::int64_t n) {
    return Length::fromSixtyFourths(n);
}
/// Of an inch.
constexpr Length thousandths(std::int64_t n) {
    return Length::fromNanometres(n * 25'400);
}
constexpr Length mm(std::int64_t whole) {
    return Length::millimetres(whole);
}

constexpr SideFit overlay(Length amount) {
    return {Fit::Overlay, amount};
}
constexpr SideFit inset(Length amount) {
    return {Fit::Inset, amount};
}

constexpr LengthStyle sixteenths{Unit::Inch, 16};
constexpr LengthStyle sixtyFourths{Unit::Inch, 64};
constexpr LengthStyle millimetres{Unit::Millimetre, 16};

// Of drawings, in mm.
constexpr double inch = 25.4;
constexpr double exactly = 1e-9;

constexpr Direction across = Direction::Columns;
constexpr Direction upright = Direction::Rows;
constexpr EditTarget theCase{};

} // namespace frontwright::testing
