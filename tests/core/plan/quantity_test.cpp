#include "core/plan/quantity.h"

#include "tests/core/plan/planned.h"
#include "tests/core/plan/round_case.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::millimetres;
using testing::n64;
using testing::sixteenths;
using testing::sixtyFourths;

using testing::bank;
using testing::banks;
using testing::oneOpening;
using testing::Planned;
using testing::sideBySide;

using enum QuantityKind;

Derivation derived(const Planned& planned, Quantity quantity, LengthStyle style = sixteenths) {
    auto derivation = derive(planned.project, planned.plan, quantity, style);
    EXPECT_TRUE(derivation.has_value()) << key(quantity.kind);
    return derivation.value_or(Derivation{});
}
std::string figuresOf(const Planned& planned, Quantity quantity, LengthStyle style = sixteenths) {
    return derived(planned, quantity, style).figures.english();
}

// Common practice, no source: opening 12 5/8 in with 1/4 in all round takes a front of 13 1/8 in.
TEST(Derivation, OfAFrontIsItsOpeningPlusBothOverlays) {
    const Planned planned(oneOpening(Length::inches(12, 40), Length::inches(6)));
    const Derivation width = derived(planned, {FrontWidth});
    EXPECT_EQ(width.name, "Front width");
    EXPECT_EQ(width.value, Length::inches(13, 8));
    EXPECT_EQ(width.formula, "opening + left overlay + right overlay");
    EXPECT_EQ(width.figures, "12 5/8 in + 1/4 in + 1/4 in = 13 1/8 in");
    EXPECT_EQ(width.source.title, "common practice, no source");
    EXPECT_EQ(width.inputs, (std::vector{InputPlace::Divisions, InputPlace::Fit}));
}

TEST(Derivation, OfAnInsetFrontTakesItsGapsAway) {
    Project project = oneOpening(Length::inches(12, 40), Length::inches(6));
    project.fronts.fit = FrontFit::all({Fit::Inset, n64(4)});
    const Planned planned(std::move(project));
    EXPECT_EQ(derived(planned, {FrontWidth}).formula, "opening − left gap − right gap");
    EXPECT_EQ(figuresOf(planned, {FrontWidth}), "12 5/8 in − 1/16 in − 1/16 in = 12 1/2 in");
    EXPECT_EQ(figuresOf(planned, {GapLeft}), "1/16 in");
    EXPECT_FALSE(valueOf(planned.plan, {OverlayLeft}).has_value());
}

// Common practice, no source: rail 1 1/4 in, overlays 1/4 in, spacer 3/4 in.
TEST(Derivation, OfASpacerIsTheMemberLessBothOverlays) {
    const Planned planned(bank(2));
    EXPECT_EQ(figuresOf(planned, {SpacerWidth}), "1 1/4 in − 1/4 in − 1/4 in = 3/4 in");
    EXPECT_EQ(figuresOf(planned, {GapBottom, 0}), "1 1/4 in − 1/4 in − 1/4 in = 3/4 in");
    EXPECT_EQ(figuresOf(planned, {MemberReveal, 4}), "1 1/4 in − 1/4 in − 1/4 in = 3/4 in");
}

TEST(Derivation, OfAStopTellsBothWaysToSetItUp) {
    const Planned planned(oneOpening(Length::inches(12), Length::inches(6)));
    EXPECT_EQ(figuresOf(planned, {StopFromFarEdge}), "1 1/2 in − 1/4 in = 1 1/4 in");
    EXPECT_EQ(figuresOf(planned, {StopFromOpening}), "1/4 in");
}

TEST(Derivation, OfOverlaysThatFollowFromAGapHalvesWhatItLeaves) {
    const SideFit gap{Fit::Gap, n64(8)};
    const Planned both(sideBySide(gap, gap, Length::inches(2)));
    EXPECT_EQ(figuresOf(both, {OverlayRight, 0}), "(2 in − 1/8 in) / 2 = 15/16 in");
    EXPECT_EQ(figuresOf(both, {GapRight, 0}), "1/8 in");
    EXPECT_EQ(derived(both, {GapRight, 0}).source.kind, SourceKind::Maker);
    const Planned one(sideBySide(gap, {Fit::Overlay, n64(16)}, Length::inches(2)));
    EXPECT_EQ(figuresOf(one, {OverlayRight, 0}), "2 in − 1/8 in − 1/4 in = 1 5/8 in");
    EXPECT_EQ(figuresOf(one, {GapLeft, 1}), "2 in − 1/4 in − 1 5/8 in = 1/8 in");
}

