#include "core/plan/fillers.h"
#include "core/plan/own_part.h"
#include "core/plan/quantity.h"
#include "tests/core/plan/faced.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

// Two fronts of 13 1/2 × 6 1/2 on the box of an opening of 13 × 13 1/4: its wall is 12 7/8 × 12 7/8
// and begins 1/8 above the opening's lower edge.
namespace frontwright {
namespace {

using testing::in;

using namespace frontwright::testing;

std::vector<WallPoint> placesOf(const FrontPlan& front) {
    std::vector<WallPoint> places;
    for (const MountingHole& hole : front.mounting.holes)
        places.push_back(hole.at);
    return places;
}

TEST(ScrewsOfFrontsOnOneBox, KeepAwayFromTheFrontsEdgesOnTheWall) {
    const Planned chest(faced(bank(2)));
    // The upper front begins 8 1/2 up the case, 6 7/8 up the wall. A No. 8 keeps 2 1/2 shanks of
    // 5/32 from an edge, 25/64: on the grid 1/2, so 7 3/8. Above the tool's radius, 5/16, rounds
    // to 3/8 below 12 7/8; at the sides 1/2 + 5/16 to 7/8.
    EXPECT_EQ(placesOf(chest.front(0)), (std::vector<WallPoint>{{in(0, 56), in(7, 24)},
                                                                {in(12), in(7, 24)},
                                                                {in(0, 56), in(12, 32)},
                                                                {in(12), in(12, 32)}}));
    // The lower one ends 6 1/8 up the wall; above the bottom its tool asks for 13/16, so 7/8.
    EXPECT_EQ(placesOf(chest.front(1)), (std::vector<WallPoint>{{in(0, 56), in(0, 56)},
                                                                {in(12), in(0, 56)},
                                                                {in(0, 56), in(5, 40)},
                                                                {in(12), in(5, 40)}}));
}

TEST(ScrewsOfFrontsOnOneBox, CountTypedRowsFromTheFrontsOwnPartOfTheWall) {
    Project project = faced(bank(2));
    project.fronts.mounting.fromTop = in(1);
    const Planned chest(std::move(project));
    EXPECT_EQ(chest.front(1).mounting.holes.back().at.y, in(5, 8));   // 6 1/8 − 1
    EXPECT_EQ(chest.front(0).mounting.holes.back().at.y, in(11, 56)); // 12 7/8 − 1
}

TEST(ScrewsOfFrontsSideBySide, KeepTheFiveShanksOfAnEnd) {
    // Two fronts of 13 1/2 beside a stile of 2 that is not built: the wall is 27 7/8 wide. The left
    // front ends 13 3/16 from its left edge; 5 shanks are 25/32: at most 12 13/32, on the grid
    // 13/16 → 7/8 from the front's edge.
    const Planned chest(faced(banks(2, 1)));
    const FrontPlan& left = chest.front(0);
    EXPECT_EQ(left.box.width, in(27, 56));
    const auto part = ownPartOf(chest.project, left);
    ASSERT_TRUE(part);
    EXPECT_EQ(part->wall.right, in(13, 12));
    EXPECT_EQ(part->fromEdges.right, in(0, 50));
    EXPECT_EQ(part->fromEdges.left, Length());
    EXPECT_EQ(left.mounting.holes[1].at.x, in(13, 12) - in(0, 56));
    EXPECT_EQ(left.mounting.holes[0].at.x, in(0, 56));
}

TEST(OneFrontOnItsBox, HasTheWallToItself) {
    const Planned chest(bank(2));
    EXPECT_FALSE(ownPartOf(chest.project, chest.front(0)));
}

TEST(TheWeightOfAFace, CountsItsBoxAndContentsOnce) {
    Project project = faced(bank(2));
    project.fronts.stock.species = "oak";
    const Planned chest(std::move(project));
    const DrawerLoad& first = chest.front(0).load;
    const DrawerLoad& second = chest.front(1).load;
    ASSERT_TRUE(first.box);
    EXPECT_FALSE(second.box);
    EXPECT_EQ(second.contents, Mass());
    EXPECT_EQ(second.storage, Volume());
    EXPECT_FALSE(second.onRunner());
    EXPECT_EQ(first.otherFronts, *second.front);
    EXPECT_EQ(*first.onRunner(), *first.front + *second.front + *first.box + first.contents);
    EXPECT_EQ(chest.plan.load.contents, first.contents);
    EXPECT_FALSE(measureOf(chest.plan, {QuantityKind::ContentsWeight, 1}));
    EXPECT_EQ(derive(chest.project, chest.plan, {QuantityKind::RunnerLoad, 0}, {Unit::Inch, 16})
                  ->formula.english(),
              "front + the other fronts on the box + box + contents");
}

TEST(TheBoxOfAFace, IsWorkedOutFromTheWholeOpening) {
    const Planned chest(faced(bank(2)));
    EXPECT_EQ(derive(chest.project, chest.plan, {QuantityKind::BoxHeight, 0}, {Unit::Inch, 16})
                  ->figures.english(),
              "13 1/4 in − 1/8 in − 1/4 in = 12 7/8 in");
}

TEST(AFillerStrip, FillsTheGapAndLiesBackByTheShadow) {
    const Planned chest(faced(bank(2)));
    ASSERT_EQ(chest.plan.fillers.size(), 1U);
    const Filler& filler = chest.plan.fillers[0];
    EXPECT_EQ(filler.width, in(0, 48)); // 1 1/4 − 1/4 − 1/4
    EXPECT_EQ(filler.along.size(), in(13, 32));
    EXPECT_EQ(filler.edge, in(0, 48));
    EXPECT_EQ(filler.thickness, in(0, 40)); // 3/4 − 1/8
    EXPECT_EQ(filler.span, in(11, 8));      // 12 − 7/8
}

TEST(AFillerStrip, BendsLikeABeamBetweenTheScrewsBesideIt) {
    // F 44.482 N, l 282.575 mm, E 10 000 N/mm², w 19.05 mm, t 15.875 mm:
    // 44.482 · 22 563 226 / (4 · 10 000 · 19.05 · 4000.75) = 0.3292 mm
    const Planned chest(faced(bank(2)));
    const Filler& filler = chest.plan.fillers[0];
    ASSERT_TRUE(filler.bend && filler.leastThickness);
    EXPECT_NEAR(filler.bend->inMillimetres(), 0.3292, 0.0001);
    // ∛(44.482 · 22 563 226 / (4 · 10 000 · 19.05 · 0.79375)) = 11.84 mm
    EXPECT_NEAR(filler.leastThickness->inMillimetres(), 11.84, 0.01);
    EXPECT_NEAR(bendOf(filler.span, filler.width, *filler.leastThickness)->inMillimetres(), 0.79375,
                0.0001);
}

TEST(AFillerStrip, GoesByTheThinnerEdgeBesideTheGap) {
    Project project = withChoices(faced(bank(2)), 1, [](FrontChoices& choices) {
        choices.profile =
            Profile{ProfileFamily::Chamfer, in(0, 32), in(0, 20), {}, PerSide<bool>::all(true)};
    });
    const Planned chest(std::move(project));
    EXPECT_EQ(chest.plan.fillers[0].edge, in(0, 28)); // 48 − 20
    EXPECT_EQ(chest.plan.fillers[0].thickness, in(0, 20));
}

TEST(AFillerStrip, FillsTheGapOfInsetFrontsToo) {
    // Inset by 1/16 each: the gap is 1/16 wider on both sides than the member would be.
    Project project = faced(bank(2));
    const Length member = Planned(project).plan.fillers.at(0).width + 2 * in(0, 16);
    project.fronts.fit = FrontFit::all({Fit::Inset, in(0, 4)});
    const Planned chest(std::move(project));
    ASSERT_EQ(chest.plan.fillers.size(), 1U);
    EXPECT_EQ(chest.plan.fillers[0].width, member + 2 * in(0, 4));
    EXPECT_EQ(fillerOf(chest.plan, chest.front(0).opening,
                       chest.plan.members[chest.plan.fillers[0].member].id),
              &chest.plan.fillers[0]);
    EXPECT_EQ(fillerOf(chest.plan, chest.front(1).opening,
                       chest.plan.members[chest.plan.fillers[0].member].id),
              nullptr);
}

TEST(AFillerStrip, StandsUprightBetweenFrontsSideBySide) {
    const Planned chest(faced(banks(2, 1)));
    ASSERT_EQ(chest.plan.fillers.size(), 1U);
    EXPECT_EQ(chest.plan.fillers[0].width, in(1, 32)); // 2 − 1/4 − 1/4
    EXPECT_EQ(chest.plan.fillers[0].along.size(), in(6, 32));
}

TEST(AFillerStrip, IsForDrawersWithAGapOnly) {
    EXPECT_TRUE(Planned(bank(2)).plan.fillers.empty());
    const auto doors = withOpenings(
        faced(banks(2, 1)), [](Opening& leaf, std::size_t) { leaf.use = OpeningUse::Door; });
    EXPECT_TRUE(Planned(doors).plan.fillers.empty());
    Project tight = faced(bank(2));
    tight.fronts.fit = FrontFit::all({Fit::Overlay, in(0, 40)}); // 1 1/4 − 2 × 5/8 = 0
    EXPECT_TRUE(Planned(tight).plan.fillers.empty());
}

TEST(AFillerStrip, ExplainsItsNumbers) {
    const Planned chest(faced(bank(2)));
    const auto told = [&](QuantityKind kind) {
        return derive(chest.project, chest.plan, {kind, 0}, {Unit::Inch, 16})->figures.english();
    };
    EXPECT_EQ(told(QuantityKind::FillerThickness), "3/4 in − 1/8 in = 5/8 in");
    EXPECT_EQ(told(QuantityKind::FillerBend),
              "F 44.5 N, l 282.6 mm, E 10000 N/mm², w 19.1 mm, t 15.9 mm: 0.33 mm, 0.013 in; "
              "the limit is 0.031 in");
    std::size_t ofFillers = 0;
    for (const Quantity quantity : allQuantities(chest.plan))
        ofFillers += quantity.kind >= QuantityKind::FillerWidth &&
                             quantity.kind <= QuantityKind::FillerLeastThickness
                         ? 1
                         : 0;
    EXPECT_EQ(ofFillers, 6U);
}

} // namespace
} // namespace frontwright
