#include "core/drawings/tones.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

TEST(Tone, HalfWayLiesInTheMiddleOfEachPart) {
    EXPECT_EQ(mixed({0, 100, 200, 255}, {100, 200, 0, 55}, 0.5), (Tone{50, 150, 100, 155}));
    EXPECT_EQ(mixed({1, 2, 3, 4}, {5, 6, 7, 8}, 0), (Tone{1, 2, 3, 4}));
    EXPECT_EQ(mixed({1, 2, 3, 4}, {5, 6, 7, 8}, 1), (Tone{5, 6, 7, 8}));
}

TEST(Tone, InMoreOrLessLightGoesStraightToWhiteAndToBlack) {
    const Tone wood{200, 150, 100, 255};
    EXPECT_EQ(lit(wood, 1), wood);
    EXPECT_EQ(lit(wood, 0.5), (Tone{100, 75, 50, 255}));
    EXPECT_EQ(lit(wood, 0), (Tone{0, 0, 0, 255}));
    EXPECT_EQ(lit(wood, 2), (Tone{255, 255, 255, 255}));
    EXPECT_EQ(lit(wood, -3), lit(wood, 0));
    EXPECT_EQ(lit(wood, 7), lit(wood, 2));
}

TEST(Tone, LaidOnThinKeepsItsColour) {
    EXPECT_EQ(thin({10, 20, 30, 255}, 0.2), (Tone{10, 20, 30, 51}));
}

TEST(Tone, OfAWoodIsItsCataloguesColour) {
    EXPECT_EQ(toneOf({181, 118, 74, 22}), (Tone{181, 118, 74, 255}));
}

// Reference: SplitMix64 with seed 0 gives e220a8397b1dcdaf first (Vigna's published generator, the
// value from memory); its upper 53 bits are 0.88333… of the whole range.
TEST(ChanceOfASeed, IsTheSameEverywhere) {
    EXPECT_NEAR(Chance(0).between(0, 1), 0xe220a8397b1dcdafp-64, 1e-12);
    Chance a(7), b(7);
    for (int i = 0; i < 100; ++i)
        EXPECT_EQ(a.between(-3, 5), b.between(-3, 5));
}

TEST(ChanceOfASeed, StaysBetweenItsBoundsAndFillsThem) {
    Chance chance(20'260);
    std::set<int> seen;
    for (int i = 0; i < 2'000; ++i) {
        const double value = chance.between(2, 12);
        ASSERT_GE(value, 2);
        ASSERT_LT(value, 12);
        seen.insert(static_cast<int>(value));
    }
    EXPECT_EQ(seen.size(), 10U);
}

} // namespace
} // namespace frontwright
