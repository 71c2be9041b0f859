#include "core/lengths/format.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <random>

namespace frontwright {
namespace {

using testing::millimetres;
using testing::sixteenths;

constexpr LengthStyle withComma{Unit::Millimetre, 16, DecimalMark::Comma};

Length um(std::int64_t micrometres) {
    return Length::fromMicrometres(micrometres);
}

TEST(PreciseTerms, AreFractionsWhereOneIsExact) {
    EXPECT_EQ(shownPrecisely(Length::inches(12, 40), sixteenths), "12 5/8 in");
    EXPECT_EQ(shownPrecisely(Length::inches(0, 5), sixteenths), "5/64 in");
    EXPECT_EQ(shownPrecisely(Length::millimetres(321), millimetres), "321 mm");
    EXPECT_EQ(shownPrecisely({}, sixteenths), "0 in");
}

// 4 mm are 0.157480 in; 1/128 in is 0.0078125 in; 3/64 in are 1.190625 mm.
TEST(PreciseTerms, AreElseDecimalsWithoutAMark) {
    EXPECT_EQ(shownPrecisely(Length::millimetres(4), sixteenths), "0.1575 in");
    EXPECT_EQ(shownPrecisely(Length::fromNanometres(198'437), sixteenths), "0.0078 in");
    EXPECT_EQ(shownPrecisely(Length::inches(0, 3), millimetres), "1.191 mm");
    EXPECT_EQ(shownPrecisely(um(19'050), millimetres), "19.05 mm");
    EXPECT_EQ(shownPrecisely(um(19'050), withComma), "19,05 mm");
}

TEST(ResultsOfSums, TellWhatIsShownBesideWhatItIs) {
    EXPECT_EQ(shownAsResult(Length::inches(13, 8), sixteenths), "13 1/8 in");
    EXPECT_EQ(shownAsResult(Length::inches(0, 27), sixteenths), "27/64 in ≈ 7/16 in");
    EXPECT_EQ(shownAsResult(um(123'450), millimetres), "123.45 mm ≈ 123.5 mm");
    EXPECT_EQ(shownAsResult(um(123'450), withComma), "123,45 mm ≈ 123,5 mm");
    // 4 mm again, one digit shorter: it does not end.
    EXPECT_EQ(shownAsResult(Length::millimetres(4), sixteenths), "0.157 in ≈ 3/16 in");
    EXPECT_EQ(shownAsResult(Length::inches(0, 3), millimetres), "1.19 mm ≈ 1.2 mm");
}

// Three terms, each off by half a unit of its last digit at most.
TEST(ResultsOfSums, ComeOutOfTheTermsAsTheyAreWritten) {
    std::mt19937_64 random(26);
    std::uniform_int_distribution<std::int64_t> nanometres(0, 500'000'000);
    const auto read = [](const std::string& text) { return std::stod(text); };
    for (int i = 0; i < 2'000; ++i) {
        const Length a = Length::fromNanometres(nanometres(random)),
                     b = Length::fromNanometres(nanometres(random)),
                     c = Length::fromNanometres(nanometres(random));
        const double sum = read(shownPrecisely(a, millimetres)) +
                           read(shownPrecisely(b, millimetres)) +
                           read(shownPrecisely(c, millimetres));
        EXPECT_NEAR(sum, read(shownAsResult(a + b + c, millimetres)), 0.0065);
    }
}

} // namespace
} // namespace frontwright
