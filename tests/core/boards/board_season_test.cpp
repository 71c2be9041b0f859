#include "core/boards/board_season.h"

#include "tests/core/boards/worked_board.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace testing;

Stock flatSawn(Grain grain) {
    return {"", Cut::FlatSawn, grain, Build::Solid};
}

// Red oak, tangential 0.00369 and radial 0.00158 for each percent, from 6 to 10 %.
TEST(Board, SticksInSummerWithItsGrainFromFrontToBack) {
    const auto season =
        boardSeason(workedBoard(), oak().figures, flatSawn(Grain::AlongHeight), 6, 10);
    ASSERT_TRUE(season);
    EXPECT_NEAR(season->widthChange.inInches(), 0.26384, 1e-5);     // 17.875 × 0.00369 × 4
    EXPECT_NEAR(season->thicknessChange.inInches(), 0.00474, 1e-5); // 0.75 × 0.00158 × 4
    EXPECT_NEAR(season->leastSidePlay.inInches(), 0.13192, 1e-5);
    EXPECT_NEAR(season->sidePlay.inInches(), 0.0625 - 0.13192, 1e-5);
    EXPECT_NEAR(season->playInHeight.inInches(), 0.03125 - 0.00474, 1e-5);
    EXPECT_TRUE(season->sticks());
}

TEST(Board, KeepsItsSidePlayWithItsGrainFromSideToSide) {
    const auto season =
        boardSeason(workedBoard(), oak().figures, flatSawn(Grain::AlongLength), 6, 10);
    ASSERT_TRUE(season);
    EXPECT_EQ(season->sidePlay, in(0, 4));
    EXPECT_FALSE(season->sticks());
}

TEST(Board, MovesMoreInThicknessWhereItIsQuarterSawn) {
    Stock stock = flatSawn(Grain::AlongLength);
    stock.cut = Cut::QuarterSawn;
    const auto season = boardSeason(workedBoard(), oak().figures, stock, 6, 10);
    EXPECT_NEAR(season->thicknessChange.inInches(), 0.01107, 1e-5); // 0.75 × 0.00369 × 4
}

TEST(Board, OfStableStockDoesNotMove) {
    Stock stock = flatSawn(Grain::AlongHeight);
    stock.build = Build::Stable;
    const auto season = boardSeason(workedBoard(), {}, stock, 6, 12);
    ASSERT_TRUE(season);
    EXPECT_EQ(season->sidePlay, in(0, 4));
    EXPECT_EQ(season->playInHeight, in(0, 2));
}

TEST(Board, IsNotJudgedWhereItsWoodIsNotKnown) {
    EXPECT_FALSE(boardSeason(workedBoard(), {}, flatSawn(Grain::AlongHeight), 6, 10));
}

TEST(LeastPlay, IsJustEnoughForTheSeason) {
    for (const double to : {7.0, 8.5, 10.0, 13.0}) {
        const auto tight =
            boardSeason(workedBoard(), oak().figures, flatSawn(Grain::AlongHeight), 6, to);
        BoardPlan wider = workedBoard();
        wider.sidePlay = tight->leastSidePlay;
        wider.playInHeight = tight->leastPlayInHeight;
        const auto right = boardSeason(wider, oak().figures, flatSawn(Grain::AlongHeight), 6, to);
        EXPECT_FALSE(right->sticks());
        wider.sidePlay -= Length::fromNanometres(1);
        EXPECT_TRUE(
            boardSeason(wider, oak().figures, flatSawn(Grain::AlongHeight), 6, to)->sticks());
    }
}

TEST(Runner, OfSofterWoodThanTheBoardIsWornHollow) {
    Species pine;
    pine.gravity = SpecificGravity{400, GravityBasis::At12Percent};
    EXPECT_EQ(runnerIsSofter(pine, oak()), true);
    EXPECT_EQ(runnerIsSofter(oak(), pine), false);
    EXPECT_EQ(runnerIsSofter(oak(), oak()), false);
    EXPECT_EQ(runnerIsSofter({}, oak()), std::nullopt);
}

} // namespace
} // namespace frontwright
