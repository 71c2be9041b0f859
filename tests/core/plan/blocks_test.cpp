#include "tests/core/plan/planned.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <algorithm>

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
using testing::withChoices;

FrontChoices withLeft(SideFit fit) {
    FrontChoices choices;
    choices.fit.left = fit;
    return choices;
}

/// One tall front at the left of a 2 in stile; two at the right that overlay it differently.
Project tallBesideTwo(SideFit ofUpper, SideFit ofLower) {
    const RegionPtr right =
        rows({share(opening(withLeft(ofUpper)), 1), share(opening(withLeft(ofLower)), 2)}, in(1));
    return projectWith(columns({share(opening()), share(right)}, in(2)), in(40), in(20));
}

TEST(Spacer, IsTheMemberLessBothOverlays) {
    // Rail 1 1/4, overlays 1/4: 3/4, common practice, no source
    const Planned chest(bank(2));
    ASSERT_EQ(chest.plan.spacers.size(), 1U);
    const Spacer& spacer = chest.plan.spacers[0];
    EXPECT_EQ(spacer.width, in(0, 48));
    EXPECT_EQ(spacer.lower, 1U) << "openings are listed from the top";
    EXPECT_EQ(spacer.upper, 0U);
    EXPECT_EQ(spacer.along, chest.front(0).rect.across());
    EXPECT_EQ(chest.plan.members[spacer.member].kind, MemberKind::Rail);
}

TEST(Spacer, StandsBetweenEveryTwoFrontsThatFaceEachOther) {
    const Planned chest(tallBesideTwo(overlay(in(0, 16)), overlay(in(0, 32))));
    ASSERT_EQ(chest.plan.spacers.size(), 3U);
    const auto between = [&](std::uint32_t lower, std::uint32_t upper) {
        return std::find_if(chest.plan.spacers.begin(), chest.plan.spacers.end(),
                            [&](const Spacer& s) { return s.lower == lower && s.upper == upper; });
    };
    EXPECT_EQ(between(0, 1)->width, in(1, 32)); // 2 − 1/4 − 1/4
    EXPECT_EQ(between(0, 2)->width, in(1, 16)); // 2 − 1/4 − 1/2
    EXPECT_EQ(between(2, 1)->width, in(0, 32)); // 1 − 1/4 − 1/4
    EXPECT_EQ(between(0, 1)->along, chest.front(1).rect.upright());
}

TEST(Spacer, IsNegativeWhereFrontsOverlap) {
    const Planned chest(sideBySide(overlay(in(1)), overlay(in(1, 16)), in(2)));
    ASSERT_EQ(chest.plan.spacers.size(), 1U);
    EXPECT_EQ(chest.plan.spacers[0].width, -in(0, 16));
}

TEST(Spacer, IsNoneAcrossAMemberWhereAFrontIsInset) {
    EXPECT_TRUE(
        Planned(sideBySide(overlay(in(0, 16)), inset(in(0, 4)), in(2))).plan.spacers.empty());
    EXPECT_TRUE(Planned(sideBySide(inset(in(0, 4)), inset(in(0, 4)), in(2))).plan.spacers.empty());
}

TEST(Stop, IsSetFromEitherEdgeOfTheOuterMember) {
    const Planned chest(oneOpening(in(12, 40), in(5))); // frame 1 1/2, overlays 1/4
    ASSERT_EQ(chest.plan.stops.size(), 4U);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(chest.plan.stops[i].front, 0U);
        EXPECT_EQ(chest.plan.stops[i].side, allSides[i]);
        EXPECT_EQ(chest.plan.stops[i].fromFarEdge, in(1, 16));
        EXPECT_EQ(chest.plan.stops[i].fromOpening, in(0, 16));
    }
}

TEST(Stop, IsOnlyAtOuterMembersAndNotWhereTheFrontIsInset) {
    const Planned chest(
        withChoices(bank(3), 1, [](FrontChoices& c) { c.fit.left = inset(in(0, 6)); }));
    // Left and right of three fronts, top of the first, bottom of the last, less the inset one.
    EXPECT_EQ(chest.plan.stops.size(), 7U);
    for (const Stop& stop : chest.plan.stops) {
        EXPECT_FALSE(stop.front == 1 && stop.side == Side::Left);
        EXPECT_LE(chest.plan.fronts[stop.front].neighbours[stop.side].member, 3U) << "outer";
    }
}

TEST(Reveal, IsWhatShowsOfTheMemberBetweenTheFronts) {
    const Planned chest(bank(2));
    EXPECT_EQ(chest.beside(0, Side::Bottom).reveal, (Reveal{in(0, 48), in(0, 48)}));
    EXPECT_TRUE(chest.beside(0, Side::Bottom).hasFronts);
}

