#include "core/wood/movement.h"

#include <gtest/gtest.h>

#include <cmath>

namespace frontwright {
namespace {

struct Worked {
    double size; // in the example's own unit
    double coefficient;
    double from, to;
    double change;
    double tolerance;
};

TEST(MovementEquation, GivesThePrintedAndWorkedExamples) {
    const Worked all[] = {
        // Wood Handbook, chapter 13: flat-sawn white fir, in inches and in millimetres. From
        // memory; printed 0.067 in and 1.705 mm.
        {9.15, 0.00245, 8, 11, 0.067, 0.0005},
        {9.15, 0.00245, 8, 11, 0.06725, 0.000006},
        {232, 0.00245, 8, 11, 1.705, 0.0005},
        {232, 0.00245, 8, 11, 1.7052, 0.00006},
        // A flooring trade's example, mesquite, read; printed 0.019 in.
        {5, 0.00129, 6, 9, 0.019, 0.0005},
        {5, 0.00129, 6, 9, 0.01935, 0.000006},
        // Worked out from the equation.
        {12, 0.00369, 6, 10, 0.17712, 0.000006},    // red oak, flat-sawn
        {12, 0.00158, 6, 10, 0.07584, 0.000006},    // red oak, quarter-sawn
        {8, 0.00248, 6, 12, 0.11904, 0.000006},     // cherry, flat-sawn
        {200, 0.00353, 10, 6, -2.82400, 0.000006},  // sugar maple, shrinking
        {250, 0.00274, 7, 11, 2.74000, 0.000006},   // walnut
        {7.25, 0.00289, 8, 5, -0.06286, 0.000006}}; // yellow-poplar, below the stated range
    for (const Worked& w : all)
        EXPECT_NEAR(w.size * linearChange(w.coefficient, w.from, w.to), w.change, w.tolerance);
}

TEST(MovementEquation, IsWhatAFrontMovesByWithinSixToFourteen) {
    EXPECT_NEAR(12 * relativeChange(0.00369, 6, 10), 0.17712, 1e-9);
    EXPECT_NEAR(200 * relativeChange(0.00353, 10, 6), -2.824, 1e-9);
    EXPECT_FALSE(isBeyondCoefficient(6, 14));
    EXPECT_FALSE(isBeyondCoefficient(10, 6));
}

TEST(WiderFormula, GivesTheWorkedExamples) {
    // 9.15 in white fir, S 7.0; 200 mm red maple, S 8.2; the formula is from memory.
    const Percent thirty = Percent::whole(30);
    const Percent fir = Percent::fromThousandths(7000), maple = Percent::fromThousandths(8200);
    EXPECT_NEAR(9.15 * wideChange(fir, thirty, 8, 11), 0.06752, 0.000006);
    EXPECT_NEAR(200 * wideChange(maple, thirty, 6, 12), 3.51027, 0.000006);
    EXPECT_NEAR(200 * wideChange(maple, thirty, 6, 20), 8.19064, 0.000006);
}

TEST(WiderFormula, IsTheSameByTheCoefficientThatTheShrinkageGives) {
    const Percent start = Percent::whole(30);
    for (int tenths = 20; tenths <= 120; tenths += 7) {
        const Percent shrinkage = Percent::fromThousandths(tenths * 100);
        const double coefficient = coefficientFrom(shrinkage, start);
        for (int from = 0; from <= 28; from += 4)
            EXPECT_NEAR(wideChange(shrinkage, start, from, 20), wideChange(coefficient, from, 20),
                        1e-12);
        // Where the coefficient was taken, both formulas begin alike.
        EXPECT_NEAR(wideChange(coefficient, 10, 10.001), linearChange(coefficient, 10, 10.001),
                    1e-12);
    }
}

TEST(WiderFormula, IsAskedOutsideSixToFourteen) {
    EXPECT_TRUE(isBeyondCoefficient(5.9, 8));
    EXPECT_TRUE(isBeyondCoefficient(8, 5));
    EXPECT_TRUE(isBeyondCoefficient(8, 14.1));
    // Yellow-poplar, 7 1/4 in, from 8 to 5 %: the last per cent by the wider formula.
    const double wide = 7.25 * relativeChange(0.00289, 8, 5);
    EXPECT_NEAR(wide, -0.06286, 0.0006);
    EXPECT_NE(wide, 7.25 * linearChange(0.00289, 8, 5));
}

TEST(WiderFormula, BeyondTheRangeAloneIsTheFormulaItself) {
    EXPECT_NEAR(relativeChange(0.003, 2, 5), wideChange(0.003, 2, 5), 1e-12);
    EXPECT_NEAR(relativeChange(0.003, 22, 15), wideChange(0.003, 22, 15), 1e-12);
}

// Laws.

TEST(Movement, IsNoneWithoutAChangeOfMoisture) {
    for (int m = 0; m <= 30; ++m)
        EXPECT_EQ(partOf(Length::inches(12), relativeChange(0.00369, m, m)), Length{});
}

TEST(Movement, GoesThereAndBackWithinTheSquareOfTheChange) {
    for (double from = 0; from <= 30; from += 1.5)
        for (double to = 0; to <= 30; to += 1.5)
            for (const double c : {0.00071, 0.00231, 0.00431}) {
                const double size =
                    (1 + relativeChange(c, from, to)) * (1 + relativeChange(c, to, from));
                const double most = std::pow(c * 8, 2); // 6 to 14 %
                EXPECT_LE(std::abs(size - 1), most + 1e-12) << from << ' ' << to;
                EXPECT_LE(most, 0.0012);
            }
}

TEST(Movement, BeyondTheRangeGoesThereAndBackExactly) {
    for (double from = 14; from <= 30; from += 2)
        EXPECT_NEAR((1 + relativeChange(0.00431, from, 29)) *
                        (1 + relativeChange(0.00431, 29, from)),
                    1, 1e-12);
}

TEST(Movement, GrowsWithMoistureWithoutAStep) {
    for (const double from : {3.0, 6.0, 8.0, 12.0, 14.0, 18.0})
        for (const double c : {0.00071, 0.00431}) {
            double before = relativeChange(c, from, 0);
            for (int i = 1; i <= 3000; ++i) {
                const double now = relativeChange(c, from, i / 100.0);
                ASSERT_GT(now, before) << from << " to " << i;
                ASSERT_LT(now - before, 1.2 * c / 100) << from << " to " << i;
                before = now;
            }
        }
}

TEST(Coefficients, ComeFromShrinkageWhereOnlyThatIsKnown) {
    WoodFigures figures;
    EXPECT_EQ(coefficientOf(figures, Cut::FlatSawn), std::nullopt);
    figures.shrinkage = Shrinkage{Percent::fromThousandths(3700),
                                  Percent::fromThousandths(7100),
                                  std::nullopt,
                                  Percent::whole(30),
                                  {}};
    // Cherry: 0.00126 and 0.00248, Wood Handbook, table 13-5.
    EXPECT_NEAR(*coefficientOf(figures, Cut::QuarterSawn), 0.00126, 0.000006);
    EXPECT_NEAR(*coefficientOf(figures, Cut::FlatSawn), 0.00248, 0.000006);
    EXPECT_NEAR(*coefficientOf(figures, Cut::Rift), 0.00187, 0.000006);
    figures.coefficients = MovementCoefficients{1000, 2000, {}};
    EXPECT_DOUBLE_EQ(*coefficientOf(figures, Cut::FlatSawn), 0.002);
}

TEST(StableStock, DoesNotMoveWhateverItsFace) {
    // Plywood and veneered board: common practice, no source.
    Stock stock;
    stock.build = Build::Stable;
    EXPECT_EQ(coefficientOf(WoodFigures{}, stock), 0.0);
    EXPECT_EQ(relativeChange(0, 2, 28), 0);
    stock.build = Build::Solid;
    EXPECT_EQ(coefficientOf(WoodFigures{}, stock), std::nullopt);
}

} // namespace
} // namespace frontwright
