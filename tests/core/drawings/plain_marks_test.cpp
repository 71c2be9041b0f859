#include "core/drawings/plain_marks.h"

#include "core/drawings/lettering.h"
#include "core/drawings/sketch.h"
#include "tests/core/drawings/drawn.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

Part named(std::string name) {
    return {std::nullopt, std::nullopt, std::move(name)};
}

TEST(PlainMarks, KeepLinesPathsCirclesAndTextsAsTheyAre) {
    Sketch sketch(0.5);
    sketch.line(Layer::FrontEdge, {0, 0}, {3, 4}, named("edge"));
    sketch.rectangle(Layer::CaseOutline, BoxMm(PointMm(0, 0), PointMm(10, 20)), named("case"));
    sketch.circle(Layer::Hole, {5, 6}, 2, named("hole 1"));
    sketch.text(Layer::Note, {{1, 2}, "A2", 3.5, Anchor::Middle, 0}, named("label"));
    const PlainMarks marks = plain(sketch.finished(0));
    ASSERT_EQ(marks.strokes.size(), 2U);
    EXPECT_EQ(marks.strokes[0].points, (std::vector<PointMm>{{0, 0}, {3, 4}}));
    EXPECT_EQ(marks.strokes[0].end, PathMark::End::Open);
    EXPECT_EQ(marks.strokes[0].part.name, "edge");
    EXPECT_EQ(marks.strokes[1].points.size(), 4U);
    EXPECT_EQ(marks.strokes[1].end, PathMark::End::Closed);
    ASSERT_EQ(marks.rounds.size(), 1U);
    EXPECT_DOUBLE_EQ(marks.rounds[0].radius, 2);
    ASSERT_EQ(marks.labels.size(), 1U);
    EXPECT_DOUBLE_EQ(marks.labels[0].text.height, 3.5); // paper mm, whatever the scale
    EXPECT_TRUE(marks.fills.empty());
}

TEST(PlainMarks, ResolveADimensionIntoFourLinesTwoTicksAndAFigure) {
    const Quantity width{QuantityKind::FrontWidth, 3, 0};
    Sketch sketch(1);
    sketch.add(
        {Layer::Dimension, DimensionMark{{0, 0}, {64, 0}, -10, "64", width}, named("front width")});
    const PlainMarks marks = plain(sketch.finished(0));
    EXPECT_EQ(marks.strokes.size(), 3U); // two extension lines, one dimension line
    EXPECT_EQ(marks.fills.size(), 2U);
    ASSERT_EQ(marks.labels.size(), 1U);
    EXPECT_EQ(marks.labels[0].text.text, "64");
    EXPECT_EQ(marks.labels[0].quantity, width);
    EXPECT_EQ(marks.labels[0].part.name, "front width");
}

// The 20 of the first row stands in the middle, over the line that the second row's end goes out
// by.
TEST(PlainMarks, InterruptAnExtensionLineWhereItWouldRunThroughFigures) {
    Sketch sketch(1);
    sketch.add({Layer::Dimension, DimensionMark{{0, 0}, {40, 0}, -10, "20", {}}, {}});
    sketch.add({Layer::Dimension, DimensionMark{{20, 0}, {64, 0}, -17, "44", {}}, {}});
    const PlainMarks marks = plain(sketch.finished(0));
    const BoxMm figures = textBox(marks.labels[0].text, 1);
    std::vector<std::pair<double, double>> upright; // of the line at 20, from its object on
    for (const StrokeMark& stroke : marks.strokes)
        if (stroke.points[0].x() == 20 && stroke.points[1].x() == 20)
            upright.emplace_back(stroke.points[0].y(), stroke.points[1].y());
    ASSERT_EQ(upright.size(), 2U);
    EXPECT_DOUBLE_EQ(upright[0].first, -1);
    EXPECT_GT(upright[0].second, figures.max().y());
    EXPECT_LT(upright[1].first, figures.min().y());
    EXPECT_DOUBLE_EQ(upright[1].second, -18.5);
}

TEST(PlainMarks, DrawAnExtensionLineThatDimensionsShareOnceAndAsLongAsTheLongest) {
    Sketch sketch(1);
    sketch.add({Layer::Dimension, DimensionMark{{0, 0}, {40, 0}, -10, "40", {}}, {}});
    sketch.add({Layer::Dimension, DimensionMark{{40, 0}, {64, 0}, -10, "24", {}}, {}});
    sketch.add({Layer::Dimension, DimensionMark{{0, 0}, {64, 0}, -17, "64", {}}, {}});
    int upright = 0;
    for (const StrokeMark& stroke : plain(sketch.finished(0)).strokes)
        if (stroke.points[0].x() == stroke.points[1].x()) {
            ++upright;
            EXPECT_DOUBLE_EQ(stroke.points[1].y(), stroke.points[0].x() == 40 ? -11.5 : -18.5);
        }
    EXPECT_EQ(upright, 3);
}

TEST(PlainMarks, ResolveAHatchIntoStrokesOfItsPart) {
    Sketch sketch(1);
    HatchMark hatch;
    hatch.outline = cornersOf(BoxMm(PointMm(0, 0), PointMm(20, 20)));
    sketch.add({Layer::CutHatch, hatch, named("front")});
    const PlainMarks marks = plain(sketch.finished(0));
    ASSERT_GT(marks.strokes.size(), 5U);
    for (const StrokeMark& stroke : marks.strokes) {
        EXPECT_EQ(stroke.layer, Layer::CutHatch);
        EXPECT_EQ(stroke.part.name, "front");
    }
}

TEST(PlainMarks, OfAnEmptyDrawingAreNone) {
    const PlainMarks marks = plain({});
    EXPECT_TRUE(marks.strokes.empty() && marks.rounds.empty() && marks.labels.empty() &&
                marks.fills.empty());
}

TEST(Extent, HoldsTextsAndDimensionsAtTheDrawingsScale) {
    Sketch sketch(0.1);
    sketch.add({Layer::Dimension, DimensionMark{{0, 0}, {640, 0}, -10, "640", {}}, {}});
    const BoxMm extent = sketch.finished(0).extent;
    EXPECT_NEAR(extent.min().y(), -115, 1e-9); // (10 + 1.5) mm of paper at 1:10
    EXPECT_NEAR(extent.max().y(), -10, 1e-9);  // the extension lines' beginning
}

TEST(Extent, GrowsByTheMarginOnPaper) {
    Sketch sketch(0.5);
    sketch.circle(Layer::Hole, {0, 0}, 3, {});
    EXPECT_TRUE(sketch.finished(5).extent.isApprox(BoxMm(PointMm(-13, -13), PointMm(13, 13))));
}

TEST(Extent, OfAnEmptyDrawingIsEmpty) {
    EXPECT_TRUE(Sketch(1).finished(5).extent.isEmpty());
}

} // namespace
} // namespace frontwright
