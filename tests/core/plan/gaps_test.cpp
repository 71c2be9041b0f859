#include "tests/core/plan/planned.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;
using testing::inset;
using testing::overlay;

using testing::bank;
using testing::columns;
using testing::oneOpening;
using testing::opening;
using testing::Planned;
using testing::projectWith;
using testing::rows;
using testing::share;
using testing::sideBySide;

constexpr Length nm(std::int64_t whole) {
    return Length::fromNanometres(whole);
}
SideFit gap(Length amount) {
    return {Fit::Gap, amount};
}

/// Overlays over the stile between two openings.
struct Overlays {
    Length ofLeft;
    Length ofRight;
};
Overlays overlaysOf(SideFit ofLeft, SideFit ofRight, Length stile) {
    const Planned pair(sideBySide(ofLeft, ofRight, stile));
    return {pair.front(0).overlay.right, pair.front(1).overlay.left};
}

TEST(GapFirst, SharesTheRestOfTheMemberEvenly) {
    const Overlays result = overlaysOf(gap(in(0, 8)), gap(in(0, 8)), in(2));
    EXPECT_EQ(result.ofLeft, in(0, 60)); // (2 − 1/8) / 2
    EXPECT_EQ(result.ofRight, in(0, 60));
}

TEST(GapFirst, GivesTheOddNanometreToTheRightFront) {
    const Overlays result = overlaysOf(gap(nm(2)), gap(nm(2)), nm(1'000'005));
    EXPECT_EQ(result.ofLeft, nm(500'001));
    EXPECT_EQ(result.ofRight, nm(500'002));
}

TEST(GapFirst, TakesTheGreaterOfTwoGaps) {
    const Overlays one = overlaysOf(gap(in(0, 8)), gap(in(0, 16)), in(2));
    EXPECT_EQ(one.ofLeft, in(0, 56)); // (2 − 1/4) / 2
    EXPECT_EQ(one.ofRight, in(0, 56));
    EXPECT_EQ(overlaysOf(gap(in(0, 16)), gap(in(0, 8)), in(2)).ofLeft, in(0, 56));
}

TEST(GapFirst, KeepsItsDistanceFromAFixedOverlay) {
    const Overlays result = overlaysOf(gap(in(0, 8)), overlay(in(0, 32)), in(2));
    EXPECT_EQ(result.ofRight, in(0, 32));
    EXPECT_EQ(result.ofLeft, in(1, 24)); // 2 − 1/8 − 1/2
    const Overlays mirrored = overlaysOf(overlay(in(0, 32)), gap(in(0, 8)), in(2));
    EXPECT_EQ(mirrored.ofLeft, in(0, 32));
    EXPECT_EQ(mirrored.ofRight, in(1, 24));
}

TEST(GapFirst, IsMeasuredToTheMembersFarEdgeBesideAnInsetFront) {
    const Overlays result = overlaysOf(gap(in(0, 8)), inset(in(0, 6)), in(2));
    EXPECT_EQ(result.ofLeft, in(1, 56)); // 2 − 1/8
    EXPECT_EQ(result.ofRight, -in(0, 6));
}

TEST(GapFirst, IsMeasuredToTheFarEdgeOfAnOuterMember) {
    Project project = oneOpening(in(12), in(5)); // frame 1 1/2 in
    project.fronts.fit = FrontFit::all(gap(in(0, 8)));
    const Planned chest(std::move(project));
    EXPECT_EQ(chest.front(0).overlay, PerSide<Length>::all(in(1, 24)));
    EXPECT_EQ(chest.front(0).rect, chest.plan.outline.inset(in(0, 8)));
}

TEST(GapFirst, LeavesTheFrontInItsOpeningWhereTheGapIsWiderThanTheMember) {
    const Overlays result = overlaysOf(gap(in(3)), gap(in(3)), in(2));
    EXPECT_EQ(result.ofLeft, -in(0, 32));
    EXPECT_EQ(result.ofRight, -in(0, 32));
}

TEST(GapFirst, WorksUprightToo) {
    Project project = bank(2); // rail 1 1/4
    project.fronts.fit.bottom = gap(in(0, 8));
    project.fronts.fit.top = gap(in(0, 8));
    const Planned chest(std::move(project));
    EXPECT_EQ(chest.front(0).overlay.bottom, in(0, 36)); // (1 1/4 − 1/8) / 2
    EXPECT_EQ(chest.front(1).overlay.top, in(0, 36));
    EXPECT_EQ(chest.front(0).rect.bottom - chest.front(1).rect.top, in(0, 8));
}

/// One tall opening at the left, two at the right: the stile meets a rail at a T.
Project tJunction(SideFit ofLeft, SideFit ofUpper, SideFit ofLower) {
    FrontChoices left, upper, lower;
    left.fit.right = ofLeft;
    upper.fit.left = ofUpper;
    lower.fit.left = ofLower;
    const RegionPtr right = rows({share(opening(upper)), share(opening(lower))}, in(1));
    return projectWith(columns({share(opening(left)), share(right)}, in(2)), in(40), in(20));
}

TEST(GapFirst, KeepsTheGreatestClearanceThatAnyFacingFrontNeeds) {
    const Planned chest(tJunction(gap(in(0, 8)), overlay(in(0, 16)), overlay(in(0, 32))));
    EXPECT_EQ(chest.front(0).overlay.right, in(1, 24)); // 2 − 1/8 − 1/2, not − 1/4
    EXPECT_EQ(chest.front(1).overlay.left, in(0, 16));
    EXPECT_EQ(chest.front(2).overlay.left, in(0, 32));
}

TEST(GapFirst, NeverLeavesLessThanAnyFrontAsksFor) {
    const Planned chest(tJunction(gap(in(0, 8)), gap(in(0, 24)), gap(in(0, 4))));
    EXPECT_EQ(chest.front(1).overlay.left, in(0, 52)); // (2 − 3/8) / 2
    EXPECT_EQ(chest.front(2).overlay.left, in(0, 60)); // (2 − 1/8) / 2
    EXPECT_EQ(chest.front(0).overlay.right, in(0, 52)) << "the less of the two";
}

TEST(GapFirst, SumsToTheMemberForEveryWidth) {
    for (std::int64_t odd = 0; odd < 40; ++odd) {
        const Length stile = in(1) + nm(odd), apart = in(0, 5) + nm(3 * odd);
        const Overlays result = overlaysOf(gap(apart), gap(in(0, 2)), stile);
        EXPECT_EQ(result.ofLeft + apart + result.ofRight, stile);
        EXPECT_GE(result.ofRight, result.ofLeft);
        EXPECT_LE(result.ofRight - result.ofLeft, nm(1));
    }
}

} // namespace
} // namespace frontwright
