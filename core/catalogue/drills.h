#pragma once

#include "core/lengths/length.h"

#include <optional>
#include <string>

namespace frontwright {

/// The number drill (1 to 60) of that diameter, to half a thousandth of an inch; nullopt where
/// there is none. Sizes of number drills, ASME B94.11M, from memory.
std::optional<int> numberDrill(Length diameter);

/// As it is told: in inches in as many digits as it takes, "13/64 in", "0.196 in"; a drill of
/// millimetres is chosen to a tenth: "4.5 mm".
std::string shownDrill(Length diameter, LengthStyle);

} // namespace frontwright
