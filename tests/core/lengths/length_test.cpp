#include "core/lengths/length.h"

#include <gtest/gtest.h>

#include <random>

namespace frontwright {
namespace {

// 1 in = 25.4 mm exactly: NIST Special Publication 811, appendix B.
TEST(Length, HasAnInchOfExactly25Point4Millimetres) {
    EXPECT_EQ(Length::inches(10), Length::millimetres(254));
    EXPECT_EQ(Length::inches(1).nanometres(), 25'400'000);
}

TEST(Length, HoldsBothGridsExactly) {
    EXPECT_EQ(Length::fromSixtyFourths(64), Length::inches(1));
    EXPECT_EQ(64 * Length::fromSixtyFourths(1), Length::inches(1));
    EXPECT_EQ(1000 * Length::fromMicrometres(1), Length::millimetres(1));
}

TEST(Length, OfAFrontIsItsOpeningAndTwoOverlays) {
    const Length opening = Length::inches(12, 40);
    const Length overlay = Length::inches(0, 16);
    EXPECT_EQ(opening + 2 * overlay, Length::inches(13, 8));
    EXPECT_EQ(Length::inches(13, 8).nanometres(), 333'375'000);
}

TEST(Length, AddsSubtractsAndOrders) {
    Length length = Length::inches(3);
    length += Length::inches(1);
    length -= Length::inches(2);
    EXPECT_EQ(length, Length::inches(2));
    EXPECT_EQ(-length, Length::inches(-2));
    EXPECT_LT(Length::millimetres(25), Length::inches(1));
    EXPECT_EQ(least(Length::millimetres(25), Length::inches(1)), Length::millimetres(25));
    EXPECT_EQ(greatest(Length::millimetres(25), Length::inches(1)), Length::inches(1));
    EXPECT_EQ((-length).magnitude(), length);
    EXPECT_TRUE((length - length).isZero());
}

TEST(Length, SplitsIntoTwoHalvesThatSumExactly) {
    EXPECT_EQ(Length::inches(0, 1).half().nanometres(), 198'437);
    EXPECT_EQ(Length::fromNanometres(-3).half().nanometres(), -2);
    std::mt19937_64 random(4);
    for (int i = 0; i < 1'000; ++i) {
        const auto nm = static_cast<std::int64_t>(random() >> 20U) - (1LL << 43U);
        const Length whole = Length::fromNanometres(nm);
        const Length other = whole - whole.half();
        EXPECT_EQ(whole.half() + other, whole);
        EXPECT_LE((other - whole.half()).magnitude(), Length::fromNanometres(1));
        EXPECT_GE(other, whole.half());
    }
}

TEST(Length, IsRoundedOnceFromComputedMillimetresHalvesAwayFromZero) {
    EXPECT_EQ(Length::nearestToMillimetres(1.0 / 3).nanometres(), 333'333);
    EXPECT_EQ(Length::nearestToMillimetres(0.0000005).nanometres(), 1);
    EXPECT_EQ(Length::nearestToMillimetres(-0.0000005).nanometres(), -1);
    EXPECT_DOUBLE_EQ(Length::inches(1).inMillimetres(), 25.4);
    EXPECT_DOUBLE_EQ(Length::millimetres(127).inInches(), 5.0);
}

TEST(WrittenLength, IsTheSameOnlyInTheSameNotation) {
    const WrittenLength inInches(Length::inches(1), Notation::InchFraction);
    const WrittenLength inMillimetres(Length::inches(1), Notation::Millimetre);
    EXPECT_FALSE(inInches == inMillimetres);
    EXPECT_EQ(inInches.length, inMillimetres.length);
    EXPECT_EQ(inInches + Length::inches(1), Length::inches(2));
}

} // namespace
} // namespace frontwright
