#include "core/drawings/wood_figure.h"

#include "tests/core/drawings/drawn.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace frontwright {
namespace {

const BoxMm board(PointMm(100, 200), PointMm(600, 350));

WoodPart wood(Cut cut, Grain grain = Grain::AlongLength, std::uint64_t seed = 5) {
    return {{181, 118, 74, 40}, cut, grain, seed};
}

std::vector<ToneMark> linesOn(const WoodPart& part, double paperScale = 0.2,
                              const BoxMm& box = board) {
    Sketch sketch(paperScale);
    drawFigure(sketch, box, part, {});
    std::vector<ToneMark> lines;
    for (const auto& [mark, tone] : testing::shapesOn<ToneMark>(sketch.finished(0), Layer::Wash))
        lines.push_back(tone);
    return lines;
}

double greatestTurn(const std::vector<PointMm>& points) {
    double greatest = 0;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const PointMm step = points[i] - points[i - 1];
        greatest = std::max(greatest, std::abs(std::atan2(step.y(), std::abs(step.x()))));
    }
    return greatest;
}

TEST(Figure, StaysOnItsBoard) {
    for (const Cut cut : {Cut::FlatSawn, Cut::Rift, Cut::QuarterSawn})
        for (const Grain grain : {Grain::AlongLength, Grain::AlongHeight})
            for (std::uint64_t seed = 0; seed < 20; ++seed)
                for (const ToneMark& line : linesOn(wood(cut, grain, seed)))
                    for (const PointMm& p : line.points) {
                        ASSERT_TRUE(board.contains(p)) << p.transpose();
                        ASSERT_TRUE(std::isfinite(p.x()) && std::isfinite(p.y()));
                    }
}

TEST(Figure, OfTheSameSeedIsTheSameToTheLastBit) {
    const auto first = linesOn(wood(Cut::FlatSawn)), second = linesOn(wood(Cut::FlatSawn));
    ASSERT_EQ(first.size(), second.size());
    for (std::size_t i = 0; i < first.size(); ++i)
        EXPECT_EQ(first[i].points, second[i].points);
    EXPECT_NE(linesOn(wood(Cut::FlatSawn, Grain::AlongLength, 6)).front().points,
              first.front().points);
}

TEST(Figure, OfAQuarterSawnBoardRunsStraightAlongTheGrain) {
    for (const ToneMark& line : linesOn(wood(Cut::QuarterSawn))) {
        EXPECT_LT(greatestTurn(line.points), 0.15);
    }
    for (const ToneMark& line : linesOn(wood(Cut::QuarterSawn, Grain::AlongHeight)))
        for (std::size_t i = 1; i < line.points.size(); ++i) {
            const PointMm step = line.points[i] - line.points[i - 1];
            EXPECT_LT(std::abs(step.x()), std::abs(step.y()));
        }
}

TEST(Figure, OfAFlatSawnBoardHasCathedrals) {
    int boardsWithTip = 0;
    for (std::uint64_t seed = 0; seed < 20; ++seed) {
        const auto lines = linesOn(wood(Cut::FlatSawn, Grain::AlongLength, seed));
        if (std::any_of(lines.begin(), lines.end(), [](const ToneMark& line) {
                // At a cathedral's tip the line turns back.
                bool forth = false, back = false;
                for (std::size_t i = 1; i < line.points.size(); ++i) {
                    const double step = line.points[i].x() - line.points[i - 1].x();
                    (step > 0 ? forth : back) |= step != 0;
                }
                return forth && back;
            }))
            ++boardsWithTip;
    }
    EXPECT_GE(boardsWithTip, 18);
}

TEST(Figure, LeavesOutWhatPaperCannotShow) {
    const auto count = [](double scale) { return linesOn(wood(Cut::FlatSawn), scale).size(); };
    EXPECT_GT(count(1), count(0.1));
    EXPECT_GT(count(0.1), 2 * count(0.02));
    // 150 mm of board at 0.02 are 3 mm of paper: a handful of lines at most.
    EXPECT_LE(count(0.02), 12U);
}

TEST(Figure, OfAStrongWoodIsDrawnStrongerThanThatOfAPlainOne) {
    WoodPart oak = wood(Cut::QuarterSawn), basswood = oak;
    oak.tone.figure = 50;
    basswood.tone.figure = 8;
    EXPECT_GT(linesOn(oak).front().tone.opacity, 2 * linesOn(basswood).front().tone.opacity);
}

TEST(Figure, OfNoBoardIsNothing) {
    EXPECT_TRUE(linesOn(wood(Cut::FlatSawn), 1, {PointMm(5, 5), PointMm(5, 90)}).empty());
}

TEST(Boards, OfOneWoodDifferALittle) {
    const Tone first = boardTone(wood(Cut::FlatSawn, Grain::AlongLength, 1));
    const Tone second = boardTone(wood(Cut::FlatSawn, Grain::AlongLength, 2));
    EXPECT_NE(first, second);
    EXPECT_NEAR(first.red, 181, 12);
    EXPECT_NEAR(second.green, 118, 12);
}

} // namespace
} // namespace frontwright
