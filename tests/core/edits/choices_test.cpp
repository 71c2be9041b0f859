#include "core/edits/choices.h"
#include "tests/core/edits/edited.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::theCase;

using namespace frontwright::testing;

TEST(AFit, IsSetForTheCaseOrForOneOpening) {
    const Project project = bank(3);
    const SideFit fit{Fit::Gap, in(0, 8)};
    const Project all = edited(setFrontFit(project, theCase, Side::Top, fit));
    EXPECT_EQ(all.fronts.fit.top, fit);
    EXPECT_EQ(all.fronts.fit.left, project.fronts.fit.left);
    const OpeningId id = openingAt(project, 1);
    const Project one = edited(setFrontFit(project, {id}, Side::Left, fit));
    EXPECT_EQ(findOpening(one, id)->choices.fit.left, fit);
    EXPECT_EQ(findOpening(one, id)->choices.fit.right, std::nullopt);
    EXPECT_EQ(one.fronts, project.fronts);
    EXPECT_EQ(edited(clearFrontFit(one, id, Side::Left)), project);
}

TEST(AFit, IsNeverNegative) {
    const Project project = bank(3);
    for (const Fit fit : {Fit::Overlay, Fit::Gap, Fit::Inset}) {
        EXPECT_FALSE(setFrontFit(project, theCase, Side::Top, {fit, -in(0, 1)}).ok());
        EXPECT_TRUE(setFrontFit(project, theCase, Side::Top, {fit, in(0)}).ok());
    }
    EXPECT_EQ(refusal(setFrontFit(project, theCase, Side::Top, {Fit::Overlay, -in(1)})),
              "an overlay cannot be negative");
}

TEST(Choices, OfOneOpeningAreSetAndClearedOneByOne) {
    const Project project = bank(2);
    const OpeningId id = openingAt(project, 0);
    const EditTarget one{id};
    Project changed = edited(setThickness(project, one, in(1)));
    Profile profile{ProfileFamily::Chamfer, in(0, 16), in(0, 8), {}, PerSide<bool>::all(true)};
    changed = edited(setProfile(changed, one, profile));
    BoxSpec box = project.fronts.box;
    box.wallThickness = in(0, 40);
    changed = edited(setBox(changed, one, box));
    MountingSpec mounting = project.fronts.mounting;
    mounting.recess = in(0, 16);
    changed = edited(setMounting(changed, one, mounting));
    HardwareSpec hardware = project.fronts.hardware;
    hardware.form = "pull-96";
    changed = edited(setHardware(changed, one, hardware));

    const FrontChoices& choices = findOpening(changed, id)->choices;
    EXPECT_EQ(choices.thickness, WrittenLength(in(1)));
    EXPECT_EQ(choices.profile, profile);
    EXPECT_EQ(choices.box, box);
    EXPECT_EQ(choices.mounting, mounting);
    EXPECT_EQ(choices.hardware, hardware);
    EXPECT_EQ(changed.fronts, project.fronts);
    EXPECT_EQ(childRegion(changed.casework.divisions, 1),
              childRegion(project.casework.divisions, 1));

    const Choice all[] = {Choice::Thickness, Choice::Profile, Choice::Box, Choice::Mounting,
                          Choice::Hardware};
    for (const Choice choice : all) {
        EXPECT_NE(changed, project);
        changed = edited(clearChoice(changed, id, choice));
    }
    EXPECT_EQ(changed, project);
    EXPECT_FALSE(clearChoice(project, OpeningId{999}, Choice::Box).ok());
}

TEST(Choices, OfTheCaseAreItsDefaults) {
    const Project project = bank(2);
    EXPECT_EQ(edited(setThickness(project, theCase, in(1))).fronts.thickness.length, in(1));
    Profile profile;
    profile.width = in(0, 16);
    EXPECT_EQ(edited(setProfile(project, theCase, profile)).fronts.profile, profile);
    HardwareSpec hardware;
    EXPECT_EQ(edited(setHardware(project, theCase, hardware)).fronts.hardware, hardware);
    EXPECT_EQ(edited(setSpecies(project, "walnut")).fronts.stock.species, "walnut");
    EXPECT_EQ(edited(setThickness(project, theCase, in(1))).casework.divisions,
              project.casework.divisions);
}

TEST(Thickness, IsMoreThanNothing) {
    EXPECT_EQ(refusal(setThickness(bank(2), theCase, in(0))),
              "the thickness of a front must be more than 0");
    EXPECT_FALSE(setThickness(bank(2), EditTarget{OpeningId{999}}, in(1)).ok());
}