TEST(Reveal, OfAnOuterMemberIsWhatItsFrontsLeave) {
    const Planned chest(
        withChoices(bank(3), 2, [](FrontChoices& c) { c.fit.left = overlay(in(0, 40)); }));
    EXPECT_EQ(chest.beside(0, Side::Left).reveal, (Reveal{in(0, 56), in(1, 16)}));
    EXPECT_EQ(chest.beside(0, Side::Right).reveal, (Reveal{in(1, 16), in(1, 16)}));
}

TEST(Reveal, IsLeastAndGreatestAlongTheMember) {
    const Planned chest(tallBesideTwo(overlay(in(0, 16)), overlay(in(0, 32))));
    EXPECT_EQ(chest.beside(0, Side::Right).reveal, (Reveal{in(1, 16), in(1, 32)}));
}

TEST(Reveal, IsTheWholeMemberBetweenInsetFronts) {
    const Planned chest(sideBySide(inset(in(0, 4)), inset(in(0, 4)), in(2)));
    EXPECT_EQ(chest.beside(0, Side::Right).reveal, (Reveal{in(2), in(2)}));
}

TEST(Reveal, IsNegativeWhereFrontsOverlap) {
    const Planned chest(sideBySide(overlay(in(1)), overlay(in(1, 16)), in(2)));
    EXPECT_EQ(chest.beside(0, Side::Right).reveal.least, -in(0, 16));
}

TEST(Neighbour, IsTheFacingFrontAndTheGapToIt) {
    const Planned chest(bank(2));
    const Neighbour& below = chest.front(0).neighbours.bottom;
    EXPECT_EQ(below.front, 1U);
    EXPECT_EQ(below.gap, in(0, 48));
    EXPECT_EQ(chest.front(1).neighbours.top.front, 0U);
    EXPECT_EQ(chest.front(1).neighbours.top.gap, in(0, 48));
}

TEST(Neighbour, IsNoneAtAnOuterMember) {
    const Planned chest(bank(2));
    const Neighbour& left = chest.front(0).neighbours.left;
    EXPECT_FALSE(left.front.has_value());
    EXPECT_EQ(left.gap, in(1, 16)) << "to the member's far edge: 1 1/2 − 1/4";
    EXPECT_EQ(chest.plan.members[left.member].id, leftStile);
    EXPECT_EQ(chest.plan.members[chest.front(0).neighbours.top.member].id, topRail);
}

TEST(Neighbour, IsTheNearestOfSeveral) {
    const Planned lowerNearer(tallBesideTwo(overlay(in(0, 16)), overlay(in(0, 32))));
    EXPECT_EQ(lowerNearer.front(0).neighbours.right.front, 2U);
    EXPECT_EQ(lowerNearer.front(0).neighbours.right.gap, in(1, 16));
    const Planned upperNearer(tallBesideTwo(overlay(in(0, 32)), overlay(in(0, 16))));
    EXPECT_EQ(upperNearer.front(0).neighbours.right.front, 1U);
    EXPECT_EQ(upperNearer.front(0).neighbours.right.gap, in(1, 16));
}

TEST(Neighbour, OfEquallyNearOnesIsTheOneAlongTheLongestStretch) {
    // The lower opening has twice the share of height.
    const Planned chest(tallBesideTwo(overlay(in(0, 16)), overlay(in(0, 16))));
    EXPECT_EQ(chest.front(0).neighbours.right.front, 2U);
}

TEST(Neighbour, OfAnInsetSideHasItsGapInsideTheOpening) {
    const Planned chest(sideBySide(inset(in(0, 6)), overlay(in(0, 16)), in(2)));
    EXPECT_EQ(chest.front(0).neighbours.right.gap, in(0, 6));
    EXPECT_EQ(chest.front(0).neighbours.right.front, 1U);
    EXPECT_EQ(chest.front(1).neighbours.left.front, 0U);
    EXPECT_EQ(chest.front(1).neighbours.left.gap, in(1, 48)) << "to the stile's far edge";
}

TEST(Neighbour, IsNoneAcrossACorner) {
    // Dividers above and below the rail do not line up; each lower opening faces what lies over it.
    const RegionPtr upper = columns({share(opening(), 1), share(opening(), 3)}, in(2));
    const RegionPtr lower = columns({share(opening(), 3), share(opening(), 1)}, in(2));
    const Planned chest(projectWith(rows({share(upper), share(lower)}, in(1)), in(40), in(20)));
    EXPECT_EQ(chest.front(0).neighbours.bottom.front, 2U);
    EXPECT_EQ(chest.front(1).neighbours.bottom.front, 2U) << "longer stretch than over front 3";
    EXPECT_EQ(chest.front(3).neighbours.top.front, 1U);
    EXPECT_EQ(chest.plan.spacers.size(), 5U) << "two dividers, three pairs across the rail";
}

} // namespace
} // namespace frontwright
