#include "core/lengths/rational.h"

#include <limits>
#include <numeric>
#include <utility>

namespace frontwright::reading {
namespace {

// Products of two 63-bit numbers, and the sum of two such products, fit without overflow.
__extension__ using Wide = __int128;

constexpr Wide widest = std::numeric_limits<std::int64_t>::max();

Wide magnitudeOf(Wide a) {
    return a < 0 ? -a : a;
}

Wide greatestCommonDivisor(Wide a, Wide b) {
    while (b > widest) {
        a %= b;
        std::swap(a, b);
    }
    // b fits in 64 bits from here on, and so does every remainder.
    const auto small = static_cast<std::int64_t>(b);
    return small == 0 ? a : Wide{std::gcd(static_cast<std::int64_t>(a % small), small)};
}

/// Precondition: denominator > 0.
CheckedRational reduced(Wide numerator, Wide denominator) {
    const Wide divisor = greatestCommonDivisor(magnitudeOf(numerator), denominator);
    numerator /= divisor;
    denominator /= divisor;
    if (magnitudeOf(numerator) <= widest && denominator <= widest)
        return {{static_cast<std::int64_t>(numerator), static_cast<std::int64_t>(denominator)},
                Range::Fits};
    const bool large = magnitudeOf(numerator) / denominator > largestNanometres;
    return {{}, large ? Range::TooLarge : Range::TooFine};
}

} // namespace

CheckedRational sumOf(Rational a, Rational b) {
    return reduced(Wide{a.numerator} * b.denominator + Wide{b.numerator} * a.denominator,
                   Wide{a.denominator} * b.denominator);
}

CheckedRational productOf(Rational a, Rational b) {
    return reduced(Wide{a.numerator} * b.numerator, Wide{a.denominator} * b.denominator);
}

CheckedRational quotientOf(Rational a, Rational b) {
    const std::int64_t sign = b.numerator < 0 ? -1 : 1;
    return productOf(a, {sign * b.denominator, sign * b.numerator});
}

} // namespace frontwright::reading
