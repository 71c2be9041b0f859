#include "core/words/language.h"

#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <map>

namespace frontwright {
namespace {

const Language german(
    "de",
    [](std::string_view english) {
        static const std::map<std::string_view, std::string> words = {
            {"left", "links"},
            {"%1 is %2 too long", "%1 ist um %2 zu lang"},
            {"at the %1: %2", "%2 (%1)"}};
        const auto found = words.find(english);
        return found == words.end() ? std::string(english) : found->second;
    },
    DecimalMark::Comma);

TEST(Language, TellsAPhraseWithItsPartsInTheOrderOfThatLanguage) {
    const Phrase sentence =
        phrase("at the %1: %2", text("left"),
               phrase("%1 is %2 too long", std::string("B3"), std::string("1 mm")));
    EXPECT_EQ(told(sentence, german), "B3 ist um 1 mm zu lang (links)");
    EXPECT_EQ(told(sentence, Language()), "at the left: B3 is 1 mm too long");
}

TEST(Language, TellsInEnglishWhatItHasNoWordsFor) {
    EXPECT_EQ(told(text("right"), german), "right");
    EXPECT_EQ(told(phrase("%1 is gone", text("left")), german), "links is gone");
}

TEST(Language, NeverTranslatesANameThatTheMakerGave) {
    EXPECT_EQ(told(Phrase(std::string("left")), german), "left");
    EXPECT_EQ(told(nameFromData("left"), german), "links");
}

TEST(Language, WritesDecimalNumbersWithItsMark) {
    EXPECT_EQ(withMark("≈ 12.5 mm", german.decimalMark()), "≈ 12,5 mm");
    EXPECT_EQ(withMark("12.5 mm", Language().decimalMark()), "12.5 mm");
}

TEST(Language, IsTheSameWhereItsCodeIs) {
    EXPECT_EQ(Language(), Language());
    EXPECT_FALSE(Language() == german);
}

TEST(Untold, IsWhatNoOtherLanguageCouldSay) {
    using testing::untold;
    EXPECT_EQ(untold(phrase("Only %1 is left in %2", std::string("1/8 in"), std::string("B3"))),
              std::vector<std::string>{});
    EXPECT_EQ(untold(phrase("Only %1 is left", std::string("one inch"))),
              (std::vector<std::string>{"one", "inch"}));
    EXPECT_EQ(untold(phrase("front %1", std::string("Top")), {"Top"}), std::vector<std::string>{});
}

} // namespace
} // namespace frontwright
