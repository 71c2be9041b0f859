#include "core/amounts/amounts.h"

#include "core/amounts/measure.h"
#include "tests/core/shorthand.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <random>

namespace frontwright {
namespace {

using testing::millimetres;
using testing::sixteenths;

TEST(Mass, KnowsThePoundExactly) {
    // 1 lb = 0.453 592 37 kg, by definition (international pound, 1959).
    EXPECT_EQ(Mass::pounds(100).micrograms(), 45'359'237'000);
    EXPECT_DOUBLE_EQ(Mass::pounds(30).inPounds(), 30.0);
    EXPECT_NEAR(Mass::pounds(30).inKilograms(), 13.6, 0.01); // 16 CFR 1261: 30 lb, 13.6 kg
    EXPECT_EQ(Mass::nearestToKilograms(0.45359237), Mass::pounds(1));
}

TEST(Force, KnowsThePoundForce) {
    // 50 lbf: 222 N (Architectural Woodwork Standards); 5 lbf: 22.2 N (2010 ADA Standards 309.4).
    EXPECT_NEAR(Force::nearestToPoundsForce(50).inNewtons(), 222.4, 0.02);
    EXPECT_NEAR(Force::nearestToPoundsForce(5).inNewtons(), 22.2, 0.05);
    EXPECT_DOUBLE_EQ(Force::nearestToNewtons(4.448222).inPoundsForce(), 4.448222 / 4.4482216152605);
}

TEST(Volume, IsWhatTheThreeSidesMake) {
    EXPECT_EQ(Volume::of(Length::millimetres(10), Length::millimetres(20), Length::millimetres(30))
                  .cubicMillimetres(),
              6000);
    EXPECT_EQ(Volume::of(Length::millimetres(-10), Length::millimetres(20), Length::millimetres(9)),
              Volume());
    const Volume foot = Volume::of(Length::inches(12), Length::inches(12), Length::inches(12));
    EXPECT_NEAR(foot.inCubicFeet(), 1.0, 1e-7);
    // 16 CFR 1261: 3.2 ft³ are 90.6 dm³.
    EXPECT_NEAR(3.2 * Volume::cubicMillimetresPerCubicFoot / 1e6, 90.6, 0.02);
}

TEST(Ratio, HasAnEndWhereNothingIsHeld) {
    EXPECT_EQ(Ratio::of(3, 2).thousandths(), 1500);
    EXPECT_EQ(Ratio::of(2, 3).thousandths(), 667);
    EXPECT_EQ(Ratio::of(1, 0).thousandths(), Ratio::mostThousandths);
    EXPECT_EQ(shown(Ratio::of(1, 0)), "> 999");
}

TEST(Amounts, AreShownInTheDocumentsSystem) {
    EXPECT_EQ(shown(Mass::pounds(25), sixteenths), "25.0 lb");
    EXPECT_EQ(shown(Mass::pounds(25), millimetres), "11.3 kg");
    EXPECT_EQ(shown(Force::nearestToPoundsForce(50), sixteenths), "50 lbf");
    EXPECT_EQ(shown(Force::nearestToPoundsForce(50), millimetres), "222 N");
    EXPECT_EQ(shown(Volume::fromCubicMillimetres(90'614'000), sixteenths), "3.2 ft³");
    EXPECT_EQ(shown(Volume::fromCubicMillimetres(90'614'000), millimetres), "90.6 dm³");
    EXPECT_EQ(shown(Ratio::fromThousandths(4449)), "4.4");
    EXPECT_EQ(shown(Ratio::fromThousandths(4450)), "4.5");
    EXPECT_EQ(decimal(-0.04, 1), "0.0");
    EXPECT_EQ(decimal(-1.25, 1), "−1.3");
    EXPECT_EQ(decimal(0.05, 2), "0.05");
}

TEST(Measure, IsMadeFromAnyOfThemAndKeepsItApart) {
    EXPECT_EQ(Measure(Length::inches(1)), Length::inches(1));
    EXPECT_FALSE(Measure(Mass::fromMicrograms(7)) == Measure(Force::fromMicronewtons(7)));
    EXPECT_EQ(Measure(Mass::pounds(2)).mass(), Mass::pounds(2));
    EXPECT_EQ(shown(Measure(Length::inches(1, 32)), sixteenths), "1 1/2 in");
    EXPECT_EQ(shown(Measure(Mass::pounds(2)), sixteenths), "2.0 lb");
    EXPECT_EQ(shown(Measure(Force::nearestToNewtons(10)), millimetres), "10 N");
    EXPECT_EQ(shown(Measure(Ratio::fromThousandths(2000)), sixteenths), "2.0");
    EXPECT_EQ(shown(Measure(Volume::fromCubicMillimetres(1'000'000)), millimetres), "1.0 dm³");
}

Mass read(const char* text) {
    const Result<Mass> mass = parseMass(text);
    EXPECT_TRUE(mass.ok()) << text;
    return mass.ok() ? mass.value() : Mass();
}

TEST(ParseMass, ReadsWhatAMakerWrites) {
    EXPECT_EQ(read("25 lb"), Mass::pounds(25));
    EXPECT_EQ(read("  25lb "), Mass::pounds(25));
    EXPECT_EQ(read("0.1 lb"), Mass::tenthsOfPound(1));
    EXPECT_EQ(read("11.3 kg"), Mass::grams(11'300));
    EXPECT_EQ(read("11,3 kg"), Mass::grams(11'300));
    EXPECT_EQ(read("500 g"), Mass::grams(500));
    EXPECT_EQ(read("0.000000001 kg"), Mass::fromMicrograms(1));
    EXPECT_EQ(read("100000 kg"), Mass::grams(100'000'000));
}

TEST(ParseMass, RefusesWhatIsNoWeight) {
    for (const char* text : {"", "25", "lb", "-3 kg", "1.2.3 kg", ". kg", "3 stone", "1e3 kg",
                             "0.0000000001 kg", "9999999999 kg", "25 lb lb", "100001 kg"})
        EXPECT_EQ(testing::untold(parseMass(text).error().sentence(), {"stone", "e"}),
                  std::vector<std::string>{})
            << text;
    EXPECT_EQ(parseMass("3 stone").error().what, "\"3 stone\" is not a weight");
    EXPECT_NE(parseMass("100001 kg").error().what.english().find("more than"), std::string::npos);
}

TEST(ParseForce, ReadsWhatAMakerWrites) {
    // 50 lbf × 4.448 221 615 N = 222.411 081 N
    EXPECT_EQ(parseForce("50 lbf").value(), Force::fromMicronewtons(222'411'081));
    EXPECT_EQ(parseForce(" 220N ").value(), Force::fromMicronewtons(220'000'000));
    EXPECT_EQ(parseForce("0,2 kN").value(), Force::fromMicronewtons(200'000'000));
    EXPECT_EQ(parseForce("0 N").value(), Force());
}

TEST(ParseForce, RefusesWhatIsNoForce) {
    for (const char* typed : {"", "50", "N", "-3 N", "1.2.3 N", "50 lb", "3 kg", "101 kN"})
        EXPECT_FALSE(parseForce(typed).ok()) << typed;
    EXPECT_EQ(parseForce("50 lb").error().what, "\"50 lb\" is not a force");
    EXPECT_EQ(parseForce("101 kN").error().what, "\"101 kN\" is more than 100 kN");
}

TEST(ExactForce, ReadsBackToTheSame) {
    EXPECT_EQ(exact(Force::nearestToPoundsForce(50)), "50 lbf");
    EXPECT_EQ(exact(Force::nearestToNewtons(222.5)), "222.5 N");
    std::mt19937_64 dice(11);
    for (int i = 0; i < 500; ++i) {
        const auto count = static_cast<std::int64_t>(dice() % 100'000'000'000ULL);
        const Force force = i % 2 == 0 ? Force::fromMicronewtons(count)
                                       : Force::nearestToPoundsForce(static_cast<double>(i));
        EXPECT_EQ(parseForce(exact(force)).value(), force) << exact(force);
    }
}

TEST(ExactMass, ReadsBackToTheSame) {
    EXPECT_EQ(exact(Mass::pounds(25)), "25 lb");
    EXPECT_EQ(exact(Mass::tenthsOfPound(255)), "25.5 lb");
    EXPECT_EQ(exact(Mass::grams(11'300)), "11.3 kg");
    std::mt19937_64 dice(7);
    for (int i = 0; i < 500; ++i) {
        const auto count = static_cast<std::int64_t>(dice() % 100'000'000'000ULL);
        const Mass mass =
            i % 2 == 0 ? Mass::fromMicrograms(count) : Mass::tenthsOfPound(count % 999);
        EXPECT_EQ(read(exact(mass).c_str()), mass) << exact(mass);
    }
}

} // namespace
} // namespace frontwright
