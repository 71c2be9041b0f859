#include "core/lengths/parse.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

struct Case {
    const char* text;
    Length length;
    Notation notation;
};

TEST(ReadingADocumentsLength, TakesWhatDocumentsHold) {
    for (const Case& c :
         {Case{"12 5/8 in", Length::inches(12, 40), Notation::InchFraction},
          Case{"5/8 in", Length::inches(0, 40), Notation::InchFraction},
          Case{"5/4 in", Length::inches(1, 16), Notation::InchFraction},
          Case{"12 in", Length::inches(12), Notation::InchFraction},
          Case{"-1 1/2 in", Length::inches(-1, -32), Notation::InchFraction},
          Case{"1/100 in", Length::fromMicrometres(254), Notation::InchFraction},
          Case{"12.625 in", Length::inches(12, 40), Notation::InchDecimal},
          Case{"13.0 in", Length::inches(13), Notation::InchDecimal},
          Case{"1 ft 2 1/2 in", Length::inches(14, 32), Notation::FeetInches},
          Case{"1 ft 2 in", Length::inches(14), Notation::FeetInches},
          Case{"2 ft", Length::inches(24), Notation::FeetInches},
          Case{"-0 ft 1/2 in", Length::inches(0, -32), Notation::FeetInches},
          Case{"321 mm", Length::millimetres(321), Notation::Millimetre},
          Case{"320.675 mm", Length::fromMicrometres(320'675), Notation::Millimetre},
          Case{"32.1 cm", Length::millimetres(321), Notation::Centimetre},
          Case{"32 cm", Length::millimetres(320), Notation::Centimetre},
          Case{"1.2 m", Length::millimetres(1'200), Notation::Metre},
          Case{"1 m", Length::millimetres(1'000), Notation::Metre}}) {
        const auto result = parseWrittenLength(c.text);
        ASSERT_TRUE(result.ok()) << c.text << " " << result.error().sentence();
        EXPECT_EQ(result.value(), WrittenLength(c.length, c.notation)) << c.text;
    }
}

TEST(ReadingADocumentsLength, TakesOtherSpellingsOfPlainLengthsToo) {
    for (const char* text : {"12 5/8\"", "12-5/8 in", "12⅝ in", "12  5/8 in", " 12 5/8in ",
                             "101/8 in", "1' 5/8\"", "1 ft 0.625 in", "12.6250000000 in"}) {
        const auto result = parseWrittenLength(text);
        ASSERT_TRUE(result.ok()) << text << " " << result.error().sentence();
        EXPECT_EQ(Length(result.value()), Length::inches(12, 40)) << text;
    }
}

TEST(ReadingADocumentsLength, ReadsAsTheMakersTextIsRead) {
    for (const char* text : {"12 5/8 in", "5/8 in", "12.625 in", "1 ft 2 1/2 in", "321 mm", "1.2 m",
                             "3/125 in", "0.1 cm", "000012 in", "1 ft 11 63/64 in"}) {
        const auto typed = parseLength(text, Unit::Millimetre);
        const auto document = parseWrittenLength(text);
        ASSERT_TRUE(typed.ok() && document.ok()) << text;
        EXPECT_EQ(document.value(), typed.value().length) << text;
    }
}

std::string refusal(std::string_view text) {
    const auto result = parseWrittenLength(text);
    return result.ok() ? "read" : result.error().sentence().english();
}

TEST(ReadingADocumentsLength, NeedsAUnitAndNoSum) {
    EXPECT_EQ(refusal("12 5/8"),
              "position 7: expected a unit, found the end; write in, ft, mm, cm or m");
    EXPECT_EQ(refusal("12 in + 1 in"), "position 1: expected a plain length, found a sum; "
                                       "write its result, such as 12 5/8 in or 321 mm");
    EXPECT_EQ(refusal("12' 2"), "position 6: expected inches after feet, found the end; "
                                "write their unit, as in 12 ft 2 in");
}

TEST(ReadingADocumentsLength, NeverRounds) {
    EXPECT_EQ(refusal("1/3 in"), "position 1: the length is not a whole number of nanometres; "
                                 "write 8.466667 mm, the nearest that can be kept");
    EXPECT_EQ(refusal("0.0000005 mm"),
              "position 1: the length is not a whole number of nanometres; "
              "write 0.000001 mm, the nearest that can be kept");
    EXPECT_EQ(refusal("0.0000001 in").substr(0, 10), "position 1");
}

TEST(ReadingADocumentsLength, RefusesWhatTheMakersTextRefuses) {
    for (const char* text :
         {"",       "-",         "mm",        "1001 m",     "1000000000 in", "999999999 m",
          "1/0 in", "1 5/4 in",  "0 5/4 in",  "1 ft 12 in", "1 ft 2",        "1 ft2",
          "1 2 in", "1,234 mm",  "1. mm",     ".. mm",      "12 i",          "12 inn",
          "1 ftx",  "1xft 2 in", "1 ft 2 mm", "--1 mm",     "1/ in",         "1 / in",
          "\xFF mm"})
        EXPECT_NE(refusal(text), "read") << text;
}

} // namespace
} // namespace frontwright
