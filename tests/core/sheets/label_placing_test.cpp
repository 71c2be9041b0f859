#include "core/sheets/label_candidates.h"
#include "core/sheets/label_placing.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::coveredBy;

const BoxMm bounds(PointMm(0, 0), PointMm(150, 100));

TemplateLabel besideHole(const PointMm& centre, double radius = 2.5) {
    return {{"1: drill \u00d83/16 in", "through, show face"},
            CircleMark{centre, radius},
            TemplateLabel::Prefer::High,
            0,
            {{}, {}, "hole 1"}};
}
BoxMm covered(const std::vector<Mark>& marks) {
    BoxMm box;
    for (const Mark& mark : marks)
        if (std::holds_alternative<TextMark>(mark.shape))
            box.extend(coveredBy(mark));
    return box;
}

TEST(Label, StandsUpRightOfItsHoleWhereThereIsRoom) {
    LabelPlacer placer(bounds);
    const auto marks = placer.place(besideHole({50, 50}));
    ASSERT_EQ(marks.size(), 2U);
    const BoxMm box = covered(marks);
    EXPECT_GT(box.min().x(), 50);
    EXPECT_GT(box.min().y(), 50);
    EXPECT_GT(box.exteriorDistance(PointMm(50, 50)), 2.5);
}

TEST(Label, TurnsInwardsAtTheSheetsEdge) {
    LabelPlacer placer(bounds);
    const BoxMm box = covered(placer.place(besideHole({145, 95})));
    EXPECT_TRUE(bounds.contains(box));
    EXPECT_LT(box.max().x(), 145);
    EXPECT_LT(box.max().y(), 95);
}

TEST(Label, KeepsOffLinesAndOtherHoles) {
    LabelPlacer placer(bounds);
    placer.avoid({Layer::Centre, LineMark{{0, 55}, {150, 55}}, {}});
    placer.avoid({Layer::Hole, CircleMark{{60, 45}, 6}, {}});
    const BoxMm box = covered(placer.place(besideHole({50, 50})));
    EXPECT_FALSE(box.min().y() < 55 && box.max().y() > 55);
    EXPECT_GT(box.exteriorDistance(PointMm(60, 45)), 6);
}

TEST(Label, NeverLiesOnAnotherWhereThereIsRoom) {
    LabelPlacer placer(bounds);
    std::vector<BoxMm> boxes;
    for (double x : {20.0, 26.0, 32.0, 38.0, 44.0, 50.0}) {
        const BoxMm box = covered(placer.place(besideHole({x, 50})));
        for (const BoxMm& other : boxes)
            EXPECT_TRUE(box.intersection(other).isEmpty());
        boxes.push_back(box);
    }
}

TEST(Label, FarAwayGetsALeaderFromTheCirclesEdge) {
    LabelPlacer placer(bounds);
    placer.avoid(
        {Layer::Waste, HatchMark{{{10, 10}, {110, 10}, {110, 90}, {10, 90}}, 3, 45, {}}, {}});
    const auto marks = placer.place(besideHole({50, 50}));
    ASSERT_EQ(marks.size(), 3U);
    const auto& leader = std::get<LineMark>(marks.back().shape);
    EXPECT_NEAR((leader.from - PointMm(50, 50)).norm(), 2.5, 1e-9);
}

TEST(Label, IsLeftOutWhereItsLineIsNotOnTheSheet) {
    LabelPlacer placer(bounds);
    const TemplateLabel label{
        {"bottom panel's top"}, LineMark{{0, 120}, {150, 120}}, TemplateLabel::Prefer::Low, 0, {}};
    EXPECT_TRUE(placer.place(label).empty());
}

TEST(LabelOfALine, IsLeftOutRatherThanLaidOnAnotherText) {
    LabelPlacer placer(bounds);
    placer.avoid(bounds);
    EXPECT_TRUE(
        placer.place({{"top"}, LineMark{{0, 50}, {150, 50}}, TemplateLabel::Prefer::High, 0, {}})
            .empty());
    EXPECT_FALSE(placer.place(besideHole({50, 50})).empty());
}

TEST(LabelOfALine, LiesOnThePreferredSide) {
    const LineMark line{{0, 50}, {150, 50}};
    LabelPlacer above(bounds), below(bounds);
    EXPECT_GT(covered(above.place({{"top"}, line, TemplateLabel::Prefer::High, 0, {}})).min().y(),
              50);
    EXPECT_LT(covered(below.place({{"top"}, line, TemplateLabel::Prefer::Low, 0, {}})).max().y(),
              50);
}

TEST(TurnedLabel, CoversWhatItsSizeSays) {
    for (double turned : {0.0, 90.0}) {
        const TemplateLabel label{{"handle", "20 1/4"},
                                  LineMark{{50, 0}, {50, 90}},
                                  TemplateLabel::Prefer::High,
                                  turned,
                                  {}};
        const PointMm at(30, 40), size = sizeOf(label);
        const BoxMm box = covered(textsOf(label, at));
        EXPECT_NEAR(box.min().x(), at.x(), 1e-9);
        EXPECT_NEAR(box.min().y(), at.y(), 1e-9);
        EXPECT_NEAR(box.max().x(), at.x() + size.x(), 1e-9);
        EXPECT_NEAR(box.max().y(), at.y() + size.y(), 1e-9);
    }
}

} // namespace
} // namespace frontwright
