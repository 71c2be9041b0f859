#pragma once

#include <cstdint>
#include <string>

namespace frontwright::numerals {

/// value / step to the nearest whole number, halves away from zero. Precondition: step > 0.
std::int64_t nearestCount(std::int64_t value, std::int64_t step);

/// count/denominator as a mixed number in lowest terms: "12 5/8", "-1/2", "13", "0".
/// Precondition: denominator > 0.
std::string mixedNumber(std::int64_t count, std::int64_t denominator);

/// value / 10^decimals without closing zeros: "320.675", "-0.1", "321".
std::string decimal(std::int64_t value, int decimals);

} // namespace frontwright::numerals
