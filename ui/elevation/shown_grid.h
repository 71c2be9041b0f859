#pragma once

#include "core/lengths/length.h"

namespace frontwright {

/// The shown grid: 1/16 in (the shown denominator) or 1 mm; finest: 1/64 in or 0.1 mm.
inline Length shownGrid(LengthStyle style) {
    return style.unit == Unit::Inch ? Length::fromSixtyFourths(64 / style.denominator)
                                    : Length::millimetres(1);
}
inline Length finestStep(LengthStyle style) {
    return style.unit == Unit::Inch ? Length::fromSixtyFourths(1) : Length::fromMicrometres(100);
}

} // namespace frontwright
