#include "core/lengths/format.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <limits>

namespace frontwright {
namespace {

using testing::millimetres;
using testing::sixteenths;

TEST(ShowingALength, IsInLowestTermsWithASpace) {
    EXPECT_EQ(shown(Length::inches(12, 40), sixteenths), "12 5/8 in");
    EXPECT_EQ(shown(Length::inches(0, 48), sixteenths), "3/4 in");
    EXPECT_EQ(shown(Length::inches(12), sixteenths), "12 in");
    EXPECT_EQ(shown(Length(), sixteenths), "0 in");
    EXPECT_EQ(shown(Length::fromMicrometres(320'700), millimetres), "320.7 mm");
    EXPECT_EQ(shown(Length::millimetres(321), millimetres), "321 mm");
    EXPECT_EQ(shown(Length(), millimetres), "0 mm");
}

TEST(ShowingALength, MarksWhatIsNotExact) {
    EXPECT_EQ(shown(Length::millimetres(321), sixteenths), "≈ 12 5/8 in");
    EXPECT_EQ(shown(Length::inches(12, 40), millimetres), "≈ 320.7 mm");
    EXPECT_TRUE(isApproximate(Length::inches(0, 1), sixteenths));
    EXPECT_FALSE(isApproximate(Length::inches(0, 1), {Unit::Inch, 64}));
    EXPECT_FALSE(isApproximate(Length::inches(1), millimetres));
}

// 0.398 in lies between 6/16 (0.375) and 7/16 (0.4375), 10.12 mm between 10.1 and 10.2.
TEST(ALeast, IsNeverShownLessThanItIs) {
    const Length thickness = Length::fromMicrometres(10'109); // 0.398 in
    EXPECT_EQ(shown(thickness, sixteenths), "≈ 3/8 in");
    EXPECT_EQ(shown(thickness, sixteenths, Rounding::Up), "≈ 7/16 in");
    EXPECT_EQ(shown(Length::fromMicrometres(10'120), millimetres, Rounding::Up), "≈ 10.2 mm");
    EXPECT_EQ(shown(Length::inches(0, 24), sixteenths, Rounding::Up), "3/8 in");
    EXPECT_EQ(shown(Length::inches(0, 63), sixteenths, Rounding::Up), "≈ 1 in");
    EXPECT_EQ(shown(Length::fromNanometres(-1), sixteenths, Rounding::Up), "≈ 0 in");
    EXPECT_EQ(shownAsResult(thickness, sixteenths, Rounding::Up), "0.398 in ≈ 7/16 in");
}

TEST(AMost, IsNeverShownMoreThanItIs) {
    const Length length = Length::inches(1, 31); // 15.5/32
    EXPECT_EQ(shown(length, sixteenths), "≈ 1 1/2 in");
    EXPECT_EQ(shown(length, sixteenths, Rounding::Down), "≈ 1 7/16 in");
    EXPECT_EQ(shown(Length::fromMicrometres(9'960), millimetres, Rounding::Down), "≈ 9.9 mm");
    EXPECT_EQ(shown(Length::fromNanometres(-1), sixteenths, Rounding::Down), "≈ -1/16 in");
    EXPECT_EQ(shownAsResult(length, sixteenths, Rounding::Down), "1 31/64 in ≈ 1 7/16 in");
}

TEST(RoundingEitherWay, EnclosesEveryLength) {
    for (std::int64_t nm = -3'000'000; nm <= 3'000'000; nm += 17'351) {
        const Length length = Length::fromNanometres(nm);
        for (const LengthStyle style : {sixteenths, millimetres}) {
            const std::string up = shown(length, style, Rounding::Up),
                              down = shown(length, style, Rounding::Down),
                              nearest = shown(length, style);
            EXPECT_TRUE(nearest == up || nearest == down) << nm;
            EXPECT_EQ(up == down, !isApproximate(length, style)) << nm;
        }
    }
}

TEST(ASetting, IsShownInAsManyDigitsAsItTakes) {
    EXPECT_EQ(shownInFull(Length::inches(0, 46), sixteenths), "23/32 in");
    EXPECT_EQ(shownInFull(Length::fromNanometres(196 * 25'400), sixteenths), "0.196 in");
    EXPECT_EQ(shownInFull(Length::millimetres(2), sixteenths), "≈ 0.0787 in");
    EXPECT_EQ(shownInFull(Length::fromMicrometres(18'256), millimetres), "18.256 mm");
    EXPECT_EQ(shownInFull(Length::inches(0, 46), millimetres), "≈ 18.256 mm");
}

TEST(WhatIsLessThanAFraction, IsShownInThousandths) {
    EXPECT_EQ(shownFinely(Length::fromMicrometres(960), sixteenths), "0.038 in");
    EXPECT_EQ(shownFinely(Length::fromMicrometres(960), millimetres), "0.96 mm");
    EXPECT_EQ(shownFinely(Length::fromMicrometres(4), sixteenths), "< 0.001 in");
    EXPECT_EQ(shownFinely(Length::fromMicrometres(4), {Unit::Millimetre, 16, DecimalMark::Comma}),
              "< 0,01 mm");
    EXPECT_EQ(shownFinely(Length(), sixteenths), "0 in");
}

TEST(ShowingALength, CarriesIntoTheNextInch) {
    EXPECT_EQ(shown(Length::inches(12, 63), sixteenths), "≈ 13 in");
    EXPECT_EQ(shown(Length::inches(0, 63), {Unit::Inch, 8}), "≈ 1 in");
    EXPECT_EQ(shown(Length::fromMicrometres(9'960), millimetres), "≈ 10 mm");
}

TEST(ShowingALength, IsNeverMinusZero) {
    EXPECT_EQ(shown(Length::fromMicrometres(-10), sixteenths), "≈ 0 in");
    EXPECT_EQ(shown(Length::fromMicrometres(-10), millimetres), "≈ 0 mm");
    EXPECT_EQ(shown(Length::inches(-1, -32), sixteenths), "-1 1/2 in");
}

TEST(ShowingALength, LeavesTheUnitToTheTitleOfADrawing) {
    EXPECT_EQ(shownBare(Length::inches(12, 40), sixteenths), "12 5/8");
    EXPECT_EQ(shownBare(Length::millimetres(321), sixteenths), "≈ 12 5/8");
    EXPECT_EQ(shownBare(Length::millimetres(321), millimetres), "321");
}

TEST(ShowingALength, StandsTheLongestAndAnyDenominator) {
    const Length longest = Length::fromNanometres(std::numeric_limits<std::int64_t>::max());
    const Length least = Length::fromNanometres(std::numeric_limits<std::int64_t>::min());
    EXPECT_EQ(shown(longest, millimetres), "≈ 9223372036854.8 mm");
    EXPECT_EQ(shown(least, millimetres), "≈ -9223372036854.8 mm");
    EXPECT_EQ(shown(longest, {Unit::Inch, 64}), "≈ 363124883340 47/64 in");
    for (const int denominator : {0, -8, 3, 100, 128})
        EXPECT_EQ(shown(Length::inches(0, 1), {Unit::Inch, denominator}), "1/64 in");
}

/// Millimetres and their nearest fractions of an inch: computed with exact rational arithmetic
/// (1 in = 25.4 mm, NIST Special Publication 811), outside this program.
struct Conversion {
    std::int64_t micrometres;
    const char* sixteenth;
    const char* thirtySecond;
    const char* sixtyFourth;
};

constexpr Conversion conversions[] = {
    {32'000, "1 1/4", "1 1/4", "1 17/64"},
    {37'000, "1 7/16", "1 15/32", "1 29/64"},
    {64'000, "2 1/2", "2 17/32", "2 33/64"},
    {76'200, "3", "3", "3"},
    {95'250, "3 3/4", "3 3/4", "3 3/4"},
    {96'000, "3 3/4", "3 25/32", "3 25/32"},
    {128'000, "5 1/16", "5 1/32", "5 3/64"},
    {160'000, "6 5/16", "6 5/16", "6 19/64"},
    {192'000, "7 9/16", "7 9/16", "7 9/16"},
    {224'000, "8 13/16", "8 13/16", "8 13/16"},
    {256'000, "10 1/16", "10 3/32", "10 5/64"},
    {288'000, "11 5/16", "11 11/32", "11 11/32"},
    {320'000, "12 5/8", "12 19/32", "12 19/32"},
    {12'700, "1/2", "1/2", "1/2"},
    {3'000, "1/8", "1/8", "1/8"},
    {2'000, "1/16", "3/32", "5/64"},
    {1'000, "1/16", "1/32", "3/64"},
    {19'000, "3/4", "3/4", "3/4"},
    {18'000, "11/16", "23/32", "45/64"},
    {300'000, "11 13/16", "11 13/16", "11 13/16"},
    {454'500, "17 7/8", "17 29/32", "17 57/64"},
};

std::string withoutMark(const std::string& text) {
    const std::string mark = "≈ ";
    return text.compare(0, mark.size(), mark) == 0 ? text.substr(mark.size()) : text;
}

TEST(ShowingALength, AgreesWithATableOfConversions) {
    for (const Conversion& row : conversions) {
        const Length length = Length::fromMicrometres(row.micrometres);
        EXPECT_EQ(withoutMark(shownBare(length, {Unit::Inch, 16})), row.sixteenth);
        EXPECT_EQ(withoutMark(shownBare(length, {Unit::Inch, 32})), row.thirtySecond);
        EXPECT_EQ(withoutMark(shownBare(length, {Unit::Inch, 64})), row.sixtyFourth);
    }
}

// Ties on the grid, computed in exact arithmetic outside this program. Halves go away from zero,
// where rounding to even would show 0, 3 3/8 and 7 in the first, fourth and sixth row.
TEST(ShowingALength, TakesHalvesAwayFromZero) {
    struct Tie {
        std::int64_t hundredTwentyEighths;
        int denominator;
        const char* halfUp;
    };
    for (const Tie& tie :
         {Tie{4, 16, "1/16"}, Tie{12, 16, "1/8"}, Tie{20, 16, "3/16"}, Tie{428, 16, "3 3/8"},
          Tie{724, 16, "5 11/16"}, Tie{898, 32, "7 1/32"}, Tie{902, 32, "7 1/16"}}) {
        const Length length = Length::fromSixtyFourths(tie.hundredTwentyEighths / 2);
        const LengthStyle style{Unit::Inch, tie.denominator};
        EXPECT_EQ(shownBare(length, style), std::string("≈ ") + tie.halfUp);
        EXPECT_EQ(shownBare(-length, style), std::string("≈ -") + tie.halfUp);
    }
    EXPECT_EQ(shownBare(Length::fromMicrometres(50), millimetres), "≈ 0.1");
    EXPECT_EQ(shownBare(Length::fromMicrometres(-50), millimetres), "≈ -0.1");
}

TEST(ExactText, IsAFractionOfAnInchWhereItCanBe) {
    EXPECT_EQ(exact(Length::inches(12, 41), Unit::Inch), "12 41/64 in");
    EXPECT_EQ(exact(Length::inches(-1, -32), Unit::Inch), "-1 1/2 in");
    EXPECT_EQ(exact(Length::millimetres(321), Unit::Inch), "321 mm");
    EXPECT_EQ(exact(Length::inches(12, 41), Unit::Millimetre), "321.071875 mm");
    EXPECT_EQ(exact(Length::fromNanometres(1), Unit::Inch), "0.000001 mm");
}

TEST(WrittenText, KeepsTheNotation) {
    const Length length = Length::inches(14, 32);
    const auto in = [length](Notation notation) { return written({length, notation}, Unit::Inch); };
    EXPECT_EQ(in(Notation::OfDocument), "14 1/2 in");
    EXPECT_EQ(in(Notation::InchFraction), "14 1/2 in");
    EXPECT_EQ(in(Notation::InchDecimal), "14.5 in");
    EXPECT_EQ(in(Notation::FeetInches), "1 ft 2 1/2 in");
    EXPECT_EQ(in(Notation::Millimetre), "368.3 mm");
    EXPECT_EQ(in(Notation::Centimetre), "36.83 cm");
    EXPECT_EQ(in(Notation::Metre), "0.3683 m");
    EXPECT_EQ(written(length, Unit::Millimetre), "368.3 mm");
}

TEST(WrittenText, CarriesInchesIntoFeet) {
    const auto feet = [](Length length) {
        return written({length, Notation::FeetInches}, Unit::Inch);
    };
    EXPECT_EQ(feet(Length::inches(12)), "1 ft");
    EXPECT_EQ(feet(Length::inches(11, 63)), "0 ft 11 63/64 in");
    EXPECT_EQ(feet(Length::inches(23, 64)), "2 ft");
    EXPECT_EQ(feet(Length::inches(-14)), "-1 ft 2 in");
    EXPECT_EQ(feet(Length::inches(0, -32)), "-0 ft 1/2 in");
    EXPECT_EQ(feet(Length()), "0 ft");
}

TEST(WrittenText, LeavesANotationThatIsNoLongerExact) {
    const Length length = Length::millimetres(321);
    for (const Notation notation :
         {Notation::InchFraction, Notation::InchDecimal, Notation::FeetInches}) {
        EXPECT_EQ(written({length, notation}, Unit::Inch), "321 mm");
        EXPECT_EQ(written({length, notation}, Unit::Millimetre), "321 mm");
    }
    EXPECT_EQ(written({Length::inches(13), Notation::InchDecimal}, Unit::Inch), "13.0 in");
}

} // namespace
} // namespace frontwright
