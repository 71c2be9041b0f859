#include "core/boards/pull_out.h"

#include "tests/core/boards/worked_board.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace testing;

/// All that a loaded board refers to.
struct Fitted {
    explicit Fitted(const BoardSpec& spec = workedSpec(), const BoardPlace& place = workedPlace())
        : board(planBoard(spec, place)) {
        strips.left = keeperStrip(spec.keeper, board.strip, Side::Left);
        strips.right = keeperStrip(spec.keeper, board.strip, Side::Right);
        const WoodScrew screw = numberEight();
        const Species wood = oak();
        hold = keeperHold(spec.keeper, board, &screw, &wood);
    }
    [[nodiscard]] LoadedBoard with(double poundsForce) const {
        return {board, strips, hold, Force::nearestToPoundsForce(poundsForce)};
    }
    BoardPlan board;
    PerSide<KeeperStrip> strips;
    KeeperHold hold;
};

constexpr double newtonMetresPerPoundInch = 4.4482216152605 * 0.0254;

// 50 lbf at the edge, 8 in out: the frame is 3/4 in thick, so that the arm is 8 3/4 in in front of
// the runners, and 7 1/4 in of strip are left behind them.
TEST(PulledOutBoard, LiftsTheStripByItsMomentOverTheLever) {
    const Fitted fitted;
    const PulledOut out = pulledOut(fitted.with(50), in(8));
    EXPECT_NEAR(out.moment.inNewtonMetres(), 437.5 * newtonMetresPerPoundInch, 1e-4);
    EXPECT_EQ(out.keeper.behind, in(7, 16));
    EXPECT_EQ(out.keeper.lever, in(7, 16));
    EXPECT_NEAR(out.keeper.uplift.inPoundsForce(), 60.345, 1e-3); // 437.5 / 7.25
    // Five screws at 1 3/4 … 17 3/4, lifted at 8 in: the first bears 1/5 + 1.75 × 8 / 160.
    EXPECT_NEAR(out.keeper.lift.inPoundsForce(), 60.345 * 0.2875, 1e-3);
    EXPECT_NEAR(out.keeper.pull.inPoundsForce(), 60.345 * 0.2875 * 1.125, 1e-3);
    EXPECT_NEAR(numberOf(*out.keeper.use), 0.174, 0.002);
}

TEST(PulledOutBoard, DroopsByItsPlayOverTheLever) {
    const PulledOut out = pulledOut(Fitted().with(50), in(8));
    EXPECT_NEAR(out.droop->inInches(), 0.037716, 1e-6); // 1/32 × 8 3/4 / 7 1/4
}

TEST(PulledOutBoard, BearsBeforeAnInterruptionThatItsBackIsIn) {
    BoardSpec spec = workedSpec();
    spec.keeper.fasteners = {{Side::Left, in(5), in(1)}, {Side::Left, in(12), in(1)}};
    const PulledOut out = pulledOut(Fitted(spec).with(50), in(4));
    EXPECT_EQ(out.keeper.side, Side::Left);
    EXPECT_EQ(out.keeper.lever, in(10, 40)); // 11 3/8 − 3/4
    EXPECT_EQ(out.keeper.behind, in(9, 24)); // 3 5/8 + 5 3/4
    const PulledOut whole = pulledOut(Fitted().with(50), in(4));
    EXPECT_EQ(whole.keeper.lever, in(11, 16));
    EXPECT_GT(out.keeper.uplift, whole.keeper.uplift);
    EXPECT_GT(*out.droop, *whole.droop);
}

TEST(PulledOutBoard, IsLiftedByItsOwnWeightOnlyFromHalfwayOn) {
    const Fitted fitted;
    LoadedBoard loaded = fitted.with(0);
    loaded.weight = Mass::pounds(10);
    EXPECT_EQ(pulledOut(loaded, in(7)).moment, Moment()); // 7 3/4 of 8 in
    EXPECT_EQ(pulledOut(loaded, in(7)).keeper.uplift, Force());
    EXPECT_NEAR(pulledOut(loaded, in(9)).moment.inNewtonMetres(), 17.5 * newtonMetresPerPoundInch,
                1e-4); // 10 lb × 1 3/4 in
}

TEST(PulledOutBoard, TipsWhereNoStripIsLeftBehind) {
    const PulledOut out = pulledOut(Fitted().with(50), in(15, 16));
    EXPECT_EQ(out.keeper.lever, Length{});
    EXPECT_EQ(out.keeper.behind, Length{});
    EXPECT_FALSE(out.droop);
    BoardSpec narrow = workedSpec();
    narrow.keeper.width = in(0, 4);
    EXPECT_EQ(pulledOut(Fitted(narrow).with(50), in(4)).keeper.lever, Length{})
        << "the strip does not lie over the board";
}

// It jams where 8 15/16 in are guided; 5/4 of that are 11 11/64 in, which 16 in less 4 13/16 in
// (11 3/16 in) still are, but not 16 in less 4 7/8 in.
TEST(SafePullOut, EndsAQuarterBeforeTheBoardJams) {
    const Fitted fitted;
    const SafePullOut safe = safePullOut(fitted.with(50), in(8, 60), in(0, 4));
    EXPECT_EQ(safe.pullOut, in(4, 52));
    EXPECT_EQ(safe.end, PullOutEnd::Jams);
}

// 1/16 in of play: 1/16 × (x + 3/4) / (15 1/4 − x) is 1/4 in where x + 3/4 = 4 × (15 1/4 − x),
// at 12.05 in.
TEST(SafePullOut, EndsWhereTheFrontEdgeSinksTooFar) {
    BoardSpec loose = workedSpec();
    loose.playInHeight = in(0, 4);
    const SafePullOut safe = safePullOut(Fitted(loose).with(0), {}, in(0, 4));
    EXPECT_EQ(safe.end, PullOutEnd::Droops);
    EXPECT_EQ(safe.pullOut, in(12));
}

