#include "tests/core/edits/edited.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using namespace frontwright::testing;

TEST(DraggingAStile, GivesToTheLeftWhatItTakesFromTheRight) {
    const Project project = rowOf({share(opening()), share(opening()), share(opening())}, in(29));
    const DragOutcome outcome = dragged(project, memberAt(project, 0), in(1));
    EXPECT_EQ(widths(outcome.project), (Sizes{in(10), in(8), in(9)}));
    EXPECT_EQ(outcome.moved, in(1));
    EXPECT_EQ(outcome.heldBecause, "");
}

TEST(DraggingARailUp, MakesTheOpeningAboveLower) {
    const Project project = bankOf({share(opening()), share(opening()), share(opening())}, in(29));
    const DragOutcome outcome = dragged(project, memberAt(project, 1), in(2, 32));
    EXPECT_EQ(heights(outcome.project), (Sizes{in(9), in(6, 32), in(11, 32)}));
    EXPECT_EQ(outcome.moved, in(2, 32));
}

TEST(FixedSizes, TravelAlongWithADraggedMember) {
    const Project project =
        rowOf({share(opening()), fixed(in(8), opening()), share(opening())}, in(26));
    EXPECT_EQ(widths(dragged(project, memberAt(project, 1), -in(2)).project),
              (Sizes{in(6), in(8), in(10)}));
    EXPECT_EQ(widths(dragged(project, memberAt(project, 0), in(2)).project),
              (Sizes{in(10), in(8), in(6)}));
}

TEST(ADraggedMember, IsHeldWhereOneSideIsLocked) {
    const Project project =
        rowOf({fixed(in(8), opening()), share(opening()), share(opening())}, in(26));
    const DragOutcome left = dragged(project, memberAt(project, 0), in(1));
    EXPECT_EQ(left.moved, in(0));
    EXPECT_EQ(left.heldBecause, "sizes on the left are locked");
    EXPECT_EQ(left.project, project);
    const Project bank = bankOf({share(opening()), fixed(in(8), opening())}, in(20));
    EXPECT_EQ(dragged(bank, memberAt(bank, 0), in(1)).heldBecause, "sizes below are locked");
}

TEST(ADraggedMember, StopsAtTheLeastOpeningAndSaysSo) {
    // 9 in − 60 mm = 6.638 in; on the grid 6 5/8 in
    const Project project = rowOf({share(opening()), share(opening()), share(opening())}, in(29));
    const DragOutcome right = dragged(project, memberAt(project, 0), in(20));
    EXPECT_EQ(right.moved, in(6, 40));
    EXPECT_EQ(right.heldBecause, "an opening on the right would be under ≈ 2 3/8 in wide");
    EXPECT_EQ(widths(right.project), (Sizes{in(15, 40), in(2, 24), in(9)}));
    const DragOutcome left = dragged(project, memberAt(project, 0), -in(20));
    EXPECT_EQ(left.moved, -in(6, 40));
    EXPECT_EQ(left.heldBecause, "an opening on the left would be under ≈ 2 3/8 in wide");
}

TEST(ADraggedRail, TellsAboveFromBelow) {
    Project project = bankOf({share(opening()), share(opening())}, in(19));
    project.limits.leastOpening = in(3);
    EXPECT_EQ(dragged(project, memberAt(project, 0), in(9)).heldBecause,
              "an opening above would be under 3 in high");
    EXPECT_EQ(dragged(project, memberAt(project, 0), -in(9)).heldBecause,
              "an opening below would be under 3 in high");
    EXPECT_EQ(dragged(project, memberAt(project, 0), in(6)).heldBecause, "");
}

