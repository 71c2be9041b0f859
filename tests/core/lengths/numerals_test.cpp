#include "core/lengths/numerals.h"

#include <gtest/gtest.h>

#include <limits>

namespace frontwright::numerals {
namespace {

constexpr std::int64_t least = std::numeric_limits<std::int64_t>::min();
constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max();

TEST(NearestCount, TakesHalvesAwayFromZero) {
    EXPECT_EQ(nearestCount(15, 10), 2);
    EXPECT_EQ(nearestCount(-15, 10), -2);
    EXPECT_EQ(nearestCount(14, 10), 1);
    EXPECT_EQ(nearestCount(-4, 10), 0);
    EXPECT_EQ(nearestCount(1, 3), 0);
    EXPECT_EQ(nearestCount(2, 3), 1);
}

TEST(NearestCount, StandsTheLargestNumbers) {
    EXPECT_EQ(nearestCount(most, 1), most);
    EXPECT_EQ(nearestCount(least, 1), least);
    EXPECT_EQ(nearestCount(most, most), 1);
}

TEST(MixedNumber, IsInLowestTerms) {
    EXPECT_EQ(mixedNumber(808, 64), "12 5/8");
    EXPECT_EQ(mixedNumber(32, 64), "1/2");
    EXPECT_EQ(mixedNumber(64, 64), "1");
    EXPECT_EQ(mixedNumber(0, 64), "0");
    EXPECT_EQ(mixedNumber(1, 64), "1/64");
}

TEST(MixedNumber, HasOneMinusForTheWhole) {
    EXPECT_EQ(mixedNumber(-96, 64), "-1 1/2");
    EXPECT_EQ(mixedNumber(-32, 64), "-1/2");
    EXPECT_EQ(mixedNumber(least, 1), "-9223372036854775808");
}

TEST(Decimal, LeavesOutClosingZeros) {
    EXPECT_EQ(decimal(320'675'000, 6), "320.675");
    EXPECT_EQ(decimal(321'000'000, 6), "321");
    EXPECT_EQ(decimal(1'000'000'000, 6), "1000");
    EXPECT_EQ(decimal(0, 6), "0");
}

TEST(Decimal, HasAZeroBeforeItsMark) {
    EXPECT_EQ(decimal(1, 6), "0.000001");
    EXPECT_EQ(decimal(-100'000, 6), "-0.1");
    EXPECT_EQ(decimal(5, 1), "0.5");
}

} // namespace
} // namespace frontwright::numerals
