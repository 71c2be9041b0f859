#include "core/limits/limits.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

// Common practice, no source.
TEST(TheLimits, BeginWithCommonPractice) {
    const Limits limits;
    EXPECT_EQ(limits.leastPenetration.length, Length::fromSixtyFourths(24));   // 3/8 in
    EXPECT_EQ(limits.leastTipCover.length, Length::fromSixtyFourths(8));       // 1/8 in
    EXPECT_EQ(limits.screwMargin.length, Length::fromSixtyFourths(8));         // 1/8 in
    EXPECT_EQ(limits.leastWallUnderHead.length, Length::fromSixtyFourths(12)); // 3/16 in
    EXPECT_EQ(limits.leastWoodUnderHead.length, Length::fromSixtyFourths(16)); // 1/4 in
    EXPECT_EQ(limits.headAllowance.length, Length::fromSixtyFourths(4));       // 1/16 in
    EXPECT_EQ(limits.leastGap.length, Length::fromSixtyFourths(4));            // 1/16 in
    EXPECT_EQ(limits.leastOpening.length, Length::millimetres(60));
    EXPECT_EQ(limits.holeToHole.length, Length::fromSixtyFourths(16));  // 1/4 in
    EXPECT_EQ(limits.fillerShadow.length, Length::fromSixtyFourths(8)); // 1/8 in
    EXPECT_EQ(limits.fillerBend.length, Length::fromSixtyFourths(2));   // 1/32 in
}

TEST(TheLimits, DifferWhereOneDoes) {
    Limits changed;
    changed.leastTipCover = Length::fromSixtyFourths(12);
    EXPECT_NE(changed, Limits{});
}

} // namespace
} // namespace frontwright
