#pragma once

#include "core/lengths/grammar.h"

#include <string>

namespace frontwright::reading {

/// How a text was read, for the maker to check: "= 12 5/8 in = 320.675 mm"; a sum and a rounded
/// value are told first as they were understood: "= 1 - 1/2 = 1/2 in = 12.7 mm",
/// "= 1/3 in ≈ 21/64 in ≈ 8.466667 mm". The bare unit comes first, "≈" is before what is not exact.
/// `current` is the value that a change was applied to.
std::string echoOf(const Reading& reading, Unit bareUnit, Length current);

} // namespace frontwright::reading
