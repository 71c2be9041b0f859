#include "tests/core/boards/fitted.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace testing;

TEST(FittedBoard, TellsAllThatItsPartsTell) {
    const BoardCase board;
    const FittedBoard fitted = board.fitted();
    EXPECT_EQ(fitted.board, planBoard(board.spec, board.place));
    EXPECT_EQ(fitted.strips.left, keeperStrip(board.spec.keeper, fitted.board.strip, Side::Left));
    EXPECT_EQ(fitted.pullOffCentre, in(8, 60));
    EXPECT_EQ(fitted.closedSkew, skewOf(fitted.board, {}));
    EXPECT_EQ(fitted.skew, skewOf(fitted.board, in(6)));
    EXPECT_EQ(fitted.out.pullOut, in(6));
    EXPECT_EQ(fitted.brads.left->passage, Passage::Holds);
    EXPECT_TRUE(fitted.season);
    EXPECT_EQ(fitted.isRunnerSofter, false);
}

TEST(FittedBoard, IsLoadedAsInTheTestWhereTheMakerGivesNone) {
    BoardCase board;
    EXPECT_NEAR(board.fitted().load.inPoundsForce(), 50, 1e-6);
    board.spec.load = Force::nearestToPoundsForce(20);
    EXPECT_NEAR(board.fitted().load.inPoundsForce(), 20, 1e-6);
}

TEST(FittedBoard, WeighsWhatItsWoodWeighs) {
    // 17 7/8 × 3/4 × 18 in = 3.9544 dm³ of 0.63 × 1.12 kg/dm³
    EXPECT_NEAR(BoardCase().fitted().weight->inKilograms(), 3.9544 * 0.63 * 1.12, 0.01);
}

TEST(FittedBoard, ComesOutAsFarAsIsSafeWhereTheMakerGivesNone) {
    BoardCase board;
    board.spec.pullOut = std::nullopt;
    const FittedBoard fitted = board.fitted();
    EXPECT_EQ(fitted.wanted, fitted.safe.pullOut);
    EXPECT_EQ(fitted.wanted, in(6, 52)); // 18 − 5/4 × 8 15/16 = 6.83
    board.spec.pullOut = in(40);
    EXPECT_EQ(board.fitted().wanted, in(18)) << "no farther than it is deep";
}

TEST(FittedBoard, IsToldAsFarAsItsMaterialsAreKnown) {
    const BoardCase board;
    const FittedBoard fitted = fitBoard(board.spec, board.place, {}, {}, in(0, 4));
    EXPECT_FALSE(fitted.weight);
    EXPECT_FALSE(fitted.season);
    EXPECT_FALSE(fitted.out.keeper.use);
    EXPECT_FALSE(fitted.isRunnerSofter);
    EXPECT_GT(fitted.out.keeper.uplift, Force());
}

} // namespace
} // namespace frontwright
