#include "core/edits/choices.h"
#include "core/plan/chosen.h"
#include "tests/core/edits/edited.h"
#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::edited;
using testing::meters;
using testing::refusal;

TEST(WoodChoices, OfOneFrontAreItsOwnUntilItFollowsTheCaseAgain) {
    const Project project = testing::bank(2);
    const OpeningId id = testing::Planned(project).front(0).opening;
    const Stock stable{"oak", Cut::QuarterSawn, Grain::AlongHeight, Build::Stable};
    const Project changed = edited(setStock(project, {id}, stable));
    const testing::Planned planned(changed);
    EXPECT_EQ(chosenStock(planned.project, planned.front(0)), stable);
    EXPECT_EQ(chosenStock(planned.project, planned.front(1)), project.fronts.stock);
    EXPECT_EQ(edited(clearChoice(changed, id, Choice::Stock)), project);
}

TEST(WoodChoices, OfTheCaseKeepItsCutWhenTheSpeciesChanges) {
    Project project = testing::bank(2);
    project.fronts.stock.cut = Cut::Rift;
    const Stock changed = edited(setSpecies(project, "oak")).fronts.stock;
    EXPECT_EQ(changed, (Stock{"oak", Cut::Rift, Grain::AlongLength, Build::Solid}));
    EXPECT_NE(refusal(setStock(project, {}, Stock{"two\nlines"})), "");
}

TEST(AirChoices, AreTakenOrForgotten) {
    const Project project = testing::bank(2);
    const Project changed = edited(setAir(project, meters(8, 6, 12)));
    EXPECT_EQ(changed.air, meters(8, 6, 12));
    EXPECT_EQ(edited(setAir(changed, std::nullopt)), project);
}

TEST(AirChoices, OutsideTheirRangesAreRefusedInWords) {
    const Project project = testing::bank(2);
    Air air = meters(8, 6, 12);
    air.whenCut = AirState::of(Temperature::celsius(20), Percent::whole(120));
    EXPECT_EQ(refusal(setAir(project, air)),
              "when cut: the relative humidity, 120.0 %, is outside 0 to 100 %");
    EXPECT_NE(refusal(setAir(project, meters(8, 12, 6))).find("exchange the two"),
              std::string::npos);
}

} // namespace
} // namespace frontwright
