#include "core/edits/typed.h"

#include "core/edits/choices.h"
#include "tests/core/edits/edited.h"
#include "tests/core/plan/planned.h"

#include <gtest/gtest.h>

using namespace frontwright;
using namespace frontwright::testing;

namespace {

using enum QuantityKind;

constexpr Length sixteenth = Length::fromSixtyFourths(4);

/// The case after the number was typed.
Project typedInto(const Planned& planned, Quantity quantity, WrittenLength value) {
    return edited(setQuantity(planned.project, planned.plan, quantity, value));
}

Length valueIn(const Project& project, Quantity quantity) {
    const Planned planned(project);
    const auto value = valueOf(planned.plan, quantity);
    EXPECT_TRUE(value) << key(quantity.kind);
    return value.value_or(Length());
}

std::string named(Quantity quantity) {
    return std::string(key(quantity.kind)) + " of " + std::to_string(quantity.item) + ", " +
           std::to_string(quantity.index);
}

/// Two columns of two: openings 13 in × 6 in, stile 2 in, rails 1 1/4 in, overlays 1/4 in.
Project fourFronts() {
    return banks(2, 2);
}
Project withFit(SideFit fit) {
    Project project = fourFronts();
    project.fronts.fit = FrontFit::all(fit);
    return project;
}
Project withPulls() {
    Project project = fourFronts();
    project.fronts.hardware.form = "pull-96";
    return project;
}

/// Every number of the case that can be typed comes out as it was typed, a step larger and smaller.
void expectTypedNumbersToHold(const Project& project, std::size_t leastCount) {
    const Planned planned(project);
    std::size_t count = 0;
    for (const Quantity quantity : allQuantities(planned.plan)) {
        const auto value = valueOf(planned.plan, quantity);
        if (!value || typedEditName(quantity.kind).english.empty())
            continue;
        for (const Length step : {sixteenth, -sixteenth}) {
            if (*value + step < Length())
                continue;
            const Length typed = *value + step;
            const auto result = setQuantity(planned.project, planned.plan, quantity, typed);
            ASSERT_TRUE(result.ok()) << named(quantity) << ": " << result.error().sentence();
            EXPECT_EQ(valueIn(result.value(), quantity), typed) << named(quantity);
            ++count;
        }
    }
    EXPECT_GE(count, leastCount);
}

} // namespace

TEST(TypedNumber, FrontWidthSetsItsOpening) {
    const Planned planned(fourFronts());
    // 14 in − 2 × 1/4 in = 13 1/2 in; the other column gives up the 1/2 in.
    const Project after = typedInto(planned, {FrontWidth, 0}, in(14));
    EXPECT_EQ(valueIn(after, {OpeningWidth, 0}), in(13, 32));
    EXPECT_EQ(valueIn(after, {FrontWidth, 0}), in(14));
    const Planned again(after);
    Length widths;
    for (std::uint32_t i = 0; i < 4; ++i)
        widths += *valueOf(again.plan, {OpeningWidth, i});
    EXPECT_EQ(widths, in(52));
}

TEST(TypedNumber, FrontHeightSetsItsOpening) {
    const Planned planned(fourFronts());
    const Project after = typedInto(planned, {FrontHeight, 1}, in(7));
    EXPECT_EQ(valueIn(after, {OpeningHeight, 1}), in(6, 32));
    EXPECT_EQ(valueIn(after, {CaseHeight, 0}), valueIn(fourFronts(), {CaseHeight, 0}));
}

TEST(TypedNumber, GapBetweenOverlaysLeavesTheOtherOverlay) {
    const Planned planned(bank(2));
    // Rail 1 1/4 in, the other overlay 1/4 in: a gap of 1/8 in asks for 1 1/4 − 1/8 − 1/4 = 7/8 in.
    const Project after = typedInto(planned, {GapBottom, 0}, in(0, 8));
    EXPECT_EQ(valueIn(after, {GapBottom, 0}), in(0, 8));
    EXPECT_EQ(valueIn(after, {OverlayBottom, 0}), in(0, 56));
    EXPECT_EQ(valueIn(after, {OverlayTop, 1}), in(0, 16));
}

