#include "core/drawings/seen_size.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

// By hand: 96 pixels on an inch are 96 / 25.4 = 3.7795 on a millimetre; a card is 85.6 × 3.7795 =
// 323.53 of them wide.
TEST(Card, OfThreeHundredTwentyThreePixelsIsAScreenOfNinetySixDotsOnAnInch) {
    EXPECT_NEAR(pixelsPerMillimetre(323.527559), 96 / 25.4, 1e-6);
    EXPECT_NEAR(cardWidthInPixels(96 / 25.4), 323.5276, 1e-4);
}

TEST(Card, IsThatOfIsoIec7810) {
    EXPECT_EQ(cardWidth, Length::fromMicrometres(85'600));
    EXPECT_EQ(cardHeight, Length::fromMicrometres(53'980));
    EXPECT_DOUBLE_EQ(pixelsPerMillimetre(856), 10);
}

TEST(Card, ThereAndBackIsTheSame) {
    for (const int pixels : {120, 324, 500, 899})
        EXPECT_NEAR(cardWidthInPixels(pixelsPerMillimetre(pixels)), pixels, 1e-9);
}

// By hand: a chest 900 mm wide, 2 m away, fills tan⁻¹(450 / 2000) on each side; on a screen 600 mm
// away the same angle is 450 · 600 / 2000 = 135 mm: 0.3 of it.
TEST(SeenFrom, TwoMetresOnAScreenSixtyCentimetresAwayIsThreeTenths) {
    EXPECT_DOUBLE_EQ(shrinkSeenFrom(Length::millimetres(2'000), usualEyeDistance), 0.3);
    EXPECT_DOUBLE_EQ(shrinkSeenFrom(Length::millimetres(1'000), usualEyeDistance), 0.6);
    EXPECT_DOUBLE_EQ(shrinkSeenFrom(Length::millimetres(3'000), usualEyeDistance), 0.2);
}

TEST(SeenFrom, TheScreensOwnDistanceIsTheRealSize) {
    EXPECT_DOUBLE_EQ(shrinkSeenFrom(Length::millimetres(550), Length::millimetres(550)), 1);
}

TEST(SeenFrom, NoDistanceAtAllChangesNothing) {
    EXPECT_DOUBLE_EQ(shrinkSeenFrom(Length(), usualEyeDistance), 1);
    EXPECT_DOUBLE_EQ(shrinkSeenFrom(Length::millimetres(1'000), Length()), 1);
    EXPECT_DOUBLE_EQ(shrinkSeenFrom(Length::millimetres(-1), usualEyeDistance), 1);
}

} // namespace
} // namespace frontwright
