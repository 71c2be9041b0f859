#include "core/words/figure.h"

#include "core/words/approximate.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

const Language withComma(
    "de",
    [](std::string_view english) { return std::string(english == "%1.%2" ? "%1,%2" : english); },
    DecimalMark::Comma);

TEST(Figure, IsToldWithTheLanguagesDecimalMark) {
    EXPECT_EQ(told(figure("= 1/3 in ≈ 21/64 in ≈ 8.466667 mm"), withComma),
              "= 1/3 in ≈ 21/64 in ≈ 8,466667 mm");
    EXPECT_EQ(told(figure("1.5 in + 2.25 in = 95.25 mm"), withComma),
              "1,5 in + 2,25 in = 95,25 mm");
    EXPECT_EQ(figure("1.5 in + 2.25 in"), "1.5 in + 2.25 in");
}

TEST(Figure, LeavesPointsThatMarkNoDecimals) {
    EXPECT_EQ(told(figure("No. 8"), withComma), "No. 8");
    EXPECT_EQ(told(figure("12."), withComma), "12.");
    EXPECT_EQ(told(figure(".5"), withComma), ".5");
    EXPECT_EQ(told(figure(""), withComma), "");
}

TEST(Figure, IsAlikeInEveryLanguageButForItsMark) {
    EXPECT_EQ(testing::untold(figure("12.5 mm")), std::vector<std::string>{});
}

TEST(AnApproximateResult, IsNotEqual) {
    EXPECT_EQ(withApproximateResults("a = ≈ b; c = d; e = ≈ f"), "a ≈ b; c = d; e ≈ f");
    EXPECT_EQ(phrase("%1 = %2", std::string("1 in / 3"), std::string("≈ 1/3 in")),
              "1 in / 3 ≈ 1/3 in");
}

} // namespace
} // namespace frontwright
