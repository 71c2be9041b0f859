#include "core/sheets/sheets.h"
#include "tests/core/plan/small_case.h"

#include <gtest/gtest.h>

#include <cmath>

namespace frontwright {
namespace {

constexpr double tolerance = 1e-7; ///< mm

BoxMm box(double left, double bottom, double right, double top) {
    return {PointMm(left, bottom), PointMm(right, top)};
}
const Tile& at(const Tiling& tiling, int column, int row) {
    return tiling.tiles[static_cast<std::size_t>(row * tiling.columns + column)];
}

TEST(Tiling, OnePageIsEnoughWhereThePartFits) {
    const Tiling tiling = tile(box(0, 0, 190, 277), 190, 277, 10, {});
    ASSERT_EQ(tiling.tiles.size(), 1U);
    EXPECT_EQ(tileName(tiling.tiles[0]), "A1");
    EXPECT_TRUE(tiling.tiles[0].area.isApprox(box(0, 0, 190, 277)));
    EXPECT_TRUE(tiling.tiles[0].trimmed.isApprox(box(0, 0, 190, 277)));
}

// 300 mm on pages of 190 mm with 10 mm overlap: two areas of (300 + 10) / 2 = 155 mm, the joint in
// the middle of their overlap at 150 mm.
TEST(Tiling, TwoPagesMeetInTheMiddleOfTheirOverlap) {
    const Tiling tiling = tile(box(0, 0, 300, 100), 190, 277, 10, {});
    ASSERT_EQ(tiling.columns, 2);
    ASSERT_EQ(tiling.rows, 1);
    EXPECT_TRUE(at(tiling, 0, 0).area.isApprox(box(0, 0, 155, 100)));
    EXPECT_TRUE(at(tiling, 0, 0).trimmed.isApprox(box(0, 0, 150, 100)));
    EXPECT_TRUE(at(tiling, 1, 0).area.isApprox(box(145, 0, 300, 100)));
    EXPECT_TRUE(at(tiling, 1, 0).trimmed.isApprox(box(150, 0, 300, 100)));
}

// Two pages of 190 mm that share 10 mm reach 370 mm; a hair more takes a third.
TEST(Tiling, TakesAsFewPagesAsWillDo) {
    EXPECT_EQ(tile(box(0, 0, 370, 10), 190, 277, 10, {}).columns, 2);
    EXPECT_EQ(tile(box(0, 0, 370.001, 10), 190, 277, 10, {}).columns, 3);
    EXPECT_EQ(tile(box(0, 0, 380, 10), 190, 277, 0, {}).columns, 2);
}

TEST(Tiling, RowsAreLetteredFromTheTopAndColumnsNumberedFromTheLeft) {
    const Tiling tiling = tile(box(0, 0, 300, 500), 190, 277, 10, {});
    ASSERT_EQ(tiling.tiles.size(), 4U);
    EXPECT_EQ(tileName(tiling.tiles[0]), "A1");
    EXPECT_EQ(tileName(tiling.tiles[1]), "A2");
    EXPECT_EQ(tileName(tiling.tiles[2]), "B1");
    EXPECT_GT(tiling.tiles[0].area.min().y(), tiling.tiles[2].area.min().y());
    EXPECT_DOUBLE_EQ(tiling.tiles[0].area.max().y(), 500);
}

TEST(TileNames, GoOnAfterZLikeALedger) {
    EXPECT_EQ(tileName({0, 0, {}, {}}), "A1");
    EXPECT_EQ(tileName({11, 25, {}, {}}), "Z12");
    EXPECT_EQ(tileName({0, 26, {}, {}}), "AA1");
    EXPECT_EQ(tileName({0, 701, {}, {}}), "ZZ1");
    EXPECT_EQ(tileName({0, 702, {}, {}}), "AAA1");
}

// The joint would lie at 150 mm; a hole at 152 mm drives it to 147 mm, the nearer side.
TEST(Joint, MovesFiveMillimetresClearOfAHole) {
    const std::vector<PointMm> holes{{152, 50}};
    const Tiling tiling = tile(box(0, 0, 300, 100), 190, 277, 10, holes);
    EXPECT_NEAR(at(tiling, 0, 0).trimmed.max().x(), 147, tolerance);
}

TEST(Joint, StaysWhereAHoleIsFiveMillimetresAway) {
    const std::vector<PointMm> holes{{155, 50}, {145, 20}};
    const Tiling tiling = tile(box(0, 0, 300, 100), 190, 277, 10, holes);
    EXPECT_NEAR(at(tiling, 0, 0).trimmed.max().x(), 150, tolerance);
}

TEST(Joint, JumpsOverARowOfHoles) {
    const std::vector<PointMm> holes{{142, 50}, {150, 50}, {158, 50}, {166, 50}};
    const Tiling tiling = tile(box(0, 0, 300, 100), 190, 277, 10, holes);
    EXPECT_NEAR(at(tiling, 0, 0).trimmed.max().x(), 137, tolerance);
}

// 370 mm on two pages leaves the joint no room at all; one page more does.
TEST(Joint, TakesAPageMoreWhereTheHoleLeavesNoRoom) {
    const std::vector<PointMm> holes{{185, 50}};
    const Tiling tiling = tile(box(0, 0, 370, 100), 190, 277, 10, holes);
    EXPECT_EQ(tiling.columns, 3);
    for (const Tile& one : tiling.tiles)
        EXPECT_GE(std::abs(one.trimmed.max().x() - 185), 5 - tolerance);
}

/// Extents, pages, overlaps and holes by chance.
struct RandomTiling {
    explicit RandomTiling(std::uint64_t seed) {
        testing::Dice dice(seed);
        const auto mm = [&](std::int64_t low, std::int64_t high) {
            return static_cast<double>(dice.between(low * 1000, high * 1000)) / 1000;
        };
        const PointMm corner(mm(-50, 50), mm(-50, 50));
        extent = {corner, corner + PointMm(mm(50, 3000), mm(50, 2000))};
        width = mm(90, 600);
        height = mm(90, 600);
        overlap = dice.between(0, 3) == 0 ? 0 : mm(1, 25);
        for (std::int64_t i = dice.between(0, 12); i > 0; --i)
            holes.emplace_back(mm(-50, 3000), mm(-50, 2000));
        tiling = tile(extent, width, height, overlap, holes);
    }
    BoxMm extent;
    double width = 0, height = 0, overlap = 0;
    std::vector<PointMm> holes;
    Tiling tiling;
};
constexpr std::uint64_t cases = 400;

TEST(TilingLaw, TrimmedTilesCoverTheExtentExactly) {
    for (std::uint64_t seed = 0; seed < cases; ++seed) {
        const RandomTiling random(seed);
        const Tiling& t = random.tiling;
        ASSERT_EQ(t.tiles.size(), static_cast<std::size_t>(t.columns * t.rows));
        double sum = 0;
        for (const Tile& one : t.tiles) {
            sum += one.trimmed.volume();
            EXPECT_GT(one.trimmed.sizes().minCoeff(), 0) << seed;
        }
        EXPECT_NEAR(sum, random.extent.volume(), 1e-6 * random.extent.volume()) << seed;
        // Neighbours meet at one and the same number, so nothing is counted twice or left out.
        for (int row = 0; row < t.rows; ++row)
            for (int column = 0; column + 1 < t.columns; ++column)
                EXPECT_EQ(at(t, column, row).trimmed.max().x(),
                          at(t, column + 1, row).trimmed.min().x());
        for (int row = 0; row + 1 < t.rows; ++row)
            for (int column = 0; column < t.columns; ++column)
                EXPECT_EQ(at(t, column, row).trimmed.min().y(),
                          at(t, column, row + 1).trimmed.max().y());
        EXPECT_EQ(at(t, 0, t.rows - 1).trimmed.min(), random.extent.min());
        EXPECT_EQ(at(t, t.columns - 1, 0).trimmed.max(), random.extent.max());
    }
}

TEST(TilingLaw, NoAreaIsLargerThanThePageLets) {
    for (std::uint64_t seed = 0; seed < cases; ++seed) {
        const RandomTiling random(seed);
        for (const Tile& one : random.tiling.tiles) {
            EXPECT_LE(one.area.sizes().x(), random.width + tolerance) << seed;
            EXPECT_LE(one.area.sizes().y(), random.height + tolerance) << seed;
            EXPECT_TRUE(one.area.contains(one.trimmed)) << seed;
        }
    }
}

TEST(TilingLaw, NeighboursShareTheWholeOverlap) {
    for (std::uint64_t seed = 0; seed < cases; ++seed) {
        const RandomTiling random(seed);
        const Tiling& t = random.tiling;
        for (int row = 0; row < t.rows; ++row)
            for (int column = 0; column + 1 < t.columns; ++column)
                EXPECT_NEAR(at(t, column, row).area.max().x() -
                                at(t, column + 1, row).area.min().x(),
                            random.overlap, tolerance)
                    << seed;
        for (int row = 0; row + 1 < t.rows; ++row)
            EXPECT_NEAR(at(t, 0, row + 1).area.max().y() - at(t, 0, row).area.min().y(),
                        random.overlap, tolerance)
                << seed;
    }
}

// Of 5 mm radius: clear of every joint by 5 mm, or in the middle of an overlap of 10 mm.
TEST(TilingLaw, EveryHoleIsWholeOnSomeTile) {
    int onJoint = 0, counted = 0;
    for (std::uint64_t seed = 0; seed < cases; ++seed) {
        const RandomTiling random(seed);
        for (const PointMm& hole : random.holes) {
            if (!random.extent.contains(hole))
                continue;
            ++counted;
            const PointMm r(5 - 1e-6, 5 - 1e-6);
            const BoxMm whole = BoxMm(hole - r, hole + r).intersection(random.extent);
            bool isWhole = false;
            for (const Tile& one : random.tiling.tiles)
                isWhole = isWhole || one.area.contains(whole);
            onJoint += isWhole ? 0 : 1;
        }
    }
    EXPECT_GT(counted, 500);
    EXPECT_EQ(onJoint, 0);
}

} // namespace
} // namespace frontwright
