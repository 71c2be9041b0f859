#include "core/sheets/check_bars.h"
#include "core/sheets/page_layout.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

PageRequest request(const char* paper, Orientation orientation, Spread spread) {
    PageRequest result;
    result.paper = paperNamed(paper).value();
    result.orientation = orientation;
    result.spread = spread;
    result.mapWidth = spread == Spread::OnePage ? 0 : 46;
    result.text = {
        "Front A2 \u00b7 tile B1 \u00b7 page 3 of 12",
        {"Small case", "Print at 100 % / Actual size, not Fit. Read from the show face."}};
    result.part = {300, 150};
    return result;
}

std::vector<BoxMm> blocks(const PageLayout& layout) {
    std::vector<BoxMm> all{layout.levelBars, layout.uprightBars, layout.text, layout.drawing};
    if (!layout.map.isEmpty())
        all.push_back(layout.map);
    for (const auto& far : {layout.farLevelBars, layout.farUprightBars})
        if (far)
            all.push_back(*far);
    return all;
}

void expectApartAndInside(const PageLayout& layout, double margin, const std::string& where) {
    const PointMm m(margin - 1e-6, margin - 1e-6);
    const BoxMm inside(m, layout.size - m);
    const std::vector<BoxMm> all = blocks(layout);
    for (std::size_t i = 0; i < all.size(); ++i) {
        EXPECT_TRUE(inside.contains(all[i])) << where << " block " << i;
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const BoxMm common = all[i].intersection(all[j]);
            EXPECT_TRUE(common.isEmpty() || common.volume() < 1e-9)
                << where << " blocks " << i << " and " << j;
        }
    }
}

TEST(PageLayout, BlocksNeverOverlapOnAnyPaper) {
    for (Orientation orientation : {Orientation::Portrait, Orientation::Landscape})
        for (Spread spread : {Spread::OnePage, Spread::SeveralPages})
            for (const char* roll : {"roll 200 mm", "roll 610 mm", "roll 36 in"}) {
                const auto layout = layOut(request(roll, orientation, spread));
                ASSERT_TRUE(layout.ok()) << layout.error().sentence();
                expectApartAndInside(layout.value(), 10, roll);
            }
    for (const Paper& paper : knownPapers())
        for (Orientation orientation : {Orientation::Portrait, Orientation::Landscape})
            for (Spread spread : {Spread::OnePage, Spread::SeveralPages}) {
                const auto layout = layOut(request(paper.name.c_str(), orientation, spread));
                ASSERT_TRUE(layout.ok()) << layout.error().sentence();
                expectApartAndInside(layout.value(), 10, paper.name);
            }
}

TEST(PageLayout, IsTheWholeSheetUprightOrLyingDown) {
    const auto upright = layOut(request("A4", Orientation::Portrait, Spread::OnePage)).value();
    EXPECT_EQ(upright.size, PointMm(210, 297));
    const auto lying = layOut(request("Letter", Orientation::Landscape, Spread::OnePage)).value();
    EXPECT_NEAR(lying.size.x(), 279.4, 1e-9);
    EXPECT_NEAR(lying.size.y(), 215.9, 1e-9);
}

TEST(PageLayout, TheShorterSidesBarsRunItsWholeLength) {
    const auto upright = layOut(request("A4", Orientation::Portrait, Spread::OnePage)).value();
    EXPECT_NEAR(upright.levelBars.sizes().x(), 190, 1e-9);
    const auto lying = layOut(request("A4", Orientation::Landscape, Spread::OnePage)).value();
    EXPECT_NEAR(lying.uprightBars.sizes().y(), 190, 1e-9);
}

TEST(RollLayout, KeepsItsWidthAndFollowsThePart) {
    PageRequest asked = request("roll 610 mm", Orientation::Portrait, Spread::OnePage);
    asked.part = {500, 1500};
    const PageLayout layout = layOut(asked).value();
    EXPECT_DOUBLE_EQ(layout.size.x(), 610);
    EXPECT_GE(layout.drawing.sizes().y(), 1500);
    EXPECT_LT(layout.drawing.sizes().y(), 1500.01);
    asked.orientation = Orientation::Landscape;
    asked.part = {1500, 400};
    const PageLayout lying = layOut(asked).value();
    EXPECT_DOUBLE_EQ(lying.size.y(), 610);
    EXPECT_GE(lying.drawing.sizes().x(), 1500);
}

TEST(RollLayout, HasCheckBarsAtBothEnds) {
    EXPECT_TRUE(layOut(request("roll 610 mm", Orientation::Portrait, Spread::OnePage))
                    .value()
                    .farLevelBars);
    EXPECT_TRUE(layOut(request("roll 610 mm", Orientation::Landscape, Spread::OnePage))
                    .value()
                    .farUprightBars);
}

TEST(RollLayout, OfALowPartIsLongEnoughForItsBars) {
    PageRequest asked = request("roll 610 mm", Orientation::Portrait, Spread::OnePage);
    asked.part = {500, 5};
    const PageLayout layout = layOut(asked).value();
    EXPECT_FALSE(barLines(layout.uprightBars.sizes().y(), Unit::Millimetre).empty());
}

// 14 400 pt are 5 080 mm.
TEST(RollLayout, OverFiveMetresAndEightyMillimetresIsRefused) {
    PageRequest asked = request("roll 610 mm", Orientation::Portrait, Spread::OnePage);
    asked.part = {500, 4900};
    EXPECT_TRUE(layOut(asked).ok());
    asked.part = {500, 5075};
    const auto refused = layOut(asked);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().what.english().find("5 080 mm"), std::string::npos);
}

TEST(PageLayout, APaperTooSmallForItsBarsIsRefused) {
    PageRequest asked = request("A5", Orientation::Portrait, Spread::OnePage);
    asked.paper = {"A6", Length::millimetres(105), Length::millimetres(148)};
    const auto refused = layOut(asked);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().what.english().find("A6"), std::string::npos);
    EXPECT_NE(refused.error().what.english().find("check bars"), std::string::npos);
    asked.paper = paperNamed("roll 110 mm").value();
    EXPECT_FALSE(layOut(asked).ok());
}

TEST(PageWords, StayInTheirBlock) {
    const PageText text = request("A4", Orientation::Portrait, Spread::OnePage).text;
    for (double width : {60.0, 90.0, 190.0}) {
        const BoxMm area(PointMm(10, 10), PointMm(10 + width, 10 + textHeight(text, width)));
        BoxMm before(PointMm(0, 1000), PointMm(0, 1000));
        for (const TextMark& line : textLines(text, area)) {
            const BoxMm box = textBox(line, 1);
            EXPECT_TRUE(area.contains(box)) << line.text;
            EXPECT_LE(box.max().y(), before.min().y()) << line.text;
            before = box;
        }
    }
}

} // namespace
} // namespace frontwright
