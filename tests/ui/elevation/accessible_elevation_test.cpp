// The drawing for those who do not see it: a list of its parts, with names, sizes and what to heed.

#include "ui/elevation/accessible_elevation.h"

#include "core/edits/choices.h"
#include "core/lengths/format.h"
#include "ui/elevation/announcer.h"
#include "ui/elevation/case_parts.h"

#include "tests/ui/elevation/open_window.h"

#include <QAccessible>
#include <QApplication>
#include <QSignalSpy>
#include <QTest>

namespace frontwright::testing {
namespace {

class ReadAloud : public OpenWindow {
protected:
    QAccessibleInterface* drawing() { return QAccessible::queryAccessibleInterface(&view()); }
    static QString name(QAccessibleInterface* part) { return part->text(QAccessible::Name); }
    static QString value(QAccessibleInterface* part) { return part->text(QAccessible::Value); }
};

TEST_F(ReadAloud, IsAChildForEachFrontAndMemberAndBelowItItsHoles) {
    ASSERT_EQ(drawing()->role(), QAccessible::List);
    ASSERT_EQ(drawing()->childCount(),
              static_cast<int>(plan().fronts.size() + plan().members.size()));
    std::set<QString> names;
    for (int i = 0; i < drawing()->childCount(); ++i) {
        QAccessibleInterface* part = drawing()->child(i);
        ASSERT_NE(part, nullptr);
        ASSERT_TRUE(part->isValid());
        EXPECT_EQ(part->parent(), drawing());
        EXPECT_EQ(drawing()->indexOfChild(part), i);
        EXPECT_EQ(drawing()->child(i), part) << "the same each time";
        EXPECT_FALSE(name(part).isEmpty());
        EXPECT_FALSE(value(part).isEmpty());
        EXPECT_TRUE(names.insert(name(part)).second) << name(part).toStdString();
        for (int j = 0; j < part->childCount(); ++j) {
            QAccessibleInterface* hole = part->child(j);
            EXPECT_EQ(hole->parent(), part);
            EXPECT_EQ(part->indexOfChild(hole), j);
            EXPECT_FALSE(name(hole).isEmpty());
            EXPECT_EQ(hole->childCount(), 0);
        }
    }
    const FrontPlan& front = plan().fronts.front();
    const auto handles = front.hardware ? front.hardware->holes.size() : 0;
    EXPECT_EQ(drawing()->child(0)->childCount(),
              static_cast<int>(front.mounting.holes.size() + handles));
}

/// 24 in × 30 in, frame 1 1/2 in… the numbers are the plan's own, as shown.
TEST_F(ReadAloud, TellsSizesAsTheyAreShown) {
    QAccessibleInterface* front = drawing()->child(0);
    EXPECT_EQ(name(front), QStringLiteral("Front A1"));
    const CaseRect& rect = plan().fronts[0].rect;
    const LengthStyle style = session().style();
    EXPECT_EQ(value(front).toStdString(),
              shown(rect.width(), style) + " × " + shown(rect.height(), style));
    QAccessibleInterface* rail = accessiblePart(view(), Selection::of(member(MemberKind::Rail).id));
    ASSERT_NE(rail, nullptr);
    EXPECT_TRUE(value(rail).startsWith(QStringLiteral("1 1/2 in wide")))
        << value(rail).toStdString();
    EXPECT_TRUE(name(rail).startsWith(QStringLiteral("Rail above A")));
}

TEST_F(ReadAloud, TellsWhatIsToBeHeeded) {
    openSample(QStringLiteral("first-try"));
    const Finding& gravest = session().work().findings.front();
    ASSERT_TRUE(gravest.where.opening);
    QAccessibleInterface* part = accessiblePart(view(), Selection::of(*gravest.where.opening));
    const FindingText text = describe(gravest, session().project(), plan(), session().style());
    EXPECT_TRUE(part->text(QAccessible::Description)
                    .contains(QString::fromStdString(text.sentence.english())));
}

TEST_F(ReadAloud, SelectsWhenPressedAndSaysSo) {
    QAccessibleInterface* part = drawing()->child(1);
    EXPECT_FALSE(part->state().selected);
    ASSERT_NE(part->actionInterface(), nullptr);
    part->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(session().selection(), Selection::of(plan().fronts[1].opening));
    EXPECT_TRUE(part->state().selected);
    EXPECT_TRUE(part->state().focused);
    EXPECT_EQ(drawing()->focusChild(), part);
    EXPECT_FALSE(drawing()->child(0)->state().selected);

    QAccessibleInterface* hole = part->child(0);
    hole->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(session().selection().mountingHole, 0U);
    EXPECT_TRUE(hole->state().focused);
    EXPECT_TRUE(part->state().selected);
    EXPECT_FALSE(part->state().focused);
}

TEST_F(ReadAloud, IsWhereItIsSeen) {
    QAccessibleInterface* part = drawing()->child(2);
    const QPoint middle = view().viewport()->mapToGlobal(middleOf(plan().fronts[2].rect));
    EXPECT_TRUE(part->rect().contains(middle));
    EXPECT_EQ(drawing()->childAt(middle.x(), middle.y()), part);
    EXPECT_FALSE(part->state().offscreen);
}

TEST_F(ReadAloud, OutlivesEditsAndForgetsWhatIsGone) {
    const Selection rail = Selection::of(member(MemberKind::Rail).id);
    QAccessibleInterface* part = accessiblePart(view(), rail);
    ASSERT_TRUE(part->isValid());
    const int before = drawing()->childCount();
    session().apply(QStringLiteral("Remove"), removeMember(session().project(), *rail.member));
    EXPECT_FALSE(part->isValid());
    EXPECT_EQ(accessiblePart(view(), rail), nullptr);
    EXPECT_EQ(drawing()->childCount(), before - 2);
    EXPECT_TRUE(name(part).isEmpty());
    part->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_TRUE(session().selection().isEmpty());
    session().undoStack().undo();
    EXPECT_TRUE(part->isValid());
}

TEST_F(ReadAloud, ListsTheOpenFieldForTyping) {
    const int before = drawing()->childCount();
    view().setFocus();
    session().select(Selection::of(plan().fronts[0].opening));
    key(Qt::Key_Return);
    QApplication::processEvents();
    ASSERT_EQ(drawing()->childCount(), before + 1);
    EXPECT_NE(drawing()->child(before), nullptr);
    key(Qt::Key_Escape);
    EXPECT_EQ(drawing()->childCount(), before);
}

using Announced = OpenWindow;

TEST_F(Announced, IsWhatIsSelectedWithItsSize) {
    auto* announcer = view().findChild<Announcer*>();
    ASSERT_NE(announcer, nullptr);
    QSignalSpy said(announcer, &Announcer::said);
    session().select(Selection::of(plan().fronts[0].opening));
    ASSERT_EQ(said.size(), 1);
    const QString words = said.front().front().toString();
    EXPECT_TRUE(words.startsWith(QStringLiteral("Front A1, "))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral(" × ")));
    session().select({});
    EXPECT_EQ(said.back().front().toString(), QStringLiteral("Nothing is selected."));
}

TEST_F(Announced, IsHowTheFindingsStandOnceTheyHaveChanged) {
    openSample(QStringLiteral("first-try"));
    auto* announcer = view().findChild<Announcer*>();
    const auto list = remedies(session().work().findings.front(), session().project(),
                               *session().work().catalogue, plan(), session().style());
    ASSERT_FALSE(list.empty());
    QSignalSpy said(announcer, &Announcer::said);
    session().apply(QStringLiteral("Cure"), list.front().apply(session().project()));
    ASSERT_EQ(said.size(), 1);
    EXPECT_EQ(said.front().front().toString(), findingsSummary(session().work().findings));
    // A change that leaves them as they are is not told again.
    session().apply(QStringLiteral("Title"), setTitle(session().project(), "x"));
    EXPECT_EQ(said.size(), 1);
}

using ByKeyboard = OpenWindow;

/// Along the left edge of the drawing, halfway down.
TEST_F(ByKeyboard, ShowsWhetherTheDrawingHasTheKeyboard) {
    const auto edge = [this] {
        QApplication::processEvents();
        return view().grab().toImage().pixelColor(0, view().height() / 2);
    };
    view().setFocus();
    EXPECT_EQ(edge(), accentColour(themeOf(view().palette())));
    view().clearFocus();
    EXPECT_EQ(edge(), sheetColour(themeOf(view().palette())));
}

TEST_F(ByKeyboard, CtrlTabGoesThroughEveryFrontHoleAndMemberAndRound) {
    view().setFocus();
    session().select({});
    const auto parts = allParts(plan());
    ASSERT_GT(parts.size(), plan().fronts.size() + plan().members.size());
    for (const Selection& part : parts) {
        key(Qt::Key_Tab, Qt::ControlModifier);
        EXPECT_EQ(session().selection(), part);
        EXPECT_TRUE(view().hasFocus());
    }
    key(Qt::Key_Tab, Qt::ControlModifier);
    EXPECT_EQ(session().selection(), parts.front());
    key(Qt::Key_Backtab, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(session().selection(), parts.back());
}

} // namespace
} // namespace frontwright::testing
