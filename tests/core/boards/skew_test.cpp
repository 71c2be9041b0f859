#include "core/boards/skew.h"

#include "tests/core/boards/worked_board.h"

#include <gtest/gtest.h>

#include <cmath>

namespace frontwright {
namespace {

using namespace testing;

BoardPlan unfurred() {
    BoardSpec spec = workedSpec();
    spec.furred = Furred::No;
    return planBoard(spec, workedPlace());
}

TEST(Skew, IsThePlayOverTheLengthThatIsGuided) {
    // 1/16 in at the frame and 3/32 at the furring over 16 in: 0.009 766; with the board's width
    // θ = (16 − √(16² − 2 × 17.875 × 0.15625)) / 17.875 = 0.009 820, half a degree.
    const Skew skew = skewOf(workedBoard(), {});
    EXPECT_EQ(skew.guide, Guide::Inside);
    EXPECT_EQ(skew.guided, in(16));
    EXPECT_NEAR(skew.angle.inRadians(), 0.009820, 2e-6);
    EXPECT_NEAR(skew.angle.inDegrees(), 0.563, 1e-3);
    EXPECT_EQ(skew.aside, Length{});
}

TEST(Skew, GrowsAsTheBoardComesOut) {
    // 8 in are left: (8 − √(64 − 5.5859)) / 17.875 = 0.019 974; at 8 in out that is 0.16 in.
    const Skew skew = skewOf(workedBoard(), in(8));
    EXPECT_EQ(skew.guided, in(8));
    EXPECT_NEAR(skew.angle.inRadians(), 0.019974, 5e-6);
    EXPECT_NEAR(skew.aside.inInches(), 0.1598, 1e-4);
}

TEST(Skew, IsFiveTimesAsGreatWithoutFurring) {
    // 1/16 + 13/16 over 16 in: (16 − √(256 − 31.28)) / 17.875 = 0.0565.
    const Skew skew = skewOf(unfurred(), {});
    EXPECT_NEAR(skew.angle.inRadians(), 0.0565, 2e-4);
    EXPECT_GT(skew.angle.inRadians(), 5 * skewOf(workedBoard(), {}).angle.inRadians());
}

TEST(Frame, HoldsANarrowBoardWithoutFurringByItsThicknessAlone) {
    BoardSpec spec = workedSpec();
    spec.furred = Furred::No;
    spec.sidePlay = in(0, 1);
    spec.depth = in(12);
    BoardPlace place = workedPlace();
    place.opening.right = place.opening.left + in(6, 2);
    place.rightPanel = place.opening.right + in(0, 48);
    // 1/32 in over 3/4 in turns the board of 6 in by less than 25/32 in over 12 in.
    const BoardPlan board = planBoard(spec, place);
    EXPECT_EQ(board.width, in(6));
    const Skew skew = skewOf(board, {});
    EXPECT_EQ(skew.guide, Guide::Frame);
    EXPECT_EQ(skew.guided, in(0, 48));
    EXPECT_NEAR(skew.angle.inRadians(), 0.0528, 0.0015);
    EXPECT_EQ(judgeRunning(board, skew, pullOffCentre(spec, board)).running, Running::Jams);
    spec.furred = Furred::Yes;
    const BoardPlan furred = planBoard(spec, place);
    EXPECT_EQ(judgeRunning(furred, skewOf(furred, {}), in(3)).running, Running::Freely);
}

TEST(Frame, CannotHoldAWideBoardWhoseDiagonalIsLessThanTheOpening) {
    // √(17.875² + 0.75²) = 17.891 in, less than 18: it would turn about.
    EXPECT_EQ(skewIn(in(17, 56), in(0, 48), in(0, 8)), Angle::quarterTurn());
}

TEST(Skew, IsNoneWithoutPlay) {
    EXPECT_EQ(skewIn(in(12), in(16), {}), Angle());
    EXPECT_EQ(skewIn(in(12), in(16), -in(0, 1)), Angle());
}

TEST(AnyGuide, IsTouchedByTheBoardsDiagonalCorners) {
    RandomBoards random(7);
    for (int i = 0; i < 1000; ++i) {
        const Length width = in(1) + random.upTo(64 * 30);
        const Length length = in(1) + random.upTo(64 * 24);
        const Length play = Length::fromSixtyFourths(1) + random.upTo(40);
        const Angle angle = skewIn(width, length, play);
        if (angle == Angle::quarterTurn()) {
            EXPECT_LE(std::hypot(width.inMillimetres(), length.inMillimetres()),
                      (width + play).inMillimetres() + 1e-9);
            continue;
        }
        const double needs = width.inMillimetres() * std::cos(angle.inRadians()) +
                             length.inMillimetres() * std::sin(angle.inRadians());
        EXPECT_NEAR(needs, (width + play).inMillimetres(), 1e-3);
        EXPECT_GE(skewIn(width, length, play + in(0, 1)), angle) << "more play, more skew";
        EXPECT_LE(skewIn(width, length + in(1), play), angle) << "longer guide, less skew";
    }
}

TEST(AnyBoard, SkewsLessTheWiderItsFurring) {
    RandomBoards random(8);
    for (int i = 0; i < 500; ++i) {
        BoardSpec spec = random.spec();
        const BoardPlace place = random.place();
        const Length out = random.upTo(spec.depth.length.nanometres() / 396'875);
        const Angle furred = skewOf(planBoard(spec, place), out).angle;
        spec.workingAllowance = spec.workingAllowance.length + in(0, 4); // thinner furring
        EXPECT_LE(furred, skewOf(planBoard(spec, place), out).angle);
        spec.furred = Furred::No;
        EXPECT_LE(furred, skewOf(planBoard(spec, place), out).angle);
    }
}

// Pulled at a corner, e = 8 15/16 in; with μ = 0.5 it jams at 8 15/16 in of guided length.
TEST(Board, JamsWhereHalfItsWidthIsGuided) {
    const BoardPlan board = workedBoard();
    const Length corner = pullOffCentre(workedSpec(), board);
    EXPECT_EQ(corner, in(8, 60));
    EXPECT_EQ(judgeRunning(board, skewOf(board, in(7, 4)), corner).running, Running::Jams);
    EXPECT_EQ(judgeRunning(board, skewOf(board, in(7, 4)), corner).guided, in(8, 60));
    EXPECT_EQ(judgeRunning(board, skewOf(board, in(7, 3)), corner).running, Running::Hard);
}

TEST(Board, RunsHardWhereItIsWiderThanItIsGuided) {
    const BoardPlan board = workedBoard();
    const RunningJudgement judged = judgeRunning(board, skewOf(board, {}), in(8, 60));
    EXPECT_EQ(judged.running, Running::Hard);
    EXPECT_EQ(judged.least, in(8, 60));
    EXPECT_EQ(judged.toWidth.thousandths(), 895);      // 16 / 17 7/8
    EXPECT_EQ(judged.leastToWidth.thousandths(), 500); // μ
    EXPECT_EQ(judged.harder.thousandths(), 2265);      // 1 / (1 − 8.9375 / 16)
    BoardSpec deep = workedSpec();
    deep.depth = in(17, 57);
    const BoardPlan deeper = planBoard(deep, workedPlace());
    EXPECT_EQ(judgeRunning(deeper, skewOf(deeper, {}), in(8, 60)).running, Running::Freely);
}

TEST(Board, RunsFreelyPulledInItsMiddle) {
    BoardSpec spec = workedSpec();
    spec.pullOffCentre = in(1);
    const BoardPlan board = workedBoard();
    const RunningJudgement judged =
        judgeRunning(board, skewOf(board, in(12)), pullOffCentre(spec, board));
    EXPECT_EQ(judged.running, Running::Freely); // 2 μ e = 1 in of 4
    EXPECT_EQ(judged.harder.thousandths(), 1333);
    EXPECT_EQ(judgeRunning(board, skewOf(board, {}), {}).harder.thousandths(), 1000);
}

// The same by forces: what is left of a pull of 1 after both places have rubbed.
TEST(AnyBoard, IsMovedByWhatFrictionLeavesOfThePull) {
    RandomBoards random(9);
    for (int i = 0; i < 500; ++i) {
        const BoardSpec spec = random.spec();
        const BoardPlan board = planBoard(spec, random.place());
        const Skew skew = skewOf(board, random.upTo(64 * 5));
        const Length corner = board.width.half();
        const RunningJudgement judged = judgeRunning(board, skew, corner);
        const double presses = corner.inMillimetres() / skew.guided.inMillimetres();
        const double left = 1 - 2 * frictionOfDryWood * presses;
        EXPECT_EQ(judged.running == Running::Jams, left <= 1e-9) << i;
        if (left > 0.01) {
            EXPECT_NEAR(numberOf(judged.harder), 1 / left, 0.001 / left);
            EXPECT_EQ(judged.running == Running::Hard, left < 0.5);
        }
    }
}

} // namespace
} // namespace frontwright