TEST(AProfile, HasAStepWithinItsDepth) {
    Profile raised{ProfileFamily::Raised, in(1), in(0, 16), in(0, 8), PerSide<bool>::all(true)};
    EXPECT_TRUE(setProfile(bank(2), theCase, raised).ok());
    raised.step = in(0, 17);
    EXPECT_FALSE(setProfile(bank(2), theCase, raised).ok());
    raised.step = -in(0, 1);
    EXPECT_FALSE(setProfile(bank(2), theCase, raised).ok());
    Profile negative;
    negative.width = -in(1);
    EXPECT_FALSE(setProfile(bank(2), theCase, negative).ok());
}

TEST(ABox, IsRefusedWhereOneOfItsMeasuresCannotBe) {
    const Project project = bank(2);
    const auto refused = [&](const auto& change) {
        BoxSpec box = project.fronts.box;
        change(box);
        return !setBox(project, theCase, box).ok();
    };
    EXPECT_FALSE(refused([](BoxSpec&) {}));
    EXPECT_TRUE(refused([](BoxSpec& b) { b.wallThickness = in(0); }));
    EXPECT_TRUE(refused([](BoxSpec& b) { b.sideThickness = -in(1); }));
    EXPECT_TRUE(refused([](BoxSpec& b) { b.bottomThickness = in(0); }));
    EXPECT_TRUE(refused([](BoxSpec& b) { b.depth = in(0); }));
    EXPECT_TRUE(refused([](BoxSpec& b) { b.height = in(0); }));
    EXPECT_TRUE(refused([](BoxSpec& b) { b.grooveHeight = -in(0, 1); }));
    EXPECT_TRUE(refused([](BoxSpec& b) { b.sideClearance = -in(0, 1); }));
    EXPECT_FALSE(refused([](BoxSpec& b) { b.clearanceBelow = in(0); }));
}

TEST(Mounting, IsRefusedWhereOneOfItsMeasuresCannotBe) {
    const Project project = bank(2);
    const auto refused = [&](const auto& change) {
        MountingSpec mounting = project.fronts.mounting;
        change(mounting);
        return !setMounting(project, theCase, mounting).ok();
    };
    EXPECT_FALSE(refused([](MountingSpec&) {}));
    EXPECT_TRUE(refused([](MountingSpec& m) { m.recess = -in(0, 1); }));
    EXPECT_TRUE(refused([](MountingSpec& m) { m.toolDiameter = in(0); }));
    EXPECT_TRUE(refused([](MountingSpec& m) { m.length = in(0); }));
    EXPECT_TRUE(refused([](MountingSpec& m) { m.fromSides = -in(1); }));
    EXPECT_TRUE(refused([](MountingSpec& m) { m.pattern = ScrewPattern::ByHand; }));
    EXPECT_FALSE(refused([](MountingSpec& m) {
        m.pattern = ScrewPattern::ByHand;
        m.placed = {{in(1), in(1)}};
    }));
}

TEST(Hardware, IsRefusedWhereOneOfItsMeasuresCannotBe) {
    const Project project = bank(2);
    const auto refused = [&](const auto& change) {
        HardwareSpec hardware = project.fronts.hardware;
        change(hardware);
        return !setHardware(project, theCase, hardware).ok();
    };
    EXPECT_FALSE(refused([](HardwareSpec&) {}));
    EXPECT_TRUE(refused([](HardwareSpec& h) { h.distance = -in(1); }));
    EXPECT_TRUE(refused([](HardwareSpec& h) { h.counterbore = -in(1); }));
    EXPECT_TRUE(refused([](HardwareSpec& h) { h.boltLength = in(0); }));
    EXPECT_TRUE(refused([](HardwareSpec& h) { h.accessDiameter = in(0); }));
    EXPECT_TRUE(refused([](HardwareSpec& h) { h.twoPast = in(0); }));
    EXPECT_TRUE(refused([](HardwareSpec& h) { h.twoAtPercent = 50; }));
    EXPECT_TRUE(refused([](HardwareSpec& h) { h.twoAtPercent = 0; }));
    EXPECT_TRUE(refused([](HardwareSpec& h) { h.opticalPart = 0; }));
}

