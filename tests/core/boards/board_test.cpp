#include "core/boards/board.h"

#include "tests/core/boards/worked_board.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace testing;

TEST(Board, IsTheOpeningLessItsPlayOnBothSides) {
    const BoardPlan board = workedBoard();
    EXPECT_EQ(board.width, in(17, 56)); // 18 − 2 × 1/16
    EXPECT_EQ(board.thickness, in(0, 48));
    EXPECT_EQ(board.depth, in(16));
    EXPECT_EQ(board.behind, in(2, 48)); // 3/4 frame + 18 − 16
}

TEST(Furring, ReachesFromTheSidePanelToTheOpeningLessTheAllowance) {
    const BoardPlan board = workedBoard();
    EXPECT_EQ(board.furring.left, in(0, 46)); // 1 1/2 − 3/4 − 1/32
    EXPECT_EQ(board.furring.right, in(0, 46));
    EXPECT_EQ(board.insideGap.left, in(0, 6)); // 1/16 + 1/32
    EXPECT_EQ(board.keeperGrip, in(0, 42));    // 3/4 − 3/32
}

TEST(Furring, IsOfItsOwnThicknessOnEachSide) {
    BoardPlace place = workedPlace();
    place.rightPanel = in(21);
    const BoardPlan board = planBoard(workedSpec(), place);
    EXPECT_EQ(board.furring.left, in(0, 46));
    EXPECT_EQ(board.furring.right, in(1, 30)); // 1 1/2 − 1/32
    EXPECT_EQ(board.insideGap.right, in(0, 6));
}

TEST(Furring, IsNotNeededWhereTheSidePanelIsFlushWithTheOpening) {
    BoardPlace place = workedPlace();
    place.leftPanel = place.opening.left;
    const BoardPlan board = planBoard(workedSpec(), place);
    EXPECT_EQ(board.furring.left, -in(0, 2));
    EXPECT_EQ(board.insideGap.left, in(0, 4)) << "the panel itself guides";
}

TEST(Board, SwingsOutToTheSidePanelsWithoutFurring) {
    BoardSpec spec = workedSpec();
    spec.furred = Furred::No;
    const BoardPlan board = planBoard(spec, workedPlace());
    EXPECT_EQ(board.furring.left, Length{});
    EXPECT_EQ(board.insideGap.left, in(0, 52)); // 1/16 + 3/4
    EXPECT_EQ(board.keeperGrip, -in(0, 4)) << "a strip of 3/4 in does not reach over it";
}

TEST(Board, LiesInTheOpeningsMiddle) {
    const BoardPlan board = workedBoard();
    EXPECT_EQ(board.runnerTop, in(0, 8));         // (1 − 3/4) / 2
    EXPECT_EQ(board.runnerUnderside, -in(0, 40)); // 1/8 − 3/4
    EXPECT_EQ(board.keeperUnderside, in(0, 58));  // 1/8 + 3/4 + 1/32
    EXPECT_EQ(board.underTopRail, in(0, 8));      // 1 − 1/8 − 3/4
    EXPECT_EQ(board.keeperBehindRail, -in(0, 6)); // 29/32 − 1: the strip is seen by 3/32
}

TEST(SetupBlocks, SetTheRunnerFromTheRailAndTheKeeperFromTheRunner) {
    const BoardPlan board = workedBoard();
    EXPECT_EQ(board.runnerBlock, in(0, 8));
    EXPECT_EQ(board.keeperBlock, in(0, 50)); // 3/4 + 1/32
    EXPECT_EQ(board.runnerBlock + board.keeperBlock, board.keeperUnderside);
}

TEST(Board, KeepsTheRunnersHeightThatTheMakerGives) {
    BoardSpec spec = workedSpec();
    spec.runnerRise = in(0, 20);
    const BoardPlan board = planBoard(spec, workedPlace());
    EXPECT_EQ(board.runnerTop, in(0, 20));
    EXPECT_EQ(board.underTopRail, -in(0, 4)) << "does not pass under the top rail";
    EXPECT_EQ(board.keeperBehindRail, in(0, 6));
}

TEST(Board, DoesNotGoIntoACaseThatIsTooShallow) {
    BoardPlace place = workedPlace();
    place.caseDepth = in(15);
    EXPECT_EQ(planBoard(workedSpec(), place).behind, -in(0, 16)); // 15 3/4 − 16
}

TEST(AnyBoard, FillsItsOpeningWithItsPlays) {
    RandomBoards random(41);
    for (int i = 0; i < 500; ++i) {
        const BoardSpec spec = random.spec();
        const BoardPlace place = random.place();
        const BoardPlan board = planBoard(spec, place);
        EXPECT_EQ(board.width + 2 * board.sidePlay, place.opening.width());
        EXPECT_EQ(board.runnerTop + board.thickness + board.underTopRail, place.opening.height());
        EXPECT_EQ(board.keeperUnderside - board.runnerTop - board.thickness, board.playInHeight);
        // Panel to panel: furring, gap, board, gap, furring.
        const Length furring = greatest({}, board.furring.left) + greatest({}, board.furring.right);
        EXPECT_EQ(furring + board.insideGap.left + board.width + board.insideGap.right,
                  place.rightPanel - place.leftPanel);
        EXPECT_GE(board.insideGap.left, board.sidePlay) << "furring stands before the opening";
    }
}

} // namespace
} // namespace frontwright