TEST(ADraggedMember, StopsWhereAnOpeningDividedOffInsideBecomesTooSmall) {
    // Right 12 in = 2 columns + 1 in; each at least 3 in: it may go down to 7 in.
    Project project = rowOf(
        {share(opening()),
         share(rows({share(columns({share(opening()), share(opening())}, in(1))), share(opening())},
                    in(1)))},
        in(25));
    project.limits.leastOpening = in(3);
    const DragOutcome outcome = dragged(project, memberAt(project, 0), in(8));
    EXPECT_EQ(outcome.moved, in(5));
    EXPECT_EQ(widths(outcome.project), (Sizes{in(17), in(3), in(3), in(7)}));
    EXPECT_EQ(outcome.heldBecause, "an opening on the right would be under 3 in wide");
}

TEST(ADraggedMember, PassesOverAShareThatIsLockedInside) {
    // The second column holds columns 4 + 1 + 5 in, all fixed: it travels along.
    const auto locked =
        rows({share(columns({fixed(in(4), opening()), fixed(in(5), opening())}, in(1))),
              share(opening())},
             in(1));
    const Project project = rowOf({share(opening()), share(locked), share(opening())}, in(32));
    ASSERT_EQ(widths(project)[0], in(10));
    const DragOutcome outcome = dragged(project, memberAt(project, 0), in(2));
    EXPECT_EQ(widths(outcome.project), (Sizes{in(12), in(4), in(5), in(10), in(8)}));
}

TEST(AGraduatedRun, HoldsAsAWholeAndSaysWhatToDo) {
    Project project = bankOf({place(opening()), place(opening()), place(opening())}, in(26));
    project.casework.divisions = graduated(project.casework.divisions, ArithmeticRun{in(2)});
    const DragOutcome outcome = dragged(project, memberAt(project, 0), in(1));
    EXPECT_EQ(outcome.moved, in(0));
    EXPECT_EQ(outcome.heldBecause, "graduated run above; end the graduation to move it");
}

TEST(AGraduatedRun, TravelsAlongBetweenShares) {
    Project project =
        bankOf({share(opening()), place(opening()), place(opening()), share(opening())}, in(29, 8));
    project.casework.divisions = graduated(project.casework.divisions, ArithmeticRun{in(2)});
    const Sizes before = heights(project);
    const DragOutcome outcome = dragged(project, memberAt(project, 1), -in(2, 4));
    EXPECT_EQ(outcome.moved, -in(2, 4));
    EXPECT_EQ(heights(outcome.project),
              (Sizes{before[0] + in(2, 4), before[1], before[2], before[3] - in(2, 4)}));
}

TEST(ADrag, IsPutOnTheGrid) {
    const Project project = rowOf({share(opening()), share(opening())}, in(21));
    EXPECT_EQ(dragged(project, memberAt(project, 0), in(1, 5)).moved, in(1, 4));
    EXPECT_EQ(dragged(project, memberAt(project, 0), in(1, 6)).moved, in(1, 8));
    EXPECT_EQ(dragged(project, memberAt(project, 0), in(0, 1)).project, project);
}

TEST(AnOddRemainder, StaysWhereItIsDuringADrag) {
    // 100 mm fixed leave an inch room that is off the grid; the last column has the rest.
    const Project project = rowOf({share(opening()), share(opening()),
                                   fixed(Length::millimetres(100), opening()), share(opening())},
                                  in(30));
    const Sizes before = widths(project);
    const DragOutcome outcome = dragged(project, memberAt(project, 0), in(1));
    EXPECT_EQ(widths(outcome.project),
              (Sizes{before[0] + in(1), before[1] - in(1), before[2], before[3]}));
    const DragOutcome last = dragged(project, memberAt(project, 2), in(1));
    EXPECT_EQ(widths(last.project),
              (Sizes{before[0], before[1] + in(1), before[2], before[3] - in(1)}));
}

TEST(AnOpeningThatIsTooSmallAlready, MayGrowButNotShrink) {
    const Project project =
        rowOf({share(opening()), fixed(in(1), opening()), share(opening())}, in(15));
    Project small = project;
    small.limits.leastOpening = in(8);
    const DragOutcome outcome = dragged(small, memberAt(small, 0), in(1));
    EXPECT_EQ(outcome.moved, in(0));
    EXPECT_EQ(outcome.heldBecause, "an opening on the right would be under 8 in wide");
}

