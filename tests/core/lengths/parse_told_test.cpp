#include "core/lengths/parse.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::untold;

const std::vector<std::string> noWords;

/// A refusal is quoted as it was typed.
const std::set<std::string> typed{"abc", "x", "e", "NaN"};

TEST(TellingAboutALength, LeavesNoWordUntoldInARefusal) {
    std::set<std::string> sentences;
    for (const char* text : {"",
                             "abc",
                             "--5",
                             "5 +",
                             "5 5",
                             "1e5",
                             "12 x 3",
                             "()",
                             "(1",
                             "1..2",
                             "5 in in",
                             "5 in 3",
                             "NaN",
                             "1 ÷ 0",
                             "1/0",
                             "1 -1/2",
                             "12' -2\"",
                             "1 3/2",
                             "1.5' 2\"",
                             "1' 13\"",
                             "2 in * 3 in",
                             "1/(2 in)",
                             "(2 in) mm",
                             "1' 2 mm",
                             "1 in 2 ft",
                             "1,234.5",
                             "1,234",
                             "1001 m",
                             "1234567890123456789",
                             "1/999999999999999989 + 1/999999999999999967",
                             "100000000000000000-1/999999999999999967",
                             "1\x80",
                             "00000000000000000000000000000000000000000000000000000000000000001"}) {
        const auto result = parseLength(text, Unit::Inch, CommaGrouping::Ambiguous);
        ASSERT_FALSE(result.ok()) << text;
        EXPECT_EQ(untold(result.error().sentence(), typed), noWords) << result.error().sentence();
        sentences.insert(result.error().what.english());
    }
    EXPECT_GT(sentences.size(), 20U); // or the refusals above are all of one kind
}

TEST(TellingAboutALength, LeavesNoWordUntoldWhereADocumentIsRefused) {
    for (const char* text : {"12", "1/3 in", "1 in + 2 in", "", "12 elephants"}) {
        const auto result = parseWrittenLength(text);
        ASSERT_FALSE(result.ok()) << text;
        EXPECT_EQ(untold(result.error().sentence(), {"elephants"}), noWords)
            << result.error().sentence();
    }
}

TEST(TellingAboutALength, LeavesNoWordUntoldInWhatWasUnderstood) {
    for (const char* text : {"12 5/8", "1/3 in", "1' 2 1/2\"", "12.5 mm", "(1 + 2) cm", "-3 m"})
        EXPECT_EQ(untold(parseLength(text, Unit::Inch).value().echo), noWords) << text;
    EXPECT_EQ(untold(parseLengthChange("+=1/4", Unit::Inch, Length::inches(3)).value().echo),
              noWords);
}

TEST(TellingAboutALength, WritesDecimalsWithTheLanguagesMark) {
    const Language withComma(
        "de",
        [](std::string_view english) {
            return std::string(english == "%1.%2" ? "%1,%2" : english);
        },
        DecimalMark::Comma);
    EXPECT_EQ(told(parseLength("12 5/8", Unit::Inch).value().echo, withComma),
              "= 12 5/8 in = 320,675 mm");
}

} // namespace
} // namespace frontwright
