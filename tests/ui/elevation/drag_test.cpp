// Members are dragged with the mouse, as a maker does it.

#include "tests/ui/elevation/open_window.h"

#include "core/edits/snap.h"
#include "ui/elevation/value_entry.h"

#include <QApplication>
#include <QTest>

namespace frontwright::testing {
namespace {

class Drag : public OpenWindow {
protected:
    /// Grabs the upper of the two rails and pulls it that far down, without letting go.
    void pullDown(int pixels) {
        const MemberPlan rail = upperRail();
        m_at = middleOf(rail.rect);
        press(m_at);
        // In steps, as a hand moves.
        for (int i = 1; i <= 4; ++i)
            moveTo(m_at + QPoint(0, pixels * i / 4));
        m_at += QPoint(0, pixels);
    }
    void letGo() { release(m_at); }
    MemberPlan upperRail() {
        const MemberPlan first = member(MemberKind::Rail, 0);
        const MemberPlan second = member(MemberKind::Rail, 1);
        return first.rect.bottom > second.rect.bottom ? first : second;
    }
    Length sumDownTheBank() {
        const Plan& shown = plan();
        Length sum;
        for (const FrontPlan& front : shown.fronts)
            sum += front.openingRect.height();
        for (const MemberPlan& each : shown.members)
            if (each.kind == MemberKind::Rail || each.kind == MemberKind::OuterRail)
                sum += each.rect.height();
        return sum;
    }
    ValueEntry* entry() { return view().findChild<ValueEntry*>(); }

private:
    QPoint m_at;
};

TEST_F(Drag, MovesARailAndTheSizesStillSumToTheCase) {
    const CaseRect before = upperRail().rect;
    pullDown(40);
    letGo();
    const Length moved = before.bottom - upperRail().rect.bottom;
    EXPECT_NEAR(moved.inMillimetres(), 40 / view().scale(), 8 / view().scale());
    EXPECT_EQ(upperRail().rect.height(), before.height());
    EXPECT_EQ(sumDownTheBank(), Length::inches(30));
    EXPECT_EQ(brokenInvariant(plan()), "");
    EXPECT_EQ(steps(), 1);
    EXPECT_FALSE(session().isPreviewing());
}

TEST_F(Drag, LeavesTheRailOnTheCasesGrid) {
    const Length before = upperRail().rect.bottom;
    for (const int pixels : {23, 31, 17}) {
        pullDown(pixels);
        letGo();
    }
    const Length moved = before - upperRail().rect.bottom;
    EXPECT_GT(moved, Length());
    EXPECT_EQ(moved.nanometres() % session().project().casework.grid.length.nanometres(), 0);
}

TEST_F(Drag, ShowsBothNeighboursNewSizesBeforeTheRailIsLetGo) {
    const Length upper = plan().fronts[0].openingRect.height();
    const Length lower = plan().fronts[1].openingRect.height();
    pullDown(40);
    EXPECT_TRUE(session().isPreviewing());
    EXPECT_GT(plan().fronts[0].openingRect.height(), upper);
    EXPECT_LT(plan().fronts[1].openingRect.height(), lower);
    EXPECT_EQ(plan().fronts[0].openingRect.height() + plan().fronts[1].openingRect.height(),
              upper + lower);
    EXPECT_EQ(session().settled().plan.fronts[0].openingRect.height(), upper);
    EXPECT_EQ(steps(), 0);
    letGo();
}

TEST_F(Drag, IsOneUndoStepThatUndoAndRedoWalk) {
    const std::string before = bytes();
    pullDown(40);
    letGo();
    const std::string after = bytes();
    EXPECT_NE(after, before);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(steps(), 0);
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(bytes(), after);
    EXPECT_EQ(steps(), 1);
}

TEST_F(Drag, PutBackByEscapeLeavesNoTrace) {
    const std::string before = bytes();
    pullDown(40);
    ASSERT_NE(bytes(), before);
    key(Qt::Key_Escape);
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(session().undoStack().count(), 0);
    EXPECT_FALSE(session().isPreviewing());
    EXPECT_FALSE(window.file().isUnsaved());
    letGo();
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(session().undoStack().count(), 0);
}

TEST_F(Drag, BackToWhereItBeganIsNoStep) {
    const QPoint at = middleOf(upperRail().rect);
    press(at);
    moveTo(at + QPoint(0, 40));
    moveTo(at);
    release(at);
    EXPECT_EQ(session().undoStack().count(), 0);
    EXPECT_FALSE(window.file().isUnsaved());
}

TEST_F(Drag, TypedDistanceBeatsTheMouse) {
    const Length before = upperRail().rect.bottom;
    pullDown(40);
    type(QStringLiteral("1"));
    ASSERT_TRUE(entry()->isVisible());
    type(QStringLiteral(" 5/16"));
    // The mouse goes on and lets go: the typed value stays until Enter.
    moveTo(middleOf(upperRail().rect) + QPoint(0, 90));
    letGo();
    EXPECT_EQ(before - upperRail().rect.bottom, Length::inches(1, 20));
    EXPECT_EQ(steps(), 0);
    key(Qt::Key_Return);
    EXPECT_FALSE(entry()->isVisible());
    EXPECT_EQ(before - upperRail().rect.bottom, Length::inches(1, 20));
    EXPECT_EQ(session().undoStack().count(), 1);
    EXPECT_EQ(sumDownTheBank(), Length::inches(30));
    session().undoStack().undo();
    EXPECT_EQ(upperRail().rect.bottom, before);
}

TEST_F(Drag, TypedDistanceIsTakenBackByEscapeByteForByte) {
    const std::string before = bytes();
    pullDown(40);
    type(QStringLiteral("2"));
    EXPECT_NE(bytes(), before);
    key(Qt::Key_Escape);
    EXPECT_FALSE(entry()->isVisible());
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(session().undoStack().count(), 0);
    letGo();
    EXPECT_EQ(bytes(), before);
}

TEST_F(Drag, IsHeldWhereTheNeighbourHasNoRoomLeft) {
    pullDown(view().viewport()->height());
    letGo();
    EXPECT_EQ(sumDownTheBank(), Length::inches(30));
    for (const FrontPlan& front : plan().fronts)
        EXPECT_GE(front.openingRect.height(), session().project().limits.leastOpening.length);
    EXPECT_EQ(brokenInvariant(plan()), "");
}

TEST_F(Drag, OfAnOuterStileChangesItsWidth) {
    const MemberPlan stile = member(MemberKind::OuterStile);
    const QPoint at = middleOf(stile.rect);
    press(at);
    moveTo(at + QPoint(6, 0));
    moveTo(at + QPoint(14, 0));
    release(at + QPoint(14, 0));
    EXPECT_GT(plan().memberOf(stile.id)->rect.width(), stile.rect.width());
    EXPECT_EQ(steps(), 1);
    EXPECT_EQ(session().undoStack().undoText().toStdString(), "Change stile width");
}

TEST_F(Drag, EndedByUndoLeavesAStackThatLeadsBackToTheStart) {
    const std::string start = bytes();
    pullDown(40);
    letGo();
    pullDown(-24);
    session().undoStack().undo();
    EXPECT_FALSE(session().isPreviewing());
    EXPECT_EQ(bytes(), start);
    letGo();
    EXPECT_EQ(bytes(), start);
    EXPECT_EQ(steps(), 0);
    EXPECT_TRUE(session().undoStack().canRedo());
}

class Nudge : public Drag {};

TEST_F(Nudge, ByArrowKeysMovesOneGridStepEachAndIsOneStepWhenQuick) {
    const Length before = upperRail().rect.bottom;
    click(middleOf(upperRail().rect));
    for (int i = 0; i < 3; ++i)
        key(Qt::Key_Up);
    EXPECT_EQ(upperRail().rect.bottom - before, Length::fromSixtyFourths(3 * 4));
    EXPECT_EQ(session().undoStack().count(), 1);
    session().undoStack().undo();
    EXPECT_EQ(upperRail().rect.bottom, before);
}

TEST_F(Nudge, AfterAPauseIsAStepOfItsOwn) {
    click(middleOf(upperRail().rect));
    key(Qt::Key_Up);
    QTest::qWait(700);
    key(Qt::Key_Up);
    EXPECT_EQ(session().undoStack().count(), 2);
}

TEST_F(Nudge, ThereAndBackIsNoStep) {
    const std::string before = bytes();
    click(middleOf(upperRail().rect));
    key(Qt::Key_Up);
    key(Qt::Key_Down);
    EXPECT_EQ(bytes(), before);
    EXPECT_EQ(session().undoStack().count(), 0);
}

TEST_F(Nudge, WithShiftMovesTenSteps) {
    const Length before = upperRail().rect.bottom;
    click(middleOf(upperRail().rect));
    key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(before - upperRail().rect.bottom, Length::fromSixtyFourths(40));
}

} // namespace
} // namespace frontwright::testing
