#include "core/edits/placed_part.h"

#include "core/documents/document.h"
#include "core/edits/choices.h"
#include "core/plan/chosen.h"
#include "tests/core/drawings/drawn_case.h"
#include "tests/core/edits/edited.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;

using testing::DrawnCase;
using Kind = PlacedPart::Kind;

PlacedPart hole(const DrawnCase& drawn, std::size_t front, std::uint32_t index) {
    return {Kind::MountingHole, drawn.plan.fronts.at(front).opening, index};
}
PlacedPart handle(const DrawnCase& drawn, std::size_t front, std::uint32_t index = 0) {
    return {Kind::Handle, drawn.plan.fronts.at(front).opening, index};
}
DrawnCase moved(const DrawnCase& drawn, const PlacedPart& part, CasePoint by,
                Together together = Together::Alone) {
    const auto outcome = movePart(drawn.project, drawn.plan, part, by, together);
    EXPECT_TRUE(outcome.ok());
    return DrawnCase(outcome.value().project);
}
Project withTwoHandles() {
    Project project = testing::bank(2);
    project.fronts.hardware.twoPast = in(10);
    return project;
}

// Two drawers, openings 13 × 6 in, stiles and outer rails 1 1/2 in, rail 1 1/4 in, overlays 1/4 in:
// the upper front spans x 1 1/4 … 14 3/4 in and y 8 1/2 … 15 in.
TEST(PlacedPart, OfASingleKnobHasItsCentreInTheMiddleOfItsFront) {
    const DrawnCase drawn(testing::bank(2));
    EXPECT_EQ(centreOf(drawn.plan, handle(drawn, 0)), (CasePoint{in(8), in(11, 48)}));
    EXPECT_EQ(centreOf(drawn.plan, handle(drawn, 0, 1)), std::nullopt);
    EXPECT_EQ(centreOf(drawn.plan, {Kind::MountingHole, OpeningId{999}, 0}), std::nullopt);
}

TEST(MovingAHole, MakesGivenPlacesOfThePatternAndMovesJustThatOne) {
    const DrawnCase drawn(testing::bank(2));
    const auto before = drawn.plan.fronts[0].mounting.holes;
    const DrawnCase after = moved(drawn, hole(drawn, 0, 1), {in(0, 12), in(-1)});
    const MountingSpec& spec = chosenMounting(after.project, after.plan.fronts[0]);
    EXPECT_EQ(spec.pattern, ScrewPattern::ByHand);
    const auto& holes = after.plan.fronts[0].mounting.holes;
    ASSERT_EQ(holes.size(), before.size());
    for (std::size_t i = 0; i < holes.size(); ++i) {
        const WallPoint step = i == 1 ? WallPoint{in(0, 12), in(-1)} : WallPoint{};
        EXPECT_EQ(holes[i].at, before[i].at + step) << i;
    }
    EXPECT_EQ(after.plan.fronts[1].mounting.holes, drawn.plan.fronts[1].mounting.holes);
    EXPECT_EQ(chosenMounting(after.project, after.plan.fronts[1]).pattern,
              ScrewPattern::FourCorners);
}

TEST(MovingAPart, ByNothingChangesNoByte) {
    const DrawnCase drawn(testing::bank(2));
    for (const PlacedPart& part : {hole(drawn, 0, 0), handle(drawn, 1)}) {
        const auto outcome = movePart(drawn.project, drawn.plan, part, {});
        ASSERT_TRUE(outcome.ok());
        EXPECT_EQ(writeDocument(outcome.value().project), writeDocument(drawn.project));
    }
}

TEST(MovingAPart, ThereAndBackAgainBringsItsCentreBack) {
    const DrawnCase drawn(testing::bank(3));
    testing::Dice dice(7);
    for (int round = 0; round < 20; ++round) {
        const CasePoint by{dice.sixtyFourths(-300, 300), dice.sixtyFourths(-300, 300)};
        for (const PlacedPart& part : {hole(drawn, 1, 2), handle(drawn, 2)}) {
            const DrawnCase away = moved(drawn, part, by);
            EXPECT_EQ(centreOf(away.plan, part), *centreOf(drawn.plan, part) + by);
            const DrawnCase back = moved(away, part, CasePoint{} - by);
            EXPECT_EQ(centreOf(back.plan, part), centreOf(drawn.plan, part));
        }
    }
}

