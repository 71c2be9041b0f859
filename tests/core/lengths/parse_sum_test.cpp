#include "core/lengths/parse.h"

#include "tests/core/lengths/reading_checks.h"

#include <gtest/gtest.h>

#include <random>
#include <string>

namespace frontwright {
namespace {

using test::inInches;
using test::inMillimetres;
using test::lengthIn;

TEST(ReadingASum, AddsTheOverlaysToAnOpening) {
    EXPECT_EQ(inInches("12 5/8 + 2*1/4"), Length::inches(13, 8));
    EXPECT_EQ(inInches("12 5/8\" + 2 × ¼\""), Length::inches(13, 8));
    EXPECT_EQ(inInches("12 5/8+1/4+1/4"), Length::inches(13, 8));
}

TEST(ReadingASum, MixesUnits) {
    EXPECT_EQ(inInches("12 in + 5 mm").nanometres(), 309'800'000);
    EXPECT_EQ(inInches("12 + 5 mm").nanometres(), 309'800'000);
    EXPECT_EQ(inMillimetres("12 in + 5").nanometres(), 309'800'000);
    EXPECT_EQ(inMillimetres("1 m - 1 cm - 1 mm"), Length::millimetres(989));
}

TEST(ReadingASum, TellsAMixedNumberFromASubtraction) {
    EXPECT_EQ(inInches("1-1/2"), Length::inches(1, 32));
    EXPECT_EQ(inInches("1 - 1/2"), Length::inches(0, 32));
    EXPECT_EQ(inInches("1-½"), Length::inches(1, 32));
    EXPECT_EQ(inInches("1 - ½"), Length::inches(0, 32));
    EXPECT_EQ(inInches("1\"-1/2\""), Length::inches(0, 32));
    EXPECT_EQ(inInches("1/2-1/4"), Length::inches(0, 16));
    EXPECT_EQ(inInches("5-2"), Length::inches(3));
    EXPECT_EQ(inInches("5 -2"), Length::inches(3));
    EXPECT_EQ(inInches("5-1-1/2"), Length::inches(3, 32));
}

TEST(ReadingASum, TellsFeetAndInchesFromASubtraction) {
    EXPECT_EQ(inInches("12'-2\""), Length::inches(146));
    EXPECT_EQ(inInches("12' - 2\""), Length::inches(142));
    EXPECT_EQ(inInches("12'-2 mm"), Length::inches(144) - Length::millimetres(2));
    EXPECT_EQ(inInches("12'-2*3 in"), Length::inches(138));
    EXPECT_EQ(inInches("12'-(2)"), Length::inches(142));
    EXPECT_EQ(inInches("1' 2\" * 2"), Length::inches(28));
    EXPECT_EQ(inInches("1' 2 * 2"), Length::inches(28));
}

TEST(ReadingASum, TellsAFractionFromADivision) {
    EXPECT_EQ(inInches("12 / 3/4"), Length::inches(16));
    EXPECT_EQ(inInches("12 / 3 / 4"), Length::inches(1));
    EXPECT_EQ(inInches("3/4/2"), Length::inches(0, 24));
    EXPECT_EQ(inInches("12 5/8 / 2"), Length::inches(6, 20));
    EXPECT_EQ(inInches("1/2.5"), inInches("0.4"));
    EXPECT_EQ(inInches("12÷4"), Length::inches(3));
}

TEST(ReadingASum, GoesByTheUsualOrder) {
    EXPECT_EQ(inInches("1 + 2 * 3"), Length::inches(7));
    EXPECT_EQ(inInches("(1 + 2) * 3"), Length::inches(9));
    EXPECT_EQ(inInches("10 - 4 - 3"), Length::inches(3));
    EXPECT_EQ(inInches("24 / 4 * 2"), Length::inches(12));
    EXPECT_EQ(inInches("2 * -3"), Length::inches(-6));
    EXPECT_EQ(inInches("-(3 + 4)"), Length::inches(-7));
    EXPECT_EQ(inInches("5 - -2"), Length::inches(7));
    EXPECT_EQ(inInches("((((1))))"), Length::inches(1));
}

TEST(ReadingASum, TakesBareNumbersAsPlainOnesWhereTheyMultiply) {
    EXPECT_EQ(inMillimetres("2 * 3 in"), Length::inches(6));
    EXPECT_EQ(inMillimetres("3 in * 2"), Length::inches(6));
    EXPECT_EQ(inMillimetres("(1 + 2) * 3 in"), Length::inches(9));
    EXPECT_EQ(inMillimetres("(1 in + 2) * 3"), Length::inches(3) + Length::millimetres(6));
    EXPECT_EQ(inMillimetres("36 in / (4 - 1)"), Length::inches(12));
    EXPECT_EQ(inMillimetres("(1 + 2) in"), Length::inches(3));
    EXPECT_EQ(inInches("(36 - 3 * 3/4) / 4"), Length::inches(8, 28));
}

TEST(ReadingASum, KeepsANotationThatAllShare) {
    EXPECT_EQ(lengthIn("12 5/8 + 2*1/4", Unit::Inch).notation, Notation::InchFraction);
    EXPECT_EQ(lengthIn("3 cm * 2 + 1 cm", Unit::Inch).notation, Notation::Centimetre);
    EXPECT_EQ(lengthIn("12 in + 5 mm", Unit::Inch).notation, Notation::OfDocument);
    EXPECT_EQ(lengthIn("2 * 5 mm", Unit::Inch).notation, Notation::Millimetre);
}

TEST(ReadingASum, SaysThatItIsOne) {
    EXPECT_TRUE(parseLength("1 - 1/2", Unit::Inch).value().isSum);
    EXPECT_TRUE(parseLength("(1)", Unit::Inch).value().isSum);
    EXPECT_FALSE(parseLength("-1-1/2", Unit::Inch).value().isSum);
    EXPECT_FALSE(parseLength("12'-2\"", Unit::Inch).value().isSum);
}

TEST(ChangingALength, IsRelativeToTheCurrentOne) {
    const Length current = Length::inches(3);
    const auto changed = [current](const char* text) {
        const auto result = parseLengthChange(text, Unit::Inch, current);
        EXPECT_TRUE(result.ok()) << text;
        return result.ok() ? Length(result.value().length) : Length();
    };
    EXPECT_EQ(changed("+=1/4"), Length::inches(3, 16));
    EXPECT_EQ(changed("-=1/4"), Length::inches(2, 48));
    EXPECT_EQ(changed(" −= 1 mm"), current - Length::millimetres(1));
    EXPECT_EQ(changed("*=2"), Length::inches(6));
    EXPECT_EQ(changed("/=1/2"), Length::inches(6));
    EXPECT_EQ(changed("+=1 - 1/2"), Length::inches(3, 32));
    EXPECT_EQ(changed("+=-1/2"), Length::inches(2, 32));
    EXPECT_EQ(changed("5 in"), Length::inches(5));
    EXPECT_EQ(changed("+5"), Length::inches(5));
}

TEST(ChangingALength, NeedsACurrentOneAndAPlainFactor) {
    EXPECT_FALSE(parseLength("+=1/4", Unit::Inch).ok());
    for (const char* text : {"*=2 in", "/=2 mm", "/=0", "+ =1", "+=", "1+=2", "=2", "+=+=2"})
        EXPECT_FALSE(parseLengthChange(text, Unit::Inch, Length::inches(3)).ok()) << text;
}

/// One term of a random sum, and what it is worth.
struct Term {
    std::string text;
    std::int64_t nanometres;
};

Term randomTerm(std::mt19937_64& random) {
    const auto n = static_cast<std::int64_t>(random() % 640);
    const auto whole = std::to_string(n / 64);
    const std::string fraction = whole + " " + std::to_string(n % 64) + "/64";
    switch (random() % 6) {
    case 0:
        return {fraction, n * 396'875};
    case 1:
        return {fraction + "\"", n * 396'875};
    case 2:
        return {whole + "-" + std::to_string(n % 64) + "/64 in", n * 396'875};
    case 3:
        return {whole + "." + std::to_string(n % 10) + " mm", (n / 64 * 10 + n % 10) * 100'000};
    case 4:
        return {"3 * " + whole + " cm", n / 64 * 30'000'000};
    default:
        return {"(" + whole + "' - 7) / 4", (n / 64 * 12 - 7) * 6'350'000};
    }
}

TEST(ReadingASum, IsExactForRandomSums) {
    std::mt19937_64 random(2024);
    for (int i = 0; i < 5'000; ++i) {
        Term total = randomTerm(random);
        for (auto terms = random() % 3; terms > 0; --terms) {
            const Term next = randomTerm(random);
            const bool plus = random() % 2 == 0;
            total.text += (plus ? " + " : " - ") + next.text;
            total.nanometres += plus ? next.nanometres : -next.nanometres;
        }
        ASSERT_EQ(inInches(total.text).nanometres(), total.nanometres) << total.text;
    }
}

} // namespace
} // namespace frontwright
