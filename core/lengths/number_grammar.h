#pragma once

#include "core/lengths/quantity.h"
#include "core/lengths/token_row.h"

namespace frontwright::reading {

/// number   = whole [ "-" ] fraction | fraction | whole | decimal
/// fraction = whole "/" whole  (no spaces) | ¾
/// The hyphen of a mixed number has no space on either side, and its fraction is less than 1.
Result<Quantity> readNumber(TokenRow& row);

/// Whether a number, which is not negative, is at least `limit`.
bool reaches(const Quantity& number, std::int64_t limit);

} // namespace frontwright::reading
