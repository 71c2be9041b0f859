#include "core/drawings/lettering.h"
#include "core/sheets/label_candidates.h"
#include "core/sheets/text_lines.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

const PointMm size(30, 7.5);

TEST(LabelSize, IsItsWidestLineAndAllItsLines) {
    const TemplateLabel one{{"field begins"}, CircleMark{}, TemplateLabel::Prefer::High, 0, {}};
    EXPECT_DOUBLE_EQ(sizeOf(one).x(), textWidth("field begins", smallText));
    TemplateLabel two = one;
    two.lines = {"field begins", "here"};
    EXPECT_DOUBLE_EQ(sizeOf(two).x(), sizeOf(one).x());
    EXPECT_DOUBLE_EQ(sizeOf(two).y() - sizeOf(one).y(), linePitch(smallText));
}

TEST(LabelSize, TurnedStandsOnItsSide) {
    TemplateLabel label{{"field begins"}, CircleMark{}, TemplateLabel::Prefer::High, 0, {}};
    const PointMm level = sizeOf(label);
    label.turned = 90;
    EXPECT_EQ(sizeOf(label), PointMm(level.y(), level.x()));
}

TEST(LabelTexts, ReadDownwardsLineByLine) {
    const TemplateLabel label{
        {"first", "second"}, CircleMark{}, TemplateLabel::Prefer::High, 0, {{}, {}, "hole 3"}};
    const auto marks = textsOf(label, {10, 20});
    ASSERT_EQ(marks.size(), 2U);
    const auto& first = std::get<TextMark>(marks[0].shape);
    const auto& second = std::get<TextMark>(marks[1].shape);
    EXPECT_EQ(first.text, "first");
    EXPECT_NEAR(first.at.y() - second.at.y(), linePitch(smallText), 1e-12);
    EXPECT_EQ(marks[1].part.name, "hole 3");
}

TEST(PlacesBesideAHole, NeverCoverItsCircleOrItsCross) {
    for (double radius : {1.0, 2.5, 6.0, 15.0})
        for (const BoxMm& box : placesBeside(CircleMark{{50, 50}, radius}, size)) {
            EXPECT_GT(box.exteriorDistance(PointMm(50, 50)), radius);
            const bool crossesLevelArm = box.min().y() < 50 && box.max().y() > 50;
            const bool crossesUprightArm = box.min().x() < 50 && box.max().x() > 50;
            EXPECT_FALSE(crossesLevelArm || crossesUprightArm);
        }
}

TEST(PlacesBesideAHole, BeginNearUpToTheRight) {
    const auto places = placesBeside(CircleMark{{50, 50}, 2.5}, size);
    EXPECT_GT(places.front().min().x(), 50);
    EXPECT_GT(places.front().min().y(), 50);
    EXPECT_LT(places.front().exteriorDistance(PointMm(50, 50)), 5);
}

TEST(PlacesBesideALine, LieAlongItOnBothSides) {
    const LineMark line{{0, 40}, {200, 40}};
    bool above = false, below = false;
    for (const BoxMm& box : placesBeside(line, size, TemplateLabel::Prefer::Low)) {
        EXPECT_GE(box.min().x(), 0);
        EXPECT_LE(box.max().x(), 200);
        above = above || box.min().y() > 40;
        below = below || box.max().y() < 40;
        EXPECT_FALSE(box.min().y() <= 40 && box.max().y() >= 40);
    }
    EXPECT_TRUE(above && below);
}

TEST(PlacesBesideALine, OfAnUprightOneLieToItsRightFirst) {
    const auto places =
        placesBeside({{40, 0}, {40, 200}}, PointMm(3.4, 30), TemplateLabel::Prefer::High);
    EXPECT_GT(places.front().min().x(), 40);
    EXPECT_NEAR(places.front().center().y(), 100, 1e-9);
}

TEST(PlacesWithin, FillTheBoundsFromTheNearest) {
    const BoxMm bounds(PointMm(0, 0), PointMm(100, 60));
    const PointMm to(20, 30);
    const auto places = placesWithin(bounds, size, to);
    ASSERT_GT(places.size(), 100U);
    double before = 0;
    for (const BoxMm& box : places) {
        EXPECT_TRUE(bounds.contains(box));
        EXPECT_GE(box.exteriorDistance(to), before - 1e-9);
        before = box.exteriorDistance(to);
    }
}

TEST(PlacesWithin, BoundsThatAreTooSmallThereAreNone) {
    EXPECT_TRUE(placesWithin(BoxMm(PointMm(0, 0), PointMm(20, 60)), size, {5, 5}).empty());
}

TEST(Leader, IsNeededOnlyFromAfar) {
    const CircleMark hole{{50, 50}, 2.5};
    EXPECT_FALSE(leaderTo(BoxMm(PointMm(54, 52), PointMm(80, 60)), hole));
    const auto leader = leaderTo(BoxMm(PointMm(70, 50), PointMm(90, 60)), hole);
    ASSERT_TRUE(leader);
    EXPECT_TRUE(leader->from.isApprox(PointMm(52.5, 50)));
    EXPECT_TRUE(leader->to.isApprox(PointMm(70, 50)));
}

TEST(Leader, OfALineStartsOnIt) {
    const LineMark line{{0, 40}, {200, 40}};
    EXPECT_FALSE(leaderTo(BoxMm(PointMm(10, 41), PointMm(40, 45)), line));
    const auto leader = leaderTo(BoxMm(PointMm(10, 60), PointMm(40, 65)), line);
    ASSERT_TRUE(leader);
    EXPECT_DOUBLE_EQ(leader->from.y(), 40);
    EXPECT_DOUBLE_EQ(leader->to.y(), 60);
}

} // namespace
} // namespace frontwright
