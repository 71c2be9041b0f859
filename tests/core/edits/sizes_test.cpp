#include "tests/core/edits/edited.h"

#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

using testing::across;
using testing::upright;

using namespace frontwright::testing;

TEST(ATypedSize, IsFixedAndTheNearestShareGivesIt) {
    const Project project =
        bankOf({share(opening()), share(opening()), share(opening()), share(opening())}, in(27));
    const Project after = edited(setOpeningSize(project, openingAt(project, 1), upright, in(7)));
    EXPECT_EQ(heights(after), (Sizes{in(6), in(7), in(5), in(6)}));
    EXPECT_EQ(holdOf(after, openingAt(after, 1), upright), Hold::Locked);
    EXPECT_EQ(holdOf(after, openingAt(after, 2), upright), Hold::Flexible);
}

TEST(ATypedSize, KeepsTheNotationItWasWrittenIn) {
    const Project project = bank(3);
    const WrittenLength typed(Length::millimetres(120), Notation::Centimetre);
    const Project after = edited(setOpeningSize(project, openingAt(project, 0), upright, typed));
    const SizeRule& rule = splitAt(after.casework.divisions).children[0].rule;
    EXPECT_EQ(rule, SizeRule(FixedSize{typed}));
}

TEST(ATypedSizeOffTheGrid, LeavesTheOddRestToTheNearestShare) {
    const Project project =
        bankOf({share(opening()), share(opening()), share(opening()), share(opening())}, in(27));
    const Length typed = Length::millimetres(150);
    const Project after = edited(setOpeningSize(project, openingAt(project, 0), upright, typed));
    EXPECT_EQ(heights(after), (Sizes{typed, in(12) - typed, in(6), in(6)}));
}

TEST(ATypedSize, TakesFromTheNextShareWhereTheNearestHasNoMore) {
    Project project =
        bankOf({share(opening()), share(opening()), share(opening()), share(opening())}, in(27));
    project.limits.leastOpening = in(4);
    EXPECT_EQ(heights(edited(setOpeningSize(project, openingAt(project, 0), upright, in(9)))),
              (Sizes{in(9), in(4), in(5), in(6)}));
    EXPECT_EQ(refusal(setOpeningSize(project, openingAt(project, 0), upright, in(13))),
              "1 in of room is missing beside the locked sizes and the least openings of 4 in; at "
              "most 12 in has room here");
}

TEST(ATypedSize, PassesOverLockedNeighbours) {
    const Project project =
        rowOf({share(opening()), fixed(in(8), opening()), share(opening())}, in(26));
    EXPECT_EQ(widths(edited(setOpeningSize(project, openingAt(project, 0), across, in(10)))),
              (Sizes{in(10), in(8), in(6)}));
    // The nearest of the one in the middle: of two equally near, the later one.
    EXPECT_EQ(widths(edited(setOpeningSize(project, openingAt(project, 1), across, in(10)))),
              (Sizes{in(8), in(10), in(6)}));
}

TEST(ATypedSize, IsRefusedWhereAllOthersAreLocked) {
    const Project project = rowOf({share(opening()), fixed(in(8), opening())}, in(17));
    EXPECT_EQ(refusal(setOpeningSize(project, openingAt(project, 0), across, in(9))),
              "all other columns of this split are locked; unlock one of them first");
    EXPECT_TRUE(setOpeningSize(project, openingAt(project, 0), across, in(8)).ok());
}

TEST(ATypedSize, MustBeMoreThanNothing) {
    const Project project = bank(3);
    EXPECT_FALSE(setOpeningSize(project, openingAt(project, 0), upright, in(0)).ok());
    EXPECT_FALSE(setOpeningSize(project, openingAt(project, 0), upright, -in(2)).ok());
}

TEST(TheSizeOfAnOpeningThatSpansTheCase, IsTheCases) {
    const Project project = bank(3);
    EXPECT_EQ(refusal(setOpeningSize(project, openingAt(project, 0), across, in(9))),
              "the opening spans the case's full width; change the width of the case, or split it");
    EXPECT_EQ(holdOf(project, openingAt(project, 0), across), Hold::Flexible);
}

TEST(ATypedWidth, IsTheWholeBanks) {
    const Project project = banks(2, 3); // columns of 13 in
    const Project after = edited(setOpeningSize(project, openingAt(project, 1), across, in(10)));
    EXPECT_EQ(widths(after), (Sizes{in(10), in(10), in(10), in(16), in(16), in(16)}));
}

TEST(APlaceOfARun, LeavesItWhenItsSizeIsTyped) {
    Project project = bankOf({place(opening()), place(opening()), place(opening())}, in(26));
    project.casework.divisions = graduated(project.casework.divisions, ArithmeticRun{in(2)});
    ASSERT_EQ(heights(project), (Sizes{in(6), in(8), in(10)}));
    const Project after = edited(setOpeningSize(project, openingAt(project, 0), upright, in(4)));
    EXPECT_EQ(heights(after), (Sizes{in(4), in(9), in(11)}));
}

TEST(ASizeThatMakesRoomAgain, IsTakenThoughTheCaseHadNone) {
    Project project = bankOf({fixed(in(30), opening()), share(opening())}, in(20));
    const Split& split = splitAt(project.casework.divisions);
    const OpeningId id = std::get<Opening>(split.children[0].region->content).id;
    EXPECT_FALSE(layOut(project.casework).ok());
    EXPECT_EQ(heights(edited(setOpeningSize(project, id, upright, in(9)))), (Sizes{in(9), in(10)}));
    EXPECT_FALSE(setOpeningSize(project, id, upright, in(29)).ok());
}

