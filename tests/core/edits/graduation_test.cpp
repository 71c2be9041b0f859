#include "tests/core/edits/edited.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <array>

namespace frontwright {
namespace {

using testing::upright;

using namespace frontwright::testing;

Project unequalBank() {
    return bankOf(
        {share(opening(), 2), share(opening(), 3), share(opening(), 4), fixed(in(5), opening())},
        in(26)); // room 18: 4, 6, 8
}

TEST(MakingEqual, TakesTheUnlockedOnesWhereOneIsChosen) {
    const Project project = unequalBank();
    const std::array one{openingAt(project, 0)};
    const Project after = edited(makeEqual(project, one, upright));
    EXPECT_EQ(heights(after), (Sizes{in(6), in(6), in(6), in(5)}));
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_EQ(splitAt(after.casework.divisions).children[i].rule, SizeRule(Share{1}));
}

TEST(MakingEqual, OfChosenOnesLeavesTheOthersAsTheyAre) {
    const Project project = unequalBank();
    const std::array two{openingAt(project, 0), openingAt(project, 2)};
    EXPECT_EQ(heights(edited(makeEqual(project, two, upright))),
              (Sizes{in(6), in(6), in(6), in(5)}));
    const std::array others{openingAt(project, 2), openingAt(project, 1)};
    EXPECT_EQ(heights(edited(makeEqual(project, others, upright))),
              (Sizes{in(4), in(7), in(7), in(5)}));
}

TEST(MakingEqual, UnlocksWhatIsChosenByName) {
    const Project project = unequalBank();
    const std::array two{openingAt(project, 3), openingAt(project, 0)};
    const Project after = edited(makeEqual(project, two, upright));
    EXPECT_EQ(heights(after), (Sizes{in(4, 32), in(6), in(8), in(4, 32)}));
    EXPECT_EQ(holdOf(after, openingAt(after, 3), upright), Hold::Flexible);
}

TEST(MakingEqual, KeepsEqualWeightsWhereTheSizesCannotBeExact) {
    // 4 + 6 + 1/16: half is off the grid; the later takes the odd sixteenth
    Project project =
        bankOf({fixed(in(4, 4), opening()), share(opening()), share(opening())}, in(20));
    const std::array two{openingAt(project, 0), openingAt(project, 1)};
    const Sizes before = heights(project);
    const Project after = edited(makeEqual(project, two, upright));
    const Sizes sizes = heights(after);
    EXPECT_EQ(sizes[2], before[2]);
    EXPECT_LE((sizes[0] - sizes[1]).magnitude(), in(0, 4));
    const auto& children = splitAt(after.casework.divisions).children;
    EXPECT_EQ(children[0].rule, children[1].rule);
}

TEST(MakingEqual, WorksOnWholeBanks) {
    const Project project = rowOf(
        {share(rows({share(opening()), share(opening())}, in(1)), 2), share(opening())}, in(31));
    const std::array two{openingAt(project, 1), openingAt(project, 2)};
    EXPECT_EQ(widths(edited(makeEqual(project, two, Direction::Columns))), Sizes(3, in(15)));
}

TEST(MakingEqual, RefusesOpeningsOfDifferentSplits) {
    const Project project = banks(2, 2);
    const std::array two{openingAt(project, 0), openingAt(project, 2)};
    EXPECT_EQ(refusal(makeEqual(project, two, upright)),
              "the openings do not stand side by side in one split; choose openings of one row or "
              "of one bank");
    EXPECT_FALSE(makeEqual(project, {}, upright).ok());
    const std::array missing{openingAt(project, 0), OpeningId{999}};
    EXPECT_FALSE(makeEqual(project, missing, upright).ok());
}

TEST(MakingEqual, NeedsSomethingToBeEqualTo) {
    const Project project = bankOf({share(opening()), fixed(in(5), opening())}, in(20));
    const std::array one{openingAt(project, 0)};
    EXPECT_FALSE(makeEqual(project, one, upright).ok());
}

TEST(MakingEqual, EndsARunWhoseSizesItChanges) {
    Project project = unequalBank();
    project = edited(graduate(project, openingAt(project, 0), upright, ArithmeticRun{in(1)}));
    ASSERT_EQ(heights(project), (Sizes{in(5), in(6), in(7), in(5)}));
    const std::array two{openingAt(project, 1), openingAt(project, 2)};
    const Project after = edited(makeEqual(project, two, upright));
    EXPECT_EQ(heights(after), (Sizes{in(5), in(6, 32), in(6, 32), in(5)}));
    EXPECT_FALSE(splitAt(after.casework.divisions).graduation);
}

TEST(Graduating, TakesAllButTheLocked) {
    const Project project = unequalBank();
    const Project after =
        edited(graduate(project, openingAt(project, 1), upright, ArithmeticRun{in(2)}));
    EXPECT_EQ(heights(after), (Sizes{in(4), in(6), in(8), in(5)}));
    const Project doubled =
        edited(graduate(project, openingAt(project, 1), upright, GeometricRun{2'000'000}));
    // 18 / 7 = 2.571: 2 9/16, 5 1/8, and what is left
    EXPECT_EQ(heights(doubled), (Sizes{in(2, 36), in(5, 8), in(10, 20), in(5)}));
}

TEST(Graduating, SaysWhatRoomATooSteepStepLacks) {
    const Project project = unequalBank();
    const auto result = graduate(project, openingAt(project, 1), upright, ArithmeticRun{in(6)});
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().place, "rows of the case");
    EXPECT_NE(result.error().what.english().find("of room is missing"), std::string::npos);
}

TEST(Graduating, RefusesImpossibleRatiosAndLoneOpenings) {
    const Project project = unequalBank();
    const OpeningId id = openingAt(project, 1);
    EXPECT_FALSE(graduate(project, id, upright, GeometricRun{0}).ok());
    EXPECT_FALSE(graduate(project, id, upright, GeometricRun{-5}).ok());
    EXPECT_FALSE(graduate(project, id, upright, GeometricRun{greatestRatioMillionths + 1}).ok());
    EXPECT_FALSE(graduate(project, id, Direction::Columns, ArithmeticRun{in(1)}).ok());
    const Project lone = bankOf({share(opening()), fixed(in(5), opening())}, in(20));
    EXPECT_FALSE(graduate(lone, openingAt(lone, 0), upright, ArithmeticRun{in(1)}).ok());
}

TEST(EndingAGraduation, KeepsItsSizesAsShares) {
    Project project = unequalBank();
    for (const Graduation& run :
         {Graduation(ArithmeticRun{in(1)}), Graduation(GeometricRun{1'170'000})}) {
        const Project graduatedBank =
            edited(graduate(project, openingAt(project, 0), upright, run));
        const Project ended = edited(endGraduation(graduatedBank, openingAt(project, 0), upright));
        EXPECT_TRUE(sameLayout(graduatedBank, ended));
        EXPECT_FALSE(splitAt(ended.casework.divisions).graduation);
        const DragOutcome moved = dragged(ended, memberAt(ended, 0), in(1));
        EXPECT_EQ(moved.moved, in(1));
    }
    EXPECT_FALSE(endGraduation(project, openingAt(project, 0), upright).ok());
}

} // namespace
} // namespace frontwright
