#include "tests/core/sheets/laid_sheets.h"

#include "core/drawings/line_style.h"
#include "core/drawings/plain_marks.h"
#include "core/sheets/clipping.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace frontwright {
namespace {

using testing::coveredBy;
using testing::laid;
using testing::marksOfKind;
using testing::onPaper;
using testing::pagesOf;
using testing::says;
using testing::Shop;
using testing::shopWith;

Project profiled(Project project) {
    project.fronts.hardware.form = "pull-96";
    project.fronts.profile.family = ProfileFamily::Chamfer;
    project.fronts.profile.width = Length::inches(0, 48);
    project.fronts.profile.depth = Length::inches(0, 16);
    return project;
}
/// In millimetres: a front of 900 mm × 220 mm.
Project wideDrawer() {
    Project project =
        profiled(testing::oneOpening(Length::millimetres(888), Length::millimetres(208)));
    project.style.unit = Unit::Millimetre;
    project.fronts.fit = FrontFit::all({Fit::Overlay, Length::millimetres(6)});
    return project;
}

std::vector<std::unique_ptr<Shop>> shops() {
    std::vector<std::unique_ptr<Shop>> all;
    all.push_back(shopWith(profiled(testing::banks(2, 2))));
    all.push_back(shopWith(wideDrawer()));
    return all;
}

/// Every paper, upright with an overlap and lying down with butt joints.
std::vector<SheetOptions> allOptions() {
    std::vector<SheetOptions> all;
    std::vector<std::string> names{"roll 300 mm", "roll 36 in"};
    for (const Paper& paper : knownPapers())
        names.push_back(paper.name);
    for (const std::string& name : names)
        for (Orientation orientation : {Orientation::Portrait, Orientation::Landscape})
            all.push_back(
                onPaper(name, orientation,
                        orientation == Orientation::Portrait ? Length::millimetres(10) : Length{}));
    return all;
}

/// Calls `look` for each page of each case on each paper.
template<class Look>
void onEveryPage(Look look) {
    for (const auto& shop : shops())
        for (const SheetOptions& options : allOptions()) {
            const auto result = pagesOf(*shop, options);
            ASSERT_TRUE(result.ok()) << options.paper.name << ": " << result.error().sentence();
            for (const Page& page : result.value())
                look(page, options);
        }
}

TEST(EveryPage, KeepsAllMarksInsideItsMargin) {
    onEveryPage([](const Page& page, const SheetOptions& options) {
        const double m = options.margin.inMillimetres() - 1e-6;
        const BoxMm inside(PointMm(m, m), PointMm(page.width - m, page.height - m));
        for (const Mark& mark : page.drawing.marks)
            EXPECT_TRUE(inside.contains(coveredBy(mark)))
                << options.paper.name << " " << page.label << " "
                << coveredBy(mark).min().transpose() << " to " << coveredBy(mark).max().transpose();
        for (const PageMark& mark : page.marks)
            EXPECT_TRUE(inside.contains(PointMm(mark.x, mark.y))) << mark.part;
    });
}

TEST(EveryPage, CarriesItsProofsOfScaleAndItsWords) {
    onEveryPage([](const Page& page, const SheetOptions& options) {
        std::map<std::string, PointMm> ends;
        for (const PageMark& mark : marksOfKind(page, "check-bar"))
            ends[mark.part] = {mark.x, mark.y};
        const auto length = [&](const std::string& bar) {
            return PointMm(ends.at(bar + " / to") - ends.at(bar + " / from"));
        };
        EXPECT_NEAR(length("100 mm across").x(), 100, 1e-9);
        EXPECT_NEAR(length("4 in across").x(), 101.6, 1e-9);
        EXPECT_NEAR(length("100 mm up").y(), 100, 1e-9);
        EXPECT_NEAR(length("4 in up").y(), 101.6, 1e-9);
        EXPECT_EQ(ends.count(options.paper.isRoll() && options.orientation == Orientation::Portrait
                                 ? "100 mm across, far end / to"
                                 : "100 mm up / to"),
                  1U);
        EXPECT_TRUE(testing::saysInOneLine(page, "Print at 100 % / Actual size, not Fit."));
        for (const char* words :
             {"Small case", "first", "Read from", "is up", "Test on scrap", "eye"})
            EXPECT_TRUE(says(page, words)) << words << " on " << page.label;
    });
}

TEST(EveryPage, NoTextLiesOnAnother) {
    onEveryPage([](const Page& page, const SheetOptions& options) {
        std::vector<const TextMark*> texts;
        for (const Mark& mark : page.drawing.marks)
            if (const auto* text = std::get_if<TextMark>(&mark.shape))
                texts.push_back(text);
        for (std::size_t i = 0; i < texts.size(); ++i)
            for (std::size_t j = i + 1; j < texts.size(); ++j) {
                const BoxMm common = textBox(*texts[i], 1).intersection(textBox(*texts[j], 1));
                EXPECT_TRUE(common.isEmpty() || common.volume() < 1e-9)
                    << options.paper.name << " " << page.label << ": \"" << texts[i]->text
                    << "\" and \"" << texts[j]->text << "\"";
            }
    });
}

// On the usual papers there is room for all; smaller ones may have to let a text cross a line.
TEST(EveryPage, OfUsualPaperHasItsTextsClearOfLinesAndHoles) {
    for (const auto& shop : shops())
        for (const char* paper : {"A4", "Letter", "A3"})
            for (const Page& page : laid(*shop, onPaper(paper)))
                for (const Mark& text : page.drawing.marks) {
                    if (!std::holds_alternative<TextMark>(text.shape))
                        continue;
                    const BoxMm box = coveredBy(text);
                    for (const Mark& mark : page.drawing.marks) {
                        const auto* circle = std::get_if<CircleMark>(&mark.shape);
                        const bool isMet =
                            circle != nullptr
                                ? box.exteriorDistance(circle->centre) < circle->radius
                                : !clipped(mark, box).empty();
                        EXPECT_FALSE(isMet) << paper << " " << page.label << ": \""
                                            << std::get<TextMark>(text.shape).text << "\" and "
                                            << key(mark.layer) << " " << mark.part.name;
                    }
                }
}

TEST(EveryPage, IsOfItsPaperAndNumberedInOneRow) {
    for (const auto& shop : shops())
        for (const SheetOptions& options : allOptions()) {
            const std::vector<Page> all = laid(*shop, options);
            for (std::size_t i = 0; i < all.size(); ++i) {
                const std::string number =
                    "page " + std::to_string(i + 1) + " of " + std::to_string(all.size());
                EXPECT_NE(all[i].label.english().find(number), std::string::npos) << all[i].label;
                EXPECT_TRUE(all[i].drawing.extent.isApprox(
                    BoxMm(PointMm(0, 0), PointMm(all[i].width, all[i].height))));
                if (!options.paper.isRoll()) {
                    EXPECT_NEAR(all[i].width * all[i].height,
                                options.paper.width.inMillimetres() *
                                    options.paper.height.inMillimetres(),
                                1e-6);
                }
            }
        }
}

// Every hole is whole on some page: a circle, not arcs, named by its part.
TEST(Holes, AreEachWholeOnSomePage) {
    for (const auto& shop : shops())
        for (const SheetOptions& options : allOptions()) {
            std::set<std::string> whole;
            for (const Page& page : laid(*shop, options))
                for (const Mark& mark : page.drawing.marks)
                    if (std::holds_alternative<CircleMark>(mark.shape))
                        whole.insert(
                            page.label.english().substr(0, page.label.english().find(" \u00b7 ")) +
                            " / " + mark.part.name);
            for (const Template& part : shop->templates)
                for (const Mark& mark : part.drawing.marks)
                    if (std::holds_alternative<CircleMark>(mark.shape)) {
                        EXPECT_EQ(whole.count(part.title.english() + " / " + mark.part.name), 1U)
                            << options.paper.name << " " << part.title << " " << mark.part.name;
                    }
        }
}

TEST(Holes, AreLabelledOnEveryPageThatShowsThemWhole) {
    const auto shop = shopWith(wideDrawer());
    for (const Page& page : laid(*shop, onPaper("A4")))
        for (const Mark& mark : page.drawing.marks)
            if (mark.layer == Layer::Hole && std::holds_alternative<CircleMark>(mark.shape)) {
                const std::string number = mark.part.name.substr(mark.part.name.rfind(' ') + 1);
                EXPECT_TRUE(says(page, number + ": drill")) << page.label << " " << mark.part.name;
            }
}

TEST(OnePage, NeedsNoTrimLinesAndNoMap) {
    const auto shop = shopWith(testing::bank(1));
    for (const Page& page : laid(*shop, onPaper("A2", Orientation::Landscape))) {
        EXPECT_TRUE(page.tile.empty());
        EXPECT_TRUE(marksOfKind(page, "trim").empty());
        EXPECT_FALSE(says(page, "tile map"));
    }
}

TEST(EmptyTiles, AreSkippedAndKeepTheirNames) {
    // 60 in × 40 in without a handle: the middle of the front shows centre lines only.
    Project project = testing::oneOpening(Length::inches(60), Length::inches(40));
    project.fronts.hardware.form.clear();
    const auto shop = shopWith(std::move(project));
    std::set<std::string> tiles;
    for (const Page& page : laid(*shop, onPaper("A4")))
        if (page.label.english().rfind("Front A1", 0) == 0)
            tiles.insert(page.tile);
    EXPECT_EQ(tiles.count("A1"), 1U);
    EXPECT_EQ(tiles.count("A3"), 1U);
    EXPECT_EQ(tiles.count("B3"), 0U);
    EXPECT_EQ(tiles.count("B1"), 1U);
}

TEST(Sheets, AreTheSameToTheByteFromTheSameInput) {
    const auto once = shopWith(profiled(testing::banks(2, 2)));
    const auto again = shopWith(profiled(testing::banks(2, 2)));
    const auto first = laid(*once, onPaper("A4"));
    const auto second = laid(*again, onPaper("A4"));
    EXPECT_EQ(marksJson(first), marksJson(second));
    ASSERT_EQ(first.size(), second.size());
    for (std::size_t i = 0; i < first.size(); ++i)
        EXPECT_EQ(svg(first[i].drawing, first[i].label.english()),
                  svg(second[i].drawing, second[i].label.english()));
}

TEST(Sheets, RefuseWhatWouldLoseMarks) {
    const auto shop = shopWith(testing::bank(1));
    SheetOptions options = onPaper("A4");
    options.margin = Length::fromMicrometres(6499);
    EXPECT_EQ(pagesOf(*shop, options).error().place, "margin");
    options.margin = Length::fromMicrometres(6500);
    EXPECT_TRUE(pagesOf(*shop, options).ok());
    options.overlap = Length::millimetres(-1);
    EXPECT_EQ(pagesOf(*shop, options).error().place, "overlap");
    options.overlap = Length::millimetres(90);
    EXPECT_EQ(pagesOf(*shop, options).error().place, "overlap");
}

TEST(Sheets, RefuseAPaperWithoutRoom) {
    const auto shop = shopWith(testing::bank(1));
    SheetOptions options = onPaper("A4");
    options.paper = {"Slip", Length::millimetres(100), Length::millimetres(150)};
    const auto refused = pagesOf(*shop, options);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().what.english().find("Slip"), std::string::npos);
    options.paper = {"Endless", Length::millimetres(300), Length::millimetres(5081)};
    EXPECT_NE(pagesOf(*shop, options).error().what.english().find("5 080 mm"), std::string::npos);
    options.paper = {"Nothing", {}, {}};
    EXPECT_FALSE(pagesOf(*shop, options).ok());
}

} // namespace
} // namespace frontwright