TEST(AMembersWidth, IsTakenFromEqualOpeningsEqually) {
    const Project project = bankOf({share(opening()), share(opening()), share(opening())}, in(26));
    const Project after = edited(setMemberWidth(project, memberAt(project, 0), in(1, 48)));
    EXPECT_EQ(heights(after), (Sizes{in(7, 48), in(7, 48), in(7, 48)}));
    EXPECT_FALSE(setMemberWidth(project, memberAt(project, 0), in(0)).ok());
    EXPECT_FALSE(setMemberWidth(project, memberAt(project, 0), in(25)).ok());
    EXPECT_FALSE(setMemberWidth(project, MemberId{77}, in(1)).ok());
}

TEST(AnOuterMembersWidth, IsThatOfTheFrame) {
    const Project project = bank(2);
    EXPECT_EQ(edited(setMemberWidth(project, leftStile, in(2))).casework.frame.left.length, in(2));
    EXPECT_EQ(edited(setMemberWidth(project, rightStile, in(3))).casework.frame.right.length,
              in(3));
    EXPECT_EQ(edited(setMemberWidth(project, bottomRail, in(4))).casework.frame.bottom.length,
              in(4));
    EXPECT_EQ(edited(setMemberWidth(project, topRail, in(1))).casework.frame.top.length, in(1));
}

TEST(Locking, KeepsEverySizeAndEveryEqualShare) {
    const Project project = bankOf({share(opening()), share(opening()), share(opening())}, in(26));
    const Project locked = edited(setHold(project, openingAt(project, 0), upright, Hold::Locked));
    EXPECT_TRUE(sameLayout(project, locked));
    const auto& children = splitAt(locked.casework.divisions).children;
    EXPECT_EQ(children[0].rule, SizeRule(FixedSize{in(8)}));
    EXPECT_EQ(children[1].rule, SizeRule(Share{1}));
    const Project free = edited(setHold(locked, openingAt(project, 0), upright, Hold::Flexible));
    EXPECT_TRUE(sameLayout(project, free));
    EXPECT_EQ(free, project);
}

TEST(Locking, KeepsOddSizesToo) {
    const Project project =
        bankOf({share(opening(), 3), share(opening(), 2), share(opening(), 2)}, in(26, 5));
    for (std::size_t i = 0; i < 3; ++i) {
        const Project locked =
            edited(setHold(project, openingAt(project, i), upright, Hold::Locked));
        EXPECT_TRUE(sameLayout(project, locked)) << i;
        const Project free =
            edited(setHold(locked, openingAt(project, i), upright, Hold::Flexible));
        EXPECT_TRUE(sameLayout(project, free)) << i;
    }
}

TEST(Locking, OfAllSizesIsPossible) {
    Project project = bank(3);
    for (std::size_t i = 0; i < 3; ++i)
        project = edited(setHold(project, openingAt(project, i), upright, Hold::Locked));
    EXPECT_TRUE(sameLayout(project, bank(3)));
    EXPECT_FALSE(setCaseSize(project, in(30), in(50)).ok());
    project = edited(setHold(project, openingAt(project, 1), upright, Hold::Flexible));
    EXPECT_TRUE(setCaseSize(project, in(30), in(50)).ok());
}

TEST(Locking, WhatIsLockedChangesNothing) {
    const Project project = bank(3);
    EXPECT_EQ(edited(setHold(project, openingAt(project, 0), upright, Hold::Flexible)), project);
    EXPECT_FALSE(setHold(project, openingAt(project, 0), across, Hold::Locked).ok());
}

TEST(APlaceOfARun, CannotBeLocked) {
    Project project = bankOf({place(opening()), place(opening())}, in(26));
    project.casework.divisions = graduated(project.casework.divisions, ArithmeticRun{in(2)});
    EXPECT_EQ(refusal(setHold(project, openingAt(project, 0), upright, Hold::Locked)),
              "the opening has its place in a graduated run; end the graduation first");
}

TEST(TheOnlyShareBesideARun, CanBeLockedButNotMadeAgain) {
    Project project = bankOf({place(opening()), place(opening()), share(opening())}, in(27));
    project.casework.divisions = graduated(project.casework.divisions, ArithmeticRun{in(1)});
    const OpeningId last = openingAt(project, 2);
    const Project locked = edited(setHold(project, last, upright, Hold::Locked));
    EXPECT_TRUE(nearlySameLayout(project, locked, in(0, 8)));
    const Project larger = edited(setOpeningSize(locked, last, upright, in(10)));
    EXPECT_EQ(heights(larger), (Sizes{in(7), in(8), in(10)}));
    EXPECT_EQ(refusal(setHold(larger, last, upright, Hold::Flexible)),
              "the graduated run in the same split would change its sizes; end the graduation "
              "first");
}

TEST(TheCasesSize, IsSharedByItsOpenings) {
    const Project project = banks(2, 2);
    const Project after = edited(setCaseSize(project, in(35), in(20, 16)));
    EXPECT_EQ(widths(after), Sizes(4, in(15)));
    EXPECT_EQ(heights(after), Sizes(4, in(8)));
    EXPECT_FALSE(setCaseSize(project, in(0), in(20)).ok());
    EXPECT_FALSE(setCaseSize(project, in(3), in(20)).ok());
}

} // namespace
} // namespace frontwright
