#include "core/drawings/hatch.h"

#include "core/drawings/sketch.h"
#include "tests/core/plan/small_case.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace frontwright {
namespace {

HatchMark square(double size) {
    return {cornersOf(BoxMm(PointMm(0, 0), PointMm(size, size))), 3, 45, {}};
}

double totalLength(const std::vector<LineMark>& lines) {
    double sum = 0;
    for (const LineMark& line : lines)
        sum += (line.to - line.from).norm();
    return sum;
}

/// On or inside a convex outline given anticlockwise.
bool isInside(const std::vector<PointMm>& outline, const PointMm& p) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const PointMm& a = outline[i];
        const PointMm edge = outline[(i + 1) % outline.size()] - a;
        const PointMm to = p - a;
        if (edge.x() * to.y() - edge.y() * to.x() < -1e-9 * edge.norm())
            return false;
    }
    return true;
}

TEST(Hatch, LiesAtItsAngle) {
    for (const double angle : {0.0, 30.0, 45.0, 60.0, 135.0}) {
        HatchMark hatch = square(40);
        hatch.angle = angle;
        const PointMm along(std::cos(angle * std::numbers::pi / 180),
                            std::sin(angle * std::numbers::pi / 180));
        const auto lines = hatchLines(hatch, 1);
        ASSERT_FALSE(lines.empty());
        for (const LineMark& line : lines)
            EXPECT_NEAR(std::abs((line.to - line.from).normalized().dot(along)), 1, 1e-9);
    }
}

TEST(Hatch, IsSpacedOnPaperWhateverTheScale) {
    HatchMark level = square(100);
    level.angle = 0;
    // Level lines 3 mm apart on paper: 100 mm hold 33 at 1:1 (3 … 99), 3 at 1:10 (30, 60, 90),
    // and the one through the origin lies on the lower edge.
    for (const auto& [scale, pitch] : {std::pair{1.0, 3.0}, std::pair{0.1, 30.0}}) {
        const auto lines = hatchLines(level, scale);
        ASSERT_GE(lines.size(), 2U);
        EXPECT_NEAR(lines[1].from.y() - lines[0].from.y(), pitch, 1e-9);
        EXPECT_NEAR(static_cast<double>(lines.size()), 100 / pitch, 1.01);
    }
}

TEST(Hatch, FillsAnAreaOfItsLinesTimesTheirSpacing) {
    HatchMark hatch = square(300);
    const double area = totalLength(hatchLines(hatch, 1)) * hatch.spacing;
    EXPECT_NEAR(area, 300.0 * 300.0, 300.0 * 300.0 * 0.01);
}

TEST(Hatch, LeavesHolesFree) {
    HatchMark hatch = square(60);
    hatch.without.push_back(cornersOf(BoxMm(PointMm(20, 20), PointMm(40, 40))));
    // Overlaps the first: what is free twice is free.
    hatch.without.push_back(cornersOf(BoxMm(PointMm(30, 30), PointMm(50, 50))));
    for (const LineMark& line : hatchLines(hatch, 1))
        for (double share = 0.01; share < 1; share += 0.01) {
            const PointMm p = line.from + share * (line.to - line.from);
            for (const auto& free : hatch.without)
                EXPECT_FALSE(BoxMm(free[0] + PointMm(1e-6, 1e-6), free[2] - PointMm(1e-6, 1e-6))
                                 .contains(p));
        }
}

TEST(Hatch, StaysInsideRandomConvexOutlines) {
    testing::Dice dice(7);
    for (int round = 0; round < 200; ++round) {
        // Points in ascending order round an ellipse make a convex outline.
        HatchMark hatch;
        const double rx = static_cast<double>(dice.between(5, 200));
        const double ry = static_cast<double>(dice.between(5, 200));
        const double turn = static_cast<double>(dice.between(0, 359));
        for (const int step : {0, 50, 110, 170, 260, 330}) {
            const double a = (turn + step) * std::numbers::pi / 180;
            hatch.outline.emplace_back(500 + rx * std::cos(a), ry * std::sin(a) - 80);
        }
        hatch.angle = static_cast<double>(dice.between(0, 179));
        const auto lines = hatchLines(hatch, 0.5);
        for (const LineMark& line : lines) {
            EXPECT_TRUE(isInside(hatch.outline, line.from));
            EXPECT_TRUE(isInside(hatch.outline, line.to));
        }
    }
}

TEST(Hatch, OfNeighbouringOutlinesRunsOn) {
    HatchMark left = square(20), right = square(20);
    for (PointMm& p : right.outline)
        p.x() += 20;
    HatchMark both = square(20);
    both.outline = cornersOf(BoxMm(PointMm(0, 0), PointMm(40, 20)));
    EXPECT_NEAR(totalLength(hatchLines(left, 1)) + totalLength(hatchLines(right, 1)),
                totalLength(hatchLines(both, 1)), 1e-9);
}

TEST(Hatch, IsEmptyWhereThereIsNothingToFill) {
    EXPECT_TRUE(hatchLines({}, 1).empty());
    EXPECT_TRUE(hatchLines({{{0, 0}, {1, 1}}, 3, 45, {}}, 1).empty());
    HatchMark closed = square(10);
    closed.spacing = 0;
    EXPECT_TRUE(hatchLines(closed, 1).empty());
}

} // namespace
} // namespace frontwright