TEST(TypedNumber, GapBetweenTwoThatAskForOneIsAskedOfBoth) {
    Project project = bank(2);
    project.fronts.fit = FrontFit::all({Fit::Gap, in(0, 32)});
    const Planned planned(project);
    const Project after = typedInto(planned, {GapBottom, 0}, in(0, 16));
    EXPECT_EQ(valueIn(after, {GapBottom, 0}), in(0, 16));
    EXPECT_EQ(valueIn(after, {GapTop, 1}), in(0, 16));
    // (1 1/4 in − 1/4 in) / 2 each.
    EXPECT_EQ(valueIn(after, {OverlayTop, 1}), in(0, 32));
}

TEST(TypedNumber, SpacerIsSharedByBothFronts) {
    const Planned planned(bank(2));
    const Project after = typedInto(planned, {SpacerWidth, 0}, in(0, 16));
    EXPECT_EQ(valueIn(after, {SpacerWidth, 0}), in(0, 16));
    EXPECT_EQ(valueIn(after, {OverlayBottom, 0}), in(0, 32));
    EXPECT_EQ(valueIn(after, {OverlayTop, 1}), in(0, 32));
}

TEST(TypedNumber, StopFromTheFarEdgeIsTheMemberLessTheOverlay) {
    const Planned planned(bank(2));
    // Stile 1 1/2 in: a stop of 1 in leaves an overlay of 1/2 in.
    const Project after = typedInto(planned, {StopFromFarEdge, 0}, in(1));
    EXPECT_EQ(valueIn(after, {StopFromFarEdge, 0}), in(1));
    EXPECT_EQ(valueIn(after, {StopFromOpening, 0}), in(0, 32));
}

TEST(TypedNumber, NegativeOverlayMeansInset) {
    const Planned planned(bank(2));
    const Project after = typedInto(planned, {OverlayLeft, 0}, -in(0, 6));
    const Planned again(after);
    EXPECT_EQ(again.front(0).fit.left, Fit::Inset);
    EXPECT_EQ(again.front(0).overlay.left, -in(0, 6));
    EXPECT_EQ(again.front(1).fit.left, Fit::Overlay);
}

TEST(TypedNumber, OneHoleMovesAndTheOthersStay) {
    const Planned planned(bank(2));
    const Project after = typedInto(planned, {HoleX, 0, 1}, in(11));
    const Planned again(after);
    const auto& before = planned.front(0).mounting.holes;
    const auto& holes = again.front(0).mounting.holes;
    ASSERT_EQ(holes.size(), before.size());
    for (std::size_t i = 0; i < holes.size(); ++i) {
        EXPECT_EQ(holes[i].at.x, i == 1 ? in(11) : before[i].at.x) << i;
        EXPECT_EQ(holes[i].at.y, before[i].at.y) << i;
    }
    EXPECT_EQ(again.front(1).mounting.holes[1].at.x, before[1].at.x);
}

TEST(TypedNumber, AHandleMovesWithItsHoles) {
    const Planned planned(withPulls());
    const Project after = typedInto(planned, {HandleX, 0, 1}, in(9));
    EXPECT_EQ(valueIn(after, {HandleX, 0, 1}), in(9));
    EXPECT_EQ(valueIn(after, {HandleX, 0, 0}), in(9) - Length::millimetres(96));
}

TEST(TypedNumber, OneFrontsThicknessIsItsOwn) {
    const Planned planned(bank(2));
    const Project after = typedInto(planned, {FrontThickness, 1}, in(1));
    EXPECT_EQ(valueIn(after, {FrontThickness, 1}), in(1));
    EXPECT_EQ(valueIn(after, {FrontThickness, 0}), in(0, 48));
}

TEST(TypedNumber, StaysWrittenAsTheMakerWroteIt) {
    const Planned planned(bank(2));
    const WrittenLength metric(Length::millimetres(420), Notation::Millimetre);
    const WrittenLength stile(Length::millimetres(42), Notation::Millimetre);
    EXPECT_EQ(typedInto(planned, {CaseWidth}, metric).casework.width, metric);
    EXPECT_EQ(typedInto(planned, {MemberWidth, 0}, stile).casework.frame.left, stile);
}

