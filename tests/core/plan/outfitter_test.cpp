#include "core/plan/outfitter.h"

#include "tests/core/plan/planned.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/plan/small_case.h"

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

TEST(Outfitter, GivesAFrontWithoutBoxOrHolesWhatItsCaseDecides) {
    const Project project = bank(2);
    const Catalogue catalogue = smallCatalogue();
    const Planned planned(project);
    FrontPlan bare = planned.front(1);
    bare.box = {};
    bare.mounting = {};
    bare.hardware.reset();
    const Layout layout = layOut(project.casework).value();
    ASSERT_FALSE(Outfitter(project, catalogue, std::nullopt).outfit(bare, layout));
    EXPECT_EQ(bare.box, planned.front(1).box);
    EXPECT_EQ(bare.mounting.holes, planned.front(1).mounting.holes);
    EXPECT_FALSE(bare.season);
}

TEST(Outfitter, ABoxBesideAnAlikeOneLiesABankFartherRight) {
    const Planned planned(banks(2, 3));
    const FrontPlan &left = planned.front(1), &right = planned.front(4);
    // From stile to stile: 13 in of opening and 2 in of stile.
    EXPECT_EQ(right.box.origin.x - left.box.origin.x, Length::inches(15));
    EXPECT_EQ(right.box.origin.y, left.box.origin.y);
    EXPECT_EQ(right.box.wallOnFront, left.box.wallOnFront);
    EXPECT_EQ(right.mounting, left.mounting);
    EXPECT_EQ(right.load, left.load);
}

TEST(Outfitter, AFrontThatDecidesForItselfIsNotTakenForTheOneBesideIt) {
    Project project = withChoices(
        bank(3), 1, [](FrontChoices& choices) { choices.thickness = Length::inches(1); });
    oakInAir(project, 8, 5, 11);
    const Planned planned(project);
    EXPECT_EQ(planned.front(1).thickness, Length::inches(1));
    EXPECT_NE(planned.front(1).mounting, planned.front(0).mounting);
    EXPECT_EQ(planned.front(2).thickness, Length::inches(0, 48));
    EXPECT_EQ(planned.front(2).mounting, planned.front(0).mounting);
}

/// Names of presets change nothing of a front, but no two fronts are alike any more.
Project withoutAlikeFronts(Project project) {
    return withOpenings(std::move(project), [](Opening& opening, std::size_t i) {
        PresetNames names;
        names.box = "box " + std::to_string(i);
        opening.choices.presets = names;
    });
}

/// A few of the fronts decide the same few things for themselves.
Project withSomeDecisions(Project project, std::uint64_t seed) {
    Dice dice(seed);
    const FrontDefaults ofCase = project.fronts;
    return withOpenings(std::move(project), [&](Opening& opening, std::size_t) {
        FrontChoices& choices = opening.choices;
        if (dice.between(0, 5) == 0)
            choices.thickness = Length::inches(dice.between(0, 1), 56);
        if (dice.between(0, 5) == 0)
            choices.stock = Stock{"oak", Cut::QuarterSawn, Grain::AlongHeight, Build::Solid};
        if (dice.between(0, 5) == 0) {
            choices.box = ofCase.box;
            choices.box->grooveHeight = Length::inches(0, 32);
        }
        if (dice.between(0, 5) == 0) {
            choices.mounting = ofCase.mounting;
            choices.mounting->pattern = ScrewPattern::Six;
        }
        if (dice.between(0, 5) == 0)
            choices.fit[Side::Top] = SideFit{Fit::Inset, Length::inches(0, 8)};
    });
}

void expectSame(const FrontPlan& a, const FrontPlan& b) {
    EXPECT_EQ(a.thickness, b.thickness);
    EXPECT_EQ(*a.profile, *b.profile);
    EXPECT_EQ(a.field, b.field);
    EXPECT_EQ(a.box, b.box);
    EXPECT_EQ(a.holding, b.holding);
    EXPECT_EQ(a.load, b.load);
    EXPECT_EQ(a.season, b.season);
    EXPECT_EQ(a.hardware.has_value(), b.hardware.has_value());
    EXPECT_EQ(a.mounting.holes, b.mounting.holes);
    EXPECT_EQ(a.mounting.allowed, b.mounting.allowed);
    EXPECT_EQ(a.mounting.length, b.mounting.length);
    EXPECT_EQ(a.mounting.leastHeight, b.mounting.leastHeight);
    if (a.hardware && b.hardware) {
        EXPECT_EQ(a.hardware->handles, b.hardware->handles);
        EXPECT_EQ(a.hardware->ways, b.hardware->ways);
        EXPECT_EQ(a.hardware->thickness, b.hardware->thickness);
    }
}

TEST(Outfitter, AFrontComesOutTheSameWhateverStandsBesideIt) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE(seed);
        Dice dice(seed);
        const auto across = static_cast<std::size_t>(dice.between(2, 6));
        const auto upright = static_cast<std::size_t>(dice.between(1, 12));
        Project project = seed % 2 == 0 ? randomProject(seed) : banks(across, upright);
        project = withSomeDecisions(std::move(project), seed);
        oakInAir(project, 9, 6, 12);
        const Planned planned(project), alone(withoutAlikeFronts(project));
        ASSERT_EQ(planned.plan.fronts.size(), alone.plan.fronts.size());
        for (std::size_t i = 0; i < planned.plan.fronts.size(); ++i)
            expectSame(planned.plan.fronts[i], alone.plan.fronts[i]);
    }
}

} // namespace
} // namespace frontwright::testing
