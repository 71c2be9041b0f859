#include "core/lengths/rational.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

namespace frontwright::reading {
namespace {

constexpr std::int64_t huge = std::numeric_limits<std::int64_t>::max();

TEST(Rational, AddsAThirdAndASixthToAHalf) {
    EXPECT_EQ(sumOf({1, 3}, {1, 6}).value, (Rational{1, 2}));
    EXPECT_EQ(sumOf({1, 3}, negated({1, 3})).value, (Rational{0, 1}));
}

TEST(Rational, MultipliesAndDividesInLowestTerms) {
    EXPECT_EQ(productOf({2, 3}, {3, 4}).value, (Rational{1, 2}));
    EXPECT_EQ(quotientOf({1, 2}, {-3, 4}).value, (Rational{-2, 3}));
    EXPECT_EQ(quotientOf({0, 1}, {-3, 4}).value, (Rational{0, 1}));
}

TEST(Rational, KeepsTheLargestNumbersWhereTheResultFits) {
    EXPECT_EQ(productOf({huge, 3}, {3, huge}).value, (Rational{1, 1}));
    EXPECT_EQ(sumOf({huge, 1}, {-huge, 1}).value, (Rational{0, 1}));
    EXPECT_EQ(sumOf({-huge, 1}, {0, 1}).value, (Rational{-huge, 1}));
}

TEST(Rational, SaysWhetherItIsTooLargeOrTooFine) {
    EXPECT_EQ(productOf({huge, 1}, {2, 1}).range, Range::TooLarge);
    EXPECT_EQ(productOf({-huge, 1}, {huge, 1}).range, Range::TooLarge);
    EXPECT_EQ(sumOf({huge, 1}, {huge, 1}).range, Range::TooLarge);
    EXPECT_EQ(productOf({1, huge}, {1, huge}).range, Range::TooFine);
    EXPECT_EQ(sumOf({1, huge}, {1, huge - 1}).range, Range::TooFine);
}

TEST(Rational, RoundsHalvesAwayFromZero) {
    EXPECT_EQ(nearestWhole({1, 2}), 1);
    EXPECT_EQ(nearestWhole({-1, 2}), -1);
    EXPECT_EQ(nearestWhole({5, 2}), 3);
    EXPECT_EQ(nearestWhole({49, 100}), 0);
    EXPECT_EQ(nearestWhole({-7, 3}), -2);
    EXPECT_EQ(nearestWhole({-8, 3}), -3);
    EXPECT_EQ(nearestWhole({huge, 1}), huge);
}

TEST(Rational, ObeysTheLawsOfArithmetic) {
    std::mt19937_64 random(11);
    const auto any = [&random] {
        const auto above = static_cast<std::int64_t>(random() % 20'001) - 10'000;
        const auto below = static_cast<std::int64_t>(random() % 999) + 1;
        return quotientOf({above, 1}, {below, 1}).value;
    };
    for (int i = 0; i < 2'000; ++i) {
        const Rational a = any();
        const Rational b = any();
        const Rational c = any();
        EXPECT_EQ(sumOf(a, b).value, sumOf(b, a).value);
        EXPECT_EQ(sumOf(sumOf(a, b).value, negated(b)).value, a);
        EXPECT_EQ(productOf(a, sumOf(b, c).value).value,
                  sumOf(productOf(a, b).value, productOf(a, c).value).value);
        if (b.numerator != 0) {
            EXPECT_EQ(productOf(quotientOf(a, b).value, b).value, a);
        }
    }
}

} // namespace
} // namespace frontwright::reading
