// Whoever works without seeing the window is told what the keyboard is on.

#include "tests/ui/elevation/open_window.h"
#include "tests/ui/window/every_dialog.h"

#include <QAbstractScrollArea>
#include <QAccessible>
#include <QApplication>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>

namespace frontwright::testing {
namespace {

/// Qt's own parts inside a widget, and the lists that drop down from it, are named by that widget;
/// a proxy stands for its target.
bool isPartOfAnother(const QWidget& widget, const QWidget& window) {
    const auto* area = qobject_cast<const QAbstractScrollArea*>(widget.parentWidget());
    return widget.window() != &window || widget.focusProxy() ||
           (area && area->viewport() == &widget) ||
           widget.objectName().startsWith(QLatin1String("qt_"));
}

std::string describe(const QWidget& widget) {
    std::string path;
    for (const QWidget* at = &widget; at; at = at->parentWidget())
        path += std::string(path.empty() ? "" : " in ") + at->metaObject()->className() +
                (at->objectName().isEmpty() ? "" : " \"" + at->objectName().toStdString() + "\"");
    return path;
}

std::vector<std::string> nameless(const QWidget& window, int& count) {
    std::vector<std::string> found;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || isPartOfAnother(*widget, window))
            continue;
        ++count;
        QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(widget);
        if (!accessible || accessible->text(QAccessible::Name).trimmed().isEmpty())
            found.push_back(describe(*widget));
    }
    return found;
}

class Names : public OpenWindow, public ::testing::WithParamInterface<const char*> {
protected:
    Names() : OpenWindow(QLatin1String(GetParam())) {}
};

TEST_P(Names, AreGivenToAllThatTakesTheKeyboard) {
    openSample(QStringLiteral("first-try"));
    int count = 0;
    // With nothing, a front and a member selected other forms are shown.
    for (const Selection& selection : {Selection(), Selection::of(plan().fronts[0].opening),
                                       Selection::of(member(MemberKind::Rail).id)}) {
        session().select(selection);
        QApplication::processEvents();
        for (const std::string& each : nameless(window, count))
            ADD_FAILURE() << "no name: " << each;
    }
    EXPECT_GT(count, 60);
}

TEST_P(Names, AreGivenToMenusToo) {
    int count = 0;
    for (const QMenu* menu : window.menuBar()->findChildren<QMenu*>())
        for (const QAction* action : menu->actions())
            if (!action->isSeparator()) {
                ++count;
                EXPECT_FALSE(action->text().isEmpty()) << menu->title().toStdString();
            }
    EXPECT_GT(count, 20);
}

TEST_P(Names, LeadByTheirLetterToTheirField) {
    int count = 0;
    for (const auto& dialog : everyDialog(session(), settings))
        for (const auto* label : dialog->findChildren<QLabel*>()) {
            const QWidget* field = label->buddy();
            if (!field || QKeySequence::mnemonic(label->text()).isEmpty())
                continue;
            ++count;
            EXPECT_NE(field->focusPolicy(), Qt::NoFocus)
                << label->text().toStdString() << " in " << dialog->windowTitle().toStdString();
        }
    EXPECT_GT(count, 20);
}

INSTANTIATE_TEST_SUITE_P(Languages, Names, ::testing::Values("en", "de"),
                         [](const auto& each) { return std::string(each.param); });

} // namespace
} // namespace frontwright::testing
