#include "core/boxes/runner.h"

#include "tests/core/plan/small_catalogue.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

// Runners of the small catalogue in a case of 20 in behind a frame of 3/4 in; openings 13 in × 6
// in.
namespace frontwright {
namespace {

using testing::in;

const RunnerKind& kind(const char* id) {
    static const Catalogue catalogue = testing::smallCatalogue();
    return *catalogue.runner(id);
}

constexpr RunnerPlace overlaid{Length{}, Length::inches(0, 48), Length::inches(20)};

BoxSpec boxOf16() {
    BoxSpec spec;
    spec.depth = in(16);
    spec.wallThickness = spec.sideThickness = in(0, 32);
    spec.grooveHeight = spec.bottomThickness = in(0, 16);
    return spec;
}

struct Running {
    explicit Running(const char* id, BoxSpec from = boxOf16())
        : spec(std::move(from)),
          reach(runnerReach(spec, kind(id), overlaid)),
          box(planBox(spec, &kind(id), CaseRect::atOrigin(in(13), in(6)),
                      CaseRect::atOrigin(in(13), in(6)), {})),
          plan(planRunner(spec, kind(id), box, reach)) {}
    BoxSpec spec;
    RunnerReach reach;
    BoxPlan box;
    std::optional<RunnerPlan> plan;
};

TEST(Runner, IsTheLongestStockedThatCaseAndBoxTake) {
    const Running run("hung");
    EXPECT_EQ(run.reach.setback, in(0, 8)); // 1/8 in behind the box's face, which is the frame's
    EXPECT_EQ(run.reach.room, in(20, 40));  // 3/4 + 20 − 1/8
    EXPECT_EQ(run.reach.length, in(16));    // of 12, 14, 16, 18: the box is 16 in deep
    EXPECT_EQ(boxDepth(run.spec, run.reach).length, in(16));
}

TEST(Runner, MakesTheBoxAsDeepAsItIsLongWhereTheMakerAsksForThat) {
    BoxSpec spec = boxOf16();
    spec.depthRule = BoxDepthRule::AsRunner;
    const Running run("hung", spec);
    EXPECT_EQ(run.reach.length, in(18)); // of 12, 14, 16, 18 in 20 5/8 in
    EXPECT_EQ(boxDepth(spec, run.reach).length, in(18));
    spec.runnerLength = in(14);
    EXPECT_EQ(boxDepth(spec, Running("hung", spec).reach).length, in(14));
}

TEST(Runner, StandsBackWithTheBoxOfAnInsetFront) {
    const RunnerPlace inset{in(0, 48), in(0, 48), in(20)};
    const RunnerReach reach = runnerReach(boxOf16(), kind("hung"), inset);
    EXPECT_EQ(reach.setback, in(0, 56)); // 3/4 + 1/8
    EXPECT_EQ(reach.room, in(19, 56));   // 3/4 + 20 − 7/8
}

TEST(Runner, HasNoLengthWhereNoStockedOneFits) {
    BoxSpec spec = boxOf16();
    spec.depth = in(11);
    spec.depthRule = BoxDepthRule::AsGiven;
    EXPECT_FALSE(Running("hung", spec).reach.length);
    spec.depthRule = BoxDepthRule::AsRunner;
    const RunnerPlace shallow{Length{}, in(0, 48), in(11)};
    const RunnerReach reach = runnerReach(spec, kind("hung"), shallow);
    EXPECT_FALSE(reach.length);
    EXPECT_EQ(boxDepth(spec, reach).length, in(11)) << "as given";
}

TEST(WoodenRunner, IsCutToTheRoomBehindTheFrame) {
    const Running run("rails");
    EXPECT_EQ(run.reach.setback, in(0, 48));
    EXPECT_EQ(run.reach.length, in(20));
    EXPECT_EQ(run.plan->top, Length{});
    EXPECT_EQ(run.plan->foot, -in(0, 48));
}

TEST(WoodenRunner, HasItsKickerOverTheBoxByThePlay) {
    const Running run("rails");
    EXPECT_EQ(run.plan->kickerPlay, in(0, 16));
    EXPECT_EQ(run.plan->kickerHeight, in(6)); // 1/8 + 5 5/8 + 1/4: the opening's upper edge
    BoxSpec low = boxOf16();
    low.height = in(4);
    EXPECT_EQ(Running("rails", low).plan->kickerHeight, in(4, 24)); // 1/8 + 4 + 1/4
    BoxSpec snug = boxOf16();
    snug.clearanceAbove = in(0, 4);
    EXPECT_EQ(Running("rails", snug).plan->kickerPlay, in(0, 4));
    EXPECT_EQ(Running("rails", snug).plan->kickerHeight, in(6));
}

TEST(SideMountedRunner, AsksForItsClearanceWhateverTheSides) {
    BoxSpec spec = boxOf16();
    EXPECT_EQ(Running("hung", spec).plan->sideNeeded, in(0, 32));
    spec.sideThickness = in(0, 40);
    EXPECT_EQ(Running("hung", spec).plan->sideNeeded, in(0, 32));
    EXPECT_EQ(Running("hung").plan->foot, in(0, 16)); // 2 − 1 3/4
    EXPECT_EQ(leastGrooveHeight(*Running("hung").plan), Length{});
    EXPECT_EQ(leastInsideWidth(*Running("hung").plan, Running("hung").box), Length{});
}

TEST(UnderMountedRunner, AsksForMoreClearanceBesideThinnerSides) {
    BoxSpec spec = boxOf16();
    spec.sideThickness = in(0, 40);
    EXPECT_EQ(Running("hidden", spec).plan->sideNeeded, in(0, 12)) << "what it is for";
    spec.sideThickness = in(0, 32);
    EXPECT_EQ(Running("hidden", spec).plan->sideNeeded, in(0, 20)); // 3/16 + 5/8 − 1/2
}

TEST(UnderMountedRunner, NotchesTheBackFromTheSidesInnerFaces) {
    const Running run("hidden"); // 13 − 2 × 3/16 = 12 5/8 wide, sides 1/2
    ASSERT_EQ(run.plan->backNotches.size(), 2U);
    EXPECT_EQ(run.plan->backNotches[0], (WallRect{in(0, 32), {}, in(1, 56), in(0, 32)}));
    EXPECT_EQ(run.plan->backNotches[1], (WallRect{in(10, 48), {}, in(12, 8), in(0, 32)}));
    EXPECT_TRUE(run.plan->wallNotches.empty());
}

TEST(UnderMountedRunner, KeepsTheWallsLowerCornersClear) {
    const Running run("hidden");
    ASSERT_EQ(run.plan->clearZones.size(), 2U);
    EXPECT_EQ(run.plan->clearZones[0], (WallRect{{}, {}, in(2), in(1)}));
    EXPECT_EQ(run.plan->clearZones[1], (WallRect{in(10, 40), {}, in(12, 40), in(1)}));
}

TEST(UnderMountedRunner, CarriesTheBottomAtItsTop) {
    EXPECT_EQ(leastGrooveHeight(*Running("hidden").plan), in(0, 32));
    // Each takes 1 3/4 from the opening's edge: less 3/16 clearance and 1/2 side, twice.
    EXPECT_EQ(leastInsideWidth(*Running("hidden").plan, Running("hidden").box), in(2, 8));
}

TEST(CentreRunner, NotchesWallAndBackInTheMiddle) {
    const Running run("middle"); // 13 − 2 × 1/8 = 12 3/4 wide
    ASSERT_EQ(run.plan->wallNotches.size(), 1U);
    EXPECT_EQ(run.plan->wallNotches[0], (WallRect{in(5, 40), {}, in(7, 8), in(0, 16)}));
    EXPECT_EQ(run.plan->backNotches, run.plan->wallNotches);
    EXPECT_EQ(run.plan->clearZones.at(0), (WallRect{in(5, 24), {}, in(7, 24), in(1)}));
    EXPECT_EQ(leastGrooveHeight(*run.plan), in(0, 16)) << "the notch is higher than the runner";
    EXPECT_EQ(leastInsideWidth(*run.plan, run.box), in(1, 16));
}

TEST(Furring, FillsWhatTheOpeningIsNarrowerThanTheCase) {
    BoxSpec spec = boxOf16();
    EXPECT_FALSE(Running("hung", spec).plan->furring);
    spec.toCaseSide = in(0, 56);
    EXPECT_EQ(Running("hung", spec).plan->furring, in(0, 56));
    EXPECT_FALSE(Running("middle", spec).plan->furring) << "one in the middle needs none";
}

TEST(RunnerOfClearancesOnly, TellsNothingElse) {
    EXPECT_FALSE(Running("wooden").plan);
}

TEST(Runner, FitsTheCaseInEveryDepth) {
    for (const char* id : {"rails", "hung", "hidden", "middle"})
        for (std::int64_t depth = 1; depth <= 30 * 64; depth += 7)
            for (const BoxDepthRule rule : {BoxDepthRule::AsGiven, BoxDepthRule::AsRunner}) {
                BoxSpec spec = boxOf16();
                spec.depthRule = rule;
                const RunnerPlace place{{}, in(0, 48), Length::fromSixtyFourths(depth)};
                const RunnerReach reach = runnerReach(spec, kind(id), place);
                if (!reach.length)
                    continue;
                EXPECT_LE(*reach.length, reach.room) << id << depth;
                EXPECT_LE(reach.setback + *reach.length, in(0, 48) + place.caseDepth);
                for (const Length other : kind(id).lengths)
                    EXPECT_TRUE(other <= *reach.length || other > reach.room ||
                                (rule == BoxDepthRule::AsGiven && other > spec.depth.length))
                        << "a longer one would fit";
            }
}

TEST(NotchesAndClearZones, AreMirroredInTheWall) {
    for (const char* id : {"hidden", "middle"}) {
        const Running run(id);
        const auto mirrored = [&](const WallRect& r) {
            return WallRect{run.box.width - r.right, r.bottom, run.box.width - r.left, r.top};
        };
        for (const auto& parts :
             {run.plan->clearZones, run.plan->wallNotches, run.plan->backNotches})
            for (std::size_t i = 0; i < parts.size(); ++i)
                EXPECT_EQ(mirrored(parts[i]), parts[parts.size() - 1 - i]) << id;
    }
}

} // namespace
} // namespace frontwright
