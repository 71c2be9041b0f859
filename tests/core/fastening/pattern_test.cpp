#include "core/fastening/pattern.h"

#include "tests/core/fastening/walls.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::mm;

using testing::handleWith;
using testing::Mounted;
using testing::pointsOf;
using Points = std::vector<WallPoint>;

/// A wall of 400 by 120 mm; screws are allowed 20 mm from its sides, from 23 to 105 mm up.
class Pattern : public ::testing::Test {
protected:
    WallRegion allowed{{mm(20), mm(23), mm(380), mm(105)}, {}, {}};
    Length grid = mm(5);
    Length leastBetween = mm(11);
    MountingSpec spec;

    Points placed() { return placePattern(spec, {mm(400), mm(120), allowed, grid, leastBetween}); }
};

TEST_F(Pattern, OfFourFillsTheAllowedPlaceOnTheGridOfTheWallsEdges) {
    // Lower row 23 → 25; upper row 15 below the edge is on the grid: 105.
    EXPECT_EQ(placed(),
              (Points{{mm(20), mm(25)}, {mm(380), mm(25)}, {mm(20), mm(105)}, {mm(380), mm(105)}}));
}

TEST_F(Pattern, OfSixHasAMiddleInBothRows) {
    spec.pattern = ScrewPattern::Six;
    EXPECT_EQ(placed(), (Points{{mm(20), mm(25)},
                                {mm(200), mm(25)},
                                {mm(380), mm(25)},
                                {mm(20), mm(105)},
                                {mm(200), mm(105)},
                                {mm(380), mm(105)}}));
}

TEST_F(Pattern, IsAlikeOnBothSidesWhereOneNeedsMoreRoom) {
    allowed.outer.right = mm(372); // 28 from the right: 30 on both sides
    EXPECT_EQ(placed()[0].x, mm(30));
    EXPECT_EQ(placed()[1].x, mm(370));
}

TEST_F(Pattern, KeepsWhatIsTypedAlsoWhereItIsNotAllowed) {
    spec.fromSides = mm(13);
    spec.fromBottom = mm(7);
    spec.fromTop = mm(2);
    EXPECT_EQ(placed(),
              (Points{{mm(13), mm(7)}, {mm(387), mm(7)}, {mm(13), mm(118)}, {mm(387), mm(118)}}));
}

TEST_F(Pattern, ComputesWhatIsNotTyped) {
    spec.fromBottom = mm(31);
    EXPECT_EQ(placed()[0], (WallPoint{mm(20), mm(31)}));
    EXPECT_EQ(placed()[2], (WallPoint{mm(20), mm(105)}));
}

TEST_F(Pattern, ByHandIsKeptInItsOrder) {
    spec.pattern = ScrewPattern::ByHand;
    spec.placed = {{mm(300), mm(50)}, {mm(10), mm(10)}, {mm(-5), mm(200)}};
    EXPECT_EQ(placed(), spec.placed);
    spec.placed.clear();
    EXPECT_TRUE(placed().empty());
}

TEST_F(Pattern, HasOneRowInAShallowWall) {
    allowed.outer.top = mm(33); // rows 25 and 30 would be nearer than 11 mm
    // Middle of 23 … 33 is 28; on the grid 30.
    EXPECT_EQ(placed(), (Points{{mm(20), mm(30)}, {mm(380), mm(30)}}));
    spec.pattern = ScrewPattern::Six;
    EXPECT_EQ(placed().size(), 3u);
}

TEST_F(Pattern, HasOneRowInTheMiddleOfWhatIsMissingWhereNothingIsAllowed) {
    allowed.outer.top = mm(17); // 23 … 17
    EXPECT_EQ(placed(), (Points{{mm(20), mm(20)}, {mm(380), mm(20)}}));
}

TEST_F(Pattern, HasOnlyTheTypedRowWhereTheOtherWouldCrowdIt) {
    spec.fromTop = mm(90); // 30 mm up; the computed lower row would be at 25
    EXPECT_EQ(placed(), (Points{{mm(20), mm(30)}, {mm(380), mm(30)}}));
    spec.fromBottom = mm(25); // both typed: both kept
    EXPECT_EQ(placed().size(), 4u);
    spec.fromBottom = mm(30); // the same row twice is one row
    EXPECT_EQ(placed().size(), 2u);
}

TEST_F(Pattern, HasOneColumnInANarrowWall) {
    allowed.outer.left = mm(197);
    allowed.outer.right = mm(203);
    EXPECT_EQ(placed(), (Points{{mm(200), mm(25)}, {mm(200), mm(105)}}));
}

TEST_F(Pattern, MovesACornerAlongItsRowPastAHoleInTheWay) {
    // Disc round 30, 25 with radius 17: from 13 to 47 on the lower row; the next of the grid is 50.
    allowed.withoutDiscs = {{{mm(30), mm(25)}, mm(17)}};
    EXPECT_EQ(placed(),
              (Points{{mm(50), mm(25)}, {mm(380), mm(25)}, {mm(20), mm(105)}, {mm(380), mm(105)}}));
}

