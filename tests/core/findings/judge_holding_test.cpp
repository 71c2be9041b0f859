#include "core/findings/cause.h"

#include "tests/core/findings/provoking.h"

#include <gtest/gtest.h>

// What the small case alone cannot provoke: handles and bolts of other catalogues, weights, and the
// words of what is held.
namespace frontwright {
namespace {

using testing::bank;
using testing::Found;
using testing::n64;
using testing::smallCatalogue;
using testing::um;

using enum FindingCode;

Project inOak(std::size_t rows = 2) {
    Project project = bank(rows);
    project.fronts.stock.species = "oak";
    return project;
}

TEST(BoltHole, MustLetTheBoltThrough) {
    // A public chart has clearance holes smaller than the screw. The small bolt is 10/64 in.
    Catalogue catalogue = smallCatalogue();
    catalogue.bolts.front().clearanceHole = n64(9);
    const Found tight(bank(2), catalogue);
    ASSERT_TRUE(tight.has(BoltHoleTight));
    EXPECT_EQ(tight.find(BoltHoleTight)->severity, Severity::WontWork);
    EXPECT_EQ(tight.told(BoltHoleTight).sentence,
              "The bolt's hole of 9/64 in is smaller than its thread of 5/32 in: it does not go "
              "through.");
    catalogue.bolts.front().clearanceHole = n64(10);
    EXPECT_FALSE(Found(bank(2), catalogue).has(BoltHoleTight));
}

TEST(Engagement, IsAtLeastTheBoltsDiameter) {
    // Grip 3/4 + 1/2 in; 1 3/8 in leaves 8/64 in, less than the bolt's 10/64 in.
    Catalogue catalogue = smallCatalogue();
    catalogue.hardware.front().leastEngagement = n64(6);
    Project project = bank(2);
    project.fronts.hardware.boltLength = n64(88);
    const Found thin(project, catalogue);
    ASSERT_TRUE(thin.has(EngagementThin));
    EXPECT_EQ(thin.told(EngagementThin).reason,
              "engagement = bolt − grip = 1 3/8 in − 1 1/4 in = 1/8 in; at least one diameter");
    EXPECT_EQ(thin.told(EngagementThin).source.kind, SourceKind::FromMemory);
    const auto cures = remedies(*thin.find(EngagementThin), thin.project, thin.catalogue, thin.plan,
                                {Unit::Inch, 16});
    ASSERT_FALSE(cures.empty());
    EXPECT_EQ(cures.front().label, "Use 1 1/2 in bolts in A1");
    project.fronts.hardware.boltLength = n64(90);
    EXPECT_FALSE(Found(project, catalogue).has(EngagementThin));
}

TEST(HoldingWeak, IsGraveWhereTheScrewsWouldBeDrawnOut) {
    // One screw with 3.2 mm of thread in pine: 108.25 · 0.35² · 3.97 · 3.2 = 168 N of 222 N.
    Project project = bank(2);
    project.fronts.stock.species = "pine";
    project.fronts.hardware.way = MountingWay::FrontAccessHole;
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    project.fronts.mounting.placed = {{n64(6 * 64 + 28), n64(2 * 64 + 56)}};
    project.fronts.mounting.length = um(12'725);
    const Found found(project);
    ASSERT_TRUE(found.has(HoldingWeak));
    EXPECT_EQ(found.find(HoldingWeak)->severity, Severity::WontWork);
    EXPECT_EQ(found.told(HoldingWeak).place, "Front A1, screw hole 1");
    EXPECT_NE(found.told(HoldingWeak).sentence.english().find("50 lbf"), std::string::npos);
    EXPECT_NE(found.told(HoldingWeak).source.title.find("Architectural Woodwork Standards"),
              std::string::npos);
}

TEST(HoldingWeak, IsNotToldOfAWoodThatIsNotKnown) {
    Project project = bank(2);
    project.fronts.hardware.way = MountingWay::FrontAccessHole;
    project.fronts.mounting.length = n64(40);
    EXPECT_FALSE(Found(project).has(HoldingWeak));
    EXPECT_FALSE(Found(project).has(RunnerOverloaded));
}

TEST(RunnerOverloaded, TellsTheSumAndOffersAStrongerRunner) {
    Project project = inOak();
    project.fronts.box.runner = "side-mounted";
    project.fronts.box.load = Mass::pounds(80);
    Catalogue catalogue = smallCatalogue();
    RunnerKind strong = *catalogue.runner("side-mounted");
    strong.id = "strong";
    strong.name = "Heavy runners";
    strong.rating = Mass::pounds(150);
    catalogue.runners.push_back(strong);
    const Found found(project, catalogue);
    ASSERT_EQ(found.count(RunnerOverloaded), 2U);
    EXPECT_NE(found.told(RunnerOverloaded).sentence.english().find("75.0 lb"), std::string::npos);
    const auto cures = remedies(*found.find(RunnerOverloaded), found.project, found.catalogue,
                                found.plan, {Unit::Inch, 16});
    ASSERT_FALSE(cures.empty());
    EXPECT_EQ(cures.front().label, "Run A1 on: Heavy runners");
}

TEST(RunnerOverloaded, IsNotToldWhereNoRatingIsKnown) {
    Project project = inOak();
    project.fronts.box.load = Mass::pounds(500); // wooden runners
    EXPECT_FALSE(Found(project).has(RunnerOverloaded));
}

TEST(AnchorCase, IsToldOfAHeavyCaseToo) {
    // Two banks of four: 25 in high, so not tall; in oak the drawers weigh more than 30 lb and
    // enclose more than 3.2 ft³.
    Project project = testing::banks(2, 3);
    EXPECT_FALSE(Found(project).has(AnchorCase));
    project.fronts.stock.species = "oak";
    const Found heavy(project);
    ASSERT_TRUE(heavy.has(AnchorCase));
    ASSERT_LT(heavy.plan.outline.height(), Length::inches(27));
    EXPECT_TRUE(heavy.told(AnchorCase).sentence.english().starts_with("The case is heavy ("));
    EXPECT_NE(heavy.told(AnchorCase).reason.english().find("nothing has been tested here"),
              std::string::npos);
}

TEST(FitsMixed, NamesTheSidesOfBoth) {
    Project project = bank(1);
    project.fronts.fit.left = {Fit::Inset, n64(4)};
    const Found found(project);
    ASSERT_TRUE(found.has(FitsMixed));
    EXPECT_EQ(found.told(FitsMixed).sentence,
              "The front lies in the opening (left) and on the frame (right, bottom, top) at once: "
              "with a flat back it can do only one of them, unless it is rabbeted.");
    const auto cures = remedies(*found.find(FitsMixed), found.project, found.catalogue, found.plan,
                                {Unit::Inch, 16});
    ASSERT_FALSE(cures.empty());
    project.fronts.fit = FrontFit::all({Fit::Inset, n64(4)});
    EXPECT_FALSE(Found(project).has(FitsMixed));
}

TEST(PilotHole, IsToldToBeWrongByTheRootWhereTheWoodIsNotKnown) {
    Project project = bank(1);
    project.fronts.mounting.pilotHole = n64(9);
    EXPECT_FALSE(Found(project).has(PilotHoleWrong));
    project.fronts.mounting.pilotHole = n64(10);
    ASSERT_TRUE(Found(project).has(PilotHoleWrong));
    EXPECT_EQ(Found(project).find(PilotHoleWrong)->severity, Severity::WontWork);
    project.fronts.mounting.pilotHole = Length{};
    EXPECT_FALSE(Found(project).has(PilotHoleMissing));
}

TEST(PilotHole, TooSmallInDenseWoodMayBreakTheScrew) {
    Project project = inOak(1);
    project.fronts.mounting.pilotHole = n64(5);
    const Found found(project);
    ASSERT_TRUE(found.has(PilotHoleWrong));
    EXPECT_NE(found.told(PilotHoleWrong).sentence.english().find("too small"), std::string::npos);
    project.fronts.stock.species = "pine"; // needs none, so a small one does no harm
    EXPECT_FALSE(Found(project).has(PilotHoleWrong));
}

TEST(ScrewNearEdge, TellsEdgeFromEnd) {
    Project project = inOak(1);
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    project.fronts.mounting.placed = {{n64(29), n64(128)}};
    EXPECT_NE(Found(project).told(ScrewNearEdge).sentence.english().find("left end"),
              std::string::npos);
    // 24/64 in to the wall's lower edge, less than 2.5 shanks = 25/64 in with the hole on it.
    project.fronts.mounting.placed = {{n64(200), Length{}}};
    ASSERT_TRUE(Found(project).has(ScrewNearEdge));
    EXPECT_NE(Found(project).told(ScrewNearEdge).sentence.english().find("bottom edge"),
              std::string::npos);
}

TEST(ScrewNearEdge, GoesByTheStocksGrain) {
    Project project = inOak(1);
    project.fronts.stock.grain = Grain::AlongHeight;
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    // 49/64 in from the left: at an end less than 5 shanks = 50/64 in, at an edge well enough.
    project.fronts.mounting.placed = {{n64(29), n64(128)}};
    EXPECT_FALSE(Found(project).has(ScrewNearEdge));
    // 24 + 25 = 49/64 in above the front's lower end.
    project.fronts.mounting.placed = {{n64(200), n64(25)}};
    const Found found(project);
    ASSERT_TRUE(found.has(ScrewNearEdge));
    EXPECT_NE(found.told(ScrewNearEdge).sentence.english().find("bottom end"), std::string::npos);
    EXPECT_NE(found.told(ScrewNearEdge).reason.english().find("along the grain"),
              std::string::npos);
    EXPECT_EQ(numberOf(*found.find(ScrewNearEdge), found.plan)->kind, QuantityKind::ScrewToEnd);
    const auto cures = remedies(*found.find(ScrewNearEdge), found.project, found.catalogue,
                                found.plan, {Unit::Inch, 16});
    ASSERT_FALSE(cures.empty());
    for (const Remedy& cure : cures)
        EXPECT_FALSE(Found(cure.apply(project).value()).has(ScrewNearEdge)) << cure.label;
}

TEST(ScrewsCrowded, AreThoseAboveEachOtherWhereTheGrainStandsUpright) {
    Project project = inOak(1);
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    // 1 in above each other; ten shanks are 100/64 in.
    project.fronts.mounting.placed = {{n64(200), n64(128)}, {n64(200), n64(192)}};
    EXPECT_FALSE(Found(project).has(ScrewsCrowded));
    project.fronts.stock.grain = Grain::AlongHeight;
    const Found found(project);
    ASSERT_TRUE(found.has(ScrewsCrowded));
    EXPECT_EQ(numberOf(*found.find(ScrewsCrowded), found.plan)->kind, QuantityKind::HoleY);
}

} // namespace
} // namespace frontwright