TEST(DraggingAnOuterStile, ChangesItsWidthAndTheDivisionsTakeIt) {
    const Project project = rowOf({share(opening()), share(opening())}, in(21));
    const DragOutcome wider = dragged(project, leftStile, in(1));
    EXPECT_EQ(wider.project.casework.frame.left.length, in(2, 32));
    EXPECT_EQ(widths(wider.project), (Sizes{in(9, 32), in(9, 32)}));
    const DragOutcome narrower = dragged(project, rightStile, in(0, 32));
    EXPECT_EQ(narrower.project.casework.frame.right.length, in(1));
    EXPECT_EQ(narrower.moved, in(0, 32));
    EXPECT_EQ(widths(narrower.project), (Sizes{in(10, 16), in(10, 16)}));
}

TEST(DraggingAnOuterRail, LeavesAtLeastAGridStepOfIt) {
    const Project project = bankOf({share(opening()), share(opening())}, in(21));
    const DragOutcome bottom = dragged(project, bottomRail, -in(5));
    EXPECT_EQ(bottom.project.casework.frame.bottom.length, in(0, 4));
    EXPECT_EQ(bottom.moved, -in(1, 28));
    EXPECT_EQ(bottom.heldBecause, "the member would be under 1/16 in wide");
    const DragOutcome top = dragged(project, topRail, -in(3));
    EXPECT_EQ(top.project.casework.frame.top.length, in(4, 32));
    EXPECT_EQ(heights(top.project), (Sizes{in(8, 32), in(8, 32)}));
}

TEST(DraggingAnOuterRail, IsHeldByLockedSizesAndByTheLeastOpening) {
    const Project locked = bankOf({fixed(in(10), opening()), fixed(in(10), opening())}, in(21));
    EXPECT_EQ(dragged(locked, topRail, in(1)).heldBecause, "sizes inside the frame are locked");
    EXPECT_EQ(dragged(locked, topRail, in(1)).moved, in(0));
    Project project = bankOf({share(opening()), share(opening())}, in(21));
    project.limits.leastOpening = in(8);
    const DragOutcome outcome = dragged(project, topRail, -in(9));
    EXPECT_EQ(outcome.moved, -in(4));
    EXPECT_EQ(outcome.heldBecause, "an opening inside the frame would be under 8 in high");
}

TEST(AMemberThatIsNotThere, CannotBeDragged) {
    const Project project = bank(3);
    EXPECT_FALSE(dragMember(project, MemberId{999}, in(1)).ok());
    EXPECT_FALSE(dragMember(project, MemberId{5}, in(1)).ok()); // an opening's number
}

TEST(ADrag, SharesEveryRegionThatItDoesNotChange) {
    const Project project = banks(3, 4);
    const MemberId rail = splitAt(childRegion(project.casework.divisions, 1)).members[1].id;
    const Project after = dragged(project, rail, in(1)).project;
    const RegionPtr& old = project.casework.divisions;
    const RegionPtr& now = after.casework.divisions;
    EXPECT_EQ(childRegion(old, 0), childRegion(now, 0));
    EXPECT_EQ(childRegion(old, 2), childRegion(now, 2));
    EXPECT_NE(childRegion(old, 1), childRegion(now, 1));
    for (std::size_t row = 0; row < 4; ++row)
        EXPECT_EQ(childRegion(childRegion(old, 1), row), childRegion(childRegion(now, 1), row));
}

TEST(TenThousandOpenings, CanBeDraggedInOneRow) {
    const Project project = bank(10'000);
    const MemberId middle = splitAt(project.casework.divisions).members[5'000].id;
    const DragOutcome outcome = dragged(project, middle, in(1));
    Sizes expected(10'000, in(6));
    expected[5'000] = in(5);
    expected[5'001] = in(7);
    EXPECT_EQ(heights(outcome.project), expected);
}

} // namespace
} // namespace frontwright
