// The help opens at what is selected, and finds its way back.

#include "ui/help/help_desk.h"

#include "ui/help/pages.h"
#include "ui/help/shortcut_list.h"
#include "ui/panels/findings_panel.h"
#include "ui/window/new_case_dialog.h"

#include "tests/ui/elevation/open_window.h"

#include <QApplication>
#include <QLineEdit>
#include <QMenuBar>
#include <QPushButton>
#include <QTest>
#include <QTextBrowser>
#include <QTreeWidget>

namespace frontwright::testing {
namespace {

class HelpOpens : public OpenWindow {
protected:
    HelpWindow* helpWindow() {
        for (QWidget* widget : QApplication::topLevelWidgets())
            if (auto* help = qobject_cast<HelpWindow*>(widget))
                return help;
        return nullptr;
    }
    /// F1 where the keyboard is.
    QString topicByKey() {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_F1);
        QApplication::processEvents();
        HelpWindow* help = helpWindow();
        const QString topic = help ? help->topic() : QString();
        if (help)
            help->close();
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        return topic;
    }
};

TEST_F(HelpOpens, AtTheFrontOrMemberThatIsSelected) {
    view().setFocus();
    session().select({});
    EXPECT_EQ(topicByKey(), QStringLiteral("window#elevation"));
    view().setFocus();
    session().select(Selection::of(plan().fronts[0].opening));
    EXPECT_EQ(topicByKey(), QStringLiteral("glossary#front"));
    view().setFocus();
    session().select(Selection::of(member(MemberKind::Rail).id));
    EXPECT_EQ(topicByKey(), QStringLiteral("decisions#member"));
    view().setFocus();
    Selection hole = Selection::of(plan().fronts[0].opening);
    hole.mountingHole = 0;
    session().select(hole);
    EXPECT_EQ(topicByKey(), QStringLiteral("numbers#hole-place"));
}

TEST_F(HelpOpens, AtTheFindingThatIsChosen) {
    openSample(QStringLiteral("first-try"));
    QTreeWidget& list = window.findings().list();
    list.setFocus();
    for (const int row : {0, 1, 2}) {
        list.setCurrentItem(list.topLevelItem(row));
        list.setFocus();
        const auto code = session().work().findings[static_cast<std::size_t>(row)].code;
        EXPECT_EQ(topicByKey(), topicOf(code));
    }
}

TEST_F(HelpOpens, AtTheNumberThatIsAsked) {
    Q_EMIT session().numberAsked({QuantityKind::OverlayLeft, 0, 0});
    QApplication::processEvents();
    EXPECT_EQ(topicByKey(), QStringLiteral("numbers#overlay"));
}

TEST_F(HelpOpens, AtTheFieldThatHasTheKeyboard) {
    Q_EMIT session().inputAsked(InputPlace::Fit, Quantity{QuantityKind::OverlayLeft, 0, 0});
    QApplication::processEvents();
    EXPECT_EQ(topicByKey(), QStringLiteral("decisions#fit"));
}

TEST_F(HelpOpens, InADialogThatBlocksTheWindow) {
    NewCaseDialog dialog(&window);
    dialog.setModal(true);
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    QTest::keyClick(dialog.focusWidget(), Qt::Key_F1);
    QApplication::processEvents();
    auto* help = dialog.findChild<HelpWindow*>();
    ASSERT_NE(help, nullptr);
    EXPECT_TRUE(help->isVisible());
    EXPECT_EQ(help->topic(), QStringLiteral("window#new-case"));
}

TEST_F(HelpOpens, FromItsMenu) {
    int count = 0;
    for (QAction* menu : window.menuBar()->actions())
        if (withoutMnemonic(menu->text()) == QStringLiteral("Help"))
            for (QAction* action : menu->menu()->actions()) {
                if (action->isSeparator() || action->shortcut() == QKeySequence(Qt::Key_F1) ||
                    action->shortcut() == QKeySequence(Qt::SHIFT | Qt::Key_F1) ||
                    action->text().contains(QStringLiteral("Rules")))
                    continue;
                action->trigger();
                ASSERT_NE(helpWindow(), nullptr);
                EXPECT_FALSE(helpWindow()->browser().toPlainText().isEmpty());
                ++count;
            }
    EXPECT_GE(count, 5);
}

class Help : public ::testing::Test {
protected:
    HelpWindow help{[] { return QStringLiteral("<p>all actions</p>"); }, nullptr};
    QPushButton* button(const char* text) {
        for (QPushButton* each : help.findChildren<QPushButton*>())
            if (withoutMnemonic(each->text()) == QLatin1String(text))
                return each;
        return nullptr;
    }
};

TEST_F(Help, GoesBackAndForward) {
    help.showTopic(QStringLiteral("start"));
    help.showTopic(QStringLiteral("glossary#overlay"));
    EXPECT_EQ(help.topic(), QStringLiteral("glossary#overlay"));
    ASSERT_TRUE(button("Back")->isEnabled());
    button("Back")->click();
    EXPECT_EQ(help.topic(), QStringLiteral("start"));
    button("Forward")->click();
    EXPECT_EQ(help.topic(), QStringLiteral("glossary#overlay"));
    EXPECT_FALSE(button("Forward")->isEnabled());
}

TEST_F(Help, ShowsInTheContentsWhereThePageIs) {
    help.showTopic(QStringLiteral("glossary#overlay"));
    ASSERT_NE(help.contents().currentItem(), nullptr);
    EXPECT_EQ(help.contents().currentItem()->text(0), QStringLiteral("Overlay"));
    EXPECT_EQ(help.contents().topLevelItemCount(), helpPages().size());
}

TEST_F(Help, FollowsLinksWithinItself) {
    help.showTopic(QStringLiteral("numbers#overlay"));
    help.browser().setSource(
        help.browser().source().resolved(QUrl(QStringLiteral("glossary.html#overlay"))));
    EXPECT_EQ(help.topic(), QStringLiteral("glossary#overlay"));
    EXPECT_TRUE(help.browser().toPlainText().contains(QStringLiteral("Overlay")));
}

TEST_F(Help, ListsWhatASearchFindsAndOpensTheFirst) {
    help.showTopic(QStringLiteral("start"));
    QTest::keyClicks(&help.search(), QStringLiteral("kerf"));
    ASSERT_GE(help.contents().topLevelItemCount(), 1);
    QTest::keyClick(&help.search(), Qt::Key_Return);
    EXPECT_EQ(help.topic(), QStringLiteral("glossary#kerf"));
    help.search().clear();
    EXPECT_EQ(help.contents().topLevelItemCount(), helpPages().size());
}

TEST_F(Help, SaysWhereNothingWasFound) {
    help.showTopic(QStringLiteral("start"));
    QTest::keyClicks(&help.search(), QStringLiteral("zzzz"));
    EXPECT_EQ(help.contents().topLevelItemCount(), 0);
    QTest::keyClick(&help.search(), Qt::Key_Return);
    EXPECT_EQ(help.topic(), QStringLiteral("start"));
}

TEST_F(Help, HoldsTheActionsThatAreGivenToIt) {
    help.showTopic(QStringLiteral("keys#shortcuts"));
    EXPECT_TRUE(help.browser().toPlainText().contains(QStringLiteral("all actions")));
}

TEST_F(Help, ClosesWithEsc) {
    help.showTopic(QStringLiteral("start"));
    QTest::keyClick(&help, Qt::Key_Escape);
    EXPECT_FALSE(help.isVisible());
}

using Shortcuts = OpenWindow;

TEST_F(Shortcuts, AreListedFromTheActionsThemselves) {
    const QString table = shortcutTable(*window.menuBar());
    int count = 0;
    for (const QMenu* menu : window.menuBar()->findChildren<QMenu*>())
        for (const QAction* action : menu->actions()) {
            if (action->isSeparator() || action->menu() || action->shortcut().isEmpty())
                continue;
            const QString keys = action->shortcut().toString(QKeySequence::NativeText);
            EXPECT_TRUE(table.contains(keys.toHtmlEscaped())) << keys.toStdString();
            EXPECT_TRUE(table.contains(action->statusTip().toHtmlEscaped()))
                << action->text().toStdString();
            ++count;
        }
    EXPECT_GT(count, 15);
}

TEST(Mnemonics, AreTakenOffButNotAmpersands) {
    EXPECT_EQ(withoutMnemonic(QStringLiteral("Split into &rows")),
              QStringLiteral("Split into rows"));
    EXPECT_EQ(withoutMnemonic(QStringLiteral("nuts && bolts")), QStringLiteral("nuts & bolts"));
}

} // namespace
} // namespace frontwright::testing
