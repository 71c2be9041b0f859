// Every action is in a menu, can be reached by keys, and says what it does.

#include "ui/help/shortcut_list.h"

#include "tests/ui/window/every_dialog.h"

#include <QAbstractButton>
#include <QAction>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QToolBar>

namespace frontwright::testing {
namespace {

/// The letter after the mark, in lower case; nothing where there is none.
QString mnemonicOf(const QString& text) {
    for (qsizetype i = text.indexOf(u'&'); i >= 0 && i + 1 < text.size();
         i = text.indexOf(u'&', i + 2))
        if (text[i + 1] != u'&')
            return text.sliced(i + 1, 1).toLower();
    return {};
}

class Actions : public OpenWindow, public ::testing::WithParamInterface<const char*> {
protected:
    Actions() : OpenWindow(QLatin1String(GetParam())) {}

    QList<QMenu*> menus() {
        QList<QMenu*> all;
        collect(window.menuBar()->actions(), all);
        return all;
    }

private:
    static void collect(const QList<QAction*>& actions, QList<QMenu*>& all) {
        for (QAction* action : actions)
            if (QMenu* menu = action->menu()) {
                Q_EMIT menu->aboutToShow();
                all << menu;
                collect(menu->actions(), all);
            }
    }
};

TEST_P(Actions, HaveAMnemonicOfTheirOwnInTheirMenu) {
    QList<QList<QAction*>> groups{window.menuBar()->actions()};
    for (const QMenu* menu : menus())
        groups << menu->actions();
    for (const auto& group : groups) {
        std::map<QString, QString> seen;
        for (const QAction* action : group) {
            // A line that only says that there is nothing needs none.
            if (action->isSeparator() || (!action->isEnabled() && action->statusTip().isEmpty()))
                continue;
            const QString letter = mnemonicOf(action->text());
            EXPECT_FALSE(letter.isEmpty()) << "none: " << action->text().toStdString();
            const auto [at, isNew] = seen.try_emplace(letter, action->text());
            EXPECT_TRUE(isNew || letter.isEmpty())
                << at->second.toStdString() << " and " << action->text().toStdString();
        }
    }
}

TEST_P(Actions, SayInTheStatusBarWhatTheyDo) {
    int count = 0;
    for (const QMenu* menu : menus())
        for (const QAction* action : menu->actions()) {
            if (action->isSeparator() || action->menu() || !action->isEnabled())
                continue;
            EXPECT_FALSE(action->statusTip().isEmpty()) << action->text().toStdString();
            ++count;
        }
    EXPECT_GT(count, 30);
}

TEST_P(Actions, HaveKeysThatNoOtherHas) {
    std::map<QKeySequence, QString> seen;
    for (const QMenu* menu : menus())
        for (const QAction* action : menu->actions())
            for (const QKeySequence& keys : action->shortcuts()) {
                const auto [at, isNew] = seen.try_emplace(keys, action->text());
                EXPECT_TRUE(isNew || at->second == action->text())
                    << keys.toString().toStdString() << ": " << at->second.toStdString() << " and "
                    << action->text().toStdString();
            }
    EXPECT_GT(seen.size(), 20U);
}

TEST_P(Actions, OfTheToolBarAreInTheMenusToo) {
    QSet<const QAction*> inMenus;
    for (const QMenu* menu : menus())
        for (const QAction* action : menu->actions())
            inMenus << action;
    for (const QToolBar* bar : window.findChildren<QToolBar*>())
        for (const QAction* action : bar->actions())
            if (!action->isSeparator())
                EXPECT_TRUE(inMenus.contains(action)) << action->text().toStdString();
}

TEST_P(Actions, OfDialogsHaveMnemonicsOfTheirOwn) {
    for (const auto& dialog : everyDialog(session(), settings)) {
        std::map<QString, QString> seen;
        const auto look = [&](const QString& text) {
            const QString letter = mnemonicOf(text);
            if (letter.isEmpty())
                return;
            const auto [at, isNew] = seen.try_emplace(letter, text);
            EXPECT_TRUE(isNew) << dialog->windowTitle().toStdString() << ": "
                               << at->second.toStdString() << " and " << text.toStdString();
        };
        for (const auto* button : dialog->findChildren<QAbstractButton*>())
            look(button->text());
        for (const auto* label : dialog->findChildren<QLabel*>())
            if (label->buddy())
                look(label->text());
    }
}

INSTANTIATE_TEST_SUITE_P(Languages, Actions, ::testing::Values("en", "de"),
                         [](const auto& each) { return std::string(each.param); });

} // namespace
} // namespace frontwright::testing
