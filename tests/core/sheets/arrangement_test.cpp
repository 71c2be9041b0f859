#include "core/sheets/arrangement.h"

#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::laid;
using testing::onPaper;
using testing::pagesOf;
using testing::shopWith;

std::size_t counted(const testing::Shop& shop, const SheetOptions& options) {
    return pageCount(shop.project, shop.templates, options).value();
}

/// Pages of each template, in order.
std::vector<std::size_t> pagesPerTemplate(const testing::Shop& shop, const SheetOptions& options) {
    std::vector<std::size_t> counts(shop.templates.size());
    for (const Page& page : laid(shop, options))
        ++counts.at(page.place.part);
    return counts;
}

TEST(Arrangement, LeftOpenTakesTheFewestPagesOfEachTemplate) {
    for (const char* paper : {"A4", "Letter", "A3", "roll 300 mm"}) {
        const auto shop = shopWith(testing::banks(2, 3));
        SheetOptions options = onPaper(paper);
        const auto upright = pagesPerTemplate(*shop, options);
        options.orientation = Orientation::Landscape;
        const auto lying = pagesPerTemplate(*shop, options);
        options.orientation = std::nullopt;
        const auto open = pagesPerTemplate(*shop, options);
        for (std::size_t i = 0; i < open.size(); ++i)
            EXPECT_EQ(open[i], std::min(upright[i], lying[i]))
                << paper << " " << shop->templates[i].title;
    }
}

// A front of 12 1/2 in × 4 1/2 in and its 96 mm stick along it: wide parts lie on A4.
TEST(Arrangement, LaysAWideFrontOnItsLongSide) {
    Project project = testing::oneOpening(Length::inches(12), Length::inches(4));
    const auto shop = shopWith(std::move(project));
    SheetOptions options = onPaper("A4");
    options.orientation = std::nullopt;
    const auto all = laid(*shop, options);
    EXPECT_GT(all.front().width, all.front().height);
}

TEST(Arrangement, IsUprightWhereBothTakeAsMany) {
    Project project = testing::oneOpening(Length::inches(4), Length::inches(3));
    const auto shop = shopWith(std::move(project));
    SheetOptions options = onPaper("A2");
    options.orientation = std::nullopt;
    for (const Page& page : laid(*shop, options))
        EXPECT_LT(page.width, page.height) << page.label;
}

TEST(PageCount, IsThatOfThePagesThatAreLaid) {
    const auto shop = shopWith(testing::banks(2, 2));
    for (const char* paper : {"A4", "Letter", "A1", "roll 610 mm"})
        for (auto orientation :
             {std::optional(Orientation::Portrait), std::optional(Orientation::Landscape),
              std::optional<Orientation>()}) {
            SheetOptions options = onPaper(paper);
            options.orientation = orientation;
            EXPECT_EQ(counted(*shop, options), laid(*shop, options).size()) << paper;
        }
}

TEST(PageCount, IsRefusedAsThePagesAre) {
    const auto shop = shopWith(testing::bank(1));
    SheetOptions options = onPaper("A4");
    options.overlap = Length::millimetres(90);
    EXPECT_EQ(pageCount(shop->project, shop->templates, options).error(),
              pagesOf(*shop, options).error());
}

TEST(Places, TellWhichTileOfWhichTemplateAPageShows) {
    const auto shop = shopWith(testing::banks(2, 2));
    std::set<std::tuple<std::size_t, int, int>> seen;
    for (const Page& page : laid(*shop, onPaper("A4"))) {
        const PagePlace& at = page.place;
        EXPECT_TRUE(seen.insert({at.part, at.row, at.column}).second) << page.label;
        EXPECT_EQ(page.label.english().rfind(shop->templates.at(at.part).title.english(), 0), 0U)
            << page.label;
        EXPECT_LT(at.column, at.columns);
        EXPECT_LT(at.row, at.rows);
        EXPECT_EQ(page.tile,
                  at.columns * at.rows == 1 ? "" : tileName({at.column, at.row, {}, {}}));
    }
}

// Strip mode: one page as long as the part and what belongs to it, with bars at both ends.
TEST(Roll, TakesALongPartInOnePageWithBarsAtBothEnds) {
    const auto shop = shopWith(testing::banks(3, 2));
    SheetOptions options = onPaper("roll 610 mm");
    options.orientation = std::nullopt;
    for (const Page& page : laid(*shop, options)) {
        EXPECT_EQ(page.place.columns * page.place.rows, 1) << page.label;
        EXPECT_NEAR(std::min(page.width, page.height) == 610.0 ||
                            std::max(page.width, page.height) == 610.0
                        ? 610.0
                        : 0.0,
                    610.0, 1e-9);
        int ends = 0;
        for (const PageMark& mark : page.marks)
            ends += mark.part.find("far end") != std::string::npos ? 1 : 0;
        EXPECT_GE(ends, 4) << page.label;
    }
}

} // namespace
} // namespace frontwright
