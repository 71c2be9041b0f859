#include "core/sheets/page_content.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

#include <map>

namespace frontwright {
namespace {

using testing::shopWith;

const BoxMm whole(PointMm(-4, -4), PointMm(404, 204));

/// A part of 400 mm × 200 mm with one hole and one line, without waste.
Template simplePart() {
    Template part;
    part.title = text("Front A1");
    part.part = BoxMm(PointMm(0, 0), PointMm(400, 200));
    part.drawing.extent = whole;
    part.drawing.marks = {
        {Layer::FrontEdge,
         PathMark{{{0, 0}, {400, 0}, {400, 200}, {0, 200}}, PathMark::End::Closed},
         {{}, {}, "outline"}},
        {Layer::Hole, CircleMark{{100, 150}, 3}, {{}, {}, "hole 1"}},
        {Layer::Centre, LineMark{{200, 0}, {200, 200}}, {{}, {}, "upright centre line"}},
        {Layer::Waste, HatchMark{{{-4, -4}, {0, -4}, {0, 204}, {-4, 204}}, 3, 45, {}}, {}},
    };
    part.labels = {{{"1: drill"}, CircleMark{{100, 150}, 3}, {}, 0, {{}, {}, "hole 1"}}};
    return part;
}
BoxMm box(double left, double bottom, double right, double top) {
    return {PointMm(left, bottom), PointMm(right, top)};
}
std::map<std::string, PointMm> places(const std::vector<PageMark>& marks) {
    std::map<std::string, PointMm> all;
    for (const PageMark& mark : marks)
        all.emplace(mark.kind + ": " + mark.part, PointMm(mark.x, mark.y));
    return all;
}

TEST(MarksOfATile, AreShiftedToThePage) {
    const auto marks = places(pageMarks(simplePart(), whole, {30, 40}));
    EXPECT_EQ(marks.at("hole: Front A1 / hole 1"), PointMm(130, 190));
    EXPECT_EQ(marks.at("corner: Front A1 / outline, lower left"), PointMm(30, 40));
    EXPECT_EQ(marks.at("corner: Front A1 / outline, lower right"), PointMm(430, 40));
    EXPECT_EQ(marks.at("corner: Front A1 / outline, upper right"), PointMm(430, 240));
    EXPECT_EQ(marks.at("corner: Front A1 / outline, upper left"), PointMm(30, 240));
    EXPECT_EQ(marks.at("centre: Front A1 / upright centre line / from"), PointMm(230, 40));
    EXPECT_EQ(marks.at("centre: Front A1 / upright centre line / to"), PointMm(230, 240));
}

TEST(MarksOfATile, AreOnlyThoseThatLieInIt) {
    const auto marks = places(pageMarks(simplePart(), box(-4, 90, 190, 204), {0, 0}));
    EXPECT_EQ(marks.size(), 2U);
    EXPECT_EQ(marks.count("hole: Front A1 / hole 1"), 1U);
    EXPECT_EQ(marks.count("corner: Front A1 / outline, upper left"), 1U);
}

TEST(MarksOfATile, OfALineAreWhereItIsCut) {
    const auto marks = places(pageMarks(simplePart(), box(150, 50, 250, 120), {0, 0}));
    EXPECT_EQ(marks.at("centre: Front A1 / upright centre line / from"), PointMm(200, 50));
    EXPECT_EQ(marks.at("centre: Front A1 / upright centre line / to"), PointMm(200, 120));
}

TEST(EmptyTile, ShowsNothingOfThePart) {
    const Template part = simplePart();
    EXPECT_TRUE(showsPart(part, box(-4, -4, 100, 100)));
    EXPECT_TRUE(showsPart(part, box(90, 140, 110, 160)));   // the hole
    EXPECT_TRUE(showsPart(part, box(150, 50, 250, 120)));   // the centre line
    EXPECT_FALSE(showsPart(part, box(20, 20, 80, 100)));    // blank wood
    EXPECT_FALSE(showsPart(part, box(-4, 20, -1, 100)));    // waste only
    EXPECT_FALSE(showsPart(part, box(500, 500, 600, 600))); // nowhere
}

TEST(HolesOffJoints, AreTheirCentresAndForLargeOnesPointsRoundThem) {
    Template part = simplePart();
    ASSERT_EQ(holesToKeepOffJoints(part).size(), 1U);
    EXPECT_EQ(holesToKeepOffJoints(part)[0], PointMm(100, 150));
    part.drawing.marks.push_back({Layer::AccessHole, CircleMark{{300, 100}, 8}, {}});
    // A joint 5 mm from a point 3 mm off the centre is 8 mm from the centre: clear of the hole.
    const auto points = holesToKeepOffJoints(part);
    ASSERT_EQ(points.size(), 6U);
    EXPECT_EQ(points[1], PointMm(300, 100));
    for (std::size_t i = 2; i < points.size(); ++i)
        EXPECT_DOUBLE_EQ((points[i] - PointMm(300, 100)).norm(), 3);
}

TEST(LinesOffJoints, HoldAJointInOneDirectionOnly) {
    const auto points = linesToKeepOffJoints(simplePart());
    ASSERT_EQ(points.size(), 1U);
    EXPECT_DOUBLE_EQ(points[0].x(), 200);
    EXPECT_DOUBLE_EQ(points[0].y(), whole.min().y());
}

Page contentOf(const Template& part, const Tile& tile, const PointMm& shift) {
    const Tiling tiling{1, 1, {tile}};
    const UsedTiles used{tiling, {true}};
    Page page;
    addContent(page, {part, used, tiling.tiles[0], shift});
    return page;
}

TEST(Content, IsCutToItsTile) {
    const BoxMm area = box(90, 100, 300, 204);
    const Page page = contentOf(simplePart(), {0, 0, area, area}, {-90, -100});
    const BoxMm onPage(PointMm(-1e-9, -1e-9), PointMm(210 + 1e-9, 104 + 1e-9));
    EXPECT_FALSE(page.drawing.marks.empty());
    for (const Mark& mark : page.drawing.marks)
        EXPECT_TRUE(onPage.contains(testing::coveredBy(mark)));
    EXPECT_TRUE(testing::says(page, "1: drill"));
}

TEST(Content, LabelsOnlyHolesThatAreWholeOnTheTile) {
    const BoxMm cut = box(-4, 100, 101, 204);
    EXPECT_FALSE(testing::says(contentOf(simplePart(), {0, 0, cut, cut}, {0, 0}), "1: drill"));
    const BoxMm wide = box(-4, 100, 140, 204);
    EXPECT_TRUE(testing::says(contentOf(simplePart(), {0, 0, wide, wide}, {0, 0}), "1: drill"));
}

// What is beyond the trim line is cut away: no label may lie there.
TEST(Content, LabelsStayInsideTheTrimLine) {
    const BoxMm area = box(-4, 100, 140, 204);
    const BoxMm trimmed = box(-4, 105, 135, 204);
    const Page page = contentOf(simplePart(), {0, 0, area, trimmed}, {0, 0});
    for (const Mark& mark : page.drawing.marks)
        if (std::holds_alternative<TextMark>(mark.shape)) {
            EXPECT_TRUE(trimmed.contains(testing::coveredBy(mark)));
        }
}

// Every circle and every corner of a template comes out on a page at its own place.
TEST(ContentLaw, NothingMovesOnItsWayToThePage) {
    for (std::uint64_t seed = 0; seed < 6; ++seed) {
        const auto shop = shopWith(testing::randomProject(seed));
        for (const Template& part : shop->templates) {
            const Tiling tiling = tile(part.drawing.extent, 170, 220, 10, {});
            std::map<std::string, PointMm> found;
            for (const Tile& one : tiling.tiles)
                for (const PageMark& mark : pageMarks(part, one.area, {17.25, -3.5}))
                    found.emplace(mark.part, PointMm(mark.x, mark.y) - PointMm(17.25, -3.5));
            for (const Mark& mark : part.drawing.marks)
                if (const auto* circle = std::get_if<CircleMark>(&mark.shape);
                    circle != nullptr && part.drawing.extent.contains(circle->centre)) {
                    const auto at = found.find(part.title.english() + " / " + mark.part.name);
                    ASSERT_NE(at, found.end()) << part.title << " " << mark.part.name;
                    EXPECT_LT((at->second - circle->centre).norm(), 1e-9);
                }
            const auto corner = found.find(part.title.english() + " / outline, upper right");
            ASSERT_NE(corner, found.end());
            EXPECT_LT((corner->second - part.part.max()).norm(), 1e-9);
        }
    }
}

} // namespace
} // namespace frontwright
