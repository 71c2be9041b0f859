#include "core/holding/weight.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

constexpr SpecificGravity cherry{500, GravityBasis::At12Percent};

/// 12 in wide, 6 in high, 16 in deep outside; walls, sides 1/2 in, a bottom of 1/4 in at 1/4 in.
BoxPlan smallBox() {
    BoxPlan box;
    box.width = Length::inches(13);
    box.height = Length::inches(6);
    box.depth = Length::inches(13);
    box.wallThickness = Length::inches(0, 32);
    box.sideThickness = Length::inches(0, 32);
    box.bottomUnderside = Length::inches(0, 16);
    box.bottomTop = Length::inches(0, 32);
    box.origin = {Length::inches(1), Length::inches(1)};
    return box;
}

// Wood Handbook, chapter 4 (from memory): G 0.50 at 12 % is 560 kg/m³.
TEST(Density, CountsTheMoistureIn) {
    EXPECT_NEAR(densityAt12Percent(cherry), 560, 1e-9);
    EXPECT_NEAR(massOf(Volume::fromCubicMillimetres(1'000'000'000), cherry).inKilograms(), 560,
                1e-6);
    // A green-volume gravity is not taken for one at 12 %: mahogany 0.45 green is 0.485.
    EXPECT_NEAR(densityAt12Percent({450, GravityBasis::Green}), 542.9, 0.1);
}

// ANSI/KCMA A161.1: 15 lb/ft² (718 Pa). A bottom of 12 in × 12 in inside is one square foot.
TEST(Contents, OfAHouseholdDrawerAreFifteenPoundsOnASquareFoot) {
    EXPECT_NEAR(contentsOf(DrawerPurpose::Household, smallBox(), {}).inPounds(), 15, 1e-6);
    EXPECT_NEAR(15 * 4.4482216152605 / (0.3048 * 0.3048), 718, 0.5);
}

TEST(Contents, FollowTheDrawersPurpose) {
    const Volume foot = Volume::fromCubicMillimetres(28'316'847);
    EXPECT_NEAR(contentsOf(DrawerPurpose::Clothing, smallBox(), foot).inPounds(), 8.5, 1e-6);
    EXPECT_EQ(contentsOf(DrawerPurpose::School, smallBox(), foot), Mass::pounds(100));
    EXPECT_EQ(contentsOf(DrawerPurpose::Empty, smallBox(), foot), Mass());
    BoxPlan none = smallBox();
    none.width = Length::inches(1);
    EXPECT_EQ(contentsOf(DrawerPurpose::Household, none, {}), Mass());
}

struct Drawer {
    BoxSpec spec;
    BoxPlan box = smallBox();
    Species wood{"cherry", "Black cherry", WoodKind::Hardwood, cherry};
    RunnerKind runner;
    [[nodiscard]] DrawerLoad load() const {
        const CaseRect opening{Length::inches(1), Length::inches(1), Length::inches(14),
                               Length::inches(8)};
        const CaseRect front{Length::inches(0, 48), Length::inches(0, 48), Length::inches(14, 16),
                             Length::inches(8, 16)};
        return drawerLoad({spec, box, opening, front, Length::inches(0, 48), &wood, &runner});
    }
};

TEST(DrawerLoad, AddsUpFrontBoxAndContents) {
    const DrawerLoad load = Drawer{}.load();
    const double perCubicInch = 560 * 0.0254 * 0.0254 * 0.0254;
    // 13 1/2 × 7 1/2 × 3/4 in
    EXPECT_NEAR(load.front->inKilograms(), 13.5 * 7.5 * 0.75 * perCubicInch, 1e-4);
    // sides 2 × 1/2 × 6 × 13, walls 2 × 1/2 × 12 × 6, bottom 12 × 12 × 1/4 in
    EXPECT_NEAR(load.box->inKilograms(), (78 + 72 + 36) * perCubicInch, 1e-4);
    EXPECT_EQ(*load.onRunner(), *load.front + *load.box + load.contents);
}

// 16 CFR 1261: (7 in opening − 1/2 in to the bottom's top − 1/8 in) × 12 × 12 in.
TEST(DrawerLoad, EnclosesWhatTheRuleSays) {
    EXPECT_NEAR(Drawer{}.load().storage.inCubicFeet(), 6.375 * 144 / 1728, 1e-6);
}

TEST(DrawerLoad, TakesTheMakersLoadWhereThereIsOne) {
    Drawer drawer;
    drawer.spec.load = Mass::pounds(40);
    EXPECT_EQ(drawer.load().contents, Mass::pounds(40));
    drawer.runner.rating = Mass::pounds(75);
    EXPECT_EQ(drawer.load().rating, Mass::pounds(75));
}

TEST(DrawerLoad, SaysNothingOfAWoodThatItDoesNotKnow) {
    Drawer drawer;
    drawer.wood.gravity.reset();
    const DrawerLoad load = drawer.load();
    EXPECT_FALSE(load.front || load.box || load.onRunner());
    EXPECT_GT(load.contents, Mass());
}

// 16 CFR 1261 / ASTM F2057-23: 27 in (686 mm), 30 lb (13.6 kg), 3.2 ft³ (90.6 dm³). The rule of
// November 2022 (57 lb with filled drawers, 1.3 ft³) never took effect.
TEST(StorageScope, IsThatOfTheRuleInForce) {
    EXPECT_NEAR(storageScopeHeight.inMillimetres(), 686, 0.3);
    EXPECT_NEAR(storageScopeMass.inKilograms(), 13.6, 0.01);
    EXPECT_NEAR(storageScopeCubicFeet * 28.3168, 90.6, 0.02);
    EXPECT_NE(storageScopeMass, Mass::pounds(57));
    EXPECT_GT(storageScopeCubicFeet, 1.3);
}

} // namespace
} // namespace frontwright
