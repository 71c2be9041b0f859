#include "core/lengths/parse.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

std::string echo(std::string_view text, Unit bareUnit) {
    const auto result = parseLengthChange(text, bareUnit, Length::inches(3));
    return result.ok() ? result.value().echo.english()
                       : "refused: " + result.error().sentence().english();
}

TEST(Echo, TellsALengthInBothUnitsThatOfTheFieldFirst) {
    EXPECT_EQ(echo("12 5/8", Unit::Inch), "= 12 5/8 in = 320.675 mm");
    EXPECT_EQ(echo("12 5/8\"", Unit::Millimetre), "= 320.675 mm = 12 5/8 in");
    EXPECT_EQ(echo("12'-2 1/2\"", Unit::Inch), "= 146 1/2 in = 3721.1 mm");
}

TEST(Echo, CatchesASlipOfTheHand) {
    EXPECT_EQ(echo("11/4", Unit::Inch), "= 2 3/4 in = 69.85 mm");
    EXPECT_EQ(echo("1 1/4", Unit::Inch), "= 1 1/4 in = 31.75 mm");
}

TEST(Echo, MarksWhatIsNotExact) {
    EXPECT_EQ(echo("321", Unit::Millimetre), "= 321 mm ≈ 12 41/64 in");
    EXPECT_EQ(echo("12.3", Unit::Inch), "= 12.3 in = 312.42 mm");
    EXPECT_EQ(echo("1/3", Unit::Inch), "= 1/3 in ≈ 21/64 in ≈ 8.466667 mm");
    EXPECT_EQ(echo("1/3 mm", Unit::Inch), "= 1/3 mm ≈ 1/64 in ≈ 0.333333 mm");
    EXPECT_EQ(echo("1/3", Unit::Millimetre), "= 1/3 mm ≈ 0.333333 mm ≈ 1/64 in");
}

TEST(Echo, TellsASubtractionFromAMixedNumber) {
    EXPECT_EQ(echo("1-1/2", Unit::Inch), "= 1 1/2 in = 38.1 mm");
    EXPECT_EQ(echo("1 - 1/2", Unit::Inch), "= 1 - 1/2 = 1/2 in = 12.7 mm");
    EXPECT_EQ(echo("5+1-1/2", Unit::Inch), "= 5 + 1 1/2 = 6 1/2 in = 165.1 mm");
    EXPECT_EQ(echo("12'-2 mm", Unit::Millimetre), "= 12 ft - 2 mm = 3655.6 mm ≈ 143 59/64 in");
}

TEST(Echo, RepeatsASumAsItWasUnderstood) {
    EXPECT_EQ(echo("12 5/8+2*1/4", Unit::Inch), "= 12 5/8 + 2 * 1/4 = 13 1/8 in = 333.375 mm");
    EXPECT_EQ(echo("(1' 2½″−,5cm)÷2", Unit::Millimetre),
              "= (1 ft 2 1/2 in - 0.5 cm) / 2 = 181.65 mm ≈ 7 5/32 in");
    EXPECT_EQ(echo("2*-3", Unit::Inch), "= 2 * -3 = -6 in = -152.4 mm");
    EXPECT_EQ(echo("+3 - +2", Unit::Inch), "= 3 - 2 = 1 in = 25.4 mm");
    EXPECT_EQ(echo("(3+4) mm", Unit::Inch), "= (3 + 4) mm ≈ 9/32 in = 7 mm");
}

TEST(Echo, TellsAChangeWithTheCurrentLength) {
    EXPECT_EQ(echo("+=1/4", Unit::Inch), "= 3 in + 1/4 = 3 1/4 in = 82.55 mm");
    EXPECT_EQ(echo("-=1 - ½", Unit::Inch), "= 3 in - (1 - 1/2) = 2 1/2 in = 63.5 mm");
    EXPECT_EQ(echo("/= 2", Unit::Millimetre), "= 76.2 mm / 2 = 38.1 mm = 1 1/2 in");
}

} // namespace
} // namespace frontwright
