#include "core/sheets/calibration.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

Length mm(double value) {
    return Length::nearestToMillimetres(value);
}
LengthsOnPage both(double across, double up) {
    return {mm(across), mm(up)};
}

// 250 / 249 = 1.0040160..., 180 / 180.9 = 0.9950248...
TEST(Factors, AreNominalOverMeasuredInEachDirection) {
    const ScaleFactors factors = factorsFor(both(250, 180), both(249, 180.9));
    EXPECT_DOUBLE_EQ(factors.across, 1.004016);
    EXPECT_DOUBLE_EQ(factors.up, 0.995025);
}

TEST(Factors, AreOneWhereTheBarsMeasureRight) {
    EXPECT_TRUE(factorsFor(both(170, 200), both(170, 200)).areNone());
    EXPECT_TRUE(isProved(both(170, 200), both(170, 200)));
}

// Inches cancel out: 7 in measured as 6 31/32 in is 448/446.
TEST(Factors, AreTheSameInInches) {
    const LengthsOnPage nominal{Length::inches(7), Length::inches(7)};
    const LengthsOnPage measured{Length::inches(6, 62), Length::inches(7)};
    EXPECT_DOUBLE_EQ(factorsFor(nominal, measured).across, 1.004484);
    EXPECT_DOUBLE_EQ(factorsFor(nominal, measured).up, 1.0);
}

// What is drawn longer by the factor comes out right on a printer that errs the same way again.
TEST(Factors, CureAPrinterThatErrsEvenly) {
    for (double error = 0.981; error < 1.02; error += 0.003) {
        const ScaleFactors factors = factorsFor(both(250, 250), both(250 * error, 250));
        EXPECT_TRUE(areAcceptable(factors)) << error;
        EXPECT_TRUE(isProved(both(250, 250), both(250 * factors.across * error, 250))) << error;
    }
}

TEST(Factors, AreAcceptedFromTwoPercentBelowToTwoPercentAbove) {
    EXPECT_TRUE(areAcceptable({0.98, 1.02}));
    EXPECT_FALSE(areAcceptable({0.979999, 1}));
    EXPECT_FALSE(areAcceptable({1, 1.020001}));
}

TEST(Proof, IsAHalfMillimetreInBothDirections) {
    EXPECT_TRUE(isProved(both(200, 200), both(200.5, 199.5)));
    EXPECT_FALSE(isProved(both(200, 200), both(200.501, 200)));
    EXPECT_FALSE(isProved(both(200, 200), both(200, 199.499)));
}

// Ratios of paper sizes: A4 is 210 × 297, Letter 215.9 × 279.4.
TEST(TellTales, OfFittedPagesAreRatiosOfPaperSizes) {
    const auto holds = [](ScaleCause cause, double of100) {
        for (const TellTale& row : tellTales())
            for (double size : row.sizes)
                if (row.cause == cause && std::abs(size - of100) < 0.06)
                    return true;
        return false;
    };
    EXPECT_TRUE(holds(ScaleCause::FittedToOtherPaper, 100 * 279.4 / 297));
    EXPECT_TRUE(holds(ScaleCause::FittedToWidth, 100 * 210 / 215.9));
    EXPECT_TRUE(holds(ScaleCause::Enlarged, 100 * 215.9 / 210));
    EXPECT_TRUE(holds(ScaleCause::Enlarged, 100 * 297 / 279.4));
    EXPECT_TRUE(holds(ScaleCause::DotsMistaken, 100 * 72.0 / 96));
    EXPECT_TRUE(holds(ScaleCause::InchesMistaken, 100 / 25.4));
}

TEST(TellTales, NameEachCauseOnceAndEachSizeOnce) {
    std::set<ScaleCause> causes;
    std::set<double> sizes;
    std::size_t count = 0;
    for (const TellTale& row : tellTales()) {
        EXPECT_TRUE(causes.insert(row.cause).second);
        sizes.insert(row.sizes.begin(), row.sizes.end());
        count += row.sizes.size();
    }
    EXPECT_EQ(sizes.size(), count);
    EXPECT_EQ(causes.size(), 9U);
}

TEST(LikeliestCause, IsFoundFromEachTellTaleSizeOfAnyBar) {
    for (const TellTale& row : tellTales())
        for (double size : row.sizes)
            for (double bar : {100.0, 177.8, 250.0})
                EXPECT_EQ(likeliestCause(both(bar, 120), both(bar * size / 100, 1.2 * size)),
                          row.cause)
                    << size;
}

TEST(LikeliestCause, IsTheNearestSizeAsARulerReadsIt) {
    // 200 mm read as 192.5 is 96.25 %: nearer to 96.0 than to 97.3.
    EXPECT_EQ(likeliestCause(both(200, 200), both(192.5, 192)), ScaleCause::ShrunkToPrintable);
    EXPECT_EQ(likeliestCause(both(200, 200), both(194, 194.5)), ScaleCause::FittedToWidth);
}

TEST(LikeliestCause, IsSlippedPaperWhereTheDirectionsDifferTooMuch) {
    EXPECT_EQ(likeliestCause(both(200, 200), both(200, 194)), ScaleCause::PaperSlipped);
    EXPECT_EQ(likeliestCause(both(200, 200), both(180, 200)), ScaleCause::PaperSlipped);
}

TEST(LikeliestCause, IsNoneWhereNoRowFits) {
    EXPECT_EQ(likeliestCause(both(200, 200), both(160, 160)), std::nullopt); // 80 %
    EXPECT_EQ(likeliestCause(both(200, 200), both(400, 400)), std::nullopt);
}

// Whatever is accepted as a printer's mechanics is no tell-tale size, and the other way round.
TEST(LikeliestCause, OfATellTaleSizeIsNeverTakenForMechanics) {
    for (const TellTale& row : tellTales())
        for (double size : row.sizes)
            EXPECT_FALSE(areAcceptable(factorsFor(both(100, 100), both(size, size)))) << size;
}

} // namespace
} // namespace frontwright
