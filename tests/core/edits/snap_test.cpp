#include "core/edits/snap.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::in;

FrontPlan frontAt(std::int32_t id, CaseRect opening) {
    FrontPlan front;
    front.opening = {id};
    front.openingRect = opening;
    front.rect = opening;
    return front;
}

/// Two openings, 6 in and 10 in high, with a 1 in rail between; a second bank whose rail stands
/// 1 in higher.
///   bottom rail 0 | left stile 1 | rail 2 | rail of the other bank 3
Plan twoBanks() {
    Plan plan;
    plan.members.resize(4);
    plan.members[0] = {bottomRail, MemberKind::OuterRail, {in(0), in(0), in(40), in(0)}, {}, true};
    plan.members[1] = {leftStile, MemberKind::OuterStile, {in(0), in(0), in(0), in(17)}, {}, true};
    plan.members[2] = {MemberId{10}, MemberKind::Rail, {in(0), in(6), in(20), in(7)}, {}, true};
    plan.members[3] = {MemberId{11}, MemberKind::Rail, {in(20), in(7), in(40), in(8)}, {}, true};
    plan.fronts.push_back(frontAt(5, {in(0), in(7), in(20), in(17)}));
    plan.fronts.push_back(frontAt(6, {in(0), in(0), in(20), in(6)}));
    plan.fronts.push_back(frontAt(7, {in(20), in(8), in(40), in(17)}));
    plan.fronts[0].neighbours.bottom.member = 2;
    plan.fronts[1].neighbours.top.member = 2;
    plan.fronts[2].neighbours.bottom.member = 3;
    for (auto& front : plan.fronts)
        front.neighbours.left.member = 1;
    plan.frontsById = {0, 1, 2};
    plan.membersById = {1, 0, 2, 3}; // left stile, bottom rail, the two rails
    return plan;
}

TEST(DraggingARail, FindsTheOpeningsBelowAndAboveIt) {
    const Beside beside = openingsBeside(twoBanks(), MemberId{10});
    EXPECT_EQ(beside.before, std::vector<std::uint32_t>{1});
    EXPECT_EQ(beside.after, std::vector<std::uint32_t>{0});
}

TEST(DraggingARail, SnapsToEqualSizesOfBothNeighbours) {
    // (10 in − 6 in) / 2 = 2 in
    const Snapped snapped = snapDrag(twoBanks(), MemberId{10}, in(1, 62), in(0, 8), in(0, 4));
    EXPECT_EQ(snapped.to, SnapTo::EqualSizes);
    EXPECT_EQ(snapped.delta, in(2));
}

TEST(DraggingARail, SnapsToTheSizeOfAnotherOpening) {
    // The upper opening shrinks from 10 in to the other bank's 9 in: 1 in up.
    const Snapped snapped = snapDrag(twoBanks(), MemberId{10}, in(1, 1), in(0, 2), in(0, 4));
    EXPECT_EQ(snapped.to, SnapTo::EqualSizes);
    EXPECT_EQ(snapped.equalTo, OpeningId{7});
    EXPECT_EQ(snapped.delta, in(1));
}

TEST(DraggingARail, LinesUpWithTheRailOfTheNextBank) {
    Plan plan = twoBanks();
    plan.fronts[2].openingRect.top = in(16, 32); // its size is no longer 1 in away
    const Snapped snapped = snapDrag(plan, MemberId{10}, in(0, 62), in(0, 4), in(0, 4));
    EXPECT_EQ(snapped.to, SnapTo::Line);
    EXPECT_EQ(snapped.line, MemberId{11});
    EXPECT_EQ(snapped.delta, in(1));
}

TEST(DraggingARail, ElseMovesByWholeGridSteps) {
    const Snapped snapped = snapDrag(twoBanks(), MemberId{10}, in(0, 21), in(0, 1), in(0, 4));
    EXPECT_EQ(snapped.to, SnapTo::Grid);
    EXPECT_EQ(snapped.delta, in(0, 20));
}

TEST(DraggingARail, NeverSnapsFurtherThanTheTolerance) {
    const Plan plan = twoBanks();
    for (int k = -200; k <= 200; ++k) {
        const Length wanted = Length::fromSixtyFourths(k);
        const Snapped snapped = snapDrag(plan, MemberId{10}, wanted, in(0, 4), in(0, 4));
        EXPECT_LE((snapped.delta - wanted).magnitude(), in(0, 4)) << k;
    }
}

TEST(TheGrid, RoundsHalvesAwayFromZero) {
    EXPECT_EQ(onGrid(in(0, 2), in(0, 4)), in(0, 4));
    EXPECT_EQ(onGrid(-in(0, 2), in(0, 4)), -in(0, 4));
    EXPECT_EQ(onGrid(in(0, 1), in(0, 4)), in(0));
    EXPECT_EQ(onGrid(Length::fromMicrometres(1'499), Length::millimetres(1)),
              Length::millimetres(1));
}

} // namespace
} // namespace frontwright