TEST(MovingAPart, ThatIsNotThereIsRefused) {
    const DrawnCase drawn(testing::bank(1));
    EXPECT_FALSE(movePart(drawn.project, drawn.plan, hole(drawn, 0, 77), {in(1), {}}).ok());
    EXPECT_FALSE(movePart(drawn.project, drawn.plan, handle(drawn, 0, 1), {in(1), {}}).ok());
}

TEST(MovingAHandle, DownTheBankMovesEachByTheSameAndTheNextBankNot) {
    const DrawnCase drawn(testing::banks(2, 3));
    const CasePoint by{in(0, 8), in(1, 4)};
    const DrawnCase after = moved(drawn, handle(drawn, 0), by, Together::DownTheBank);
    for (std::size_t i = 0; i < drawn.plan.fronts.size(); ++i) {
        const bool isInBank = drawn.plan.fronts[i].bank == drawn.plan.fronts[0].bank;
        EXPECT_EQ(*centreOf(after.plan, handle(after, i)) - *centreOf(drawn.plan, handle(drawn, i)),
                  isInBank ? by : CasePoint{});
    }
}

TEST(MovingAHandle, DownTheBankPassesOverFrontsWithoutOne) {
    Project project = testing::withChoices(
        testing::bank(3), 1, [](FrontChoices& choices) { choices.hardware = HardwareSpec(); });
    const DrawnCase drawn(project);
    ASSERT_FALSE(drawn.plan.fronts[1].hardware);
    EXPECT_EQ(movedWith(drawn.plan, handle(drawn, 0), Together::DownTheBank).size(), 2U);
    const DrawnCase after = moved(drawn, handle(drawn, 0), {{}, in(1)}, Together::DownTheBank);
    EXPECT_FALSE(after.plan.fronts[1].hardware);
}

// Front 13 1/2 in wide, handles at 25 %: 3 3/8 in from either side.
TEST(MovingOneOfTwoHandles, UpKeepsBothAlikeAndPlacesThemFromTheTop) {
    const DrawnCase drawn(withTwoHandles());
    const DrawnCase after = moved(drawn, handle(drawn, 0, 1), {{}, in(1)});
    for (const std::uint32_t i : {0U, 1U})
        EXPECT_EQ(*centreOf(after.plan, handle(after, 0, i)) -
                      *centreOf(drawn.plan, handle(drawn, 0, i)),
                  (CasePoint{{}, in(1)}));
    const HardwareSpec& spec = chosenHardware(after.project, after.plan.fronts[0]);
    EXPECT_EQ(spec.placing, Placing::FromTop);
    EXPECT_EQ(spec.distance.length, in(2, 16)); // 3 1/4 − 1
}

TEST(MovingOneOfTwoHandles, AcrossGoesToTheNearestWholePerCentAndSaysSo) {
    const DrawnCase drawn(withTwoHandles());
    // 3 3/8 + 1 = 4 3/8 of 13 1/2 in: 32.4 %
    const auto outcome =
        movePart(drawn.project, drawn.plan, handle(drawn, 0, 0), CasePoint{in(1), {}});
    ASSERT_TRUE(outcome.ok());
    EXPECT_FALSE(outcome.value().heldBecause.empty());
    const DrawnCase after(outcome.value().project);
    EXPECT_EQ(chosenHardware(after.project, after.plan.fronts[0]).twoAtPercent, 32);
    const Length left = after.plan.fronts[0].hardware->handles[0].centre.x;
    const Length right = after.plan.fronts[0].hardware->handles[1].centre.x;
    EXPECT_EQ(left + right, in(13, 32));
}

TEST(MovingOneOfTwoHandles, NeverLetsThemMeet) {
    const DrawnCase drawn(withTwoHandles());
    const DrawnCase after = moved(drawn, handle(drawn, 0, 0), {in(9), {}});
    EXPECT_EQ(chosenHardware(after.project, after.plan.fronts[0]).twoAtPercent, 49);
}

TEST(RemovingAHole, LeavesTheOthersWhereTheyWere) {
    const DrawnCase drawn(testing::bank(1));
    const auto before = drawn.plan.fronts[0].mounting.holes;
    const DrawnCase after(testing::edited(
        removeMountingHole(drawn.project, drawn.plan, drawn.plan.fronts[0].opening, 1)));
    const auto& holes = after.plan.fronts[0].mounting.holes;
    ASSERT_EQ(holes.size(), before.size() - 1);
    EXPECT_EQ(holes[0].at, before[0].at);
    EXPECT_EQ(holes[1].at, before[2].at);
}

