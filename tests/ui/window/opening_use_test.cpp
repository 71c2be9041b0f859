// Openings are given uses; those without a front are picked and walked to like any other.

#include "tests/ui/elevation/open_window.h"

#include "core/edits/choices.h"
#include "core/edits/uses.h"
#include "ui/elevation/case_parts.h"
#include "ui/fields/length_field.h"
#include "ui/panels/selection_panel.h"
#include "ui/window/selection_words.h"

#include <QComboBox>
#include <QMenu>
#include <QPushButton>
#include <QTest>

#include <algorithm>
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

TEST_F(OpeningUses, MakeAPairOfDoorsInOneStep) {
    session().select(Selection::of(plan().fronts.at(1).opening));
    const std::size_t before = plan().fronts.size();
    const int step = steps();
    PropertyForm* form = window.findChild<SelectionPanel*>()->reveal(QStringLiteral("opening"));
    auto* uses = qobject_cast<QComboBox*>(form->field(QStringLiteral("Used for")));
    ASSERT_TRUE(uses);
    ASSERT_EQ(uses->itemText(uses->count() - 1), QStringLiteral("Pair of doors"));
    uses->setFocus();
    QTest::keyClick(uses, Qt::Key_End);
    EXPECT_EQ(plan().fronts.size(), before + 1);
    EXPECT_EQ(steps(), step + 1);
    session().undoStack().undo();
    EXPECT_EQ(plan().fronts.size(), before);
}

TEST_F(OpeningUses, AreAskedOnlyWhatTheyHave) {
    const struct {
        OpeningUse use;
        QStringList asked;
    } rows[] = {
        {OpeningUse::Drawer,
         {"fit", "stock", "wood", "profile", "box", "mounting", "hardware", "fittings"}},
        {OpeningUse::FixedFront,
         {"fit", "stock", "wood", "profile", "mounting", "hardware", "fittings"}},
        {OpeningUse::Door, {"fit", "stock", "wood", "profile"}},
        {OpeningUse::OpenSpace, {}},
        {OpeningUse::Board, {"board"}},
    };
    auto* panel = window.findChild<SelectionPanel*>();
    const OpeningId middle = plan().fronts.at(1).opening;
    for (const auto& row : rows) {
        ASSERT_TRUE(session().apply(QStringLiteral("Use"),
                                    setUse(session().project(), std::array{middle}, row.use)));
        session().select(Selection::of(middle));
        for (const char* fold : {"fit", "stock", "wood", "profile", "box", "mounting", "hardware",
                                 "fittings", "board"})
            EXPECT_EQ(panel->reveal(QLatin1String(fold)) != nullptr,
                      row.asked.contains(QLatin1String(fold)))
                << fold << " of use " << static_cast<int>(row.use);
        EXPECT_TRUE(panel->reveal(QStringLiteral("opening")));
        for (const char* fold : {"case", "limits", "member"})
            EXPECT_FALSE(panel->reveal(QLatin1String(fold))) << fold;
    }
}

TEST_F(OpeningUses, DecideNothingForASpaceThatIsSelectedBesideAFront) {
    useMiddleFor(OpeningUse::OpenSpace);
    const OpeningId space = plan().spaces.at(0).opening;
    const OpeningId front = plan().fronts.at(0).opening;
    Selection both = Selection::of(front);
    both.openings.push_back(space);
    session().select(both);
    PropertyForm* form = window.findChild<SelectionPanel*>()->reveal(QStringLiteral("stock"));
    ASSERT_TRUE(form);
    auto* thickness = qobject_cast<LengthField*>(form->field(QStringLiteral("Thickness")));
    ASSERT_TRUE(thickness);
    thickness->startTyping(QStringLiteral("1"));
    QTest::keyClick(&thickness->lineEdit(), Qt::Key_Return);
    EXPECT_EQ(plan().frontOf(front)->thickness, Length::inches(1));
    EXPECT_FALSE(findOpening(session().project(), space)->choices.thickness.has_value());
}

TEST_F(OpeningUses, LetADoorFollowTheCaseAgain) {
    useMiddleFor(OpeningUse::Door);
    const OpeningId door = plan().fronts.at(1).opening;
    const Project before = session().project();
    ASSERT_TRUE(
        session().apply(QStringLiteral("Own"), setThickness(before, {door}, {Length::inches(1)})));
    session().select(Selection::of(door));
    PropertyForm* form = window.findChild<SelectionPanel*>()->reveal(QStringLiteral("stock"));
    ASSERT_TRUE(form);
    const auto buttons = form->findChildren<QPushButton*>();
    const auto follow = std::ranges::find_if(
        buttons, [](const QPushButton* each) { return each->text() == "Follow the case"; });
    ASSERT_NE(follow, buttons.end());
    QTest::mouseClick(*follow, Qt::LeftButton);
    EXPECT_EQ(session().project(), before);
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
