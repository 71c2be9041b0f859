#include "core/lengths/parse.h"

#include "tests/core/lengths/reading_checks.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using test::inInches;
using test::inMillimetres;
using test::lengthIn;

constexpr Length twelveAndFiveEighths = Length::inches(12, 40);

TEST(ReadingALength, TakesEverySpellingOfInches) {
    for (const char* text :
         {"12 5/8", "12-5/8", "12.625", "12,625", "12 5/8\"", "12 5/8 in", "12 5/8in", "12 5/8 in.",
          "12 5/8 inches", "12 5/8 IN", "12.625\"", "12,625 in", "12 10/16", "101/8", "  12 5/8  ",
          "+12 5/8", "12  5/8", "12\t5/8"})
        EXPECT_EQ(inInches(text), twelveAndFiveEighths) << text;
}

TEST(ReadingALength, TakesFractionsAloneAndAboveOne) {
    EXPECT_EQ(inInches("3/4"), Length::inches(0, 48));
    EXPECT_EQ(inInches("5/4"), Length::inches(1, 16));
    EXPECT_EQ(inInches("0 3/4"), Length::inches(0, 48));
    EXPECT_EQ(inInches(".5"), Length::inches(0, 32));
    EXPECT_EQ(inInches(",5"), Length::inches(0, 32));
}

TEST(ReadingALength, TakesFeetAndInches) {
    const Length length = Length::inches(146, 32);
    for (const char* text :
         {"12' 2 1/2\"", "12'-2 1/2\"", "12'2 1/2\"", "12ft 2.5in", "12 ft 2 1/2 in",
          "12 feet 2,5 inches", "12'2-1/2\"", "12 ft. 2½ in.", "12' 2 1/2''"}) {
        EXPECT_EQ(inInches(text), length) << text;
        EXPECT_EQ(inMillimetres(text), length) << text;
    }
    EXPECT_EQ(inInches("12'"), Length::inches(144));
    EXPECT_EQ(inInches("1 foot"), Length::inches(12));
    EXPECT_EQ(inInches("1.5 ft"), Length::inches(18));
    EXPECT_EQ(inInches("1/2'"), Length::inches(6));
}

TEST(ReadingALength, TakesBareInchesAfterFeetOnlyWhereBareNumbersAreInches) {
    EXPECT_EQ(inInches("12' 2 1/2"), Length::inches(146, 32));
    EXPECT_EQ(inInches("12'-2"), Length::inches(146));
    EXPECT_FALSE(parseLength("12' 2 1/2", Unit::Millimetre).ok());
    EXPECT_FALSE(parseLength("12'-2", Unit::Millimetre).ok());
}

TEST(ReadingALength, TakesMetricUnits) {
    const Length length = Length::millimetres(321);
    for (const char* text : {"321 mm", "321mm", "32.1 cm", "32,1cm", "0.321 m", ",321 m",
                             "321.000 MM", "0.321 metres", "0.321 Meter"}) {
        EXPECT_EQ(inInches(text), length) << text;
        EXPECT_EQ(inMillimetres(text), length) << text;
    }
    EXPECT_EQ(inMillimetres("321"), length);
    EXPECT_EQ(inMillimetres("1/2"), Length::fromMicrometres(500));
}

TEST(ReadingALength, PutsAWrittenUnitAboveThatOfTheField) {
    EXPECT_EQ(inMillimetres("1 in"), Length::inches(1));
    EXPECT_EQ(inInches("1 mm"), Length::millimetres(1));
    EXPECT_EQ(inMillimetres("1"), Length::millimetres(1));
    EXPECT_EQ(inInches("1"), Length::inches(1));
}

TEST(ReadingALength, TakesFractionCharacters) {
    struct Case {
        const char* text;
        std::int64_t above;
        std::int64_t below;
    };
    // Values as in the Unicode character database (numeric type of U+00BC to BE, U+2150 to 215E).
    for (const Case& c :
         {Case{"¼", 1, 4}, Case{"½", 1, 2}, Case{"¾", 3, 4}, Case{"⅐", 1, 7}, Case{"⅑", 1, 9},
          Case{"⅒", 1, 10}, Case{"⅓", 1, 3}, Case{"⅔", 2, 3}, Case{"⅕", 1, 5}, Case{"⅖", 2, 5},
          Case{"⅗", 3, 5}, Case{"⅘", 4, 5}, Case{"⅙", 1, 6}, Case{"⅚", 5, 6}, Case{"⅛", 1, 8},
          Case{"⅜", 3, 8}, Case{"⅝", 5, 8}, Case{"⅞", 7, 8}}) {
        // 2520 is the least common multiple of the denominators: in 2520 in every one is whole.
        EXPECT_EQ(inInches(std::string("2520 in * ") + c.text),
                  Length::inches(2520 / c.below * c.above))
            << c.text;
    }
    EXPECT_EQ(inInches("12⅝"), twelveAndFiveEighths);
    EXPECT_EQ(inInches("12 ⅝\""), twelveAndFiveEighths);
    EXPECT_EQ(inInches("12-⅝"), twelveAndFiveEighths);
}

