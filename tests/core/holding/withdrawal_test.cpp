#include "core/holding/withdrawal.h"

#include "tests/core/catalogue/program_catalogue.h"
#include "tests/core/shorthand.h"

#include <array>
#include <cmath>

namespace frontwright {
namespace {

using testing::in;

using testing::thousandths;

constexpr double newtonsPerMmInPoundsPerInch = 4.4482216152605 / 25.4;

double ultimatePoundsPerInch(double gravity, Length shank) {
    return ultimateWithdrawal(gravity, shank, in(1)).inPoundsForce();
}

// Both unit systems of the Wood Handbook's and of the NDS's equation: 1 psi = 0.006 894 757 MPa.
TEST(Withdrawal, HasTheSameCoefficientInBothUnitSystems) {
    constexpr double megapascalsPerPsi = 0.00689475729;
    EXPECT_NEAR(15'700 * megapascalsPerPsi, ultimateCoefficient, 0.005);
    EXPECT_NEAR(2'850 * megapascalsPerPsi, designCoefficient, 0.005);
    // Of the nails' equation, 7850 and 54.12, the program makes no use; it is told apart by G^2.5.
    EXPECT_NEAR(7'850 * megapascalsPerPsi, 54.12, 0.005);
    EXPECT_NEAR(ultimateCoefficient / 54.12, 2.0, 0.001);
}

struct Worked {
    std::int64_t gauge;
    double gravity, poundsPerInch, newtonsPerMm;
};
// Arithmetic of p = 15 700 G² D for gauges 6, 8, 10 with D = 0.060 + 0.013 n in (ASME B18.6.1).
constexpr std::array<Worked, 18> workedValues{{{6, 0.35, 265.4, 46.48},
                                               {6, 0.42, 382.2, 66.93},
                                               {6, 0.50, 541.7, 94.86},
                                               {6, 0.55, 655.4, 114.78},
                                               {6, 0.63, 859.9, 150.60},
                                               {6, 0.68, 1001.8, 175.45},
                                               {8, 0.35, 315.4, 55.24},
                                               {8, 0.42, 454.2, 79.54},
                                               {8, 0.50, 643.7, 112.73},
                                               {8, 0.55, 778.9, 136.41},
                                               {8, 0.63, 1021.9, 178.97},
                                               {8, 0.68, 1190.6, 208.51},
                                               {10, 0.35, 365.4, 64.00},
                                               {10, 0.42, 526.2, 92.15},
                                               {10, 0.50, 745.8, 130.60},
                                               {10, 0.55, 902.4, 158.03},
                                               {10, 0.63, 1184.0, 207.35},
                                               {10, 0.68, 1379.3, 241.56}}};

TEST(UltimateWithdrawal, GivesTheWorkedValues) {
    for (const Worked& row : workedValues) {
        const Length shank = thousandths(60 + 13 * row.gauge);
        // 108.25 is 15 700 to five digits: 0.003 % apart.
        EXPECT_NEAR(ultimatePoundsPerInch(row.gravity, shank), row.poundsPerInch,
                    0.05 + row.poundsPerInch * 5e-5)
            << row.gauge << " " << row.gravity;
        EXPECT_NEAR(ultimateWithdrawal(row.gravity, shank, Length::millimetres(1)).inNewtons(),
                    row.newtonsPerMm, 0.01 + row.newtonsPerMm * 5e-5)
            << row.gauge << " " << row.gravity;
    }
}

// Printed example: G 0.45, D 0.190 in gives 109 lb for each inch of thread (NDS commentary).
// The printed figure follows from c = 2850.
TEST(DesignWithdrawal, GivesThePrintedExample) {
    const Force design = designWithdrawal(0.45, thousandths(190), in(1));
    EXPECT_NEAR(design.inPoundsForce(), 109, 0.7);
}

TEST(DesignWithdrawal, IsAboutAFifthOfTheUltimateOnItsOwnBasis) {
    for (const std::int64_t g : {350, 500, 630, 680}) {
        const SpecificGravity gravity{g, GravityBasis::At12Percent};
        const double ultimate =
            ultimateWithdrawal(gravityAt12Percent(gravity), thousandths(164), in(1)).inNewtons();
        const double design =
            designWithdrawal(gravityOvendry(gravity), thousandths(164), in(1)).inNewtons();
        EXPECT_GT(ultimate / design, 4.5) << g;
        EXPECT_LT(ultimate / design, 5.5) << g;
    }
}

// A gravity on the wrong basis is no small slip: northern red oak 0.63 at 12 % is 0.68 ovendry.
TEST(DesignWithdrawal, MustNotMeetAGravityOfTheOtherBasis) {
    const double right = designWithdrawal(0.68, thousandths(164), in(1)).inNewtons();
    const double wrong = designWithdrawal(0.63, thousandths(164), in(1)).inNewtons();
    EXPECT_GT(right / wrong, 1.16);
}

TEST(Withdrawal, GrowsWithThreadAndShankInProportionAndWithGravitySquared) {
    const auto load = [](double g, std::int64_t d, std::int64_t l) {
        return ultimateWithdrawal(g, thousandths(d), thousandths(l)).inNewtons();
    };
    const double base = load(0.4, 164, 500);
    EXPECT_NEAR(load(0.4, 164, 1000), 2 * base, 1e-5);
    EXPECT_NEAR(load(0.4, 328, 500), 2 * base, 1e-5);
    EXPECT_NEAR(load(0.8, 164, 500), 4 * base, 1e-5);
    EXPECT_EQ(ultimateWithdrawal(0.4, thousandths(164), Length{}), Force());
    EXPECT_EQ(ultimateWithdrawal(0.4, thousandths(164), -in(1)), Force());
    EXPECT_NEAR(base / 12.7, 15'700 * 0.16 * 0.164 * newtonsPerMmInPoundsPerInch, 0.01);
}

TEST(Thread, IsAtMostTwoThirdsOfTheScrew) {
    EXPECT_EQ(threadInWood(Length::inches(0, 40), Length::inches(1)), Length::inches(0, 40));
    EXPECT_EQ(threadInWood(Length::inches(0, 48), Length::inches(1)),
              Length::fromNanometres(25'400'000 * 2 / 3));
    EXPECT_EQ(threadInWood(-in(1), in(1)), Length{});
}

TEST(Gauge, IsThatOfTheInchStandard) {
    EXPECT_NEAR(gaugeOf(thousandths(164)), 8, 1e-9);
    // No. 14 is 0.242 in, not 1/4 in; the British 0.066 + 0.014 (n − 1) gives 0.248 in.
    EXPECT_NEAR(gaugeOf(thousandths(242)), 14, 1e-9);
    EXPECT_GT(gaugeOf(Length::inches(0, 16)), 14.5);
}

// Wood Handbook, chapter 8, from memory.
TEST(TestedRange, HoldsTheGaugesOfEachLength) {
    const auto isIn = [](std::int64_t gauge, Length length) {
        return isInTestedRange(thousandths(60 + 13 * gauge), length);
    };
    EXPECT_TRUE(isIn(8, Length::inches(1)));
    EXPECT_TRUE(isIn(12, Length::inches(1)));
    EXPECT_FALSE(isIn(14, Length::inches(1)));
    EXPECT_TRUE(isIn(6, Length::inches(0, 32)));
    EXPECT_FALSE(isIn(8, Length::inches(0, 32)));
    EXPECT_TRUE(isIn(8, Length::inches(1, 16))); // between 1 in and 1 1/2 in
    EXPECT_FALSE(isIn(4, Length::inches(1, 16)));
    EXPECT_FALSE(isIn(8, Length::inches(4)));
}

} // namespace
} // namespace frontwright
