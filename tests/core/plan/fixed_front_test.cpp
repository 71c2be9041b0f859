#include "core/plan/quantity.h"
#include "tests/core/plan/faced.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

// A front over an opening of 13 × 6 between members of 1 1/2 in a frame of 3/4; No. 8 screws set
// 1/8 deep with a tool of 5/8. A screw keeps 25/64 from an edge of the front, 50/64 from an end,
// and its recess 20/64 from a member's edges.
namespace frontwright {
namespace {

using testing::in;

using namespace frontwright::testing;

TEST(AFixedFront, HasItsScrewsWhereItOverlapsTheFrame) {
    const Planned sink(fixedFronts(bank(1), in(1)));
    const FrontPlan& front = sink.front(0);
    ASSERT_EQ(front.rect.width(), in(15));
    // Bottom and top: from 25/64 to 44/64 from the front's edge, 1/2 in the middle. Left and right:
    // from 50/64 to 44/64, nothing, so as near to the ends as the grid lets them, 7/8.
    const std::vector<WallPoint> expected{{in(0, 56), in(0, 32)},
                                          {in(14, 8), in(0, 32)},
                                          {in(0, 56), in(7, 32)},
                                          {in(14, 8), in(7, 32)}};
    ASSERT_EQ(front.mounting.holes.size(), 4U);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(front.mounting.holes[i].at, expected[i]);
        EXPECT_TRUE(front.mounting.holes[i].allowed);
    }
}

TEST(AFixedFront, StandsInTheMiddleOfWideStrips) {
    // 1 1/4 at the sides: from 50/64 to 60/64, middle 55/64: 7/8 lies in it.
    const Planned sink(fixedFronts(bank(1), in(1, 16)));
    EXPECT_EQ(sink.front(0).mounting.holes[0].at, (WallPoint{in(0, 56), in(0, 40)}));
}

TEST(AFixedFront, IsScrewedThroughTheFrame) {
    const Planned sink(fixedFronts(bank(1), in(1)));
    const MountingPlan& mounting = sink.front(0).mounting;
    EXPECT_EQ(mounting.wall, in(0, 48));
    EXPECT_EQ(mounting.leastLength, in(1));        // 3/4 − 1/8 + 3/8
    EXPECT_EQ(mounting.greatestLength, in(1, 16)); // 3/4 − 1/8 + 3/4 − 1/8
    EXPECT_EQ(mounting.length, in(1, 16));
    EXPECT_EQ(mounting.holes[0].penetration, in(0, 40)); // 1 1/4 + 1/8 − 3/4
    EXPECT_EQ(mounting.holes[0].tipCover, in(0, 8));
}

TEST(AFixedFront, HasItsHandleBoltedThroughTheFrontAlone) {
    const Planned sink(fixedFronts(bank(1), in(1)));
    ASSERT_TRUE(sink.front(0).hardware);
    EXPECT_EQ(sink.front(0).hardware->chosenWay().grip, in(0, 48));
    // So that its screws bear the pull on the handle.
    EXPECT_TRUE(sink.front(0).holding->holes[0].pull);
}

// However the drawers' handles are held: behind this front there is no wall. A head that nothing
// lies behind needs no counterbore; where the maker wants it sunk, it is in the front.
TEST(AFixedFront, HoldsItsHandleInTheFrontOnlyWhateverIsChosen) {
    for (const MountingWay way : allMountingWays) {
        Project project = fixedFronts(bank(1), in(1));
        project.fronts.hardware.way = way;
        const Planned sink(project);
        const HardwarePlan& hardware = *sink.front(0).hardware;
        EXPECT_EQ(hardware.chosen, MountingWay::FrontCounterbore);
        for (const WayPlan& each : hardware.ways)
            EXPECT_EQ(each, hardware.chosenWay());
        EXPECT_EQ(hardware.chosenWay().throughWood, in(0, 48));
        EXPECT_EQ(hardware.chosenWay().counterbore.isZero(), way != MountingWay::FrontCounterbore);
        project.fronts.hardware.counterbore = in(0, 8);
        EXPECT_EQ(Planned(project).front(0).hardware->chosenWay().grip, in(0, 40));
    }
}

TEST(AFixedFront, ExplainsItsNumbersWithoutABox) {
    const Planned sink(fixedFronts(bank(1), in(1)));
    const auto told = [&](QuantityKind kind) {
        return derive(sink.project, sink.plan, {kind, 0}, {Unit::Inch, 16});
    };
    EXPECT_FALSE(told(QuantityKind::BoxWidth));
    EXPECT_FALSE(told(QuantityKind::LeastHoleHeight));
    EXPECT_EQ(told(QuantityKind::BoltGrip)->figures.english(), "3/4 in − 0 in = 3/4 in");
    EXPECT_EQ(told(QuantityKind::HoleX)->formula.english(),
              "where front and members meet, from the front's left edge");
}

TEST(AFixedFront, HasNoScrewsWhereItsOverlaysAreNarrow) {
    // 25/64 + 20/64 = 45/64 is the least, at bottom and top.
    EXPECT_TRUE(Planned(fixedFronts(bank(1), in(0, 44))).front(0).mounting.holes.empty());
    EXPECT_EQ(Planned(fixedFronts(bank(1), in(0, 45))).front(0).mounting.holes.size(), 4U);
}

TEST(AFixedFront, HasNoScrewsInAFramelessCase) {
    Project project = fixedFronts(bank(1), in(1));
    project.casework.construction = Construction::Frameless;
    const Planned sink(std::move(project));
    EXPECT_TRUE(sink.front(0).mounting.holes.empty());
    EXPECT_TRUE(sink.front(0).hardware);
}

TEST(AFixedFront, FindsNoWoodWhereNoMemberIsBuilt) {
    // Two over one opening: none at the rail that is not there.
    const Planned sink(fixedFronts(faced(bank(2)), in(0, 45)));
    for (const FrontPlan& front : sink.plan.fronts)
        for (const MountingHole& hole : front.mounting.holes) {
            const Length y = front.box.origin.y + hole.at.y;
            EXPECT_TRUE(y < in(1, 32) || y > in(14, 48)) << y.inMillimetres();
        }
    EXPECT_EQ(sink.front(0).mounting.holes.size(), 2U);
}

TEST(AFixedFront, CarriesNoBoxAndNoContents) {
    Project project = fixedFronts(bank(1), in(1));
    project.fronts.stock.species = "oak";
    const Planned sink(std::move(project));
    EXPECT_TRUE(sink.front(0).load.front);
    EXPECT_FALSE(sink.front(0).load.box);
    EXPECT_EQ(sink.plan.load.contents, Mass());
}

} // namespace
} // namespace frontwright
