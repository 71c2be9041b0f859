#include "core/boards/layers.h"

#include "core/catalogue/stocked.h"

#include "tests/core/boards/worked_board.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace testing;

// Furring of 23/32 in on a side panel of 3/4 in.
LayerCheck bradOf(Length length) {
    return checkLayers(length, {}, {in(0, 46)}, in(0, 48), {});
}

TEST(Brad, HoldsWhereItsTipStaysInTheSidePanel) {
    const LayerCheck brad = bradOf(in(1, 16));
    EXPECT_EQ(brad.passed, in(0, 46));
    EXPECT_EQ(brad.penetration, in(0, 34)); // 1 1/4 − 23/32
    EXPECT_EQ(brad.cover, in(0, 14));       // 3/4 − 17/32
    EXPECT_EQ(brad.passage, Passage::Holds);
}

TEST(Brad, BlowsOutThroughTheShowSide) {
    EXPECT_EQ(bradOf(in(1, 32)).cover, -in(0, 2)); // 3/4 − 25/32
    EXPECT_EQ(bradOf(in(1, 32)).passage, Passage::BlowsOut);
    EXPECT_EQ(bradOf(in(1, 30)).passage, Passage::BlowsOut) << "the tip is level with the face";
    EXPECT_EQ(bradOf(in(1, 29)).passage, Passage::TipNear);
}

TEST(Brad, IsTooShortWhereItHardlyReachesThePanel) {
    EXPECT_EQ(bradOf(in(1)).penetration, in(0, 18)); // 9/32, less than 3/8
    EXPECT_EQ(bradOf(in(1)).passage, Passage::TooShort);
    EXPECT_EQ(bradOf(in(0, 32)).penetration, -in(0, 14));
}

TEST(Brad, GoesDeeperByWhatItsHeadIsSet) {
    const LayerCheck brad = checkLayers(in(1, 16), in(0, 8), {in(0, 46)}, in(0, 48), {});
    EXPECT_EQ(brad.penetration, in(0, 42));
    EXPECT_EQ(brad.passage, Passage::TipNear); // 3/32 of cover
}

TEST(Window, LeavesPenetrationAndCover) {
    const LayerCheck brad = bradOf(in(1));
    EXPECT_EQ(brad.leastLength, in(1, 6));     // 23/32 + 3/8
    EXPECT_EQ(brad.greatestLength, in(1, 22)); // 23/32 + 3/4 − 1/8
    EXPECT_EQ(longestStocked({in(1), in(1, 8), in(1, 16), in(1, 32)}, brad.window()), in(1, 16));
    EXPECT_EQ(longestStocked({in(1), in(1, 32)}, brad.window()), std::nullopt);
    EXPECT_EQ(checkLayers(in(1, 22), {}, {in(0, 46)}, in(0, 48), {}).passage, Passage::Holds);
    EXPECT_EQ(checkLayers(in(1, 6), {}, {in(0, 46)}, in(0, 48), {}).passage, Passage::Holds);
}

TEST(Window, IsEmptyInAPanelThatIsTooThin) {
    const LayerCheck brad = checkLayers(in(1), {}, {in(0, 46)}, in(0, 24), {});
    EXPECT_LT(brad.greatestLength, brad.leastLength);
    EXPECT_EQ(longestStocked({in(1), in(1, 4), in(1, 8)}, brad.window()), std::nullopt);
}

TEST(Brad, IsCheckedInTheFurringOfItsOwnSide) {
    BoardPlace place = workedPlace();
    place.rightPanel = place.opening.right; // flush: no furring
    BoardSpec spec = workedSpec();
    const BoardPlan board = planBoard(spec, place);
    ASSERT_TRUE(checkBrad(spec, board, Side::Left, {}));
    EXPECT_EQ(checkBrad(spec, board, Side::Left, {})->passage, Passage::TooShort);
    EXPECT_FALSE(checkBrad(spec, board, Side::Right, {}));
}

TEST(KeeperScrew, PassesStripAndFurringIntoThePanel) {
    BoardSpec spec = workedSpec();
    const BoardPlan board = workedBoard();
    const auto screw = checkKeeperScrew(spec.keeper, board, Side::Left, {});
    ASSERT_TRUE(screw);
    EXPECT_EQ(screw->passed, in(1, 30));      // 3/4 + 23/32
    EXPECT_EQ(screw->penetration, in(0, 34)); // 2 − 1 15/32
    EXPECT_EQ(screw->passage, Passage::Holds);
    spec.keeper.screwLength = in(2, 16);
    EXPECT_EQ(checkKeeperScrew(spec.keeper, board, Side::Left, {})->passage, Passage::BlowsOut);
    spec.keeper.fastening = KeeperFastening::Down;
    EXPECT_FALSE(checkKeeperScrew(spec.keeper, board, Side::Left, {}));
}

TEST(AnyFastener, FitsExactlyInItsWindow) {
    RandomBoards random(31);
    const Limits limits;
    for (int i = 0; i < 1000; ++i) {
        const Length length = random.upTo(192);
        const LayerCheck check = checkLayers(
            length, random.upTo(8), {random.upTo(64), random.upTo(64)}, random.upTo(80), limits);
        const bool fits = check.leastLength <= length && length <= check.greatestLength;
        EXPECT_EQ(check.passage == Passage::Holds, fits);
        EXPECT_EQ(longestStocked({length}, check.window()).has_value(), fits);
    }
}

} // namespace
} // namespace frontwright