TEST(TypedNumber, ComesOutAsTypedForOverlayFronts) {
    expectTypedNumbersToHold(fourFronts(), 150);
}
TEST(TypedNumber, ComesOutAsTypedForFrontsWithAGap) {
    expectTypedNumbersToHold(withFit({Fit::Gap, in(0, 8)}), 150);
}
TEST(TypedNumber, ComesOutAsTypedForInsetFronts) {
    expectTypedNumbersToHold(withFit({Fit::Inset, in(0, 8)}), 100);
}
TEST(TypedNumber, ComesOutAsTypedForFrontsWithPulls) {
    expectTypedNumbersToHold(withPulls(), 150);
}

TEST(TypedNumber, ThatFollowsFromOthersSaysFromWhich) {
    const Planned planned(fourFronts());
    const std::vector<std::pair<QuantityKind, std::string>> expected{
        {MemberLength, "Member length: follows from the parts that it runs between"},
        {MemberReveal, "Reveal: follows from the member's width and the overlays"},
        {EdgeThickness, "Edge thickness: follows from the edge profile"},
        {FieldWidth, "Field width: follows from the edge profile"},
        {FieldHeight, "Field height: follows from the edge profile"},
        {BoxWidth, "Box width: follows from the opening and the side clearance"},
        {BoxSetback, "Box setback: follows from how the front fits and its thickness"},
        {BottomTop, "Top of the bottom: follows from the groove's height and the bottom"},
        {ScrewPenetration, "Screw penetration: follows from screw, recess, wall and front"},
        {ScrewTipCover, "Tip cover: follows from screw, recess, wall and front"},
        {LeastHoleHeight, "Least hole height: follows from the bottom and the recess tool"},
        {BoltGrip, "Grip: follows from front, wall and counterbore"},
        {WoodUnderHead, "Wood under the bolt's head: follows from front, wall and counterbore"}};
    for (const auto& [kind, sentence] : expected)
        EXPECT_EQ(refusal(setQuantity(planned.project, planned.plan, {kind}, in(1))),
                  sentence + "; change that instead");
}

TEST(TypedNumber, HasANameExactlyWhereItCanBeTyped) {
    const Planned planned(fourFronts());
    std::size_t refused = 0;
    for (const Quantity quantity : allQuantities(planned.plan)) {
        const auto value = valueOf(planned.plan, quantity);
        if (!value)
            continue;
        const auto result = setQuantity(planned.project, planned.plan, quantity, *value);
        EXPECT_EQ(result.ok(), !typedEditName(quantity.kind).english.empty()) << named(quantity);
        if (!result.ok()) {
            EXPECT_TRUE(refusal(result).starts_with(nameOf(quantity.kind).english))
                << refusal(result);
            ++refused;
        }
    }
    EXPECT_GT(refused, 50U);
    EXPECT_EQ(typedEditName(FrontWidth), "Set front width");
    EXPECT_EQ(typedEditName(StopFromOpening), "Set overlay");
}

TEST(TypedNumber, OfTwoHandlesFollowsFromTheirRule) {
    Project project = bank(2);
    project.fronts.hardware.twoPast = in(10);
    const Planned planned(project);
    EXPECT_NE(refusal(setQuantity(planned.project, planned.plan, {HandleX, 0}, in(3)))
                  .find("follows from the rule that places two handles"),
              std::string::npos);
}

TEST(TypedNumber, OfAnOpeningThatSpansTheCaseIsRefusedWithTheReason) {
    const Planned planned(bank(2));
    EXPECT_NE(refusal(setQuantity(planned.project, planned.plan, {FrontWidth, 0}, in(14))), "");
}

TEST(TypedNumber, OfNothingOrLessIsRefusedWhereItIsASize) {
    const Planned planned(fourFronts());
    for (const QuantityKind kind : {CaseWidth, CaseHeight, MemberWidth, OpeningWidth, OpeningHeight,
                                    FrontWidth, FrontHeight, FrontThickness, ScrewLength})
        for (const Length value : {Length(), -in(1)})
            EXPECT_NE(refusal(setQuantity(planned.project, planned.plan, {kind}, value)), "")
                << key(kind);
}
