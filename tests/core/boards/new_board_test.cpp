#include "core/boards/new_board.h"

#include "core/boards/layers.h"
#include "tests/core/boards/worked_board.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::mm;

using namespace testing;

TEST(NewBoard, HasWholeMillimetresInACaseOfMillimetres) {
    const BoardSpec board = newBoard(Unit::Millimetre);
    EXPECT_EQ(board.thickness.length, mm(19));
    EXPECT_EQ(board.playInHeight.length, mm(1));
    EXPECT_EQ(board.keeper.screwSpacing.length, mm(100));
    EXPECT_EQ(newBoard(Unit::Inch).thickness.length, in(0, 48));
}

TEST(NewBoard, IsAsDeepAsItsCaseLessAHandsBreadth) {
    // Frame 3/4 and 18 behind it, less 1/2
    EXPECT_EQ(newBoard(Unit::Inch, workedPlace(), {}).depth.length, in(18, 16));
}

PerSide<Length> sides(Length left, Length right) {
    PerSide<Length> lengths;
    lengths.left = left;
    lengths.right = right;
    if (left == right)
        return PerSide<Length>::all(left);
    return lengths;
}

TEST(NewBoard, HasTheLongestBradThatTheThinnerAndTheThickerFurringAllow) {
    // Left furring 23/32; right 1/4 more: 31/32, and at least 3/8 in the panel: 1 11/32 − 1/32
    // set = 1 5/16, while the left allows no more than 23/32 − 1/32 + 5/8 = 1 5/16. That is no step
    // of 1/4: each side has its own, the right one up to 31/32 − 1/32 + 5/8 = 1 9/16.
    BoardPlace place = workedPlace();
    place.rightPanel = place.rightPanel + in(0, 16);
    const BoardSpec board = newBoard(Unit::Inch, place, {});
    const BoardPlan plan = planBoard(board, place);
    EXPECT_EQ(plan.furring.right, in(0, 62));
    EXPECT_EQ(bradsFor(board, plan, {}, Unit::Inch), (sides(in(1, 16), in(1, 32))));
    EXPECT_EQ(board.bradLength.length, in(1, 16));
    EXPECT_EQ(bradAt(board, Side::Right).length, in(1, 32));
    EXPECT_EQ(checkBrad(board, plan, Side::Right, {})->passage, Passage::Holds);
    EXPECT_EQ(checkBrad(board, plan, Side::Left, {})->passage, Passage::Holds);
    place.rightPanel = place.rightPanel - in(0, 8);
    const BoardPlan nearer = planBoard(board, place);
    EXPECT_EQ(bradsFor(board, nearer, {}, Unit::Inch), sides(in(1, 16), in(1, 16)));
}

TEST(NewBoard, TakesTheLongestStockedScrewThatStaysInThePanel) {
    const BoardSpec board = newBoard(Unit::Inch, workedPlace(), {});
    const BoardPlan plan = planBoard(board, workedPlace());
    EXPECT_EQ(keeperScrewsFor(board, plan, {}, {in(1), in(1, 48), in(2)}),
              sides(in(1, 48), in(1, 48)));
    EXPECT_EQ(keeperScrewsFor(board, plan, {}, {in(1), in(2)}), std::nullopt);
}

TEST(NewBoard, NeedsNoBradWhereThePanelItselfGuides) {
    BoardPlace place = workedPlace();
    place.leftPanel = place.opening.left;
    place.rightPanel = place.opening.right;
    const BoardSpec board = newBoard(Unit::Inch, place, {});
    EXPECT_EQ(bradsFor(board, planBoard(board, place), {}, Unit::Inch), std::nullopt);
}

TEST(NewBoard, HoldsByItsFastenersWhereverTheyFit) {
    RandomBoards random(20261);
    for (int i = 0; i < 500; ++i) {
        const BoardPlace place = random.place();
        const BoardSpec board = newBoard(Unit::Inch, place, {});
        const BoardPlan plan = planBoard(board, place);
        EXPECT_GT(plan.behind, Length{});
        if (const auto brad = bradsFor(board, plan, {}, Unit::Inch)) {
            for (const Side side : {Side::Left, Side::Right})
                if (const auto check = checkBrad(board, plan, side, {}))
                    EXPECT_EQ(check->passage, Passage::Holds);
        }
    }
}

} // namespace
} // namespace frontwright
