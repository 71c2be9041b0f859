#include "core/sheets/legend.h"

#include "core/sheets/clipping.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::coveredBy;
using testing::laid;
using testing::onPaper;
using testing::says;
using testing::shopWith;

TEST(Legend, StandsOnTheFirstPageOnly) {
    const auto shop = shopWith(testing::banks(2, 2));
    for (const char* paper : {"A4", "A2", "roll 610 mm"}) {
        const auto all = laid(*shop, onPaper(paper));
        for (std::size_t i = 0; i < all.size(); ++i)
            EXPECT_EQ(says(all[i], "register mark"), i == 0) << paper << " " << all[i].label;
    }
}

TEST(Legend, StaysInItsAreaWithWordsClearOfSigns) {
    for (double width : {90.0, 130.0, 190.0, 400.0}) {
        const BoxMm area(PointMm(10, 10), PointMm(10 + width, 10 + legendHeight(width, {})));
        Page page;
        addLegend(page, area, {});
        for (const Mark& mark : page.drawing.marks) {
            EXPECT_TRUE(area.contains(coveredBy(mark))) << width;
            if (std::holds_alternative<TextMark>(mark.shape))
                for (const Mark& other : page.drawing.marks)
                    EXPECT_TRUE(&other == &mark ||
                                coveredBy(mark).intersection(coveredBy(other)).isEmpty())
                        << std::get<TextMark>(mark.shape).text;
        }
    }
}

// What is drilled is a circle; a register mark has none, so that neither is taken for the other.
TEST(RegisterMark, HasACrossInADiamondAndNoCircle) {
    int diamonds = 0, lines = 0;
    for (const Mark& mark : registerMark({50, 50}, 4)) {
        EXPECT_EQ(mark.layer, Layer::Register);
        EXPECT_FALSE(std::holds_alternative<CircleMark>(mark.shape));
        if (const auto* path = std::get_if<PathMark>(&mark.shape)) {
            ++diamonds;
            ASSERT_EQ(path->points.size(), 4U);
            for (const PointMm& corner : path->points)
                EXPECT_NEAR((corner - PointMm(50, 50)).norm(), 2.6, 1e-9); // 0.65 × 4
        } else {
            ++lines;
            EXPECT_NEAR(coveredBy(mark).sizes().maxCoeff(), 8, 1e-9);
        }
    }
    EXPECT_EQ(diamonds, 1);
    EXPECT_EQ(lines, 2);
}

TEST(RegisterMark, IsOnBothSidesOfEachJointOfEveryTile) {
    const auto shop = shopWith(testing::oneOpening(Length::inches(24), Length::inches(14)));
    for (const Page& page : laid(*shop, onPaper("A4"))) {
        const auto diamonds = std::count_if(page.drawing.marks.begin(), page.drawing.marks.end(),
                                            [](const Mark& mark) {
                                                return mark.layer == Layer::Register &&
                                                       std::holds_alternative<PathMark>(mark.shape);
                                            });
        const bool hasLegend = says(page, "register mark");
        EXPECT_EQ(static_cast<std::size_t>(diamonds),
                  testing::marksOfKind(page, "register").size() + (hasLegend ? 1 : 0));
    }
}

} // namespace
} // namespace frontwright
