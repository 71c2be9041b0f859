#include "core/catalogue/stocked.h"

#include "core/catalogue/drills.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

const std::vector<Length> stock{Length::inches(1), Length::inches(1, 16), Length::inches(1, 32)};

TEST(TheLongestStocked, LiesInTheWindowWithBothItsEnds) {
    EXPECT_EQ(longestStocked(stock, {Length::inches(1), Length::inches(1, 31)}),
              Length::inches(1, 16));
    EXPECT_EQ(longestStocked(stock, {Length::inches(1, 32), Length::inches(2)}),
              Length::inches(1, 32));
    EXPECT_EQ(longestStocked(stock, {Length::inches(1), Length::inches(1)}), Length::inches(1));
}

TEST(TheLongestStocked, IsNoneWhereTheWindowHoldsNone) {
    EXPECT_EQ(longestStocked(stock, {Length(), Length::inches(0, 63)}), std::nullopt);
    EXPECT_EQ(longestStocked(stock, {Length::inches(1, 1), Length::inches(1, 15)}), std::nullopt);
    EXPECT_EQ(longestStocked(stock, {Length::inches(2), Length::inches(1)}), std::nullopt);
    EXPECT_EQ(longestStocked({}, {Length(), Length::inches(9)}), std::nullopt);
}

Length mils(std::int64_t tenths) {
    return Length::fromNanometres(tenths * 2'540);
}

TEST(ADrill, IsToldByItsNumber) {
    EXPECT_EQ(numberDrill(mils(1960)), 9);
    EXPECT_EQ(numberDrill(mils(1495)), 25);
    EXPECT_EQ(numberDrill(mils(2210)), 2);
    EXPECT_EQ(numberDrill(mils(1700)), 18) << "0.1695 in, half a thousandth less";
    EXPECT_EQ(numberDrill(mils(1750)), std::nullopt);
    EXPECT_EQ(numberDrill(Length::inches(1)), std::nullopt);
}

} // namespace
} // namespace frontwright