TEST(TheLimits, AreTheMakersButNeverNegative) {
    const Project project = bank(2);
    Limits limits;
    limits.leastTipCover = in(0, 12);
    EXPECT_EQ(edited(setLimits(project, limits)).limits, limits);
    limits.leastGap = -in(0, 1);
    EXPECT_FALSE(setLimits(project, limits).ok());
    limits.leastGap = in(0);
    EXPECT_TRUE(setLimits(project, limits).ok());
    limits.leastOpening = in(0);
    EXPECT_FALSE(setLimits(project, limits).ok());
}

TEST(TheStyle, KnowsFourFractions) {
    const Project project = bank(2);
    for (const int denominator : {8, 16, 32, 64})
        EXPECT_TRUE(setStyle(project, {Unit::Inch, denominator}).ok());
    for (const int denominator : {0, 1, 10, 128})
        EXPECT_FALSE(setStyle(project, {Unit::Inch, denominator}).ok());
    const LengthStyle style{Unit::Millimetre, 32};
    EXPECT_EQ(edited(setStyle(project, style)).style, style);
}

TEST(Names, AreOneLineOfText) {
    const Project project = bank(2);
    const OpeningId id = openingAt(project, 1);
    EXPECT_EQ(edited(setTitle(project, "Glaze chest")).title, "Glaze chest");
    EXPECT_EQ(edited(setNote(project, "for the studio")).note, "for the studio");
    EXPECT_EQ(findOpening(edited(renameOpening(project, id, "brushes")), id)->name, "brushes");
    EXPECT_FALSE(setTitle(project, "two\nlines").ok());
    EXPECT_FALSE(renameOpening(project, id, std::string(10'001, 'a')).ok());
    EXPECT_TRUE(renameOpening(project, id, std::string(10'000, 'a')).ok());
    EXPECT_FALSE(renameOpening(project, OpeningId{99}, "x").ok());
}

TEST(TheCasesMeasures, AreTakenWhereTheDivisionsHaveRoom) {
    const Project project = bank(2);
    CaseMeasures measures = measuresOf(project.casework);
    EXPECT_EQ(edited(setCase(project, measures)), project);
    measures.frame.left = in(3);
    measures.depth = in(22);
    measures.grid = in(0, 8);
    const Project after = edited(setCase(project, measures));
    EXPECT_EQ(after.casework.frame.left.length, in(3));
    EXPECT_EQ(after.casework.depth.length, in(22));
    EXPECT_EQ(widths(after), Sizes(2, in(11, 32)));
    measures.frame.left = in(30);
    EXPECT_FALSE(setCase(project, measures).ok());
    measures.frame.left = -in(1);
    EXPECT_FALSE(setCase(project, measures).ok());
    for (auto part : {&CaseMeasures::depth, &CaseMeasures::grid, &CaseMeasures::frameThickness}) {
        CaseMeasures none = measuresOf(project.casework);
        none.*part = in(0);
        EXPECT_FALSE(setCase(project, none).ok());
    }
}

TEST(CopyingABanksDivisions, DividesAnotherOpeningAlike) {
    Project project =
        rowOf({share(rows({fixed(in(4), opening({}, "pens")), share(opening()), share(opening())},
                          in(1))),
               share(opening())},
              in(31));
    const OpeningId to = openingAt(project, 3);
    const Project after = edited(copyDivisions(project, openingAt(project, 1), to));
    const Sizes sizes = heights(after);
    ASSERT_EQ(sizes.size(), 6U);
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_EQ(sizes[i], sizes[3 + i]);
    EXPECT_EQ(findOpening(after, openingAt(after, 3))->name, "pens");
    EXPECT_NE(openingAt(after, 0), openingAt(after, 3));
    EXPECT_EQ(childRegion(project.casework.divisions, 0), childRegion(after.casework.divisions, 0));
}

TEST(CopyingABanksDivisions, IsRefusedWhereItCannotBe) {
    const Project project =
        rowOf({share(rows({fixed(in(4), opening()), share(opening())}, in(1))), share(opening())},
              in(31));
    EXPECT_FALSE(copyDivisions(project, openingAt(project, 0), openingAt(project, 1)).ok());
    EXPECT_FALSE(copyDivisions(project, openingAt(project, 2), openingAt(project, 0)).ok());
    EXPECT_FALSE(copyDivisions(project, openingAt(project, 0), OpeningId{99}).ok());
    EXPECT_TRUE(copyDivisions(project, openingAt(project, 0), openingAt(project, 2)).ok());
}

} // namespace
} // namespace frontwright