// Lever a, one screw bears 0.65 − 0.05 a of 50 (16 − a) / a lbf, and at most 99.7: a = 3.17 in.
TEST(SafePullOut, EndsWhereAKeeperScrewBearsTooMuch) {
    const Fitted fitted;
    const SafePullOut safe = safePullOut(fitted.with(50), {}, in(0, 4));
    EXPECT_EQ(safe.end, PullOutEnd::Keeper);
    EXPECT_GE(safe.pullOut, in(12));
    EXPECT_LE(safe.pullOut, in(12, 8));
}

TEST(SafePullOut, EndsWhereNothingIsLeftBehindALightLoad) {
    BoardSpec tight = workedSpec();
    tight.playInHeight = Length{}; // it does not droop
    const SafePullOut safe = safePullOut(Fitted(tight).with(0), {}, in(0, 4));
    EXPECT_EQ(safe.end, PullOutEnd::Tips);
    EXPECT_EQ(safe.pullOut, in(15, 12)); // 1/16 in is left behind the frame
}

TEST(SafePullOut, IsNoneForABoardThatJamsWhereItLies) {
    BoardSpec shallow = workedSpec();
    shallow.depth = in(8);
    const SafePullOut safe = safePullOut(Fitted(shallow).with(5), in(8, 60), in(0, 4));
    EXPECT_EQ(safe.pullOut, Length{});
    EXPECT_EQ(safe.end, PullOutEnd::Jams);
}

TEST(SafePullOut, IsNotStoppedByScrewsThatAreNotKnown) {
    Fitted fitted;
    fitted.hold.withdrawal = std::nullopt;
    EXPECT_EQ(safePullOut(fitted.with(500), {}, in(0, 4)).end, PullOutEnd::Droops);
}

TEST(AnyPulledOutBoard, DoesNotDroopWithoutPlay) {
    RandomBoards random(61);
    for (int i = 0; i < 300; ++i) {
        BoardSpec spec = random.spec();
        const BoardPlace place = random.place();
        const Length out = random.upTo(spec.depth.length.nanometres() / 396'875);
        const PulledOut loose = pulledOut(Fitted(spec, place).with(50), out);
        spec.playInHeight = Length{};
        const PulledOut tight = pulledOut(Fitted(spec, place).with(50), out);
        EXPECT_EQ(tight.droop.has_value(), loose.droop.has_value());
        EXPECT_EQ(tight.droop.value_or(Length{}), Length{});
        EXPECT_GE(loose.droop.value_or(Length{}), Length{});
    }
}

TEST(AnyPulledOutBoard, IsInBalance) {
    RandomBoards random(62);
    for (int i = 0; i < 300; ++i) {
        const Fitted fitted(random.spec(), random.place());
        LoadedBoard loaded = fitted.with(static_cast<double>(random.between(0, 100)));
        loaded.weight = Mass::pounds(random.between(0, 12));
        const Length out = random.upTo(64 * 6);
        const PulledOut pulled = pulledOut(loaded, out);
        EXPECT_LE(pulled.keeper.lever, fitted.board.depth - out);
        EXPECT_LE(pulled.keeper.behind, pulled.keeper.lever);
        if (!pulled.keeper.lever.isZero())
            EXPECT_NEAR(pulled.keeper.uplift.inNewtons() * pulled.keeper.lever.inMillimetres() /
                            1000,
                        pulled.moment.inNewtonMetres(), 1e-3);
    }
}

TEST(AnySafePullOut, IsFollowedByAStepThatIsNotSafe) {
    RandomBoards random(63);
    const Length step = in(0, 8);
    for (int i = 0; i < 100; ++i) {
        const BoardSpec spec = random.spec();
        const Fitted fitted(spec, random.place());
        const LoadedBoard loaded = fitted.with(static_cast<double>(random.between(0, 80)));
        const Length corner = pullOffCentre(spec, fitted.board);
        const SafePullOut safe = safePullOut(loaded, corner, step);
        const SafePullOut heavier =
            safePullOut(fitted.with(loaded.load.inPoundsForce() + 20), corner, step);
        EXPECT_LE(heavier.pullOut, safe.pullOut) << "more load, not farther out";
        if (safe.pullOut.isZero())
            continue;
        const PulledOut next = pulledOut(loaded, safe.pullOut + step);
        const RunningJudgement running =
            judgeRunning(fitted.board, skewOf(fitted.board, safe.pullOut + step), corner);
        const bool jams =
            running.running == Running::Jams || running.guided < leastSafelyGuided(running);
        const bool tooMuch = next.keeper.use && *next.keeper.use > Ratio::fromThousandths(1000);
        const bool droops = next.droop && *next.droop > mostDroop;
        EXPECT_TRUE(jams || tooMuch || droops || next.keeper.lever.isZero()) << i;
    }
}

TEST(AnyPulledOutBoard, IsTheSameMirrored) {
    RandomBoards random(64);
    for (int i = 0; i < 200; ++i) {
        BoardSpec spec = random.spec();
        const BoardPlace place = workedPlace();
        const Length out = random.upTo(64 * 6);
        const PulledOut before = pulledOut(Fitted(spec, place).with(40), out);
        for (FastenerToReach& fastener : spec.keeper.fasteners)
            fastener.side = opposite(fastener.side);
        PulledOut after = pulledOut(Fitted(spec, place).with(40), out);
        after.keeper.side = before.keeper.side;
        EXPECT_EQ(after, before);
    }
}

} // namespace
} // namespace frontwright