TEST_F(Pattern, MovesTheRightCornerTowardsTheLeft) {
    // Half chord at 5 above the centre: √(13² − 5²) = 12: from 378 − 12 = 366, the next is 365.
    allowed.withoutDiscs = {{{mm(378), mm(20)}, mm(13)}};
    EXPECT_EQ(placed()[1], (WallPoint{mm(365), mm(25)}));
}

TEST_F(Pattern, MovesPastSeveralHolesOneAfterTheOther) {
    allowed.withoutDiscs = {{{mm(50), mm(25)}, mm(20)}, {{mm(25), mm(25)}, mm(10)}};
    EXPECT_EQ(placed()[0], (WallPoint{mm(70), mm(25)}));
}

TEST_F(Pattern, LeavesACornerWhereTheRowHasNoRoomUpToTheMiddle) {
    allowed.withoutDiscs = {{{mm(100), mm(25)}, mm(150)}};
    EXPECT_EQ(placed()[0], (WallPoint{mm(20), mm(25)}));
}

TEST_F(Pattern, DoesNotMoveTypedColumns) {
    spec.fromSides = mm(30);
    allowed.withoutDiscs = {{{mm(30), mm(25)}, mm(17)}};
    EXPECT_EQ(placed()[0], (WallPoint{mm(30), mm(25)}));
}

TEST_F(Pattern, MovesAMiddleScrewToTheNearerFreePlace) {
    spec.pattern = ScrewPattern::Six;
    allowed.withoutDiscs = {{{mm(190), mm(105)}, mm(24)}}; // 166 … 214 of the upper row
    EXPECT_EQ(placed()[1], (WallPoint{mm(200), mm(25)}));
    EXPECT_EQ(placed()[4], (WallPoint{mm(215), mm(105)}));
    allowed.withoutDiscs = {{{mm(200), mm(105)}, mm(24)}}; // as near on both sides: to the left
    EXPECT_EQ(placed()[4], (WallPoint{mm(175), mm(105)}));
}

TEST(MountingPattern, IsOnEighthsWhereTheFrontIsMadeInInches) {
    // From the sides 7/8 in; up 7/8 in; below the edge 3/8 in.
    EXPECT_EQ(pointsOf(Mounted{}.plan()), (Points{{Length::inches(0, 56), Length::inches(0, 56)},
                                                  {Length::inches(11, 8), Length::inches(0, 56)},
                                                  {Length::inches(0, 56), Length::inches(4, 40)},
                                                  {Length::inches(11, 8), Length::inches(4, 40)}}));
}

TEST(MountingPattern, IsOnMillimetresWhereTheFrontIsMadeInMillimetres) {
    // From the sides 22.225 → 23 mm; up 22.225 → 23; below the edge 9.525 → 10: 127 − 10 = 117.
    Mounted mounted;
    mounted.thickness = mm(19);
    const Points points = pointsOf(mounted.plan());
    EXPECT_EQ(points.at(0), (WallPoint{mm(23), mm(23)}));
    EXPECT_EQ(points.at(3), (WallPoint{Length::inches(12) - mm(23), mm(117)}));
}

TEST(MountingPattern, TakesTheGridThatTheCallerNames) {
    const Mounted mounted;
    MountingPlace place = mounted.place();
    place.rowGrid = Length::inches(0, 32);
    const MountingPlan plan = planMounting(mounted.spec, mounted.screw, mounted.limits, place);
    EXPECT_EQ(plan.holes.at(0).at, (WallPoint{Length::inches(1), Length::inches(1)}));
}

TEST(MountingPattern, LiesInTheAllowedRegionWhereverThatHasRoom) {
    for (std::int64_t w = 300; w < 900; w += 37)
        for (std::int64_t h = 160; h < 500; h += 41)
            for (MountingWay way : allMountingWays) {
                Mounted mounted;
                const Length width = Length::fromSixtyFourths(w),
                             height = Length::fromSixtyFourths(h);
                mounted.wall =
                    testing::box(width, height, {Length::inches(0, 32), Length::inches(0, 32)});
                mounted.front =
                    FrontRect::atOrigin(width + Length::inches(1), height + Length::inches(1));
                mounted.hardware = handleWith({mounted.front.centre()}, way);
                mounted.profile = {
                    ProfileFamily::Round, Length::inches(0, 56), Length::inches(0, 24), {}};
                mounted.spec.pattern = ScrewPattern::Six;
                const MountingPlan plan = mounted.plan();
                for (const MountingHole& hole : plan.holes)
                    EXPECT_TRUE(hole.allowed) << w << " by " << h;
                EXPECT_TRUE(plan.length.has_value());
            }
}

} // namespace
} // namespace frontwright
