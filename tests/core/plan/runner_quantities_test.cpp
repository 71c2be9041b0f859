#include "core/edits/typed.h"
#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

// Boxes on the small catalogue's runners: case 20 in deep behind a frame of 3/4 in, openings
// 13 in × 6 in, boxes 16 in deep with walls and sides of 1/2 in.
namespace frontwright {
namespace {

using testing::in;

using testing::bank;
using testing::Planned;
using enum QuantityKind;

Project on(const char* runner) {
    Project project = bank(1);
    project.fronts.box.runner = runner;
    return project;
}

struct Told {
    QuantityKind kind;
    std::string formula;
    std::string figures;
};

void expectTold(const Project& project, const std::vector<Told>& all) {
    const Planned planned(project);
    for (const Told& expected : all) {
        const auto told = derive(project, planned.plan, {expected.kind, 0, 0}, {Unit::Inch, 64});
        ASSERT_TRUE(told) << key(expected.kind);
        EXPECT_EQ(told->formula.english(), expected.formula) << key(expected.kind);
        EXPECT_EQ(told->figures.english(), expected.figures) << key(expected.kind);
    }
}

TEST(NumbersOfARunner, TellItsLengthByCaseAndBox) {
    expectTold(on("hung"),
               {{RunnerLength,
                 "the longest stocked one that is no longer than its room (frame + case inside − "
                 "setback) and than the box",
                 "3/4 in + 20 in − 1/8 in = 20 5/8 in; box 16 in; the longest stocked up to both: "
                 "16 in"},
                {RunnerSetback, "the box's setback + the runner's own behind the box's face",
                 "0 in + 1/8 in = 1/8 in"},
                {RunnerTop, "the top of the runner, above the box's lower edge", "2 in"},
                {SideClearance, "what the runner asks for", "1/2 in"}});
}

TEST(NumbersOfARunner, TellTheDepthThatFollowsIt) {
    Project project = on("hung");
    project.fronts.box.depthRule = BoxDepthRule::AsRunner;
    expectTold(project,
               {{RunnerLength,
                 "the longest stocked one that is no longer than its room: frame + case inside − "
                 "setback",
                 "3/4 in + 20 in − 1/8 in = 20 5/8 in; the longest stocked up to that: 18 in"},
                {BoxDepth, "as long as the runner", "18 in"}});
}

TEST(NumbersOfARunner, TellNotchesAndClearZone) {
    expectTold(
        on("hidden"),
        {{BackNotchWidth, "what the runner needs free at the back's lower edge", "1 3/8 in"},
         {BackNotchHeight, "what the runner needs free at the back's lower edge", "1/2 in"},
         {ClearZoneWidth, "where the runner's parts lie on the wall: no screw there", "2 in"},
         {ClearZoneHeight, "where the runner's parts lie on the wall: no screw there", "1 in"}});
    expectTold(
        on("middle"),
        {{WallNotchWidth, "what the runner needs free at the wall's lower edge", "1 1/2 in"},
         {WallNotchHeight, "what the runner needs free at the wall's lower edge", "1/4 in"}});
}

TEST(NumbersOfWoodenRunners, TellKickerAndFurring) {
    Project project = on("rails");
    project.fronts.box.toCaseSide = in(0, 56);
    expectTold(project,
               {{RunnerLength, "cut to the room: frame + case inside − setback",
                 "3/4 in + 20 in − 3/4 in = 20 in"},
                {RunnerSetback, "it begins behind the frame: the frame's thickness", "3/4 in"},
                {KickerHeight, "clearance below + box height + play under the kicker",
                 "1/8 in + 5 5/8 in + 1/4 in = 6 in"},
                {RunnerFurring,
                 "from the opening's edge to the case's side, so that the runner stands flush with "
                 "the opening",
                 "7/8 in"}});
}

TEST(NumbersOfARunner, AreNoneWhereOnlyClearancesAreKnown) {
    const Planned planned(on("wooden"));
    for (const QuantityKind kind :
         {RunnerLength, RunnerSetback, RunnerTop, BackNotchWidth, WallNotchWidth, ClearZoneWidth,
          KickerHeight, RunnerFurring, BoxSwelling})
        EXPECT_FALSE(measureOf(planned.plan, {kind, 0, 0})) << key(kind);
    EXPECT_EQ(valueOf(planned.plan, {SideClearance, 0, 0}), in(0, 4));
}

// Oak 0.0025 for each 1 %, from 6 to 14 %: 5 5/8 in × 0.02 = 0.1125 in = 2 857 500 nm
TEST(SwellingOfABox, IsThatOfItsWoodUpToTheWettestAir) {
    Project project = on("rails");
    testing::oakInAir(project, 6, 6, 14);
    EXPECT_FALSE(measureOf(Planned(project).plan, {BoxSwelling, 0, 0})) << "wood not told";
    project.fronts.box.wood = "oak";
    const Planned planned(project);
    EXPECT_EQ(valueOf(planned.plan, {BoxSwelling, 0, 0}), Length::fromNanometres(2'857'500));
    const auto told = derive(project, planned.plan, {BoxSwelling, 0, 0}, {Unit::Millimetre, 64});
    EXPECT_EQ(told->figures.english(), "≈ 142.9 mm × 0.02000 (from 6.0 % to 14.0 %) = 2.86 mm");
    project.fronts.box.wood = "no such wood";
    EXPECT_FALSE(makePlan(project, testing::smallCatalogue()).ok());
}

TEST(TypedNumberOfARunner, IsADecisionOfTheBox) {
    Project project = on("hung");
    project.fronts.box.depthRule = BoxDepthRule::AsRunner;
    project.fronts.box.toCaseSide = in(0, 48);
    const Planned planned(project);
    const auto boxAfter = [&](QuantityKind kind, Length value) {
        const auto after = setQuantity(project, planned.plan, {kind, 0, 0}, value);
        EXPECT_TRUE(after.ok()) << key(kind);
        const auto& leaf = std::get<Opening>(after.value().casework.divisions->content);
        return leaf.choices.box ? *leaf.choices.box : after.value().fronts.box;
    };
    EXPECT_EQ(boxAfter(RunnerLength, in(14)).runnerLength->length, in(14));
    EXPECT_EQ(boxAfter(SideClearance, in(0, 34)).sideClearance->length, in(0, 34));
    EXPECT_EQ(boxAfter(RunnerFurring, in(1)).toCaseSide->length, in(1));
    const BoxSpec deep = boxAfter(BoxDepth, in(17));
    EXPECT_EQ(deep.depth.length, in(17));
    EXPECT_EQ(deep.depthRule, BoxDepthRule::AsGiven) << "what is typed holds";
}

} // namespace
} // namespace frontwright
