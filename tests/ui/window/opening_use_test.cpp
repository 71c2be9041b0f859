// Openings are given uses; those without a front are picked and walked to like any other.

#include "tests/ui/elevation/open_window.h"

#include "core/edits/uses.h"
#include "ui/elevation/case_parts.h"
#include "ui/panels/selection_panel.h"
#include "ui/window/selection_words.h"

#include <QComboBox>
#include <QMenu>
#include <QTest>

#include <array>

namespace frontwright::testing {
namespace {

class OpeningUses : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        open(threeRows());
        view().setFocus();
    }
    void useMiddleFor(OpeningUse use) {
        const std::array middle{plan().fronts.at(1).opening};
        ASSERT_TRUE(
            session().apply(QStringLiteral("Use"), setUse(session().project(), middle, use)));
    }
    QAction* action(const QString& name) {
        for (const QMenu* menu : window.findChildren<QMenu*>())
            for (QAction* each : menu->actions())
                if (each->text().remove(QLatin1Char('&')) == name)
                    return each;
        return nullptr;
    }
};

TEST_F(OpeningUses, AreChosenInTheMenu) {
    session().select(Selection::of(plan().fronts[1].opening));
    QAction* open = action(QStringLiteral("Open space"));
    ASSERT_TRUE(open);
    ASSERT_TRUE(open->isEnabled());
    open->trigger();
    EXPECT_EQ(plan().fronts.size(), 2U);
    ASSERT_EQ(plan().spaces.size(), 1U);
    EXPECT_EQ(session().selection(), Selection::of(plan().spaces[0].opening));
    EXPECT_EQ(steps(), 1);
}

TEST_F(OpeningUses, AreChosenInThePanelWhichThenShowsWhatIsLeftToDecide) {
    session().select(Selection::of(plan().fronts[1].opening));
    auto* panel = window.findChild<SelectionPanel*>();
    PropertyForm* form = panel->reveal(QStringLiteral("opening"));
    ASSERT_TRUE(form);
    auto* uses = qobject_cast<QComboBox*>(form->field(QStringLiteral("Used for")));
    ASSERT_TRUE(uses);
    EXPECT_EQ(uses->currentText(), QStringLiteral("Drawer"));
    EXPECT_TRUE(panel->reveal(QStringLiteral("box")));
    uses->setCurrentIndex(3);
    Q_EMIT uses->activated(3);
    EXPECT_EQ(plan().fronts[1].use, OpeningUse::Door);
    EXPECT_EQ(plan().fronts[1].hinge, HingeSide::Right);
    EXPECT_FALSE(panel->reveal(QStringLiteral("box")));
    EXPECT_TRUE(panel->reveal(QStringLiteral("stock")));
}

TEST_F(OpeningUses, AreThoseOfWhatIsSelectedWhenAFoldIsOpenedAgain) {
    useMiddleFor(OpeningUse::Door);
    session().select(Selection::of(plan().fronts[1].opening));
    auto* panel = window.findChild<SelectionPanel*>();
    PropertyForm* form = panel->reveal(QStringLiteral("opening"));
    auto* uses = qobject_cast<QComboBox*>(form->field(QStringLiteral("Used for")));
    ASSERT_TRUE(uses);
    EXPECT_NE(uses->currentText(), QStringLiteral("Drawer"));
    QStringList open = panel->openFolds();
    panel->setOpenFolds({});
    session().select(Selection::of(plan().fronts[0].opening));
    panel->setOpenFolds(open);
    EXPECT_EQ(uses->currentText(), QStringLiteral("Drawer"));
}

TEST_F(OpeningUses, ShowADoorsHingesWhereTheyAreNow) {
    useMiddleFor(OpeningUse::Door);
    session().select({});
    QApplication::processEvents();
    const QImage left = view().grab().toImage();
    const std::array middle{plan().fronts.at(1).opening};
    ASSERT_TRUE(session().apply(QStringLiteral("Hinges"),
                                setHinge(session().project(), middle, HingeSide::Right)));
    QApplication::processEvents();
    EXPECT_NE(view().grab().toImage(), left);
    session().undoStack().undo();
    QApplication::processEvents();
    EXPECT_EQ(view().grab().toImage(), left);
}

TEST_F(OpeningUses, LeaveASpaceThatCanBeClicked) {
    useMiddleFor(OpeningUse::OpenSpace);
    session().select({});
    const SpacePlan space = plan().spaces.at(0);
    click(middleOf(space.rect));
    EXPECT_EQ(session().selection(), Selection::of(space.opening));
    EXPECT_EQ(nameOf(session().selection(), session().project(), plan()),
              QStringLiteral("Open space A2"));
}

TEST_F(OpeningUses, LeaveASpaceThatTheArrowKeysWalkOver) {
    useMiddleFor(OpeningUse::OpenSpace);
    session().select(Selection::of(plan().fronts[0].opening));
    key(Qt::Key_Down);
    EXPECT_EQ(session().selection(), Selection::of(plan().spaces.at(0).opening));
    key(Qt::Key_Down);
    EXPECT_EQ(session().selection(), Selection::of(plan().fronts[1].opening));
}

TEST_F(OpeningUses, BelongToTheirBank) {
    useMiddleFor(OpeningUse::OpenSpace);
    const OpeningId space = plan().spaces.at(0).opening;
    session().select(Selection::of(space));
    key(Qt::Key_B);
    EXPECT_EQ(session().selection().openings.size(), 3U);
    EXPECT_TRUE(session().selection().contains(space));
    EXPECT_EQ(selectionWords(session()), QStringLiteral("3 openings selected"));
    session().select(Selection::of(plan().fronts[0].opening));
    key(Qt::Key_B);
    EXPECT_TRUE(session().selection().contains(space));
}

TEST_F(OpeningUses, LeaveASpaceThatEveryPanelAndKeyBears) {
    useMiddleFor(OpeningUse::OpenSpace);
    session().select(Selection::of(plan().spaces.at(0).opening));
    for (const auto pressed :
         {Qt::Key_Return, Qt::Key_B, Qt::Key_L, Qt::Key_E, Qt::Key_G, Qt::Key_Delete, Qt::Key_M})
        key(pressed);
    QTest::qWait(20);
    EXPECT_EQ(plan().spaces.size(), 1U);
}

TEST_F(OpeningUses, SplitsAnOpenSpaceIntoOpenSpaces) {
    useMiddleFor(OpeningUse::OpenSpace);
    session().select(Selection::of(plan().spaces.at(0).opening));
    key(Qt::Key_C);
    EXPECT_EQ(plan().spaces.size(), 2U);
}

} // namespace
} // namespace frontwright::testing
