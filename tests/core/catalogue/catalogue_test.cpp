#include "core/catalogue/catalogue.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

WoodScrew screw(std::string id, Length shank) {
    WoodScrew result;
    result.id = std::move(id);
    result.shankDiameter = shank;
    return result;
}
Bolt bolt(std::string id, std::string thread) {
    Bolt result;
    result.id = std::move(id);
    result.thread = std::move(thread);
    return result;
}
HardwareForm form(std::string id, HardwareKind kind) {
    HardwareForm result;
    result.id = std::move(id);
    result.kind = kind;
    return result;
}
RunnerKind runner(std::string id, Length side) {
    RunnerKind result;
    result.id = std::move(id);
    result.sideClearance = side;
    return result;
}

Catalogue shopCatalogue() {
    Catalogue catalogue;
    catalogue.woodScrews = {screw("no-6", Length::millimetres(3)),
                            screw("no-8", Length::millimetres(4))};
    catalogue.bolts = {bolt("m4", "M4 × 0.7"), bolt("m5", "M5 × 0.8")};
    catalogue.hardware = {form("knob", HardwareKind::Knob), form("pull", HardwareKind::Pull)};
    catalogue.runners = {runner("wooden", Length::millimetres(1)),
                         runner("centre", Length::millimetres(3))};
    catalogue.species = {{"cherry", "Black cherry"}, {"teak", "Teak"}};
    return catalogue;
}

TEST(Catalogue, FindsEachKindByItsId) {
    const Catalogue catalogue = shopCatalogue();
    EXPECT_EQ(catalogue.woodScrew("no-8"), &catalogue.woodScrews[1]);
    EXPECT_EQ(catalogue.bolt("m5"), &catalogue.bolts[1]);
    EXPECT_EQ(catalogue.hardwareForm("pull"), &catalogue.hardware[1]);
    EXPECT_EQ(catalogue.runner("centre"), &catalogue.runners[1]);
    EXPECT_EQ(catalogue.speciesOf("teak"), &catalogue.species[1]);
}

TEST(Catalogue, HasNothingUnderAnUnknownId) {
    const Catalogue catalogue = shopCatalogue();
    EXPECT_EQ(catalogue.woodScrew("no-9"), nullptr);
    EXPECT_EQ(catalogue.woodScrew(""), nullptr);
    EXPECT_EQ(catalogue.bolt("M5"), nullptr); // ids are exact
    EXPECT_EQ(catalogue.hardwareForm("kno"), nullptr);
    EXPECT_EQ(catalogue.runner("wooden "), nullptr);
    EXPECT_EQ(catalogue.speciesOf("Black cherry"), nullptr);
}

TEST(Catalogue, LooksAmongEntriesOfOneKindOnly) {
    const Catalogue catalogue = shopCatalogue();
    EXPECT_EQ(catalogue.bolt("no-8"), nullptr);
    EXPECT_EQ(catalogue.woodScrew("m4"), nullptr);
    EXPECT_EQ(catalogue.runner("knob"), nullptr);
}

TEST(MergedCatalogue, TakesTheMakersEntryForTheSameIdInItsOldPlace) {
    Catalogue own;
    own.woodScrews = {screw("no-6", Length::millimetres(7))};
    own.bolts = {bolt("m4", "M4 × 0.5")};
    own.hardware = {form("knob", HardwareKind::RingPull)};
    own.runners = {runner("wooden", Length::millimetres(2))};
    own.species = {{"cherry", "Cherry from the river lot"}};
    const Catalogue all = merged(shopCatalogue(), own);

    ASSERT_EQ(all.woodScrews.size(), 2u);
    EXPECT_EQ(all.woodScrews[0], own.woodScrews[0]);
    EXPECT_EQ(all.bolts[0].thread, "M4 × 0.5");
    EXPECT_EQ(all.hardware[0].kind, HardwareKind::RingPull);
    EXPECT_EQ(all.runners[0].sideClearance, Length::millimetres(2));
    EXPECT_EQ(all.species[0].name, "Cherry from the river lot");
    EXPECT_EQ(all.species.size(), 2u);
}

TEST(MergedCatalogue, AddsTheMakersOtherEntriesAfterTheProgramsOwn) {
    Catalogue own;
    own.woodScrews = {screw("my-screw", Length::millimetres(5))};
    own.hardware = {form("my-pull", HardwareKind::CupPull)};
    const Catalogue all = merged(shopCatalogue(), own);
    ASSERT_EQ(all.woodScrews.size(), 3u);
    EXPECT_EQ(all.woodScrews[2].id, "my-screw");
    ASSERT_EQ(all.hardware.size(), 3u);
    EXPECT_EQ(all.hardware[2].id, "my-pull");
    EXPECT_EQ(all.bolts, shopCatalogue().bolts);
}

TEST(MergedCatalogue, LetsTheLaterOfTwoOwnEntriesWin) {
    Catalogue own;
    own.runners = {runner("mine", Length::millimetres(1)), runner("mine", Length::millimetres(2))};
    const Catalogue all = merged({}, own);
    ASSERT_EQ(all.runners.size(), 1u);
    EXPECT_EQ(all.runners[0].sideClearance, Length::millimetres(2));
}

TEST(MergedCatalogue, IsTheBaseWhereTheMakerHasNothingAndTheOtherWayRound) {
    EXPECT_EQ(merged(shopCatalogue(), {}), shopCatalogue());
    EXPECT_EQ(merged({}, shopCatalogue()), shopCatalogue());
    EXPECT_EQ(merged(shopCatalogue(), shopCatalogue()), shopCatalogue());
}

} // namespace
} // namespace frontwright
