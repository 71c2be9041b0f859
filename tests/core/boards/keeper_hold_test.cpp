#include "core/boards/keeper_hold.h"

#include "tests/core/boards/worked_board.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace testing;

KeeperHold holdOf(const KeeperSpec& spec, const BoardPlan& board) {
    const WoodScrew screw = numberEight();
    const Species wood = oak();
    return keeperHold(spec, board, &screw, &wood);
}

TEST(KeeperScrew, IsPulledWhereTheStripTurnsAboutItsUpperEdge) {
    const KeeperHold hold = holdOf(workedSpec().keeper, workedBoard());
    EXPECT_TRUE(hold.holdsBoard);
    EXPECT_TRUE(hold.isSheared);
    EXPECT_EQ(hold.penetration, in(1, 16));     // 2 − 3/4
    EXPECT_EQ(hold.prying.thousandths(), 1125); // (3/4 + 3/32) / (3/4)
    // 2850 × 0.675² × 0.164 × 1 1/4 lbf; 44.13 × 4.1656² N, at 7.6 diameters.
    EXPECT_NEAR(hold.withdrawal->inPoundsForce(), 266.2, 1);
    EXPECT_NEAR(hold.lateral->inNewtons(), 765.8, 0.5);
}

TEST(KeeperScrew, IsPulledHarderInTheFurringsEdge) {
    KeeperSpec spec = workedSpec().keeper;
    spec.fastening = KeeperFastening::Down;
    const KeeperHold hold = holdOf(spec, workedBoard());
    EXPECT_FALSE(hold.isSheared);
    EXPECT_FALSE(hold.lateral);
    // (23/32 + 27/64) / (23/64)
    EXPECT_EQ(hold.prying.thousandths(), 3174);
    EXPECT_EQ(hold.penetration, in(1, 16));
}

TEST(KeeperScrew, HoldsOnlyInTheWoodThatThereIs) {
    KeeperSpec spec = workedSpec().keeper;
    spec.screwLength = in(3);
    EXPECT_EQ(holdOf(spec, workedBoard()).penetration, in(1, 30)); // furring + panel
    spec.screwLength = in(0, 32);
    EXPECT_EQ(holdOf(spec, workedBoard()).penetration, Length{});
    EXPECT_EQ(holdOf(spec, workedBoard()).withdrawal, Force());
}

TEST(Keeper, HoldsNothingWhereItDoesNotLieOverTheBoard) {
    BoardSpec spec = workedSpec();
    spec.keeper.width = in(0, 6); // as wide as the gap
    EXPECT_FALSE(holdOf(spec.keeper, planBoard(spec, workedPlace())).holdsBoard);
    spec.keeper.width = in(0, 7);
    EXPECT_TRUE(holdOf(spec.keeper, planBoard(spec, workedPlace())).holdsBoard);
}

TEST(Keeper, CannotLieOnFurringThatIsNotThere) {
    BoardSpec spec = workedSpec();
    spec.furred = Furred::No;
    spec.keeper.width = in(2);
    spec.keeper.fastening = KeeperFastening::Down;
    EXPECT_FALSE(holdOf(spec.keeper, planBoard(spec, workedPlace())).holdsBoard);
    spec.keeper.fastening = KeeperFastening::Sideways;
    EXPECT_TRUE(holdOf(spec.keeper, planBoard(spec, workedPlace())).holdsBoard);
}

TEST(Use, IsThePulledAndTheLiftedPartTogether) {
    const KeeperHold hold = holdOf(workedSpec().keeper, workedBoard());
    const Force lift = Force::nearestToNewtons(100);
    const double use = 112.5 / hold.withdrawal->inNewtons() + 100 / hold.lateral->inNewtons();
    EXPECT_NEAR(numberOf(*useOf(hold, lift)), use, 0.001);
    EXPECT_EQ(useOf(hold, Force()), Ratio());
    KeeperHold weak = hold;
    weak.withdrawal = Force();
    EXPECT_EQ(useOf(weak, lift)->thousandths(), Ratio::mostThousandths);
}

TEST(Use, IsNotKnownWithoutWoodOrScrew) {
    const Species wood = oak();
    const KeeperHold hold = keeperHold(workedSpec().keeper, workedBoard(), nullptr, &wood);
    EXPECT_EQ(useOf(hold, Force::nearestToNewtons(1)), std::nullopt);
    EXPECT_EQ(hold.penetration, in(1, 16)) << "what the sizes tell is told";
}

TEST(Lift, IsSharedByTheScrewsOfAPiece) {
    const KeeperPiece three{{in(0), in(10)}, {in(1), in(5), in(9)}};
    EXPECT_NEAR(greatestPart(three, in(5)), 1.0 / 3, 1e-9);
    EXPECT_NEAR(greatestPart(three, in(10)), 1.0 / 3 + 5.0 * 4 / 32, 1e-9); // Σ = 2 × 4²
    EXPECT_NEAR(greatestPart(three, in(0)), greatestPart(three, in(10)), 1e-9);
    EXPECT_EQ(greatestPart({{in(0), in(2)}, {in(1)}}, in(2)), 1);
}

// As a lever: two screws, lifted over one of them, leave the other without load.
TEST(Lift, OverOneOfTwoScrewsIsAllItsOwn) {
    const KeeperPiece two{{in(0), in(6)}, {in(1), in(5)}};
    EXPECT_NEAR(greatestPart(two, in(5)), 1, 1e-9);
    EXPECT_NEAR(greatestPart(two, in(3)), 0.5, 1e-9);
    EXPECT_NEAR(greatestPart(two, in(6)), 1.25, 1e-9);
}

TEST(AnyLift, IsNeverSharedBetterThanEvenly) {
    RandomBoards random(51);
    for (int i = 0; i < 300; ++i) {
        const Span along{in(0), in(2) + random.upTo(64 * 20)};
        const KeeperPiece piece{along, screwsAlong(along, in(1), in(4))};
        const Length at = random.upTo(along.high.nanometres() / 396'875);
        const double part = greatestPart(piece, at);
        EXPECT_GE(part, 1.0 / static_cast<double>(piece.screws.size()) - 1e-9);
        EXPECT_LE(part, greatestPart(piece, along.high) + 1e-9) << "worst at the end";
    }
}

} // namespace
} // namespace frontwright
