#include "core/lengths/parse.h"

#include <gtest/gtest.h>

#include <random>
#include <string>

namespace frontwright {
namespace {

std::string refusal(std::string_view text, Unit bareUnit = Unit::Inch) {
    const auto result = parseLength(text, bareUnit);
    return result.ok() ? "read as " + result.value().echo.english()
                       : result.error().sentence().english();
}

TEST(RefusingALength, SaysWhereWhatAndWhatToDo) {
    EXPECT_EQ(refusal(""), "position 1: expected a length, found nothing; "
                           "write one, such as 12 5/8 in or 321 mm");
    EXPECT_EQ(refusal("12 yd"), "position 4: expected a unit, +, -, *, / or the end, found \"yd\"; "
                                "the units are in, ft, mm, cm and m");
    EXPECT_EQ(refusal("12 5"), "position 4: expected a unit, +, -, *, / or the end, found \"5\"; "
                               "write a fraction without spaces, as in 12 5/8");
    EXPECT_EQ(refusal("12 in 5/8"), "position 7: expected +, -, *, / or the end, found \"5\"; "
                                    "write the unit last, as in 12 5/8 in, and + or - between "
                                    "lengths");
    EXPECT_EQ(refusal("2 *"), "position 4: expected a number, found the end; "
                              "write a length there, such as 12 5/8 in or 321 mm");
    EXPECT_EQ(refusal("(2 + 3"), "position 7: expected \")\", found the end; close the bracket");
    EXPECT_EQ(refusal("2)"), "position 2: expected a unit, +, -, *, / or the end, found \")\"; "
                             "leave it out");
    EXPECT_EQ(refusal("3 in \""), "position 6: expected +, -, *, / or the end, found \"\"\"; "
                                  "leave it out");
}

TEST(RefusingALength, CountsPositionsInCharacters) {
    EXPECT_EQ(refusal("½″ ? "), "position 4: expected +, -, *, / or the end, found \"?\"; "
                                "the units are in, ft, mm, cm and m");
}

TEST(RefusingALength, NamesZeroDenominatorsAndDivisors) {
    EXPECT_EQ(refusal("1/0"), "position 3: the denominator is 0; write one of at least 1");
    EXPECT_EQ(refusal("12 1/0 in"), "position 6: the denominator is 0; write one of at least 1");
    EXPECT_EQ(refusal("3 / (1 - 1)"), "position 3: the divisor is 0; divide by another number");
    EXPECT_EQ(refusal("3 / 0.0"), "position 3: the divisor is 0; divide by another number");
}

TEST(RefusingALength, NeverGuessesWhatAHyphenMeans) {
    EXPECT_EQ(refusal("1 -1/2"), "position 3: this hyphen has a space on one side only; write "
                                 "1-1/2 for a mixed number, or a space on both sides to subtract");
    EXPECT_EQ(refusal("1- ½"), "position 2: this hyphen has a space on one side only; write "
                               "1-½ for a mixed number, or a space on both sides to subtract");
    EXPECT_EQ(refusal("12' -2\""),
              "position 5: this hyphen has a space on one side only; write 12'-2\" for feet and "
              "inches, or a space on both sides to subtract");
    EXPECT_EQ(refusal("12-5/4"), "position 4: the fraction of a mixed number must be less than 1; "
                                 "write a sum or a subtraction with spaces, as in 12 + 5/4");
    EXPECT_EQ(refusal("12 4/4").substr(0, 11), "position 4:");
}

TEST(RefusingALength, NeverTakesAMarkForOneOfThousands) {
    for (const char* text : {"1,234.5", "1.234,5", "1,234,567", "1.234.567", "1.2.3", "1,,2"})
        EXPECT_EQ(refusal(text).substr(0, 9), "position ") << text;
    EXPECT_EQ(refusal("2 + 1,234.5"), "position 5: the number has two decimal marks; "
                                      "leave digits ungrouped, as in 1234.5");
}

TEST(RefusingALength, KeepsFeetAndInchesApart) {
    EXPECT_EQ(refusal("12' 14\""), "position 5: inches after feet must be fewer than 12; "
                                   "carry them into the feet, or join the two by +");
    EXPECT_EQ(refusal("1.5' 2\""), "position 1: feet before inches must be a whole number; "
                                   "write whole feet, as in 12 ft 2 1/2 in");
    EXPECT_EQ(refusal("12' 2 mm"), "position 7: expected inches after feet, found \"mm\"; "
                                   "write their unit, as in 12 ft 2 in");
    EXPECT_EQ(refusal("12' 2", Unit::Millimetre),
              "position 6: expected inches after feet, found the end; "
              "write their unit, as in 12 ft 2 in");
    EXPECT_EQ(refusal("1 1/2' 2\"").substr(0, 11), "position 1:");
}

TEST(RefusingALength, KnowsAreasAndRatiosFromLengths) {
    EXPECT_EQ(refusal("3 in * 2 in"), "position 6: a length times a length is an area, not a "
                                      "length; multiply by a plain number");
    EXPECT_EQ(refusal("3 / 4 in"),
              "position 3: what is divided by a length is no length; divide by a plain number; "
              "write a fraction without spaces, as in 3/4 in");
    EXPECT_EQ(refusal("(3 in) mm"), "position 8: what stands in the bracket has a unit already; "
                                    "leave this one out");
}

TEST(RefusingALength, EndsAtAThousandMetres) {
    const std::string beyond = "position 1: the length is beyond 1000 m; write a shorter length";
    EXPECT_EQ(refusal("1001 m"), beyond);
    EXPECT_EQ(refusal("-1001 m"), beyond);
    EXPECT_EQ(refusal("99999999999999 m"), beyond);
    EXPECT_EQ(refusal("(99999999999999) m"),
              "position 18: the length is beyond 1000 m; write a shorter length");
    EXPECT_EQ(refusal("1000000000 * 1000000000 * 1000000000"),
              "position 25: the length is beyond 1000 m; write a shorter length");
}

TEST(RefusingALength, SaysWhenNumbersAreTooLong) {
    EXPECT_EQ(refusal("1234567890123456789"),
              "position 1: the number has more than 18 digits; write fewer digits");
    EXPECT_EQ(refusal("1/999999999999999989 + 1/999999999999999967"),
              "position 22: the numbers are too long to be computed exactly; write fewer digits");
    EXPECT_EQ(refusal("100000000000000000-1/999999999999999967"),
              "position 20: the number is too long to be computed exactly; write fewer digits");
    EXPECT_EQ(refusal("1' 123456789012345678/999999999999999967 in").substr(0, 11), "position 4:");
    EXPECT_EQ(refusal("0.123456789012345677 ft").substr(0, 11), "position 1:");
}

TEST(RefusingALength, ReadsAtMost64Characters) {
    EXPECT_EQ(refusal(std::string(63, ' ') + "1"), "read as = 1 in = 25.4 mm");
    EXPECT_EQ(refusal(std::string(64, ' ') + "1"),
              "position 65: the text has more than 64 characters; write the length shorter");
    std::string halves; // 64 characters of two bytes each
    for (int i = 0; i < 64; ++i)
        halves += "½";
    EXPECT_EQ(refusal(halves).substr(0, 11), "position 2:");
    EXPECT_EQ(refusal(std::string(31, '(') + "1" + std::string(31, ')')),
              "read as = " + std::string(31, '(') + "1" + std::string(31, ')') +
                  " = 1 in = 25.4 mm");
    EXPECT_EQ(refusal(std::string(64, '(')).substr(0, 12), "position 65:");
    EXPECT_EQ(refusal(std::string(1'000'000, '9')).substr(0, 12), "position 65:");
}

TEST(RefusingALength, RefusesWhatIsNotUtf8) {
    const std::string sentence = "position 2: the text is not UTF-8 here; type the length again";
    // Stray and missing continuation bytes, overlong forms, a surrogate, beyond U+10FFFF.
    for (const char* text : {"1\x80", "1\xC3", "1\xC3(", "1\xC0\xAF", "1\xE0\x80\xAF",
                             "1\xED\xA0\x80", "1\xF4\x90\x80\x80", "1\xFF", "1\xF0\x82\x82\xAC"})
        EXPECT_EQ(refusal(text), sentence);
    EXPECT_EQ(refusal(std::string_view("1\0", 2)).substr(0, 11), "position 2:");
}

TEST(RefusingALength, RefusesAllSortsOfOtherText) {
    for (const char* text :
         {"abc",       "--5",   "5 +",     "*5",    "5 5",  "1e5",   "12 x 3",   "()",     "(1",
          "1..2",      "12.",   "1/",      "/2",    "1//2", "in",    "\"",       "½½",     "½ 1/2",
          "12½½",      "1/2 3", "5 in in", "5 µm",  "NaN",  "inf",   "0x10",     "²",      "12⁵/₈",
          "1 m 20 cm", "5;",    "1 = 1",   "1 ÷ 0", "５",   "1—1/2", "12 1.5/2", "1.5 1/2"})
        EXPECT_EQ(refusal(text).substr(0, 9), "position ") << text;
}

std::string randomText(std::mt19937_64& random) {
    static const char* const pieces[] = {
        "1", "12", "0",  "5/8", "3",  ".",  ",", "/", "-", "+", "*", "(",    ")", " ", " ",
        "'", "\"", "in", "ft",  "mm", "cm", "m", "½", "″", "−", "⁄", "\xC3", "x", "=", "\t"};
    std::string text;
    for (auto length = random() % 16; length > 0; --length)
        text += random() % 50 == 0 ? std::string(1, static_cast<char>(random() % 256))
                                   : std::string(pieces[random() % std::size(pieces)]);
    return text;
}

TEST(RefusingALength, StandsRandomText) {
    std::mt19937_64 random(7);
    int read = 0;
    for (int i = 0; i < 100'000; ++i) {
        const std::string text = randomText(random);
        const Unit unit = i % 2 == 0 ? Unit::Inch : Unit::Millimetre;
        const auto result = parseLengthChange(text, unit, Length::inches(3));
        if (!result.ok()) {
            ASSERT_EQ(result.error().place.english().substr(0, 9), "position ") << text;
            const int position = std::stoi(result.error().place.english().substr(9));
            ASSERT_GE(position, 1) << text;
            ASSERT_LE(position, static_cast<int>(text.size()) + 1) << text;
            ASSERT_FALSE(result.error().what.empty()) << text;
            ASSERT_FALSE(result.error().remedy.empty()) << text;
            continue;
        }
        ++read;
        ASSERT_LE(Length(result.value().length).magnitude(), Length::millimetres(1'000'000));
        ASSERT_FALSE(result.value().echo.empty());
    }
    EXPECT_GT(read, 1'000); // or the pieces no longer make lengths
}

} // namespace
} // namespace frontwright
