// Clicks and keys pick out what is to be changed.

#include "tests/ui/elevation/open_window.h"

#include <QApplication>
#include <QTest>

namespace frontwright::testing {
namespace {

class Selecting : public OpenWindow {
protected:
    QPoint front(std::size_t i) { return middleOf(plan().fronts[i].rect) + QPoint(40, 0); }
    OpeningId opening(std::size_t i) { return plan().fronts[i].opening; }
};

TEST_F(Selecting, ClickPicksOneFrontAndAnotherClickTheNext) {
    click(front(0));
    EXPECT_EQ(session().selection().openings, std::vector{opening(0)});
    click(front(2));
    EXPECT_EQ(session().selection().openings, std::vector{opening(2)});
}

TEST_F(Selecting, ShiftClickAddsAndTakesAway) {
    click(front(0));
    click(front(2), Qt::ShiftModifier);
    EXPECT_EQ(session().selection().openings, (std::vector{opening(0), opening(2)}));
    click(front(0), Qt::ShiftModifier);
    EXPECT_EQ(session().selection().openings, std::vector{opening(2)});
}

TEST_F(Selecting, EscapeLetsGoOfAll) {
    click(front(0));
    click(front(1), Qt::ShiftModifier);
    key(Qt::Key_Escape);
    EXPECT_TRUE(session().selection().isEmpty());
    EXPECT_EQ(session().undoStack().count(), 0);
}

TEST_F(Selecting, ClickBesideTheCaseLetsGo) {
    click(front(0));
    click(onScreen({-30, -30}));
    EXPECT_TRUE(session().selection().isEmpty());
}

TEST_F(Selecting, ClickOnARailPicksTheRail) {
    const MemberPlan rail = member(MemberKind::Rail);
    click(middleOf(rail.rect));
    EXPECT_EQ(session().selection().member, rail.id);
    EXPECT_TRUE(session().selection().openings.empty());
}

TEST_F(Selecting, BandPicksAllFrontsThatItTouches) {
    const QPoint from = onScreen({-20, 20});
    const QPoint to = front(1);
    press(from);
    moveTo((from + to) / 2);
    moveTo(to);
    release(to);
    EXPECT_EQ(session().selection().openings.size(), 2U);
}

TEST_F(Selecting, ArrowKeysWalkFromFrontToFront) {
    click(front(0));
    key(Qt::Key_Down);
    EXPECT_EQ(session().selection().openings, std::vector{opening(1)});
    key(Qt::Key_Down);
    EXPECT_EQ(session().selection().openings, std::vector{opening(2)});
    key(Qt::Key_Down);
    EXPECT_EQ(session().selection().openings, std::vector{opening(2)});
    key(Qt::Key_Up);
    EXPECT_EQ(session().selection().openings, std::vector{opening(1)});
}

TEST_F(Selecting, KeysSplitTheSelectedOpeningAndDeleteJoinsItAgain) {
    click(front(1));
    key(Qt::Key_C);
    ASSERT_EQ(plan().fronts.size(), 4U);
    const MemberPlan stile = member(MemberKind::Stile);
    click(middleOf(stile.rect));
    key(Qt::Key_Delete);
    EXPECT_EQ(plan().fronts.size(), 3U);
    EXPECT_EQ(steps(), 2);
}

TEST_F(Selecting, WheelZoomsAboutThePointer) {
    const QPoint at = front(0);
    const QPointF before = view().mapToScene(at);
    const double scale = view().scale();
    QWheelEvent wheel(at, view().viewport()->mapToGlobal(at), {}, {0, 120}, Qt::NoButton,
                      Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(view().viewport(), &wheel);
    EXPECT_GT(view().scale(), scale);
    const QPointF after = view().mapToScene(at);
    EXPECT_NEAR(after.x(), before.x(), 1.5 / view().scale());
    EXPECT_NEAR(after.y(), before.y(), 1.5 / view().scale());
}

} // namespace
} // namespace frontwright::testing
