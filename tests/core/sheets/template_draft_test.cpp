#include "core/sheets/template_draft.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

const BoxMm part(PointMm(0, 0), PointMm(300, 120));

TemplateDraft draft() {
    return {TemplateKind::Front, text("Front A1"), part, OpeningId{5}};
}
Template finished(const TemplateDraft& made) {
    return made.finished(text("Read from the show face"), text("the top edge is up"),
                         {OpeningId{5}});
}
std::vector<Mark> inLayer(const Template& made, Layer layer) {
    std::vector<Mark> marks;
    for (const Mark& mark : made.drawing.marks)
        if (mark.layer == layer)
            marks.push_back(mark);
    return marks;
}

// 4 mm of hatching round the part: part of the drawing, not of the part.
TEST(Outline, IsSurroundedByHatchedWaste) {
    TemplateDraft made = draft();
    made.outline(Layer::FrontEdge);
    const Template result = finished(made);
    EXPECT_TRUE(result.part.isApprox(part));
    EXPECT_TRUE(result.drawing.extent.isApprox(BoxMm(PointMm(-4, -4), PointMm(304, 124))));
    double hatched = 0;
    for (const Mark& mark : inLayer(result, Layer::Waste)) {
        const BoxMm box = testing::coveredBy(mark);
        hatched += box.volume();
        const BoxMm common = box.intersection(part);
        EXPECT_TRUE(common.isEmpty() || common.volume() == 0);
    }
    EXPECT_DOUBLE_EQ(hatched, 308.0 * 128 - 300.0 * 120); // the band, nothing twice
}

TEST(Outline, BeginsAtTheLowerLeftCorner) {
    TemplateDraft made = draft();
    made.outline(Layer::FrontEdge);
    const auto edges = inLayer(finished(made), Layer::FrontEdge);
    ASSERT_EQ(edges.size(), 1U);
    const auto& path = std::get<PathMark>(edges[0].shape);
    const std::vector<PointMm> corners{{0, 0}, {300, 0}, {300, 120}, {0, 120}};
    EXPECT_EQ(path.points, corners);
    EXPECT_EQ(path.end, PathMark::End::Closed);
    EXPECT_EQ(edges[0].part.name, "outline");
    EXPECT_EQ(edges[0].part.opening, OpeningId{5});
}

// ISO 128: centre lines run 2 to 5 mm past the outline.
TEST(CentreLines, RunALittlePastTheOutline) {
    TemplateDraft made = draft();
    made.centreLines();
    const auto lines = inLayer(finished(made), Layer::Centre);
    ASSERT_EQ(lines.size(), 2U);
    const auto& upright = std::get<LineMark>(lines[0].shape);
    EXPECT_DOUBLE_EQ(upright.from.x(), 150);
    EXPECT_DOUBLE_EQ(upright.to.x(), 150);
    EXPECT_GE(upright.to.y(), 122);
    EXPECT_LE(upright.to.y(), 125);
    const auto& level = std::get<LineMark>(lines[1].shape);
    EXPECT_DOUBLE_EQ(level.from.y(), 60);
    EXPECT_GE(level.from.x(), -5);
    EXPECT_LE(level.from.x(), -2);
}

TEST(DrawnHole, IsACircleWithACrossThroughItsCentreAndItsLabel) {
    TemplateDraft made = draft();
    made.hole(Layer::Hole, {{100, 50}, 2.5}, "hole 1",
              {std::string("1: drill \u00d85 mm"), text("through")});
    const Template result = finished(made);
    const auto marks = inLayer(result, Layer::Hole);
    ASSERT_EQ(marks.size(), 3U);
    EXPECT_DOUBLE_EQ(std::get<CircleMark>(marks[0].shape).radius, 2.5);
    for (std::size_t i : {1U, 2U}) {
        const auto& line = std::get<LineMark>(marks[i].shape);
        EXPECT_EQ(PointMm((line.from + line.to) / 2), PointMm(100, 50));
        EXPECT_GT((line.to - line.from).norm(), 5);
    }
    ASSERT_EQ(result.labels.size(), 1U);
    EXPECT_EQ(result.labels[0].lines[0], "1: drill \u00d85 mm");
    EXPECT_EQ(result.labels[0].part.name, "hole 1");
}

// Of a hole's two lines and its circle only the circle is named, so that it is measured once.
TEST(DrawnHole, IsNamedOnce) {
    TemplateDraft made = draft();
    made.hole(Layer::Hole, {{100, 50}, 2.5}, "hole 1", {std::string("1")});
    int named = 0;
    for (const Mark& mark : finished(made).drawing.marks)
        named += mark.part.name == "hole 1" ? 1 : 0;
    EXPECT_EQ(named, 1);
}

TEST(CheckDimension, HasTicksAtItsEnds) {
    TemplateDraft made = draft();
    made.checkDimension({0, 8}, {300, 8}, "300 mm");
    const Template result = finished(made);
    ASSERT_EQ(inLayer(result, Layer::Dimension).size(), 3U);
    EXPECT_TRUE(testing::says(result, "overall check: 300 mm"));
    EXPECT_EQ(result.labels[0].turned, 0);
}

TEST(CheckDimension, FromHoleToHoleEndsInTheirCrosses) {
    TemplateDraft made = draft();
    made.hole(Layer::Hole, {{100, 50}, 2.5}, "hole 1", {std::string("1")});
    made.hole(Layer::Hole, {{196, 50}, 2.5}, "hole 2", {std::string("2")});
    made.checkDimension({100, 50}, {196, 50}, "96 mm");
    EXPECT_EQ(inLayer(finished(made), Layer::Dimension).size(), 1U);
}

TEST(CheckDimension, UprightReadsFromTheRight) {
    TemplateDraft made = draft();
    made.checkDimension({8, 0}, {8, 120}, "120 mm");
    EXPECT_EQ(finished(made).labels[0].turned, 90);
}

// A front 58 mm high, with its level centre line in the middle: no line of text is over 29 mm.
TEST(CheckDimension, BesideALowPartIsBrokenIntoShortLines) {
    TemplateDraft made = draft();
    made.checkDimension({8, 0}, {8, 58}, "58 mm");
    made.checkDimension({8, 0}, {8, 300}, "300 mm");
    const Template result = finished(made);
    const std::vector<std::string> expected{"overall check:", "58 mm"};
    EXPECT_EQ(result.labels[0].lines, expected);
    EXPECT_EQ(result.labels[1].lines.size(), 1U);
}

TEST(CheckDimensions, AreNumbered) {
    TemplateDraft made = draft();
    made.checkDimension({0, 8}, {300, 8}, "300 mm");
    made.checkDimension({8, 0}, {8, 120}, "120 mm");
    const Template result = finished(made);
    EXPECT_EQ(result.labels[0].part.name, "overall check 1");
    EXPECT_EQ(result.labels[1].part.name, "overall check 2");
}

} // namespace
} // namespace frontwright
