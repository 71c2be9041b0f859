// What stands round a case, and how far it lets the fronts reach.

#include "core/case/surroundings.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::mm;

TEST(AnEdgeLimit, IsTheWallsDistanceFromTheCase) {
    EXPECT_EQ(edgeLimit(Wall{mm(2), mm(3)}), (EdgeLimit{mm(2), mm(3)}));
}

TEST(AnEdgeLimit, IsTheNeighboursFrontNotItsCase) {
    // The case stands 1 mm away, and its front keeps 1.5 mm inside its own edge.
    const NeighbouringCase next{mm(1), Length::fromMicrometres(1'500), mm(3)};
    EXPECT_EQ(edgeLimit(next)->obstacle, Length::fromMicrometres(2'500));
}

TEST(AnEdgeLimit, LiesInsideTheCaseWhereAMouldingCoversIt) {
    EXPECT_EQ(edgeLimit(Moulding{mm(20), mm(12), mm(2)}), (EdgeLimit{mm(-20), mm(2)}));
}

TEST(AnEdgeLimit, IsTheTopsUndersideWhereTheTopReachesOverTheFronts) {
    EXPECT_EQ(edgeLimit(OverhangingTop{mm(30), mm(25), mm(10), {}, mm(3)})->obstacle, Length{});
    EXPECT_EQ(edgeLimit(OverhangingTop{mm(30), mm(25), mm(10), mm(10), mm(3)})->obstacle, mm(-10));
    EXPECT_EQ(edgeLimit(OverhangingTop{mm(30), {}, {}, {}, mm(3)}), std::nullopt);
}

TEST(AnEdgeLimit, IsNoneWherePlinthAndLegsStayBehindTheFronts) {
    EXPECT_EQ(edgeLimit(OpenSide{}), std::nullopt);
    EXPECT_EQ(edgeLimit(Plinth{mm(100), mm(50), {}, mm(3)}), std::nullopt);
    EXPECT_EQ(edgeLimit(Legs{mm(120), mm(40), mm(30)}), std::nullopt);
    EXPECT_EQ(edgeLimit(Plinth{mm(100), {}, mm(15), mm(3)}), (EdgeLimit{mm(-15), mm(3)}));
}

TEST(Surroundings, AddTheTopAboveAndAtTheSidesAndThePlinthBelow) {
    Surroundings round;
    round.top = OverhangingTop{mm(30), mm(25), mm(10), {}, mm(3)};
    round.bottom = Plinth{mm(100), mm(50), {}, mm(3)};
    EXPECT_EQ(standingOut(round), (PerSide<Length>{mm(10), mm(10), mm(100), mm(30)}));
    round.left = Wall{mm(2), mm(3)}; // no room for more than 2 of 10
    EXPECT_EQ(standingOut(round), (PerSide<Length>{mm(2), mm(10), mm(100), mm(30)}));
    round.bottom = Legs{mm(120), mm(40), mm(30)};
    EXPECT_EQ(standingOut(round).bottom, mm(120));
    EXPECT_EQ(standingOut({}), PerSide<Length>{});
}

TEST(Surroundings, StandWhereTheyCan) {
    EXPECT_TRUE(canStandAt(Side::Top, SurroundKind::OverhangingTop));
    EXPECT_TRUE(canStandAt(Side::Left, SurroundKind::Wall));
    EXPECT_TRUE(canStandAt(Side::Bottom, SurroundKind::Plinth));
    EXPECT_FALSE(canStandAt(Side::Left, SurroundKind::Plinth));
    EXPECT_FALSE(canStandAt(Side::Bottom, SurroundKind::OverhangingTop));
    EXPECT_FALSE(canStandAt(Side::Top, SurroundKind::Legs));
    for (const Side side : allSides)
        EXPECT_EQ(kindsAt(side).front(), SurroundKind::OpenSide);
}

TEST(ASurround, HasTheLengthsOfItsKind) {
    Surround top = surroundOf(SurroundKind::OverhangingTop);
    ASSERT_NE(lengthOf(top, SurroundMeasure::Lip), nullptr);
    *lengthOf(top, SurroundMeasure::Lip) = mm(10);
    EXPECT_EQ(std::get<OverhangingTop>(top).lip.length, mm(10));
    EXPECT_EQ(lengthOf(top, SurroundMeasure::Width), nullptr);
    EXPECT_EQ(lengthOf(Surround{Legs{}}, SurroundMeasure::Gap), nullptr);
}

TEST(EveryKindOfSurround, IsMadeAsItself) {
    for (std::size_t i = 0; i < surroundKinds; ++i) {
        const auto kind = static_cast<SurroundKind>(i);
        EXPECT_EQ(kindOf(surroundOf(kind)), kind);
        for (const Unit unit : {Unit::Inch, Unit::Millimetre})
            EXPECT_EQ(kindOf(usualSurround(kind, unit)), kind);
    }
}

} // namespace
} // namespace frontwright
