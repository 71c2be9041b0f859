#include "core/drawings/lettering.h"
#include "core/sheets/text_lines.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

TEST(WrappedText, BreaksAtSpacesAndFitsTheWidth) {
    const std::string text = "Test on scrap; measure the check bars before drilling";
    const auto lines = wrapped(text, smallText, 40);
    ASSERT_GT(lines.size(), 1U);
    std::string joined;
    for (const std::string& line : lines) {
        EXPECT_LE(textWidth(line, smallText), 40);
        joined += (joined.empty() ? "" : " ") + line;
    }
    EXPECT_EQ(joined, text);
}

TEST(WrappedText, NeverTearsAFigureFromItsFractionOrUnit) {
    for (double width = 5; width < 60; width += 0.5)
        for (const std::string& line :
             wrapped("wide 13 1/8 in, high 3 1/4 in. 1066 mm", smallText, width)) {
            EXPECT_NE(line.substr(0, 2), "in") << width;
            EXPECT_NE(line.substr(0, 2), "mm") << width;
            EXPECT_NE(line.substr(0, 3), "1/8") << width;
            EXPECT_NE(line.substr(0, 3), "1/4") << width;
        }
}

TEST(WrappedText, AWideWordStaysWholeAndNoTextIsNoLine) {
    const std::vector<std::string> one{"counterbore"};
    EXPECT_EQ(wrapped("counterbore", smallText, 1), one);
    EXPECT_TRUE(wrapped("", smallText, 40).empty());
    EXPECT_TRUE(wrapped("   ", smallText, 40).empty());
}

TEST(ListedNames, ReadLikeASentence) {
    EXPECT_EQ(listed({"A1"}, 12), "A1");
    EXPECT_EQ(listed({"A1", "B2"}, 12), "A1 and B2");
    EXPECT_EQ(listed({"A1", "B2", "C3"}, 12), "A1, B2 and C3");
    EXPECT_EQ(listed({"A1", "B2", "C3", "D4"}, 2), "A1, B2 and 2 more");
}

// 8 pt is 2.82 mm of type; capitals of DejaVu Sans are 0.729 of it.
TEST(Lettering, IsAtLeastEightPoints) {
    EXPECT_GE(smallText / capHeightPerEm, 8 * 25.4 / 72);
}

} // namespace
} // namespace frontwright
