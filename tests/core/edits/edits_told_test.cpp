#include "core/edits/banks.h"
#include "core/edits/choices.h"
#include "core/edits/own_entries.h"
#include "core/edits/placed_part.h"
#include "core/edits/presets.h"
#include "core/edits/typed.h"
#include "tests/core/edits/edited.h"
#include "tests/core/plan/planned.h"
#include "tests/core/shorthand.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

// Whatever an edit refuses, and whatever holds a drag, can be told in every language.

namespace frontwright {
namespace {

using testing::across;
using testing::theCase;
using testing::upright;

using namespace frontwright::testing;

using Words = std::vector<std::string>;

/// The words of a refusal that no other language could tell.
template<class T>
Words leftOf(const Result<T>& result, const std::set<std::string>& alike = {}) {
    EXPECT_FALSE(result.ok());
    return result.ok() ? Words{"not refused"} : untold(result.error().sentence(), alike);
}

TEST(WhatEditsOfDivisionsRefuse, IsTold) {
    const Project one = oneOpening(in(20), in(30));
    const Project locked =
        bankOf({fixed(in(8), opening()), fixed(in(8), opening()), share(opening())}, in(26));
    const OpeningId only = openingAt(one, 0);
    const OpeningId first = openingAt(locked, 0);
    const OpeningId last = openingAt(locked, 2);
    const std::vector<OpeningId> none, apart{first, last}, lost{OpeningId{99}};
    EXPECT_EQ(leftOf(splitOpening(one, only, upright, 1, in(1))), Words{});
    EXPECT_EQ(leftOf(splitOpening(one, only, upright, 2, in(0))), Words{});
    EXPECT_EQ(leftOf(splitOpening(one, only, upright, 99'999, in(1))), Words{});
    EXPECT_EQ(leftOf(splitOpening(one, only, upright, 12, in(1))), Words{});
    EXPECT_EQ(leftOf(splitOpening(one, only, across, 9, in(1))), Words{});
    EXPECT_EQ(leftOf(splitOpening(one, OpeningId{99}, across, 2, in(1))), Words{});
    EXPECT_EQ(leftOf(removeMember(one, leftStile)), Words{});
    EXPECT_EQ(leftOf(removeMember(one, MemberId{99})), Words{});
    EXPECT_EQ(leftOf(joinOpenings(locked, lost)), Words{});
    EXPECT_EQ(leftOf(joinOpenings(locked, apart)), Words{});
    EXPECT_EQ(leftOf(setOpeningSize(one, only, upright, in(5))), Words{});
    EXPECT_EQ(leftOf(setOpeningSize(one, only, across, in(5))), Words{});
    EXPECT_EQ(leftOf(setOpeningSize(locked, last, upright, in(0))), Words{});
    EXPECT_EQ(leftOf(setOpeningSize(locked, last, upright, in(20))), Words{});
    EXPECT_EQ(leftOf(setOpeningSize(locked, last, upright, in(2))), Words{});
    EXPECT_EQ(leftOf(setOpeningSize(locked, first, upright, in(20))), Words{});
    EXPECT_EQ(leftOf(setMemberWidth(one, leftStile, in(0))), Words{});
    EXPECT_EQ(leftOf(setCaseSize(one, in(0), in(10))), Words{});
    EXPECT_EQ(leftOf(makeEqual(locked, none, upright)), Words{});
    EXPECT_EQ(leftOf(makeEqual(locked, std::span(&last, 1), upright)), Words{});
    EXPECT_EQ(leftOf(makeEqual(banks(2, 2),
                               std::vector{openingAt(banks(2, 2), 0), openingAt(banks(2, 2), 3)},
                               upright)),
              Words{});
    EXPECT_EQ(leftOf(endGraduation(locked, last, upright)), Words{});
    EXPECT_EQ(leftOf(graduate(locked, last, upright, ArithmeticRun{in(1)})), Words{});
    EXPECT_EQ(leftOf(graduate(locked, last, upright, GeometricRun{0})), Words{});
}

TEST(WhatIsTooDeep, IsTold) {
    Project project = oneOpening(in(4'000), in(4'000));
    Result<Project> result = project;
    for (int depth = 0; result.ok() && depth < 100; ++depth) {
        project = std::move(result).value();
        result = splitOpening(project, openingAt(project, 0), depth % 2 == 0 ? upright : across, 2,
                              in(0, 1));
    }
    EXPECT_EQ(leftOf(result), Words{});
}

TEST(WhatEditsBesideARunRefuse, IsTold) {
    const Project run =
        bankOf({place(opening()), place(opening()), share(opening()), share(opening())}, in(29));
    Project project = run;
    project.casework.divisions = graduated(run.casework.divisions, ArithmeticRun{in(2)});
    const OpeningId first = openingAt(project, 0);
    EXPECT_EQ(leftOf(setHold(project, first, upright, Hold::Locked)), Words{});
    const Planned planned(project);
    Project wide = rowOf({place(opening()), place(opening())}, in(29));
    wide.casework.divisions = graduated(wide.casework.divisions, GeometricRun{1'700'003});
    const Planned wider(wide);
    EXPECT_EQ(leftOf(mirrorCase(wide, wider.plan)), Words{});
    EXPECT_EQ(leftOf(mirrorRegion(project, planned.plan, {})), Words{});
    EXPECT_EQ(leftOf(mirrorRegion(project, planned.plan, std::span(&first, 1))), Words{});
}

TEST(WhatEditsOfBanksRefuse, IsTold) {
    const Project one = oneOpening(in(20), in(30));
    const Project two = bank(2);
    EXPECT_EQ(leftOf(bankDivisions(one, openingAt(one, 0))), Words{});
    EXPECT_EQ(leftOf(copyDivisions(two, openingAt(two, 0), openingAt(two, 1))), Words{});
    EXPECT_EQ(leftOf(copyDivisions(two, openingAt(two, 0), OpeningId{99})), Words{});
}

TEST(WhatHoldsADrag, IsTold) {
    const auto graduatedAt = [](Project project) {
        project.casework.divisions = graduated(project.casework.divisions, ArithmeticRun{in(1)});
        return project;
    };
    const std::vector<Project> projects{
        bank(2),
        banks(2, 1),
        rowOf({fixed(in(8), opening()), share(opening()), fixed(in(8), opening())}, in(26)),
        bankOf({fixed(in(8), opening()), share(opening()), fixed(in(8), opening())}, in(26)),
        rowOf({fixed(in(8), opening()), fixed(in(8), opening())}, in(17)),
        graduatedAt(rowOf({place(opening()), place(opening()), share(opening())}, in(26))),
        graduatedAt(rowOf({share(opening()), place(opening()), place(opening())}, in(26))),
        graduatedAt(bankOf({place(opening()), place(opening()), share(opening())}, in(26))),
        graduatedAt(bankOf({share(opening()), place(opening()), place(opening())}, in(26)))};
    std::set<std::string> reasons;
    for (const Project& project : projects)
        for (const PlacedMember& member : layoutOf(project).members)
            for (const Length by : {in(30), -in(30)}) {
                const DragOutcome outcome = dragged(project, member.id, by);
                EXPECT_EQ(untold(outcome.heldBecause), Words{}) << outcome.heldBecause;
                reasons.insert(outcome.heldBecause.english());
            }
    EXPECT_GE(reasons.size(), 14U);
}

TEST(ChoicesThatCannotBe, AreTold) {
    const Project project = bank(2);
    for (const Fit fit : {Fit::Overlay, Fit::Gap, Fit::Inset})
        EXPECT_EQ(leftOf(setFrontFit(project, theCase, Side::Top, {fit, -in(1)})), Words{});
    EXPECT_EQ(leftOf(setThickness(project, theCase, in(0))), Words{});
    Profile profile{ProfileFamily::Raised, in(1), in(0, 8), in(0, 9), PerSide<bool>::all(true)};
    EXPECT_EQ(leftOf(setProfile(project, theCase, profile)), Words{});
    for (WrittenLength Profile::*size : {&Profile::width, &Profile::depth, &Profile::step}) {
        Profile other{ProfileFamily::Raised, in(1), in(1), in(0), PerSide<bool>::all(true)};
        other.*size = -in(1);
        EXPECT_EQ(leftOf(setProfile(project, theCase, other)), Words{});
    }
    EXPECT_EQ(leftOf(setTitle(project, std::string(10'001, '1'))), Words{});
    EXPECT_EQ(leftOf(setTitle(project, "1\n2")), Words{});
    EXPECT_EQ(leftOf(setNote(project, "1\n2")), Words{});
    EXPECT_EQ(leftOf(setSpecies(project, "1\n2")), Words{});
    EXPECT_EQ(leftOf(renameOpening(project, openingAt(project, 0), "1\n2")), Words{});
    LengthStyle style;
    style.denominator = 10;
    EXPECT_EQ(leftOf(setStyle(project, style)), Words{});
}

TEST(SizesOfTheCaseThatCannotBe, AreTold) {
    const Project project = bank(2);
    for (WrittenLength CaseMeasures::*size :
         {&CaseMeasures::frameThickness, &CaseMeasures::depth, &CaseMeasures::grid}) {
        CaseMeasures measures = measuresOf(project.casework);
        measures.*size = -in(1);
        EXPECT_EQ(leftOf(setCase(project, measures)), Words{});
    }
    CaseMeasures measures = measuresOf(project.casework);
    measures.frame.left = -in(1);
    EXPECT_EQ(leftOf(setCase(project, measures)), Words{});
    for (WrittenLength Limits::*limit :
         {&Limits::leastPenetration, &Limits::leastTipCover, &Limits::screwMargin,
          &Limits::leastWallUnderHead, &Limits::leastWoodUnderHead, &Limits::headAllowance,
          &Limits::leastGap, &Limits::leastOpening, &Limits::holeToHole, &Limits::unevenGaps,
          &Limits::leastHeadBearing}) {
        Limits limits;
        limits.*limit = -in(1);
        EXPECT_EQ(leftOf(setLimits(project, limits)), Words{});
    }
}

template<class Spec>
void expectTold(Result<Project> (*set)(const Project&, EditTarget, const Spec&), Spec spec,
                std::initializer_list<std::optional<WrittenLength> Spec::*> rare,
                std::initializer_list<WrittenLength Spec::*> plain) {
    const Project project = bank(2);
    for (const auto member : rare) {
        Spec changed = spec;
        changed.*member = WrittenLength(-in(1));
        EXPECT_EQ(leftOf(set(project, theCase, changed)), Words{});
    }
    for (const auto member : plain) {
        Spec changed = spec;
        changed.*member = -in(1);
        EXPECT_EQ(leftOf(set(project, theCase, changed)), Words{});
    }
}

TEST(BoxesScrewsAndHandlesThatCannotBe, AreTold) {
    const Project project = bank(2);
    expectTold<BoxSpec>(setBox, project.fronts.box,
                        {&BoxSpec::sideClearance, &BoxSpec::clearanceBelow,
                         &BoxSpec::clearanceAbove, &BoxSpec::height},
                        {&BoxSpec::depth, &BoxSpec::wallThickness, &BoxSpec::sideThickness,
                         &BoxSpec::grooveHeight, &BoxSpec::bottomThickness});
    expectTold<MountingSpec>(setMounting, project.fronts.mounting,
                             {&MountingSpec::length, &MountingSpec::fromSides,
                              &MountingSpec::fromBottom, &MountingSpec::fromTop,
                              &MountingSpec::pilotHole, &MountingSpec::clearanceHole},
                             {&MountingSpec::recess, &MountingSpec::toolDiameter});
    expectTold<HardwareSpec>(setHardware, project.fronts.hardware,
                             {&HardwareSpec::twoPast, &HardwareSpec::boltLength,
                              &HardwareSpec::counterbore, &HardwareSpec::counterboreDiameter,
                              &HardwareSpec::accessDiameter},
                             {&HardwareSpec::distance});
    MountingSpec unplaced = project.fronts.mounting;
    unplaced.pattern = ScrewPattern::ByHand;
    EXPECT_EQ(leftOf(setMounting(project, theCase, unplaced)), Words{});
    HardwareSpec hardware = project.fronts.hardware;
    hardware.opticalPart = 0;
    EXPECT_EQ(leftOf(setHardware(project, theCase, hardware)), Words{});
    hardware = project.fronts.hardware;
    hardware.twoAtPercent = 50;
    EXPECT_EQ(leftOf(setHardware(project, theCase, hardware)), Words{});
}

TEST(OwnEntriesThatCannotBe, AreTold) {
    const Project project = bank(2);
    const Catalogue small = smallCatalogue();
    EXPECT_EQ(leftOf(keepOwn(project, WoodScrew{})), Words{});
    WoodScrew screw = small.woodScrews.front();
    for (Length WoodScrew::*size :
         {&WoodScrew::shankDiameter, &WoodScrew::headDiameter, &WoodScrew::headHeight,
          &WoodScrew::clearanceHole, &WoodScrew::pilotHole}) {
        WoodScrew other = screw;
        other.*size = Length();
        EXPECT_EQ(leftOf(keepOwn(project, other)), Words{});
    }
    screw.rootDiameter = screw.shankDiameter * 2;
    EXPECT_EQ(leftOf(keepOwn(project, screw)), Words{});
    Bolt bolt = small.bolts.front();
    bolt.lengths = {in(1), in(1)};
    EXPECT_EQ(leftOf(keepOwn(project, bolt)), Words{});
    bolt.lengths = {Length()};
    EXPECT_EQ(leftOf(keepOwn(project, bolt)), Words{});
    bolt.majorDiameter = Length();
    EXPECT_EQ(leftOf(keepOwn(project, bolt)), Words{});
    HardwareForm form = small.hardware.front();
    form.footprint.width = Length();
    EXPECT_EQ(leftOf(keepOwn(project, form)), Words{});
    form.leastEngagement = form.threadDepth * 2;
    EXPECT_EQ(leftOf(keepOwn(project, form)), Words{});
    form.holes.clear();
    EXPECT_EQ(leftOf(keepOwn(project, form)), Words{});
    RunnerKind runner = small.runners.front();
    runner.sideClearance = -in(1);
    EXPECT_EQ(leftOf(keepOwn(project, runner)), Words{});
    Species wood = small.species.front();
    wood.gravity = SpecificGravity{49, GravityBasis::Green};
    EXPECT_EQ(leftOf(keepOwn(project, wood)), Words{});
    EXPECT_EQ(leftOf(removeOwn(project, EntryKind::Bolt, "7")), Words{});
}

TEST(WhatEditsOfPresetsRefuse, IsTold) {
    const Project project = edited(keepAsPreset(bank(2), theCase, PresetKind::Hardware, "Knobs"));
    const std::set<std::string> name{"Knobs"};
    EXPECT_EQ(leftOf(keepAsPreset(project, theCase, PresetKind::Hardware, "Knobs"), name), Words{});
    EXPECT_EQ(leftOf(keepAsPreset(project, theCase, PresetKind::Hardware, " ")), Words{});
    EXPECT_EQ(leftOf(keepAsPreset(project, theCase, PresetKind::Hardware, "1\n")), Words{});
    EXPECT_EQ(leftOf(removePreset(project, PresetKind::Box, "Knobs"), name), Words{});
    EXPECT_EQ(leftOf(changePresetTo(project, theCase, PresetKind::Box)), Words{});
}

TEST(ANumberThatOnlyFollows, TellsFromWhat) {
    const Planned planned(bank(2));
    std::size_t following = 0;
    for (const Quantity quantity : allQuantities(planned.plan)) {
        if (!typedEditName(quantity.kind).english.empty()) {
            EXPECT_EQ(untold(typedEditName(quantity.kind)), Words{});
            continue;
        }
        ++following;
        EXPECT_EQ(leftOf(setQuantity(planned.project, planned.plan, quantity, in(1))), Words{})
            << key(quantity.kind);
    }
    EXPECT_GT(following, 20U);
}

TEST(WhereAPartCannotGo, IsTold) {
    Project project = bank(2);
    project.fronts.hardware.twoPast = in(10);
    const Planned planned(project);
    const OpeningId first = planned.plan.fronts.at(0).opening;
    const PlacedPart handle{PlacedPart::Kind::Handle, first, 0};
    const auto moved = movePart(project, planned.plan, handle, {in(0, 16), Length()});
    ASSERT_TRUE(moved.ok());
    EXPECT_FALSE(moved.value().heldBecause.empty());
    EXPECT_EQ(untold(moved.value().heldBecause), Words{});
    EXPECT_EQ(leftOf(removeMountingHole(project, planned.plan, first, 99)), Words{});
    const auto quantities = allQuantities(planned.plan);
    const auto handleX = std::ranges::find(quantities, QuantityKind::HandleX, &Quantity::kind);
    ASSERT_NE(handleX, quantities.end());
    EXPECT_EQ(leftOf(setQuantity(project, planned.plan, *handleX, in(5))), Words{});
}

} // namespace
} // namespace frontwright
