#include "core/catalogue/specific_gravity.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

constexpr SpecificGravity at12(std::int64_t thousandths) {
    return {thousandths, GravityBasis::At12Percent};
}

TEST(SpecificGravity, StaysWhatItIsOnItsOwnBasis) {
    EXPECT_DOUBLE_EQ(gravityAt12Percent(at12(630)), 0.63);
    EXPECT_DOUBLE_EQ(gravityOvendry({680, GravityBasis::Ovendry}), 0.68);
}

// NDS gives northern red oak 0.68 and ponderosa pine 0.43 on ovendry volume; the Wood Handbook 0.63
// and 0.40 on volume at 12 %.
TEST(SpecificGravity, OfOvendryVolumeIsNearWhatTheDesignStandardGives) {
    EXPECT_NEAR(gravityOvendry(at12(630)), 0.68, 0.015);
    EXPECT_NEAR(gravityOvendry(at12(400)), 0.43, 0.015);
    EXPECT_NEAR(gravityOvendry(at12(630)), 0.63 / (1 - 0.106 * 0.63), 1e-12);
}

TEST(SpecificGravity, OfGreenVolumeIsTheLeast) {
    // Mahogany 0.45 green: 0.45 / (1 − 0.265 · 0.6 · 0.45) = 0.4847, ovendry 0.45 / (1 − 0.265 ·
    // 0.45) = 0.5109.
    const SpecificGravity mahogany{450, GravityBasis::Green};
    EXPECT_NEAR(gravityAt12Percent(mahogany), 0.4847, 1e-4);
    EXPECT_NEAR(gravityOvendry(mahogany), 0.5109, 1e-4);
}

TEST(SpecificGravity, GoesThereAndBack) {
    for (std::int64_t g = 300; g <= 900; g += 50) {
        const double ovendry = gravityOvendry(at12(g));
        EXPECT_GT(ovendry * 1000, static_cast<double>(g));
        const SpecificGravity back{static_cast<std::int64_t>(ovendry * 1000 + 0.5),
                                   GravityBasis::Ovendry};
        EXPECT_NEAR(gravityAt12Percent(back) * 1000, static_cast<double>(g), 0.6);
    }
}

} // namespace
} // namespace frontwright