TEST(ReadingALength, TakesWhatIsPasted) {
    for (const char* text : {"12 5⁄8″", "12\u00A05/8\u00A0in", "12\u202F5∕8 in", "12 5/8”",
                             "12 5/8“", "12 5/8''", "12 5/8’’", "12 5/8′′", "12‑5/8", "12–5/8 in",
                             "\uFEFF12 5/8 in", "12\u20095/8\u2009in", "12 5/8ʺ"})
        EXPECT_EQ(inInches(text), twelveAndFiveEighths) << text;
    EXPECT_EQ(inInches("12′ 2½″"), Length::inches(146, 32));
    EXPECT_EQ(inInches("12’‐2 1/2”"), Length::inches(146, 32));
    EXPECT_EQ(inInches("−5"), Length::inches(-5));
}

TEST(ReadingALength, LetsALeadingMinusCoverTheWholeNumber) {
    EXPECT_EQ(inInches("-1-1/2"), Length::inches(-1, -32));
    EXPECT_EQ(inInches("-1 1/2"), Length::inches(-1, -32));
    EXPECT_EQ(inInches("- 1 1/2"), Length::inches(-1, -32));
    EXPECT_EQ(inInches("-1' 2 1/2\""), Length::inches(-14, -32));
    EXPECT_EQ(inInches("-0"), Length());
}

TEST(ReadingALength, TakesPointAndCommaAsDecimalMarks) {
    EXPECT_EQ(inMillimetres("1,5"), inMillimetres("1.5"));
    EXPECT_EQ(inMillimetres("1,234"), Length::fromMicrometres(1234));
    EXPECT_EQ(inMillimetres("1.234"), Length::fromMicrometres(1234));
}

TEST(ReadingALength, RefusesTheMarkOfThousandsWhereThatIsUsed) {
    const auto read = [](const char* text) {
        return parseLength(text, Unit::Millimetre, CommaGrouping::Ambiguous);
    };
    for (const char* text : {"1,234", "12,625", "123,456 mm", "1 + 1,234"})
        EXPECT_FALSE(read(text).ok()) << text;
    EXPECT_EQ(read("12,625").error().sentence(),
              "position 1: \"12,625\" can be read in two ways; write 12625 or 12.625");
    for (const char* text : {"0,625", "1,25", "1,2345", "1234,567", "12.625", "1,5", ",625"})
        EXPECT_TRUE(read(text).ok()) << text;
}

TEST(ReadingALength, RoundsWhatIsNoWholeNanometreOnceAndHalvesAwayFromZero) {
    EXPECT_EQ(inInches("1/3").nanometres(), 8'466'667);
    EXPECT_EQ(inInches("-1/3").nanometres(), -8'466'667);
    EXPECT_EQ(inMillimetres("0.0000005").nanometres(), 1);
    EXPECT_EQ(inMillimetres("-0.0000005").nanometres(), -1);
    EXPECT_EQ(inMillimetres("0.0000004").nanometres(), 0);
    EXPECT_EQ(inInches("1/3 + 1/3 + 1/3"), Length::inches(1));
    EXPECT_EQ(inInches("1/3 * 3"), Length::inches(1));
}

TEST(ReadingALength, ReachesAThousandMetres) {
    EXPECT_EQ(inInches("1000 m"), Length::millimetres(1'000'000));
    EXPECT_EQ(inInches("-1000 m"), Length::millimetres(-1'000'000));
    EXPECT_FALSE(parseLength("1000.000000001 m", Unit::Inch).ok());
}

TEST(ReadingALength, RemembersTheNotation) {
    struct Case {
        const char* text;
        Notation notation;
    };
    for (const Case& c :
         {Case{"12 5/8 in", Notation::InchFraction}, Case{"12\"", Notation::InchFraction},
          Case{"12 5/8", Notation::InchFraction}, Case{"12.625", Notation::InchDecimal},
          Case{"12,0 in", Notation::InchDecimal}, Case{"½\"", Notation::InchFraction},
          Case{"1'", Notation::FeetInches}, Case{"1' 2.5\"", Notation::FeetInches},
          Case{"321 mm", Notation::Millimetre}, Case{"32.1 cm", Notation::Centimetre},
          Case{"1/2 m", Notation::Metre}})
        EXPECT_EQ(lengthIn(c.text, Unit::Inch).notation, c.notation) << c.text;
    EXPECT_EQ(lengthIn("12.5", Unit::Millimetre).notation, Notation::Millimetre);
    EXPECT_EQ(lengthIn("12 1/2", Unit::Millimetre).notation, Notation::Millimetre);
}

} // namespace
} // namespace frontwright
