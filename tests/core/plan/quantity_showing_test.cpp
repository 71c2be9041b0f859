// What is a least or a most is shown on its safe side; drills in full; bends finely.

#include "core/plan/fillers.h"
#include "core/plan/quantity.h"
#include "tests/core/plan/faced.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::bank;
using testing::faced;
using testing::millimetres;
using testing::Planned;
using testing::sixteenths;
using enum QuantityKind;

// 11.84 mm = 0.4662 in lies between 7/16 (0.4375) and 1/2.
TEST(TheLeastThicknessOfAFiller, IsShownAsTheNextFractionUp) {
    const Planned chest(faced(bank(2)));
    const Quantity least{FillerLeastThickness, 0};
    const auto value = measureOf(chest.plan, least);
    ASSERT_TRUE(value);
    EXPECT_EQ(shown(least.kind, *value, sixteenths), "≈ 1/2 in");
    EXPECT_EQ(shown(least.kind, *value, millimetres), "≈ 11.9 mm");
    EXPECT_TRUE(derive(chest.project, chest.plan, least, sixteenths)
                    ->figures.english()
                    .ends_with(" = 0.466 in ≈ 1/2 in"));
}

// 0.3292 mm = 0.01296 in, by sixteenths 0; the limit is 1/32 in = 0.031 in.
TEST(TheBendOfAFiller, IsShownWithEnoughDigitsToCompareWithItsLimit) {
    const Planned chest(faced(bank(2)));
    const Quantity bend{FillerBend, 0};
    EXPECT_EQ(shown(bend.kind, *measureOf(chest.plan, bend), sixteenths), "0.013 in");
    EXPECT_EQ(shown(bend.kind, *measureOf(chest.plan, bend), millimetres), "0.33 mm");
    EXPECT_TRUE(derive(chest.project, chest.plan, bend, sixteenths)
                    ->figures.english()
                    .ends_with(": 0.33 mm, 0.013 in; the limit is 0.031 in"));
}

TEST(Limits, AreShownOnTheirSafeSide) {
    for (const QuantityKind kind : {ScrewLeastLength, LeastHoleHeight, RowHole, BoltLeastLength,
                                    FillerLeastThickness, ClearZoneWidth, BackNotchHeight})
        EXPECT_EQ(shown(kind, Length::inches(0, 13), sixteenths), "≈ 1/4 in") << key(kind);
    for (const QuantityKind kind : {ScrewGreatestLength, BoltGreatestLength, FillerThickness})
        EXPECT_EQ(shown(kind, Length::inches(0, 15), sixteenths), "≈ 3/16 in") << key(kind);
}

TEST(Drills, AreShownInFull) {
    for (const QuantityKind kind : {ClearanceHole, PilotHole, RowDrill}) {
        EXPECT_EQ(shown(kind, Length::inches(0, 13), sixteenths), "13/64 in") << key(kind);
        EXPECT_EQ(shown(kind, Length::inches(0, 13), millimetres), "≈ 5.2 mm") << key(kind);
    }
}

TEST(OtherNumbers, AreShownToTheNearestFraction) {
    EXPECT_EQ(shown(FrontWidth, Length::inches(0, 13), sixteenths), "≈ 3/16 in");
    EXPECT_EQ(shown(FrontWeight, Mass::pounds(3), sixteenths), "3.0 lb");
}

TEST(AFramelessCase, NamesNoFrame) {
    EXPECT_EQ(nameOf(RunnerSetback, Construction::FaceFrame), "Runner behind the frame's face");
    EXPECT_EQ(nameOf(RunnerSetback, Construction::Frameless),
              "Runner behind the panels' front edges");
    EXPECT_EQ(nameOf(FrontWidth, Construction::Frameless), nameOf(FrontWidth));
}

} // namespace
} // namespace frontwright
