#include "core/lengths/format.h"
#include "core/lengths/parse.h"
#include "tests/core/lengths/reading_checks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <random>
#include <string>

namespace frontwright {
namespace {

using test::lengthIn;

constexpr std::array units{Unit::Inch, Unit::Millimetre};
constexpr std::array notations{Notation::InchFraction, Notation::InchDecimal, Notation::FeetInches,
                               Notation::Millimetre,   Notation::Centimetre,  Notation::Metre};

std::string withComma(std::string text) {
    std::replace(text.begin(), text.end(), '.', ',');
    return text;
}

/// Every text that claims to be exact is read back as the same length, with both decimal marks.
void expectRoundTrip(Length length) {
    for (const Unit unit : units) {
        const std::string text = exact(length, unit);
        ASSERT_EQ(lengthIn(text, Unit::Inch).length, length) << text;
        ASSERT_EQ(lengthIn(withComma(text), Unit::Inch).length, length) << text;
        for (const int denominator : {8, 16, 32, 64}) {
            const LengthStyle style{unit, denominator};
            if (isApproximate(length, style))
                continue;
            ASSERT_EQ(lengthIn(shown(length, style), Unit::Inch).length, length);
            ASSERT_EQ(lengthIn(withComma(shownBare(length, style)), unit).length, length);
        }
    }
}

void expectDocumentRoundTrip(Length length) {
    for (const Notation notation : notations) {
        const std::string text = written({length, notation}, Unit::Inch);
        const auto read = parseWrittenLength(text);
        ASSERT_TRUE(read.ok()) << text << " " << read.error().sentence();
        ASSERT_EQ(read.value().length, length) << text;
        ASSERT_EQ(written(read.value(), Unit::Millimetre), text);
        ASSERT_EQ(lengthIn(text, Unit::Inch), read.value()) << text;
    }
}

constexpr std::int64_t threeMetres = 3'000'000'000; // nm

TEST(RoundTrip, HoldsForEvery64thUpToThreeMetres) {
    for (std::int64_t k = 0; k * Length::nanometresPer64th <= threeMetres; ++k) {
        expectRoundTrip(Length::fromSixtyFourths(k));
        expectDocumentRoundTrip(Length::fromSixtyFourths(k));
        if (HasFatalFailure())
            return;
    }
}

TEST(RoundTrip, HoldsForEveryTenthOfAMillimetreUpToThreeMetres) {
    for (std::int64_t k = 0; k * 100'000 <= threeMetres; ++k) {
        expectRoundTrip(Length::fromMicrometres(k * 100));
        expectDocumentRoundTrip(Length::fromMicrometres(k * 100));
        if (HasFatalFailure())
            return;
    }
}

TEST(RoundTrip, HoldsForAnyLengthOfEitherSign) {
    std::mt19937_64 random(31);
    for (int i = 0; i < 5'000 && !HasFatalFailure(); ++i) {
        const auto bits = random() % 40;
        const auto nm = static_cast<std::int64_t>(random() % (1ULL << bits)) % 1'000'000'000'001;
        expectRoundTrip(Length::fromNanometres(i % 2 == 0 ? nm : -nm));
        expectDocumentRoundTrip(Length::fromNanometres(i % 2 == 0 ? nm : -nm));
    }
}

TEST(RoundTrip, KeepsANotationThatStaysExact) {
    for (const Notation notation : notations)
        for (const Length length : {Length::inches(-3), Length(), Length::inches(1, 1),
                                    Length::inches(12), Length::inches(30, 16)}) {
            const WrittenLength before(length, notation);
            EXPECT_EQ(parseWrittenLength(written(before, Unit::Millimetre)).value(), before);
        }
}

TEST(RoundTrip, LeavesADocumentAloneWhenItsUnitChangesAThousandTimes) {
    WrittenLength length = lengthIn("12 5/8", Unit::Inch);
    for (int i = 0; i < 1'000; ++i)
        length =
            parseWrittenLength(written(length, units[static_cast<std::size_t>(i % 2)])).value();
    EXPECT_EQ(written(length, Unit::Inch), "12 5/8 in");
}

TEST(RoundTrip, ShowsWithinHalfAStep) {
    std::mt19937_64 random(32);
    for (int i = 0; i < 2'000; ++i) {
        const Length length = Length::fromNanometres(
            static_cast<std::int64_t>(random() % 6'000'000'000) - threeMetres);
        for (const int denominator : {8, 16, 32, 64}) {
            std::string text = shown(length, {Unit::Inch, denominator});
            if (isApproximate(length, {Unit::Inch, denominator}))
                text = text.substr(std::string("≈ ").size());
            const Length back = lengthIn(text, Unit::Millimetre);
            ASSERT_LE(2 * (back - length).magnitude(), Length::fromSixtyFourths(64 / denominator));
        }
    }
}

} // namespace
} // namespace frontwright
