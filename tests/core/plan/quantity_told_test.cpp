#include "core/plan/figures.h"
#include "core/plan/quantity.h"

#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::Dice;
using testing::Planned;
using testing::untold;

const std::vector<std::string> noWords;

std::optional<WrittenLength> perhaps(Dice& dice, std::int64_t low, std::int64_t high) {
    return dice.between(0, 2) == 0 ? std::optional<WrittenLength>(dice.sixtyFourths(low, high))
                                   : std::nullopt;
}

void chooseMounting(Dice& dice, MountingSpec& mounting) {
    mounting.pattern = static_cast<ScrewPattern>(dice.between(0, 2));
    mounting.placed = {{Length::inches(2), Length::inches(1)}};
    mounting.length = perhaps(dice, 24, 128);
    mounting.fromSides = perhaps(dice, 32, 128);
    mounting.fromBottom = perhaps(dice, 32, 128);
    mounting.fromTop = perhaps(dice, 32, 128);
    mounting.pilotHole = perhaps(dice, 4, 8);
    mounting.clearanceHole = perhaps(dice, 10, 14);
    mounting.toolDiameter = dice.sixtyFourths(4, 64);
}

void chooseHardware(Dice& dice, HardwareSpec& hardware) {
    hardware.form = dice.between(0, 1) == 0 ? "knob-32" : "pull-96";
    hardware.placing = static_cast<Placing>(dice.between(0, 3));
    hardware.distance = dice.sixtyFourths(64, 256);
    hardware.way = static_cast<MountingWay>(dice.between(0, 2));
    hardware.twoPast = perhaps(dice, 64, 1280);
    hardware.boltLength = perhaps(dice, 32, 128);
    hardware.counterbore = perhaps(dice, 0, 32);
    if (dice.between(0, 5) == 0)
        hardware.placedAt = FrontPoint{Length::inches(3), Length::inches(2)};
}

/// Divisions, fits, screws, handles, boxes, wood and air by chance.
Project anyProject(std::uint64_t seed) {
    Project project = testing::randomProject(seed);
    Dice dice(seed);
    chooseMounting(dice, project.fronts.mounting);
    chooseHardware(dice, project.fronts.hardware);
    project.fronts.box.runner = dice.between(0, 1) == 0 ? "wooden" : "side-mounted";
    project.fronts.box.purpose = static_cast<DrawerPurpose>(dice.between(0, 3));
    project.fronts.box.height = perhaps(dice, 192, 384);
    if (dice.between(0, 3) > 0)
        testing::oakInAir(project, 8, 6, dice.between(0, 1) == 0 ? 12 : 16);
    if (project.air && dice.between(0, 1) == 0)
        project.air->wettest = AirState::of(Temperature::celsius(20), Percent::whole(65));
    if (dice.between(0, 1) == 0)
        project.fronts.stock.grain = Grain::AlongHeight;
    if (dice.between(0, 2) == 0)
        project.fronts.stock.species = "pine";
    return project;
}

bool hasDecimalPoint(const std::string& figures) {
    for (auto at = figures.find('.'); at != std::string::npos; at = figures.find('.', at + 1))
        if (at + 1 < figures.size() && figures[at + 1] >= '0' && figures[at + 1] <= '9')
            return true;
    return false;
}

TEST(Derivations, LeaveNoWordUntoldInAnotherLanguage) {
    std::set<std::string> formulas;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const Planned planned(anyProject(seed));
        for (const Quantity quantity : allQuantities(planned.plan)) {
            const auto told = derive(planned.project, planned.plan, quantity, {Unit::Inch, 64});
            ASSERT_TRUE(told) << key(quantity.kind);
            if (!formulas.insert(told->formula.english()).second)
                continue;
            for (const Phrase& phrase :
                 {told->name, told->formula, told->figures, told->source.words()})
                EXPECT_EQ(untold(phrase), noWords) << key(quantity.kind) << ": " << phrase;
        }
    }
    EXPECT_GT(formulas.size(), 100U); // or the projects are too much alike
}

TEST(Derivations, LeaveNoWordUntoldInAnyFigures) {
    for (std::uint64_t seed = 61; seed <= 70; ++seed) {
        const Planned planned(anyProject(seed));
        for (const Quantity quantity : allQuantities(planned.plan)) {
            const auto told =
                derive(planned.project, planned.plan, quantity, {Unit::Millimetre, 64});
            EXPECT_EQ(untold(told->figures), noWords) << key(quantity.kind) << told->figures;
        }
    }
}

TEST(Derivations, WriteTheirFiguresWithTheLanguagesDecimalMark) {
    const LengthStyle withComma{Unit::Millimetre, 64, DecimalMark::Comma};
    for (std::uint64_t seed = 71; seed <= 80; ++seed) {
        const Planned planned(anyProject(seed));
        for (const Quantity quantity : allQuantities(planned.plan)) {
            const auto told = derive(planned.project, planned.plan, quantity, withComma);
            EXPECT_FALSE(hasDecimalPoint(told->figures.english())) << told->figures;
        }
    }
}

TEST(AnImpossiblePlan, LeavesNoWordUntold) {
    const auto unknown = [](const std::function<void(FrontChoices&)>& change) {
        return testing::withChoices(testing::bank(2), 1, change);
    };
    Project noSpecies = testing::bank(1);
    noSpecies.fronts.stock.species = "unknown";
    Project noAir = testing::bank(1);
    testing::oakInAir(noAir, 8, 12, 6);
    FrontDefaults defaults = testing::smallDefaults();
    defaults.box.runner = defaults.mounting.screw = defaults.hardware.form = "unknown";
    for (const Project& project :
         {noSpecies, noAir, unknown([&](FrontChoices& choices) { choices.box = defaults.box; }),
          unknown([&](FrontChoices& choices) { choices.mounting = defaults.mounting; }),
          unknown([&](FrontChoices& choices) { choices.hardware = defaults.hardware; }),
          unknown([&](FrontChoices& choices) {
              choices.stock = Stock{"unknown", Cut::FlatSawn, Grain::AlongHeight, Build::Solid};
          })}) {
        const Catalogue catalogue = testing::smallCatalogue();
        const auto plan = makePlan(project, catalogue);
        ASSERT_FALSE(plan.ok());
        EXPECT_EQ(untold(plan.error().sentence(), {"unknown"}), noWords) << plan.error().sentence();
    }
}

TEST(ASourcesTitle, IsFoundAmongTheTranslations) {
    EXPECT_EQ(told(commonPractice().words(), testing::mute()),
              told(text("common practice, no source"), testing::mute()));
    EXPECT_EQ(sourceNamed(SourceKind::Maker, text("by eye")).title, "by eye");
}

} // namespace
} // namespace frontwright
