// A front of a wood of its own is held, drilled and weighed as that wood, not as the case's.

#include "core/plan/quantity.h"
#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using enum QuantityKind;
using testing::bank;
using testing::Planned;

Stock of(const std::string& species) {
    Stock stock;
    stock.species = species;
    return stock;
}

/// Two fronts alike: the case's wood, and that of the second.
Project twoWoods(const std::string& ofCase, const std::string& ofSecond) {
    Project project = testing::withChoices(
        bank(2), 1, [&](FrontChoices& choices) { choices.stock = of(ofSecond); });
    project.fronts.stock.species = ofCase;
    return project;
}

double pounds(const Planned& planned, QuantityKind kind, std::uint32_t front) {
    const auto value = measureOf(planned.plan, {kind, front, 0});
    return value ? value->mass().inPounds() : 0;
}

// Specific gravity on volume at 12 %: oak 0.63, pine 0.35.
TEST(AFrontsOwnWood, IsWhatItWeighs) {
    const Planned planned(twoWoods("oak", "pine"));
    EXPECT_NEAR(pounds(planned, FrontWeight, 1) / pounds(planned, FrontWeight, 0), 35.0 / 63, 1e-3);
    EXPECT_NEAR(pounds(planned, BoxWeight, 1) / pounds(planned, BoxWeight, 0), 35.0 / 63, 1e-3);
    const auto derivation =
        derive(planned.project, planned.plan, {FrontWeight, 1, 0}, {Unit::Inch, 16});
    ASSERT_TRUE(derivation);
    EXPECT_NE(derivation->figures.english().find("392 kg/m³"), std::string::npos)
        << derivation->figures << ": 0.35 × 1000 × 1.12";
}

// Withdrawal goes with the square of specific gravity: 0.35² / 0.63² = 0.3086.
TEST(AFrontsOwnWood, IsWhatItsScrewsHoldIn) {
    const Planned planned(twoWoods("oak", "pine"));
    const auto newtons = [&](std::uint32_t front) {
        return measureOf(planned.plan, {ScrewUltimate, front, 0})->force().inNewtons();
    };
    EXPECT_NEAR(newtons(1) / newtons(0), 0.3086, 1e-3);
    const auto derivation =
        derive(planned.project, planned.plan, {ScrewUltimate, 1, 0}, {Unit::Inch, 16});
    ASSERT_TRUE(derivation);
    EXPECT_NE(derivation->figures.english().find("0.350²"), std::string::npos)
        << derivation->figures;
}

// Root 9/64 in: 90 % of it in oak is 8.1/64, 70 % in pine 6.3/64.
TEST(AFrontsOwnWood, IsWhatItsPilotHolesAreDrilledFor) {
    const Planned planned(twoWoods("oak", "pine"));
    EXPECT_EQ(valueOf(planned.plan, {PilotHole, 0, 0}), Length::inches(0, 8));
    EXPECT_EQ(valueOf(planned.plan, {PilotHole, 1, 0}), Length::inches(0, 6));
}

TEST(AFrontsOwnWood, IsKnownWhereTheCasesIsNot) {
    const Planned planned(twoWoods("", "oak"));
    EXPECT_EQ(planned.plan.fronts[0].wood, nullptr);
    ASSERT_NE(planned.plan.fronts[1].wood, nullptr);
    EXPECT_FALSE(measureOf(planned.plan, {FrontWeight, 0, 0}));
    EXPECT_TRUE(measureOf(planned.plan, {FrontWeight, 1, 0}));
    for (const Quantity quantity : quantitiesOfFront(planned.plan, 1))
        EXPECT_TRUE(derive(planned.project, planned.plan, quantity, {Unit::Inch, 16}))
            << nameOf(quantity.kind);
}

TEST(AFrontsOwnWood, ThatIsTheCasesChangesNothing) {
    const Planned own(twoWoods("oak", "oak"));
    for (const QuantityKind kind : {FrontWeight, BoxWeight, ScrewUltimate, ScrewDesign, PilotHole})
        EXPECT_EQ(measureOf(own.plan, {kind, 0, 0}), measureOf(own.plan, {kind, 1, 0}));
}

} // namespace
} // namespace frontwright
