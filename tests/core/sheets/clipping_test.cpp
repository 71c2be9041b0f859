#include "core/sheets/clipping.h"
#include "tests/core/plan/small_case.h"

#include <gtest/gtest.h>

#include <numbers>

namespace frontwright {
namespace {

const BoxMm area(PointMm(0, 0), PointMm(100, 50));

TEST(CutLine, KeepsWhatLiesInTheTile) {
    const auto level = clipped(LineMark{{-20, 10}, {300, 10}}, area);
    ASSERT_TRUE(level);
    EXPECT_EQ(level->from, PointMm(0, 10));
    EXPECT_EQ(level->to, PointMm(100, 10));
    const auto slope = clipped(LineMark{{-10, -10}, {30, 30}}, area);
    ASSERT_TRUE(slope);
    EXPECT_TRUE(slope->from.isApprox(PointMm(0, 0)) || slope->from.norm() < 1e-12);
    EXPECT_EQ(slope->to, PointMm(30, 30));
}

TEST(CutLine, AlongTheBorderStays) {
    EXPECT_TRUE(clipped(LineMark{{0, 0}, {100, 0}}, area));
    EXPECT_TRUE(clipped(LineMark{{100, -5}, {100, 60}}, area));
}

TEST(CutLine, OutsideOrTouchingInOnePointIsNothing) {
    EXPECT_FALSE(clipped(LineMark{{-20, 60}, {300, 60}}, area));
    EXPECT_FALSE(clipped(LineMark{{-10, 10}, {0, 10}}, area));
    EXPECT_FALSE(clipped(LineMark{{-10, 45}, {10, 65}}, area));
}

TEST(CutPath, StaysClosedWhereNothingIsCut) {
    const PathMark path{{{1, 1}, {9, 1}, {9, 9}}, PathMark::End::Closed};
    const auto pieces = clipped(path, area);
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_EQ(pieces[0].end, PathMark::End::Closed);
    EXPECT_EQ(pieces[0].points.size(), 3U);
}

TEST(CutPath, AnOutlineThatReachesOutBecomesOneOpenPiece) {
    const PathMark outline{{{20, -10}, {60, -10}, {60, 30}, {20, 30}}, PathMark::End::Closed};
    const auto pieces = clipped(outline, area);
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_EQ(pieces[0].end, PathMark::End::Open);
    const std::vector<PointMm> expected{{60, 0}, {60, 30}, {20, 30}, {20, 0}};
    EXPECT_EQ(pieces[0].points, expected);
}

TEST(CutPath, AnOutlineBegunInsideIsJoinedAtItsFirstPoint) {
    const PathMark outline{{{20, 30}, {20, -10}, {60, -10}, {60, 30}}, PathMark::End::Closed};
    const auto pieces = clipped(outline, area);
    ASSERT_EQ(pieces.size(), 1U);
    const std::vector<PointMm> expected{{60, 0}, {60, 30}, {20, 30}, {20, 0}};
    EXPECT_EQ(pieces[0].points, expected);
}

double lengthOf(const std::vector<PathMark>& pieces) {
    double length = 0;
    for (const PathMark& piece : pieces)
        for (std::size_t i = 0; i + 1 < piece.points.size(); ++i)
            length += (piece.points[i + 1] - piece.points[i]).norm();
    return length;
}

// Half of a hole of 10 mm at the tile's edge: half of 31.416 mm.
TEST(CutCircle, HalfAHoleIsHalfItsCircumference) {
    const CircleMark hole{{0, 25}, 5};
    EXPECT_FALSE(isInside(hole, area));
    const auto pieces = arcs(hole, area);
    EXPECT_NEAR(lengthOf(pieces), 5 * std::numbers::pi, 0.01);
    for (const PathMark& piece : pieces)
        for (const PointMm& p : piece.points) {
            EXPECT_NEAR((p - hole.centre).norm(), 5, 1e-9);
            EXPECT_GE(p.x(), -1e-9);
        }
}

TEST(CutCircle, InACornerAQuarterIsLeft) {
    EXPECT_NEAR(lengthOf(arcs({{100, 50}, 8}, area)), 4 * std::numbers::pi, 0.01);
}

TEST(CutCircle, ChordsLeaveTheCircleByLessThanAThousandth) {
    for (double radius : {1.0, 5.0, 40.0})
        for (const PathMark& piece : arcs({{0, 25}, radius}, area))
            for (std::size_t i = 0; i + 1 < piece.points.size(); ++i) {
                const PointMm middle = (piece.points[i] + piece.points[i + 1]) / 2;
                EXPECT_GT((middle - PointMm(0, 25)).norm(), radius - 0.001);
            }
}

TEST(CutCircle, OutsideNothingIsLeft) {
    EXPECT_TRUE(arcs({{-20, 25}, 5}, area).empty());
    EXPECT_TRUE(arcs({{-2, -2}, 2.5}, area).empty());
}

TEST(CutHatch, IsTheCommonPartOfOutlineAndTile) {
    const std::vector<PointMm> outline{{-10, -10}, {20, -10}, {20, 20}, {-10, 20}};
    BoxMm box;
    for (const PointMm& p : clippedOutline(outline, area))
        box.extend(p);
    EXPECT_TRUE(box.isApprox(BoxMm(PointMm(0, 0), PointMm(20, 20))));
    EXPECT_TRUE(clippedOutline({{-9, 1}, {-5, 1}, {-5, 5}}, area).empty());
}

TEST(CutMark, KeepsLayerAndPartAndDropsText) {
    const Part part{OpeningId{7}, {}, "outline"};
    const auto lines = clipped(Mark{Layer::FrontEdge, LineMark{{-1, 5}, {5, 5}}, part}, area);
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].layer, Layer::FrontEdge);
    EXPECT_EQ(lines[0].part, part);
    EXPECT_TRUE(clipped(Mark{Layer::Note, TextMark{{5, 5}, "x"}, part}, area).empty());
}

// Cut along any line, the two parts are together as long as the whole.
TEST(CutLaw, TwoTilesTogetherShowTheWholeLine) {
    testing::Dice dice(4);
    const auto mm = [&] { return static_cast<double>(dice.between(-400, 1400)) / 10; };
    for (int i = 0; i < 500; ++i) {
        const LineMark line{{mm(), mm()}, {mm(), mm()}};
        const double joint = static_cast<double>(dice.between(100, 900)) / 10;
        const auto length = [&](double left, double right) {
            const auto piece = clipped(line, BoxMm(PointMm(left, -500), PointMm(right, 500)));
            return piece ? (piece->to - piece->from).norm() : 0.0;
        };
        EXPECT_NEAR(length(-500, joint) + length(joint, 500), (line.to - line.from).norm(), 1e-8);
    }
}

} // namespace
} // namespace frontwright
