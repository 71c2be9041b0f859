#include "core/drawings/dimension_marks.h"

#include "core/drawings/lettering.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

DimensionMark across(double length, double offset) {
    return {{0, 0}, {length, 0}, offset, "640", std::nullopt};
}
DimensionMark upward(double length, double offset) {
    return {{0, 0}, {0, length}, offset, "640", std::nullopt};
}

TEST(Dimension, RunsParallelToWhatItMeasuresAtItsOffset) {
    const DimensionFigure above = figureOf(across(64, 10), 1);
    EXPECT_TRUE(above.line.from.isApprox(PointMm(0, 10)));
    EXPECT_TRUE(above.line.to.isApprox(PointMm(64, 10)));
    const DimensionFigure below = figureOf(across(64, -10), 1);
    EXPECT_DOUBLE_EQ(below.line.from.y(), -10);
    EXPECT_DOUBLE_EQ(below.line.to.y(), -10);
}

TEST(Dimension, KeepsItsOffsetOnPaperAtAnyScale) {
    EXPECT_DOUBLE_EQ(figureOf(across(640, 10), 0.1).line.from.y(), 100);
}

TEST(Dimension, HasItsTextAboveTheLineAndReadFromBelow) {
    for (const double offset : {10.0, -10.0}) {
        const DimensionFigure figure = figureOf(across(64, offset), 1);
        EXPECT_GT(textBox(figure.text, 1).min().y(), figure.line.from.y());
        EXPECT_DOUBLE_EQ(figure.text.turned, 0);
        EXPECT_DOUBLE_EQ(figure.text.at.x(), 32);
    }
}

TEST(Dimension, OfAHeightIsReadFromTheRight) {
    for (const double offset : {10.0, -10.0}) {
        const DimensionFigure figure = figureOf(upward(64, offset), 1);
        EXPECT_DOUBLE_EQ(figure.text.turned, 90);
        // Above the line, for who reads from the right, is to its left.
        EXPECT_LT(textBox(figure.text, 1).max().x(), figure.line.from.x());
        EXPECT_DOUBLE_EQ(figure.text.at.y(), 32);
    }
}

TEST(Dimension, ReadsTheSameWhicheverWayItIsGiven) {
    DimensionMark backward = across(64, -10);
    std::swap(backward.from, backward.to);
    backward.offset = 10;
    const DimensionFigure one = figureOf(across(64, -10), 1), other = figureOf(backward, 1);
    EXPECT_TRUE(one.text.at.isApprox(other.text.at));
    EXPECT_DOUBLE_EQ(one.text.turned, other.text.turned);
    DimensionMark downward = upward(64, 10);
    std::swap(downward.from, downward.to);
    EXPECT_DOUBLE_EQ(figureOf(downward, 1).text.turned, 90);
}

TEST(Dimension, LeavesAGapAtTheObjectAndOverrunsTheLine) {
    // Overrun about 8 × the narrow line of 0.18 mm (ISO 129-1, from memory).
    const DimensionFigure figure = figureOf(across(64, 10), 1);
    ASSERT_EQ(figure.extensions.size(), 2U);
    EXPECT_DOUBLE_EQ(figure.extensions[0].from.y(), 1.0);
    EXPECT_NEAR(figure.extensions[0].to.y(), 10 + 8 * 0.18, 0.1);
    EXPECT_DOUBLE_EQ(figure.extensions[1].from.x(), 64);
}

TEST(Dimension, NeedsNoExtensionLinesWhereItLiesOnWhatItMeasures) {
    EXPECT_TRUE(figureOf(across(64, 0), 1).extensions.empty());
}

TEST(Dimension, HasAnObliqueStrokeAtEitherEnd) {
    const DimensionFigure figure = figureOf(across(64, 10), 1);
    for (const auto& tick : figure.ticks) {
        const PointMm stroke = (tick[1] - tick[0]).normalized();
        EXPECT_NEAR(stroke.x(), stroke.y(), 1e-12); // 45°
        const PointMm middle = (tick[0] + tick[1] + tick[2] + tick[3]) / 4;
        EXPECT_DOUBLE_EQ(middle.y(), 10);
    }
}

TEST(Dimension, PutsATextThatDoesNotFitBeyondItsEnd) {
    const DimensionFigure figure = figureOf(across(4, 10), 1);
    const BoxMm text = textBox(figure.text, 1);
    EXPECT_GT(text.min().x(), 4 + 1);
    EXPECT_DOUBLE_EQ(figure.line.to.x(), text.max().x()); // the line runs on under it
    DimensionMark backward = across(4, 10);
    std::swap(backward.from, backward.to);
    EXPECT_LT(textBox(figureOf(backward, 1).text, 1).max().x(), -1);
}

TEST(Dimension, PutsATextThatDoesNotFitAboveAHeight) {
    const DimensionFigure figure = figureOf(upward(4, 10), 1);
    EXPECT_DOUBLE_EQ(figure.text.turned, 90);
    EXPECT_GT(textBox(figure.text, 1).min().y(), 4 + 1);
}

TEST(Dimension, CopesWithNothingToMeasure) {
    const DimensionFigure figure = figureOf(across(0, 10), 1);
    EXPECT_EQ(figure.extensions.size(), 1U);
    EXPECT_TRUE(figure.text.at.allFinite());
    EXPECT_GT(textBox(figure.text, 1).min().x(), 0);
}

} // namespace
} // namespace frontwright
