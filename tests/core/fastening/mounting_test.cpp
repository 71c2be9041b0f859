#include "core/fastening/mounting.h"

#include "tests/core/fastening/walls.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <random>

namespace frontwright {
namespace {

using testing::handleWith;
using testing::Mounted;
using testing::pointsOf;

WallPoint at(Length x, Length y) {
    return {x, y};
}
const Length middle = Length::inches(6);

// The classic of the trade (common practice, no source): the bottom's top lies 1/2 in up.
TEST(ScrewHoleOverTheBottom, DrillsIntoThePanelAtHalfAnInch) {
    Mounted mounted;
    const WallPoint p = at(middle, Length::inches(0, 32));
    EXPECT_EQ(mounted.obstacle(p), Obstacle::Bottom);
    EXPECT_FALSE(mounted.holeAt(p).allowed);
}
TEST(ScrewHoleOverTheBottom, ClearsItAtThreeQuartersButItsRecessCannotBeCut) {
    Mounted mounted;
    const WallPoint p = at(middle, Length::inches(0, 48));
    EXPECT_EQ(mounted.obstacle(p), Obstacle::RecessTool);
    EXPECT_FALSE(mounted.holeAt(p).allowed);
}
TEST(ScrewHoleOverTheBottom, IsAllWellAtOneInch) {
    Mounted mounted;
    const WallPoint p = at(middle, Length::inches(1));
    EXPECT_EQ(mounted.obstacle(p), Obstacle::None);
    EXPECT_TRUE(mounted.holeAt(p).allowed);
}
TEST(ScrewHoleOverTheBottom, KeepsItsMarginWhereTheToolIsSmall) {
    Mounted mounted;
    mounted.spec.toolDiameter = Length{};
    // Head radius 0.166: clear of the panel from 0.666 in, with its margin from 0.791 in.
    EXPECT_EQ(mounted.obstacle(at(middle, Length::inches(0, 48))), Obstacle::Bottom);
    EXPECT_EQ(mounted.obstacle(at(middle, Length::inches(0, 51))), Obstacle::None);
}

TEST(MountingPlan, TellsTheLeastHeightsOverTheBottom) {
    const MountingPlan plan = Mounted{}.plan();
    EXPECT_EQ(plan.leastHeight, Length::inches(0, 56));                       // 1/2 + 3/8
    EXPECT_EQ(plan.leastHeightForHole, Length::fromNanometres(791 * 25'400)); // 0.5 + 0.166 + 0.125
}

TEST(MountingPlan, TellsTheDrills) {
    const Mounted mounted;
    EXPECT_EQ(mounted.plan().clearanceHole, mounted.screw.clearanceHole);
    EXPECT_EQ(mounted.plan().pilotHole, mounted.screw.pilotHole);
    EXPECT_EQ(mounted.plan().screw, &mounted.screw);
}

TEST(MountingPlan, NamesTheScrewThatIsNotInTheCatalogue) {
    Mounted mounted;
    Catalogue catalogue;
    catalogue.woodScrews = {mounted.screw};
    const auto found = planMounting(mounted.spec, catalogue, mounted.limits, mounted.place());
    ASSERT_TRUE(found.ok());
    EXPECT_EQ(found.value().screw, &catalogue.woodScrews[0]);
    EXPECT_EQ(found.value().holes, mounted.plan().holes);

    mounted.spec.screw = "wood-screw-99";
    const auto missing = planMounting(mounted.spec, catalogue, mounted.limits, mounted.place());
    ASSERT_FALSE(missing.ok());
    EXPECT_EQ(missing.error().what, "there is no wood screw \"wood-screw-99\" in the catalogue");
    EXPECT_EQ(testing::untold(missing.error().sentence(), {"mounting", "screw", "wood"}),
              std::vector<std::string>{});
}

TEST(Obstacle, IsTheSideWhereTheToolWouldMeetIt) {
    // 1/2 in side + 3/8 in tool
    const Mounted mounted;
    const Length y = Length::inches(2);
    EXPECT_EQ(mounted.obstacle(at(Length::inches(0, 55), y)), Obstacle::BoxSide);
    EXPECT_EQ(mounted.obstacle(at(Length::inches(0, 56), y)), Obstacle::None);
    EXPECT_EQ(mounted.obstacle(at(Length::inches(11, 8), y)), Obstacle::None);
    EXPECT_EQ(mounted.obstacle(at(Length::inches(11, 9), y)), Obstacle::BoxSide);
}

TEST(Obstacle, IsTheUpperEdgeWhereTheToolWouldLeaveTheWall) {
    const Mounted mounted;
    EXPECT_EQ(mounted.obstacle(at(middle, Length::inches(4, 40))), Obstacle::None);
    EXPECT_EQ(mounted.obstacle(at(middle, Length::inches(4, 41))), Obstacle::TopEdge);
}

TEST(Obstacle, IsTheHandlesHoleWithinItsDisc) {
    Mounted mounted;
    mounted.hardware =
        handleWith({{Length::inches(6, 32), Length::inches(3)}}, MountingWay::ThroughWall);
    // Radius 46/64 in round 6 in, 2 1/2 in.
    EXPECT_EQ(mounted.obstacle(at(middle, Length::inches(2, 32))), Obstacle::HardwareHole);
    EXPECT_EQ(mounted.obstacle(at(middle + Length::inches(0, 45), Length::inches(2, 32))),
              Obstacle::HardwareHole);
    EXPECT_EQ(mounted.obstacle(at(middle + Length::inches(0, 46), Length::inches(2, 32))),
              Obstacle::None);
    mounted.hardware->chosen = MountingWay::FrontAccessHole;
    EXPECT_EQ(mounted.obstacle(at(middle, Length::inches(2, 32))), Obstacle::AccessHole);
    mounted.hardware->chosen = MountingWay::FrontCounterbore;
    EXPECT_EQ(mounted.obstacle(at(middle, Length::inches(2, 32))), Obstacle::HardwareHole);
}

TEST(Obstacle, IsTheThinRimAlsoWhereThereIsNoFrontAtAll) {
    Mounted mounted;
    mounted.profile = {ProfileFamily::Chamfer, Length::inches(4), Length::inches(0, 32), {}};
    // 1/2 in of 3/4 is there from 2 in on the front: 1 1/2 in on the wall.
    EXPECT_EQ(mounted.obstacle(at(Length::inches(1, 31), Length::inches(2))), Obstacle::ThinRim);
    EXPECT_EQ(mounted.obstacle(at(Length::inches(1, 33), Length::inches(2))), Obstacle::None);
    mounted.front = FrontRect::atOrigin(Length::inches(5), Length::inches(6));
    EXPECT_EQ(mounted.obstacle(at(Length::inches(8), Length::inches(2))), Obstacle::ThinRim);
    mounted.thickness = Length::inches(0, 20);
    EXPECT_EQ(mounted.obstacle(at(Length::inches(2), Length::inches(2))), Obstacle::ThinRim);
}

TEST(Obstacle, IsTheGravestWhereSeveralAre) {
    Mounted mounted;
    mounted.profile = {ProfileFamily::Chamfer, Length::inches(4), Length::inches(0, 32), {}};
    mounted.hardware =
        handleWith({{Length::inches(6, 32), Length::inches(1, 24)}}, MountingWay::ThroughWall);
    // Corner: panel, side, thin rim.
    EXPECT_EQ(mounted.obstacle(at(Length::inches(0, 8), Length::inches(0, 8))), Obstacle::Bottom);
    // Side and thin rim.
    EXPECT_EQ(mounted.obstacle(at(Length::inches(0, 8), Length::inches(2))), Obstacle::ThinRim);
    // Handle's hole (at 7/8 in) and tool over the bottom.
    mounted.profile = {};
    EXPECT_EQ(mounted.obstacle(at(middle, Length::inches(0, 54))), Obstacle::HardwareHole);
    // Side and upper edge.
    EXPECT_EQ(mounted.obstacle(at(Length::inches(0, 8), Length::inches(4, 60))), Obstacle::BoxSide);
}

/// Any box, front and handle, in 64ths of an inch.
Mounted byChance(std::mt19937_64& dice) {
    const auto between = [&](std::int64_t low, std::int64_t high) {
        return Length::fromSixtyFourths(
            low + static_cast<std::int64_t>(dice() % static_cast<std::uint64_t>(high - low + 1)));
    };
    Mounted mounted;
    mounted.wall =
        testing::box(between(200, 900), between(100, 500), {between(-20, 60), between(-20, 60)});
    mounted.front = FrontRect::atOrigin(between(200, 1'000), between(100, 600));
    mounted.spec.toolDiameter = between(0, 64);
    mounted.spec.pattern = dice() % 2 ? ScrewPattern::Six : ScrewPattern::FourCorners;
    mounted.profile = {
        static_cast<ProfileFamily>(dice() % 6), between(10, 120), between(4, 30), {}};
    mounted.profile.sides = {dice() % 2 == 0, dice() % 2 == 0, dice() % 2 == 0, dice() % 2 == 0};
    if (dice() % 4)
        mounted.hardware =
            handleWith({{between(0, 900), between(0, 500)}, {between(0, 900), between(0, 500)}},
                       allMountingWays[dice() % 3]);
    return mounted;
}

TEST(AllowedRegion, IsWhereNothingIsInTheWay) {
    std::mt19937_64 dice(20'240);
    for (int i = 0; i < 60; ++i) {
        const Mounted mounted = byChance(dice);
        const MountingPlan plan = mounted.plan();
        for (std::int64_t x = -20; x < 940; x += 23)
            for (std::int64_t y = -20; y < 540; y += 17) {
                const WallPoint p{Length::fromSixtyFourths(x), Length::fromSixtyFourths(y)};
                const Obstacle obstacle =
                    obstacleAt(mounted.spec, plan, mounted.limits, mounted.place(), p);
                EXPECT_EQ(plan.allowed.contains(p), obstacle == Obstacle::None)
                    << i << ": " << x << ", " << y;
            }
    }
}

TEST(AllowedRegion, HasWoodEnoughForLeastPenetrationAndCover) {
    std::mt19937_64 dice(20'241);
    for (int i = 0; i < 60; ++i) {
        const Mounted mounted = byChance(dice);
        const MountingPlan plan = mounted.plan();
        for (std::int64_t x = 0; x < 940; x += 29)
            for (std::int64_t y = 0; y < 540; y += 19) {
                const WallPoint p{Length::fromSixtyFourths(x), Length::fromSixtyFourths(y)};
                if (plan.allowed.contains(p)) {
                    EXPECT_GE(localThickness(mounted.profile, mounted.front, mounted.thickness,
                                             toFront(mounted.wall, p)),
                              Length::inches(0, 32));
                }
            }
    }
}

/// The same seen from inside the box: everything exchanged left to right.
Mounted mirrored(Mounted mounted) {
    const Length width = mounted.front.width();
    mounted.wall.wallOnFront.x = width - mounted.wall.wallOnFront.x - mounted.wall.width;
    std::swap(mounted.profile.sides.left, mounted.profile.sides.right);
    if (mounted.hardware)
        for (FrontPoint& hole : mounted.hardware->holes)
            hole.x = width - hole.x;
    return mounted;
}

TEST(AllowedRegion, IsMirroredWithTheWall) {
    std::mt19937_64 dice(20'242);
    for (int i = 0; i < 200; ++i) {
        const Mounted mounted = byChance(dice);
        const WallRegion here = mounted.plan().allowed, there = mirrored(mounted).plan().allowed;
        const Length width = mounted.wall.width;
        ASSERT_EQ(here.outer.isEmpty(), there.outer.isEmpty());
        if (!here.outer.isEmpty()) {
            EXPECT_EQ(there.outer.left, width - here.outer.right);
            EXPECT_EQ(there.outer.right, width - here.outer.left);
            EXPECT_EQ(there.outer.bottom, here.outer.bottom);
            EXPECT_EQ(there.outer.top, here.outer.top);
        }
        ASSERT_EQ(there.withoutDiscs.size(), here.withoutDiscs.size());
        for (std::size_t d = 0; d < here.withoutDiscs.size(); ++d) {
            EXPECT_EQ(there.withoutDiscs[d].centre,
                      mirroredAcross(mounted.wall, here.withoutDiscs[d].centre));
            EXPECT_EQ(there.withoutDiscs[d].radius, here.withoutDiscs[d].radius);
        }
    }
}

TEST(MountingPlan, IsTheSameForTheSameInput) {
    std::mt19937_64 dice(20'243);
    for (int i = 0; i < 50; ++i) {
        const Mounted mounted = byChance(dice);
        EXPECT_EQ(mounted.plan(), mounted.plan());
        EXPECT_FALSE(pointsOf(mounted.plan()).empty());
    }
}

} // namespace
} // namespace frontwright
