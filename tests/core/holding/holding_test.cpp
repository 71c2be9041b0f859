#include "core/holding/holding.h"

#include "core/holding/withdrawal.h"
#include "tests/core/catalogue/program_catalogue.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

namespace frontwright {
namespace {

using testing::n64;

using testing::bank;
using testing::Planned;
using testing::thousandths;

/// Openings 13 in × 6 in, oak fronts; the knob bolted to the front alone, at the front's middle.
Project frontOnly() {
    Project project = bank(2);
    project.fronts.stock.species = "oak";
    project.fronts.hardware.way = MountingWay::FrontAccessHole;
    return project;
}

// NDS commentary, least distances of wood screws, from memory: edge 2.5 D; end 5 and 10 D; in a row
// along the grain 10 and 15 D; between rows 3 and 5 D; with a pilot hole and without.
TEST(ScrewDistances, AreMultiplesOfTheShank) {
    const Length shank = Length::millimetres(4);
    const ScrewDistances with = screwDistances(shank, Prebored::Yes);
    EXPECT_EQ(with.toEdge, Length::millimetres(10));
    EXPECT_EQ(with.toEnd, Length::millimetres(20));
    EXPECT_EQ(with.inRow, Length::millimetres(40));
    EXPECT_EQ(with.betweenRows, Length::millimetres(12));
    const ScrewDistances without = screwDistances(shank, Prebored::No);
    EXPECT_EQ(without.toEdge, with.toEdge);
    EXPECT_EQ(without.toEnd, Length::millimetres(40));
    EXPECT_EQ(without.inRow, Length::millimetres(60));
    EXPECT_EQ(without.betweenRows, Length::millimetres(20));
}

TEST(Holding, MeasuresFromTheFrontsOwnEdges) {
    const Planned planned(frontOnly());
    const FrontPlan& front = planned.front(1);
    const HoleHolding& hole = front.holding->holes.at(0); // lower left
    const WallPoint at = front.mounting.holes.at(0).at;
    // clearance at the side 1/16 in, below 1/8 in; overlays 1/4 in
    EXPECT_EQ(hole.toEnd, at.x + n64(4 + 16));
    EXPECT_EQ(hole.toEdge, at.y + n64(8 + 16));
    EXPECT_EQ(front.holding->holes.back().toEnd, hole.toEnd);
}

TEST(Holding, TakesEdgesForEndsWhereTheGrainStandsUpright) {
    Project project = frontOnly();
    project.fronts.stock.grain = Grain::AlongHeight;
    // Two screws 1 in above each other, 2 in right of the first a third at its height; the wall
    // begins 5/16 in from the front's left and 3/8 in above its lower edge.
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    project.fronts.mounting.placed = {
        {n64(64), n64(128)}, {n64(64), n64(192)}, {n64(192), n64(128)}};
    const Planned planned(project);
    const HoldingPlan& holding = *planned.front(1).holding;
    EXPECT_EQ(holding.grain, Grain::AlongHeight);
    EXPECT_EQ(holding.holes[0].toEdge, n64(64 + 20));
    EXPECT_EQ(holding.holes[0].toEnd, n64(128 + 24));
    // In one row along the grain stands what is above, not what is beside.
    EXPECT_EQ(holding.holes[0].toNext, n64(64));
    EXPECT_EQ(holding.holes[2].toNext, std::nullopt);
    project.fronts.stock.grain = Grain::AlongLength;
    const Planned level(project);
    EXPECT_EQ(level.front(1).holding->holes[0].toEdge, n64(128 + 24));
    EXPECT_EQ(level.front(1).holding->holes[0].toEnd, n64(64 + 20));
    EXPECT_EQ(level.front(1).holding->holes[0].toNext, n64(128));
    EXPECT_EQ(level.front(1).holding->holes[1].toNext, std::nullopt);
}

TEST(End, IsWhereTheGrainRunsOut) {
    for (const Side side : {Side::Left, Side::Right}) {
        EXPECT_TRUE(isEnd(side, Grain::AlongLength));
        EXPECT_FALSE(isEnd(side, Grain::AlongHeight));
    }
    for (const Side side : {Side::Bottom, Side::Top}) {
        EXPECT_FALSE(isEnd(side, Grain::AlongLength));
        EXPECT_TRUE(isEnd(side, Grain::AlongHeight));
    }
}

TEST(Holding, CountsTheThreadThatIsInTheFront) {
    const Planned planned(frontOnly());
    const FrontPlan& front = planned.front(1);
    // 1 in + 1/8 in − 1/2 in = 5/8 in, less than two thirds of 1 in.
    EXPECT_EQ(front.holding->thread, n64(40));
    const double expected = 108.25 * 0.63 * 0.63 * 3.96875 * 15.875;
    EXPECT_NEAR(front.holding->holes[0].ultimate->inNewtons(), expected, 0.01);
    const double ovendry = 0.63 / (1 - 0.106 * 0.63);
    EXPECT_NEAR(front.holding->holes[0].design->inNewtons(),
                19.65 * ovendry * ovendry * 3.96875 * 15.875, 0.01);
}

TEST(Pull, IsSharedAlikeByScrewsRoundTheHandle) {
    Project project = frontOnly();
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    // The knob's hole lies 6 7/16 in across and 2 7/8 in up the wall.
    const Length x = n64(6 * 64 + 28), y = n64(2 * 64 + 56);
    for (const Length dx : {-n64(128), n64(128)})
        for (const Length dy : {-n64(64), n64(64)})
            project.fronts.mounting.placed.push_back({x + dx, y + dy});
    const Planned planned(project);
    // 50 lbf / 4 = 12.5 lbf (Architectural Woodwork Standards 2009)
    for (const HoleHolding& hole : planned.front(1).holding->holes)
        EXPECT_NEAR(hole.pull->inPoundsForce(), 12.5, 1e-4);
}

TEST(Pull, FallsMoreToTheScrewsThatAreNearerToTheHandle) {
    Project project = frontOnly();
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    const Length x = n64(6 * 64 + 28), y = n64(2 * 64 + 56);
    // Two rows, 1 in and 3 in below the handle: the pull lies 1 in above the nearer one, so that it
    // bears 3/2 of the pull and the farther one is pressed with 1/2: each of two screws half of it.
    for (const Length dy : {-n64(64), -n64(192)})
        for (const Length dx : {-n64(64), n64(64)})
            project.fronts.mounting.placed.push_back({x + dx, y + dy});
    const Planned planned(project);
    const auto& holes = planned.front(1).holding->holes;
    EXPECT_NEAR(holes[0].pull->inPoundsForce(), 37.5, 1e-4);
    EXPECT_NEAR(holes[2].pull->inPoundsForce(), 0, 1e-4);
}

TEST(Pull, IsBorneByBoltsThatGoThroughTheWall) {
    Project project = frontOnly();
    project.fronts.hardware.way = MountingWay::ThroughWall;
    const Planned planned(project);
    EXPECT_FALSE(planned.front(0).holding->holes[0].pull.has_value());
    EXPECT_FALSE(planned.front(0).holding->safety.has_value());
    EXPECT_TRUE(planned.front(0).holding->holes[0].ultimate.has_value());
}

TEST(Safety, IsOfTheWorstScrewAndDoesNotDependOnTheUnit) {
    Project project = frontOnly();
    const Planned inches(project);
    project.style.unit = Unit::Millimetre;
    project.fronts.mounting.pilotHole = inches.front(0).mounting.pilotHole;
    project.fronts.mounting.fromBottom = n64(64);
    project.fronts.mounting.fromTop = n64(64);
    project.fronts.mounting.fromSides = n64(64);
    const Planned millimetres(project);
    project.style.unit = Unit::Inch;
    const Planned again(project);
    EXPECT_EQ(millimetres.front(0).holding->holes, again.front(0).holding->holes);
    EXPECT_EQ(millimetres.front(0).holding->safety, again.front(0).holding->safety);
    const HoldingPlan& holding = *inches.front(0).holding;
    for (const HoleHolding& hole : holding.holes)
        EXPECT_LE(*holding.safety, Ratio::of(hole.ultimate->inNewtons(), hole.pull->inNewtons()));
    EXPECT_LT(*holding.designSafety, *holding.safety);
}

TEST(Safety, GrowsWithTheScrewAndWithTheWood) {
    Project project = frontOnly();
    project.fronts.mounting.length = n64(48);
    const Ratio shorter = *Planned(project).front(0).holding->safety;
    project.fronts.mounting.length = n64(64);
    const Ratio longer = *Planned(project).front(0).holding->safety;
    project.fronts.stock.species = "pine";
    const Ratio softer = *Planned(project).front(0).holding->safety;
    EXPECT_LT(shorter, longer);
    EXPECT_LT(softer, longer);
}

TEST(PilotHole, FollowsTheWoodUnlessTheMakerDecides) {
    Project project = frontOnly();
    EXPECT_EQ(Planned(project).front(0).mounting.pilotHole, n64(8)); // 90 % of 9/64 in
    project.fronts.stock.species = "pine";
    EXPECT_EQ(Planned(project).front(0).mounting.pilotHole, n64(6)); // 70 %
    project.fronts.mounting.pilotHole = n64(5);
    EXPECT_EQ(Planned(project).front(0).mounting.pilotHole, n64(5));
    project.fronts.mounting.clearanceHole = n64(13);
    EXPECT_EQ(Planned(project).front(0).mounting.clearanceHole, n64(13));
}

TEST(Engagement, IsWhatOfTheBoltIsInTheHandle) {
    WayPlan way;
    HardwareForm form;
    form.threadDepth = Length::millimetres(10);
    way.grip = Length::millimetres(19);
    EXPECT_FALSE(engagementOf(way, form).has_value());
    way.length = Length::millimetres(25);
    EXPECT_EQ(engagementOf(way, form), Length::millimetres(6));
    way.length = Length::millimetres(40);
    EXPECT_EQ(engagementOf(way, form), Length::millimetres(10));
    way.length = Length::millimetres(12);
    EXPECT_EQ(engagementOf(way, form), Length{});
}

} // namespace
} // namespace frontwright
