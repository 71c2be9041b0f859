#include "core/plan/quantity.h"

#include "tests/core/plan/planned.h"
#include "tests/core/plan/round_case.h"
#include "tests/core/plan/seasons.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <set>

namespace frontwright {
namespace {

using testing::n64;

using testing::bank;
using testing::Planned;

using enum QuantityKind;

/// A bank of two openings 13 in × 6 in in stiles and rails of 1 1/2 in with a 1 1/4 in rail
/// between, overlays 1/4 in, at the top a gap of 1/4 in; bevelled and raised fronts 3/4 in thick.
Project raisedBank() {
    Project project = bank(2);
    project.fronts.profile = {ProfileFamily::Raised, n64(48), n64(16), n64(8),
                              PerSide<bool>::all(true)};
    project.fronts.fit.top = {Fit::Gap, n64(16)};
    return project;
}

struct Told {
    Quantity quantity;
    const char* formula;
    const char* figures;
};

// Worked by hand; in inches to 1/64, decimals where a metric handle's size is no whole number of
// them: 6 mm is 15.1/64 in, 16 mm 40.3/64 in.
const std::vector<Told> toldOfRaisedBank{
    {{CaseWidth}, "as given", "16 in"},
    {{CaseHeight}, "as given", "16 1/4 in"},
    {{MemberWidth}, "as given", "1 1/2 in"},
    {{MemberLength},
     "one end − the other, from the case's lower left corner",
     "16 1/4 in − 0 in = 16 1/4 in"},
    {{MemberReveal}, "member − overlay, where it is covered most", "1 1/2 in − 1/4 in = 1 1/4 in"},
    {{MemberWidth, 2}, "as given", "1 1/2 in"},
    {{MemberLength, 2},
     "one end − the other, from the case's lower left corner",
     "14 1/2 in − 1 1/2 in = 13 in"},
    {{MemberReveal, 2},
     "member − overlay, where it is covered most",
     "1 1/2 in − 1/4 in = 1 1/4 in"},
    {{MemberWidth, 4}, "as given", "1 1/4 in"},
    {{MemberLength, 4},
     "one end − the other, from the case's lower left corner",
     "14 1/2 in − 1 1/2 in = 13 in"},
    {{MemberReveal, 4},
     "member − overlay − overlay, where the fronts are nearest",
     "1 1/4 in − 3/4 in − 1/4 in = 1/4 in"},
    {{OpeningWidth},
     "opening's right edge − its left edge, from the case's left side",
     "14 1/2 in − 1 1/2 in = 13 in"},
    {{OpeningHeight},
     "opening's top − its bottom, from the case's lower edge",
     "14 3/4 in − 8 3/4 in = 6 in"},
    {{FrontWidth}, "opening + left overlay + right overlay", "13 in + 1/4 in + 1/4 in = 13 1/2 in"},
    {{FrontHeight},
     "opening + bottom overlay + top overlay",
     "6 in + 1/4 in + 1 1/4 in = 7 1/2 in"},
    {{FrontThickness}, "as given", "3/4 in"},
    {{OverlayLeft}, "as given", "1/4 in"},
    {{OverlayRight}, "as given", "1/4 in"},
    {{OverlayBottom}, "as given", "1/4 in"},
    {{OverlayTop}, "member − gap", "1 1/2 in − 1/4 in = 1 1/4 in"},
    {{GapLeft}, "member − overlay", "1 1/2 in − 1/4 in = 1 1/4 in"},
    {{GapRight}, "member − overlay", "1 1/2 in − 1/4 in = 1 1/4 in"},
    {{GapBottom},
     "member − overlay − overlay of the facing front",
     "1 1/4 in − 1/4 in − 3/4 in = 1/4 in"},
    {{GapTop}, "as given", "1/4 in"},
    {{EdgeThickness}, "thickness − profile's depth", "3/4 in − 1/4 in = 1/2 in"},
    {{FieldWidth},
     "front's width − profile at the left − profile at the right",
     "13 1/2 in − 3/4 in − 3/4 in = 12 in"},
    {{FieldHeight},
     "front's height − profile at the bottom − profile at the top",
     "7 1/2 in − 3/4 in − 3/4 in = 6 in"},
    {{BoxWidth}, "opening − 2 × side clearance", "13 in − 2 × 1/16 in = 12 7/8 in"},
    {{BoxHeight},
     "opening − clearance below − clearance above",
     "6 in − 1/8 in − 1/4 in = 5 5/8 in"},
    {{BoxDepth}, "as given", "16 in"},
    {{BoxSetback}, "the box wall is flush with the frame's face", "0 in"},
    {{BottomTop}, "groove height + bottom's thickness", "1/4 in + 1/4 in = 1/2 in"},
    {{ScrewLength},
     "longest stocked length from the least to the greatest",
     "3/4 in ≤ 1 in ≤ 1 in"},
    {{ScrewLeastLength}, "wall − recess + least penetration", "1/2 in − 1/8 in + 3/8 in = 3/4 in"},
    {{ScrewGreatestLength},
     "wall − recess + front behind the thinnest hole − least tip cover",
     "1/2 in − 1/8 in + 3/4 in − 1/8 in = 1 in"},
    {{ScrewPenetration}, "screw + recess − wall", "1 in + 1/8 in − 1/2 in = 5/8 in"},
    {{ScrewTipCover}, "front behind the hole − penetration", "3/4 in − 5/8 in = 1/8 in"},
    {{HoleX}, "the least allowed distance from the box's left side", "7/8 in"},
    {{HoleX, 0, 1},
     "box's width − the least allowed distance from its right side",
     "12 7/8 in − 7/8 in = 12 in"},
    {{HoleY}, "the least allowed distance from the box's lower edge", "7/8 in"},
    {{HoleY, 0, 2},
     "box's height − the least allowed distance from its top",
     "5 5/8 in − 3/8 in = 5 1/4 in"},
    {{LeastHoleHeight},
     "top of the bottom + radius of the recess tool, which is more than head radius + margin",
     "1/2 in + 5/16 in = 13/16 in"},
    {{HandleX}, "half the front's width", "13 1/2 in / 2 = 6 3/4 in"},
    {{HandleY}, "half the front's height", "7 1/2 in / 2 = 3 3/4 in"},
    {{BoltGrip}, "front + wall − counterbore", "3/4 in + 1/2 in − 0 in = 1 1/4 in"},
    {{BoltGrip, 0, 1}, "front − counterbore", "3/4 in − 3/32 in = 21/32 in"},
    {{BoltGrip, 0, 2}, "front − counterbore", "3/4 in − 0 in = 3/4 in"},
    {{BoltLeastLength}, "grip + least engagement", "1 1/4 in + 0.2362 in = 1.486 in ≈ 1 1/2 in"},
    {{BoltLeastLength, 0, 1},
     "grip + least engagement",
     "21/32 in + 0.2362 in = 0.892 in ≈ 29/32 in"},
    {{BoltLeastLength, 0, 2}, "grip + least engagement", "3/4 in + 0.2362 in = 0.986 in ≈ 1 in"},
    {{BoltGreatestLength}, "grip + thread depth", "1 1/4 in + 0.6299 in = 1.88 in ≈ 1 7/8 in"},
    {{BoltGreatestLength, 0, 1},
     "grip + thread depth",
     "21/32 in + 0.6299 in = 1.286 in ≈ 1 9/32 in"},
    {{BoltGreatestLength, 0, 2}, "grip + thread depth", "3/4 in + 0.6299 in = 1.38 in ≈ 1 3/8 in"},
    {{BoltLength},
     "shortest stocked length from the least to the greatest",
     "1.4862 in ≤ 1 1/2 in ≤ 1.8799 in"},
    {{BoltLength, 0, 1},
     "shortest stocked length from the least to the greatest",
     "0.8925 in ≤ 1 in ≤ 1.2862 in"},
    {{BoltLength, 0, 2},
     "shortest stocked length from the least to the greatest",
     "0.9862 in ≤ 1 in ≤ 1.3799 in"},
    {{Counterbore}, "none", "0 in"},
    {{Counterbore, 0, 1}, "height of the bolt's head, so that it lies flush", "3/32 in"},
    {{Counterbore, 0, 2}, "none", "0 in"},
    {{WoodUnderHead}, "front + wall − counterbore", "3/4 in + 1/2 in − 0 in = 1 1/4 in"},
    {{WoodUnderHead, 0, 1}, "front − counterbore", "3/4 in − 3/32 in = 21/32 in"},
    {{WoodUnderHead, 0, 2}, "front − counterbore", "3/4 in − 0 in = 3/4 in"},
    {{FrontHeight, 1}, "opening + bottom overlay + top overlay", "6 in + 1/4 in + 3/4 in = 7 in"},
    {{OverlayTop, 1},
     "member − gap − overlay of the facing front",
     "1 1/4 in − 1/4 in − 1/4 in = 3/4 in"},
    {{GapBottom, 1}, "member − overlay", "1 1/2 in − 1/4 in = 1 1/4 in"},
    {{GapTop, 1}, "as given", "1/4 in"},
    {{HoleY, 1, 2},
     "box's height − the least allowed distance from its top",
     "5 5/8 in − 3/8 in = 5 1/4 in"},
    {{SpacerWidth}, "member − overlay − overlay", "1 1/4 in − 3/4 in − 1/4 in = 1/4 in"},
    {{StopFromFarEdge}, "member − overlay", "1 1/2 in − 1/4 in = 1 1/4 in"},
    {{StopFromOpening}, "the front's overlay at that side", "1/4 in"},
};

TEST(QuantityKinds, TellTheirFormulaAndItsFigures) {
    const Planned planned(raisedBank());
    for (const Told& told : toldOfRaisedBank) {
        const auto derivation =
            derive(planned.project, planned.plan, told.quantity, {Unit::Inch, 64});
        ASSERT_TRUE(derivation.has_value()) << key(told.quantity.kind);
        EXPECT_EQ(derivation->formula, told.formula) << key(told.quantity.kind);
        EXPECT_EQ(derivation->figures, told.figures) << key(told.quantity.kind);
    }
}

TEST(QuantityKinds, AreAllTold) {
    std::set<QuantityKind> told;
    for (const Told& entry : toldOfRaisedBank)
        told.insert(entry.quantity.kind);
    const auto isOfRunner = [](QuantityKind kind) {
        return kind >= SideClearance && kind <= BoxSwelling;
    };
    const auto isOfHolding = [](QuantityKind kind) {
        return (kind >= CaseWeight && kind <= CaseStorage) ||
               (kind >= ClearanceHole && kind <= ScrewPull) ||
               (kind >= BoltEngagement && kind <= StorageVolume);
    };
    const auto isOfFiller = [](QuantityKind kind) {
        return kind >= FillerWidth && kind <= FillerLeastThickness;
    };
    const auto isOfSpace = [](QuantityKind kind) {
        return kind == SpaceWidth || kind == SpaceHeight;
    };
    for (int kind = 0; kind <= static_cast<int>(lastQuantityKind); ++kind) {
        const auto each = static_cast<QuantityKind>(kind);
        // Those of the season: quantity_season_test.cpp; of holding and weight:
        // holding_quantities_test.cpp; of runners: runner_quantities_test.cpp; of fittings:
        // fitting_quantities_test.cpp; of what stands round the case: round_case_test.cpp; of
        // filler strips: shared_box_test.cpp; of spaces: opening_use_plan_test.cpp.
        EXPECT_NE(told.contains(each), testing::isOfSeason(each) || isOfHolding(each) ||
                                           isOfRunner(each) || isOfFiller(each) ||
                                           isOfSpace(each) || testing::isRoundCase(each))
            << key(each);
    }
}

TEST(QuantityKinds, OfAnInsetFrontSetItsBoxBack) {
    Project project = bank(1);
    project.fronts.fit = FrontFit::all({Fit::Inset, n64(4)});
    const Planned planned(std::move(project));
    const auto setback = derive(planned.project, planned.plan, {BoxSetback}, {Unit::Inch, 16});
    EXPECT_EQ(setback->formula, "front's thickness, as the front lies in the opening");
    EXPECT_EQ(setback->figures, "3/4 in");
    EXPECT_EQ(setback->inputs, (std::vector{InputPlace::Fit, InputPlace::Thickness}));
}

TEST(QuantityKinds, OfHolesPlacedByHandAreAsGiven) {
    Project project = bank(1);
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    project.fronts.mounting.placed = {{n64(100), n64(120)}};
    const Planned planned(std::move(project));
    for (const QuantityKind kind : {HoleX, HoleY}) {
        const auto place = derive(planned.project, planned.plan, {kind}, {Unit::Inch, 16});
        EXPECT_EQ(place->formula, "as given");
        EXPECT_EQ(place->source.kind, SourceKind::Maker);
    }
}

TEST(QuantityKinds, OfTypedRowsSayFromWhere) {
    Project project = bank(1);
    project.fronts.mounting.fromTop = n64(48);
    project.fronts.mounting.fromSides = n64(96);
    const Planned planned(std::move(project));
    const auto told = [&](Quantity quantity) {
        return derive(planned.project, planned.plan, quantity, {Unit::Inch, 16}).value();
    };
    EXPECT_EQ(told({HoleY, 0, 2}).formula, "box's height − the given distance from its top");
    EXPECT_EQ(told({HoleY, 0, 2}).figures, "5 5/8 in − 3/4 in = 4 7/8 in");
    EXPECT_EQ(told({HoleX, 0, 1}).formula, "box's width − the given distance from its right side");
    EXPECT_EQ(told({HoleX, 0, 0}).figures, "1 1/2 in");
}

TEST(QuantityKinds, OfTheMiddleHoleOfSixIsHalfTheBox) {
    Project project = bank(1);
    project.fronts.mounting.pattern = ScrewPattern::Six;
    project.fronts.hardware.form.clear();
    const Planned planned(std::move(project));
    const auto middle = derive(planned.project, planned.plan, {HoleX, 0, 1}, {Unit::Inch, 16});
    EXPECT_EQ(middle->formula, "half the box's width");
    EXPECT_EQ(middle->figures, "12 7/8 in / 2 = 6 7/16 in");
}

TEST(QuantityKinds, OfEveryPlacingSayHowTheCentreCameAbout) {
    const auto told = [](const std::function<void(HardwareSpec&)>& change, QuantityKind kind) {
        Project project = bank(1);
        project.fronts.profile = {
            ProfileFamily::Chamfer, n64(64), n64(16), {}, PerSide<bool>{true, true, true, false}};
        change(project.fronts.hardware);
        const Planned planned(std::move(project));
        return derive(planned.project, planned.plan, {kind}, {Unit::Inch, 64}).value();
    };
    const auto placed = [&](Placing placing) {
        return told(
            [placing](HardwareSpec& h) {
                h.placing = placing;
                h.distance = n64(96);
            },
            HandleY);
    };
    // Front 6 1/2 in high, its field from 1 in up.
    EXPECT_EQ(placed(Placing::CentredOnFront).figures, "6 1/2 in / 2 = 3 1/4 in");
    EXPECT_EQ(placed(Placing::CentredInField).figures, "1 in + 5 1/2 in / 2 = 3 3/4 in");
    EXPECT_EQ(placed(Placing::FromTop).figures, "6 1/2 in − 1 1/2 in = 5 in");
    EXPECT_EQ(placed(Placing::OpticalCentre).figures,
              "6 1/2 in / 2 + 6 1/2 in / 20 = 3.575 in ≈ 3 37/64 in");
    const Derivation byHand = told(
        [](HardwareSpec& h) {
            h.placedAt = FrontPoint{n64(200), n64(160)};
        },
        HandleX);
    EXPECT_EQ(byHand.formula, "handle's centre");
    EXPECT_EQ(byHand.source.kind, SourceKind::Maker);
    const Derivation ofTwo = told(
        [](HardwareSpec& h) {
            h.twoPast = n64(640);
            h.twoAtPercent = 20;
        },
        HandleX);
    EXPECT_EQ(ofTwo.formula, "front's width × 20 per cent");
    EXPECT_EQ(ofTwo.figures, "13 1/2 in × 20 / 100 = 2.7 in ≈ 2 45/64 in");
}

TEST(QuantityKinds, OfACounterboreAsDeepAsTheBoltNeedsSayWhy) {
    Project project = bank(1);
    project.fronts.hardware.way = MountingWay::FrontCounterbore;
    project.fronts.hardware.boltLength = Length::fromMicrometres(20'000);
    const Planned planned(std::move(project));
    const auto depth =
        derive(planned.project, planned.plan, {Counterbore, 0, 1}, {Unit::Millimetre, 16});
    EXPECT_EQ(depth->formula, "front + least engagement − bolt");
    EXPECT_EQ(depth->figures, "19.05 mm + 6 mm − 20 mm = 5.05 mm ≈ 5.1 mm"); // 19.05 + 6 − 20
}

TEST(QuantityKinds, OfTheWoodUnderAShortBoltsHeadCountTheCounterboreThatCuresIt) {
    Project project = bank(1);
    project.fronts.hardware.way = MountingWay::FrontAccessHole;
    project.fronts.hardware.boltLength = Length::fromMicrometres(20'000);
    const Planned planned(std::move(project));
    const auto left =
        derive(planned.project, planned.plan, {WoodUnderHead, 0, 2}, {Unit::Millimetre, 16});
    EXPECT_EQ(left->formula, "front − the counterbore that makes the bolt long enough");
    EXPECT_EQ(left->value, Length::fromMicrometres(14'000)); // bolt − engagement
}

TEST(QuantityKinds, OfAGapMeasuredAcrossToAnInsetFrontEndAtTheMember) {
    const Planned planned(
        testing::sideBySide({Fit::Overlay, n64(16)}, {Fit::Inset, n64(4)}, Length::inches(2)));
    const auto gap = derive(planned.project, planned.plan, {GapRight, 0}, {Unit::Inch, 16});
    EXPECT_EQ(gap->figures, "2 in − 1/4 in − 0 in = 1 3/4 in");
    const auto insetGap = derive(planned.project, planned.plan, {GapLeft, 1}, {Unit::Inch, 16});
    EXPECT_EQ(insetGap->formula, "as given");
}

TEST(QuantityKinds, OfAnEdgeWithoutProfileAreTheThickness) {
    const Planned planned(bank(1));
    const auto edge = derive(planned.project, planned.plan, {EdgeThickness}, {Unit::Inch, 16});
    EXPECT_EQ(edge->formula, "thickness, as no profile takes from the edge");
    EXPECT_EQ(edge->figures, "3/4 in");
}

} // namespace
} // namespace frontwright
