#include "core/sheets/calibration_sheet.h"
#include "tests/core/sheets/laid_sheets.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace frontwright {
namespace {

using Words = std::vector<std::string>;
const Words none;

/// Names of papers, bars, tiles and documents, which no language changes.
const std::set<std::string> alike{"A", "B", "Letter", "Small", "case", "first"};

Words wordsLeft(const Page& page) {
    Words left;
    for (const Mark& mark : page.drawing.marks)
        if (const auto* text = std::get_if<TextMark>(&mark.shape))
            for (std::string& word : testing::untold(Phrase(text->text), alike))
                left.push_back(std::move(word));
    return left;
}

// Every page of a sample, its templates and its furniture, made for a language without words.
TEST(ToldSheets, HoldNoWordThatAnotherLanguageCouldNotTell) {
    const auto shop = testing::shopWith(testing::banks(2, 3));
    const auto mute = testing::mute();
    const auto parts = templates(shop->project, shop->plan, shop->project.style, mute);
    for (const char* paper : {"A4", "Letter", "A0", "roll 610 mm"}) {
        SheetOptions options = testing::onPaper(paper);
        options.language = mute;
        const auto laid = pages(shop->project, shop->plan, parts, options);
        ASSERT_TRUE(laid.ok());
        for (const Page& page : laid.value())
            EXPECT_EQ(wordsLeft(page), none) << paper << " " << page.label;
    }
}

TEST(ToldSheets, KeepTheirMarksInEnglish) {
    const auto shop = testing::shopWith(testing::banks(2, 3));
    const auto mute = testing::mute();
    SheetOptions options = testing::onPaper("A4");
    const auto english = pages(shop->project, shop->plan, shop->templates, options);
    options.language = mute;
    const auto parts = templates(shop->project, shop->plan, shop->project.style, mute);
    const auto other = pages(shop->project, shop->plan, parts, options);
    ASSERT_TRUE(english.ok() && other.ok());
    EXPECT_FALSE(wordsLeft(english.value().front()).empty());
    EXPECT_EQ(other.value().front().label, english.value().front().label);
    const auto hasEnglishMarks = [](const Page& page) {
        return std::all_of(page.marks.begin(), page.marks.end(), [](const PageMark& mark) {
            return testing::untold(Phrase(mark.part)).size() > 1;
        });
    };
    for (const Page& page : other.value())
        EXPECT_TRUE(hasEnglishMarks(page)) << page.label;
}

TEST(ToldSheets, TellTheTestPage) {
    for (const ScaleFactors factors : {ScaleFactors{}, ScaleFactors{1.01, 0.99}})
        for (const char* printer : {"", "A"})
            for (const auto way : {Orientation::Portrait, Orientation::Landscape}) {
                CalibrationRequest request;
                request.paper = paperNamed("A4").value();
                request.orientation = way;
                request.factors = factors;
                request.printer = printer;
                request.language = testing::mute();
                EXPECT_EQ(wordsLeft(calibrationSheet(request).value().page), none);
            }
}

TEST(ToldSheets, TellWhyAPaperIsRefused) {
    const auto shop = testing::shopWith(testing::banks(2, 3));
    std::vector<Error> errors{paperNamed("roll x").error(), rollOf(Length{}).error(),
                              sheetOf(Length{}, Length{}).error()};
    SheetOptions tooNarrow = testing::onPaper("A5");
    tooNarrow.margin = Length::millimetres(1);
    errors.push_back(pages(shop->project, shop->plan, shop->templates, tooNarrow).error());
    tooNarrow.margin = Length::millimetres(60);
    errors.push_back(pages(shop->project, shop->plan, shop->templates, tooNarrow).error());
    for (const Error& error : errors)
        EXPECT_EQ(testing::untold(error.sentence(), {"x"}), none) << error.sentence();
}

} // namespace
} // namespace frontwright