TEST(Derivation, OfABoxFollowsTheRunnersClearances) {
    const Planned planned(oneOpening(Length::inches(13), Length::inches(6)));
    EXPECT_EQ(figuresOf(planned, {BoxWidth}), "13 in − 2 × 1/16 in = 12 7/8 in");
    EXPECT_EQ(figuresOf(planned, {BoxHeight}), "6 in − 1/8 in − 1/4 in = 5 5/8 in");
    EXPECT_EQ(figuresOf(planned, {BottomTop}), "1/4 in + 1/4 in = 1/2 in");
    EXPECT_EQ(figuresOf(planned, {BoxSetback}), "0 in");
    EXPECT_EQ(derived(planned, {BoxDepth}).source.kind, SourceKind::Maker);
}

TEST(Derivation, OfAScrewTellsItsWindow) {
    const Planned planned(oneOpening(Length::inches(13), Length::inches(6)));
    EXPECT_EQ(figuresOf(planned, {ScrewLeastLength}), "1/2 in − 1/8 in + 3/8 in = 3/4 in");
    EXPECT_EQ(figuresOf(planned, {ScrewGreatestLength}),
              "1/2 in − 1/8 in + 3/4 in − 1/8 in = 1 in");
    EXPECT_EQ(figuresOf(planned, {ScrewLength}), "3/4 in ≤ 1 in ≤ 1 in");
    EXPECT_EQ(figuresOf(planned, {ScrewPenetration}), "1 in + 1/8 in − 1/2 in = 5/8 in");
    EXPECT_EQ(figuresOf(planned, {ScrewTipCover}), "3/4 in − 5/8 in = 1/8 in");
}

TEST(Derivation, OfTheLeastHoleHeightNamesWhatDecidesIt) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    const Planned byTool(project);
    EXPECT_EQ(figuresOf(byTool, {LeastHoleHeight}), "1/2 in + 5/16 in = 13/16 in");
    project.fronts.mounting.toolDiameter = n64(24);
    const Planned byMargin(project);
    EXPECT_EQ(figuresOf(byMargin, {LeastHoleHeight}, sixtyFourths),
              "1/2 in + 5/32 in + 1/8 in = 25/32 in");
    EXPECT_EQ(derived(byMargin, {LeastHoleHeight}).formula,
              "top of the bottom + head radius + margin");
}

TEST(Derivation, OfAHandleHoleStartsFromTheHandlesCentre) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.hardware.form = "pull-96";
    const Planned planned(std::move(project));
    EXPECT_EQ(figuresOf(planned, {HandleX, 0, 0}, millimetres),
              "342.9 mm / 2 − 48 mm = 123.45 mm ≈ 123.5 mm");
    EXPECT_EQ(figuresOf(planned, {HandleX, 0, 1}, millimetres),
              "342.9 mm / 2 + 48 mm = 219.45 mm ≈ 219.5 mm");
    EXPECT_EQ(figuresOf(planned, {HandleY, 0, 0}), "6 1/2 in / 2 = 3 1/4 in");
}

TEST(Derivation, OfABoltAddsUpWhatItGoesThrough) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.hardware.counterbore = n64(8);
    const Planned planned(std::move(project));
    EXPECT_EQ(figuresOf(planned, {BoltGrip, 0, 0}), "3/4 in + 1/2 in − 1/8 in = 1 1/8 in");
    EXPECT_EQ(figuresOf(planned, {BoltGrip, 0, 1}), "3/4 in − 1/8 in = 5/8 in");
    EXPECT_EQ(derived(planned, {BoltGrip, 0, 0}).formula, "front + wall − counterbore");
    EXPECT_EQ(figuresOf(planned, {BoltLeastLength, 0, 1}, millimetres),
              "15.875 mm + 6 mm = 21.875 mm ≈ 21.9 mm");
}

TEST(Derivation, CallsAMakersDecisionWhatItIs) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.mounting.length = n64(80);
    project.limits.leastPenetration = n64(20);
    const Planned planned(std::move(project));
    const Derivation length = derived(planned, {ScrewLength});
    EXPECT_EQ(length.formula, "as given");
    EXPECT_EQ(length.figures, "1 1/4 in");
    EXPECT_EQ(length.source, (Source{SourceKind::Maker, "as the maker decided"}));
    EXPECT_EQ(derived(planned, {ScrewLeastLength}).source.kind, SourceKind::Maker);
    EXPECT_EQ(derived(planned, {ScrewGreatestLength}).source.kind, SourceKind::CommonPractice);
}

TEST(Derivation, IsMissingWhereThePlanHasNoSuchNumber) {
    Project project = oneOpening(Length::inches(13), Length::inches(6));
    project.fronts.hardware.form.clear();
    project.fronts.thickness = n64(24); // nothing fits
    const Planned planned(std::move(project));
    const auto has = [&](Quantity quantity) {
        return derive(planned.project, planned.plan, quantity, sixteenths).has_value();
    };
    EXPECT_FALSE(has({ScrewLength}));
    EXPECT_FALSE(has({ScrewTipCover}));
    EXPECT_TRUE(has({ScrewLeastLength}));
    EXPECT_FALSE(has({HandleX}));
    EXPECT_FALSE(has({BoltGrip}));
    EXPECT_FALSE(has({SpacerWidth}));
    EXPECT_FALSE(has({FrontWidth, 1}));
    EXPECT_FALSE(has({FrontWidth, 0, 1}));
    EXPECT_FALSE(has({HoleX, 0, 4}));
    EXPECT_FALSE(has({MemberWidth, 4}));
}