TEST(RemovingAHole, IsRefusedForTheLastOne) {
    Project project = testing::bank(1);
    project.fronts.mounting.pattern = ScrewPattern::ByHand;
    project.fronts.mounting.placed = {{in(3), in(2)}};
    const DrawnCase drawn(project);
    EXPECT_FALSE(
        removeMountingHole(drawn.project, drawn.plan, drawn.plan.fronts[0].opening, 0).ok());
}

TEST(HandleHoles, BelongToTheirHandle) {
    Project project = withTwoHandles();
    project.fronts.hardware.form = "pull-96";
    const DrawnCase drawn(project);
    const HardwarePlan& hardware = *drawn.plan.fronts[0].hardware;
    ASSERT_EQ(hardware.holes.size(), 4U);
    EXPECT_EQ(handleOfHole(hardware, 1), 0U);
    EXPECT_EQ(handleOfHole(hardware, 2), 1U);
    EXPECT_EQ(firstHoleOf(hardware, 1), 2U);
}

// Distances of a hole 2 in from the wall's left and 3 in above its lower edge.
class PartDistances : public ::testing::Test {
protected:
    static Project placed() {
        Project project = testing::bank(1);
        project.fronts.mounting.pattern = ScrewPattern::ByHand;
        project.fronts.mounting.placed = {{in(2), in(3)}, {in(2), in(4)}, {in(7), in(3, 8)}};
        return project;
    }
    [[nodiscard]] std::optional<Length> to(PartDistance::To what, Side side,
                                           std::uint32_t index = 0) const {
        for (const PartDistance& distance : distancesOf(drawn.plan, hole(drawn, 0, index)))
            if (distance.to == what && distance.side == side)
                return distance.length;
        return std::nullopt;
    }
    DrawnCase drawn{placed()};
};

TEST_F(PartDistances, AreTakenToTheWallsEdgesAndTheBottomsTop) {
    const BoxPlan& box = drawn.plan.fronts[0].box;
    EXPECT_EQ(to(PartDistance::To::BoxWall, Side::Left), in(2));
    EXPECT_EQ(to(PartDistance::To::BoxWall, Side::Right), box.width - in(2));
    EXPECT_EQ(to(PartDistance::To::BoxWall, Side::Bottom), in(3));
    EXPECT_EQ(to(PartDistance::To::BoxWall, Side::Top), box.height - in(3));
    EXPECT_EQ(to(PartDistance::To::Bottom, Side::Bottom), in(2, 32)); // panel's top at 1/2 in
}

TEST_F(PartDistances, ToTheFrontsEdgesAddSideClearanceAndOverlay) {
    const BoxPlan& box = drawn.plan.fronts[0].box;
    EXPECT_EQ(to(PartDistance::To::FrontEdge, Side::Left), in(2) + box.sideClearance + in(0, 16));
    EXPECT_EQ(to(PartDistance::To::FrontEdge, Side::Bottom),
              in(3) + box.clearanceBelow + in(0, 16));
    EXPECT_EQ(*to(PartDistance::To::FrontEdge, Side::Left) +
                  *to(PartDistance::To::FrontEdge, Side::Right),
              drawn.plan.fronts[0].rect.width());
}

TEST_F(PartDistances, ToNeighboursTellTheNearestBesideAndTheNearestAboveOrBelow) {
    EXPECT_EQ(to(PartDistance::To::Hole, Side::Top), in(1));
    EXPECT_EQ(to(PartDistance::To::Hole, Side::Bottom), std::nullopt);
    // The third screw, 5 in to the right; the knob's hole lies 1/2 in or less before or behind it.
    const Length knob = drawn.plan.fronts[0].hardware->holes[0].x;
    const Length first = toFront(drawn.plan.fronts[0].box, WallPoint{in(2), in(3)}).x;
    EXPECT_EQ(to(PartDistance::To::Hole, Side::Right), least(in(5), knob - first));
}

TEST_F(PartDistances, OfAHandleLeaveItsOwnHolesAndTheBottomOut) {
    for (const PartDistance& distance : distancesOf(drawn.plan, handle(drawn, 0))) {
        EXPECT_NE(distance.to, PartDistance::To::Bottom);
        EXPECT_FALSE(distance.to == PartDistance::To::Hole && distance.length.isZero());
    }
}

TEST_F(PartDistances, AreNegativePastAnEdge) {
    const DrawnCase off = moved(drawn, hole(drawn, 0, 0), {in(-4), {}});
    for (const PartDistance& distance : distancesOf(off.plan, hole(off, 0, 0)))
        if (distance.to == PartDistance::To::BoxWall && distance.side == Side::Left)
            EXPECT_EQ(distance.length, in(-2));
}

} // namespace
} // namespace frontwright
