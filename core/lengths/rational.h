#pragma once

#include "core/lengths/numerals.h"

#include <cstdint>

namespace frontwright::reading {

/// A fraction in lowest terms, denominator > 0, both within ±(2^63 − 1). Typed lengths are computed
/// in these, so that 1/3 in × 3 is one inch and nothing passes through a double.
struct Rational {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
    friend bool operator==(const Rational&, const Rational&) = default;
};

enum class Range : std::uint8_t {
    Fits,
    TooLarge, ///< above 1000 m, taken as nanometres
    TooFine   ///< not that large, but its denominator is too long to be kept exactly
};

/// `value` means something only where `range` is Fits.
struct CheckedRational {
    Rational value;
    Range range = Range::Fits;
};

/// What typed text may amount to: ±1000 m.
constexpr std::int64_t largestNanometres = 1'000'000'000'000;

CheckedRational sumOf(Rational a, Rational b);
CheckedRational productOf(Rational a, Rational b);
/// Precondition: b is not zero.
CheckedRational quotientOf(Rational a, Rational b);

constexpr Rational negated(Rational a) {
    return {-a.numerator, a.denominator};
}
constexpr bool isWhole(Rational a) {
    return a.denominator == 1;
}

/// Nearest whole number, halves away from zero.
inline std::int64_t nearestWhole(Rational a) {
    return numerals::nearestCount(a.numerator, a.denominator);
}

} // namespace frontwright::reading
