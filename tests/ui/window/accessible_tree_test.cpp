// The whole tree that a reader of the screen walks has names.

#include "ui/help/help_window.h"

#include "tests/ui/window/every_dialog.h"

#include <QAccessible>
#include <QApplication>
#include <QDockWidget>

namespace frontwright::testing {
namespace {

/// Roles that are announced by what lies in them, or not at all.
bool needsNoName(QAccessible::Role role) {
    using enum QAccessible::Role;
    constexpr QAccessible::Role silent[] = {Client,    Pane,       Window,   LayeredPane, Grouping,
                                            Border,    ScrollBar,  Splitter, ToolBar,     StatusBar,
                                            Separator, Whitespace, Grip,     TitleBar,    Document,
                                            MenuBar,   PopupMenu,  NoRole,   Section};
    return std::find(std::begin(silent), std::end(silent), role) != std::end(silent);
}

void walk(QAccessibleInterface* at, const std::string& path, int& count) {
    if (!at || !at->isValid() || at->state().invisible)
        return;
    const QString name = at->text(QAccessible::Name);
    const std::string here = path + " / " + std::to_string(at->role()) + " " +
                             (at->object() ? at->object()->metaObject()->className() : "") + " “" +
                             name.toStdString() + "”";
    // A label that says nothing at present is no control.
    const bool isEmptyText = at->role() == QAccessible::StaticText;
    if (!needsNoName(at->role()) && !isEmptyText) {
        ++count;
        EXPECT_FALSE(name.trimmed().isEmpty()) << here;
    }
    for (int i = 0; i < at->childCount(); ++i)
        walk(at->child(i), here, count);
}

using AccessibleTree = OpenWindow;

TEST_F(AccessibleTree, OfTheWindowHasNames) {
    openSample(QStringLiteral("first-try"));
    int count = 0;
    for (QDockWidget* dock : window.findChildren<QDockWidget*>()) {
        dock->show();
        dock->raise();
        QApplication::processEvents();
        for (const Selection& selection : {Selection(), Selection::of(plan().fronts[0].opening),
                                           Selection::of(member(MemberKind::Rail).id)}) {
            session().select(selection);
            QApplication::processEvents();
            walk(QAccessible::queryAccessibleInterface(&window), {}, count);
        }
    }
    EXPECT_GT(count, 500);
}

TEST_F(AccessibleTree, OfEveryDialogHasNames) {
    for (const auto& dialog : everyDialog(session(), settings)) {
        dialog->show();
        QApplication::processEvents();
        int count = 0;
        walk(QAccessible::queryAccessibleInterface(dialog.get()),
             dialog->windowTitle().toStdString(), count);
        EXPECT_GT(count, 3);
        EXPECT_FALSE(dialog->windowTitle().isEmpty());
    }
}

TEST_F(AccessibleTree, OfTheHelpHasNames) {
    HelpWindow help([] { return QString(); }, nullptr);
    help.showTopic(QStringLiteral("glossary#overlay"));
    QApplication::processEvents();
    int count = 0;
    walk(QAccessible::queryAccessibleInterface(&help), "Help", count);
    EXPECT_GT(count, 10);
}

} // namespace
} // namespace frontwright::testing