TEST(Quantities, AreThePlansOwnNumbers) {
    const Planned planned(bank(2));
    const FrontPlan& front = planned.front(1);
    const auto value = [&](QuantityKind kind, std::uint32_t index = 0) {
        return valueOf(planned.plan, {kind, 1, index});
    };
    EXPECT_EQ(value(OpeningHeight), front.openingRect.height());
    EXPECT_EQ(value(FrontHeight), front.rect.height());
    EXPECT_EQ(value(FrontThickness), front.thickness);
    EXPECT_EQ(value(OverlayTop), front.overlay.top);
    EXPECT_EQ(value(GapTop), front.neighbours.top.gap);
    EXPECT_EQ(value(FieldHeight), front.field.height());
    EXPECT_EQ(value(BoxDepth), front.box.depth);
    EXPECT_EQ(value(ScrewLength), front.mounting.length);
    EXPECT_EQ(value(HoleX, 2), front.mounting.holes[2].at.x);
    EXPECT_EQ(value(HandleY), front.hardware->holes[0].y);
    EXPECT_EQ(value(BoltGreatestLength, 1), front.hardware->ways[1].greatestLength);
    EXPECT_EQ(value(WoodUnderHead, 2), front.hardware->ways[2].leftUnderHead);
    EXPECT_EQ(valueOf(planned.plan, {CaseWidth}), planned.plan.outline.width());
    EXPECT_EQ(valueOf(planned.plan, {MemberLength, 4}), planned.plan.members[4].rect.width());
}

TEST(Quantities, OfAFrontComeInTheOrderInWhichTheyAreShown) {
    const Planned planned(bank(2));
    const auto listed = quantitiesOfFront(planned.plan, 1);
    EXPECT_TRUE(std::is_sorted(listed.begin(), listed.end()));
    EXPECT_EQ(listed.front(), (Quantity{OpeningWidth, 1}));
    EXPECT_EQ(listed.back(), (Quantity{StorageVolume, 1}));
    for (const Quantity quantity : listed)
        EXPECT_EQ(quantity.item, 1U);
}

Project onRunners(const Project& project, std::size_t front, const char* runner) {
    return testing::withChoices(project, front, [&](FrontChoices& choices) {
        choices.box = project.fronts.box;
        choices.box->runner = runner;
    });
}

TEST(Quantities, AreAllListedOnce) {
    Project project = testing::roundedWith(banks(2, 3));
    testing::oakInAir(project, 8, 6, 12);
    project = testing::withChoices(project, 0, [](FrontChoices& choices) {
        choices.stock = Stock{"oak", Cut::FlatSawn, Grain::AlongHeight, Build::Solid};
    });
    project.fronts.box.runner = "side-mounted";
    project.fronts.box.wood = "oak";
    project.fronts.box.toCaseSide = Length::inches(0, 48);
    project = onRunners(onRunners(project, 1, "rails"), 2, "middle");
    project.fronts.hardware.way = MountingWay::FrontAccessHole;
    project.fronts.hardware.form = "pull-96";
    project.fronts.hardware.fittings.emplace_back().form = "lock";
    const Planned planned(project);
    const auto all = allQuantities(planned.plan);
    EXPECT_EQ(std::set<Quantity>(all.begin(), all.end()).size(), all.size());
    std::set<QuantityKind> kinds;
    for (const Quantity quantity : all)
        kinds.insert(quantity.kind);
    // Those of filler strips: shared_box_test.cpp; of open spaces: opening_use_plan_test.cpp.
    constexpr auto ofFillers =
        static_cast<std::size_t>(FillerLeastThickness) - static_cast<std::size_t>(FillerWidth) + 1;
    EXPECT_EQ(kinds.size() + ofFillers + 2, static_cast<std::size_t>(lastQuantityKind) + 1);
}

TEST(QuantityKeys, AreStableNamesInLowerCaseAllDifferent) {
    EXPECT_EQ(key(FrontWidth), "front_width");
    EXPECT_EQ(key(OverlayLeft), "overlay_left");
    EXPECT_EQ(key(StopFromFarEdge), "stop_from_far_edge");
    std::set<std::string_view> keys, names;
    for (int kind = 0; kind <= static_cast<int>(lastQuantityKind); ++kind) {
        keys.insert(key(static_cast<QuantityKind>(kind)));
        names.insert(nameOf(static_cast<QuantityKind>(kind)).english);
    }
    EXPECT_EQ(keys.size(), static_cast<std::size_t>(lastQuantityKind) + 1);
    EXPECT_EQ(names.size(), keys.size());
}

} // namespace
} // namespace frontwright
