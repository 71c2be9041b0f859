// Keys that edit the drawing act while the drawing has the keyboard; what is typed elsewhere stays
// there.

#include "tests/ui/elevation/open_window.h"
#include "ui/window/central_area.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QDockWidget>
#include <QPointer>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>

namespace frontwright::testing {
namespace {

class DrawingKeys : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        openSample(QStringLiteral("glaze-chest"));
        session().select(Selection::of(plan().fronts.front().opening));
        for (QAction* action : window.findChildren<QAction*>())
            QObject::connect(action, &QAction::triggered, action, [this, action] {
                if (!action->isCheckable())
                    triggered << action->text();
            });
        // What a key opens by mistake must not stop the test.
        QObject::connect(&closer, &QTimer::timeout, &closer, [] {
            if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget()))
                dialog->reject();
        });
        closer.start(20);
    }
    /// All the keys that edit the drawing.
    void typeAll(QWidget& into) {
        for (const char letter : {'r', 'c', 'j', 'e', 'g', 'l', 'n', 'b', 'm', 'p'}) {
            QTest::keyClick(&into, letter);
            QTest::keyClick(&into, letter, Qt::ShiftModifier);
        }
        QTest::keyClick(&into, Qt::Key_5);
        QTest::keyClick(&into, Qt::Key_Delete);
        for (const Qt::Key key : {Qt::Key_A, Qt::Key_C, Qt::Key_V})
            QTest::keyClick(&into, key, Qt::ControlModifier);
    }
    static bool takesKeys(const QWidget& widget) {
        return widget.isVisible() && widget.isEnabled() && widget.focusPolicy() != Qt::NoFocus &&
               !widget.focusProxy();
    }

    QStringList triggered;
    QTimer closer;
};

TEST_F(DrawingKeys, LeaveEveryPanelsListsAndFieldsAlone) {
    int tried = 0;
    for (QDockWidget* dock : window.findChildren<QDockWidget*>()) {
        dock->show();
        dock->raise();
        QApplication::processEvents();
        for (const QPointer<QWidget> widget : dock->findChildren<QWidget*>()) {
            if (!widget || !takesKeys(*widget))
                continue;
            widget->setFocus();
            QApplication::processEvents();
            if (!widget || !widget->hasFocus())
                continue;
            const std::string name =
                dock->windowTitle().toStdString() + ", " + widget->metaObject()->className();
            typeAll(*widget);
            ++tried;
            EXPECT_TRUE(triggered.isEmpty())
                << name << ": " << triggered.join(QStringLiteral(", ")).toStdString();
            triggered.clear();
            session().select(Selection::of(plan().fronts.front().opening));
        }
    }
    EXPECT_GE(tried, 10);
}

TEST_F(DrawingKeys, LeaveTheNumbersListToItsTyping) {
    auto* dock = window.findChild<QDockWidget*>(QStringLiteral("numbers"));
    dock->show();
    dock->raise();
    QApplication::processEvents();
    auto* list = dock->findChild<QTreeWidget*>();
    ASSERT_NE(list, nullptr);
    list->setFocus();
    const std::string before = bytes();
    QTest::keyClicks(list, QStringLiteral("reveal"));
    QTest::keyClick(list, Qt::Key_Delete);
    EXPECT_EQ(bytes(), before);
    EXPECT_TRUE(triggered.isEmpty());
}

TEST_F(DrawingKeys, ActWhileTheDrawingHasTheKeyboard) {
    view().setFocus();
    const auto fronts = plan().fronts.size();
    key(Qt::Key_C);
    EXPECT_EQ(plan().fronts.size(), fronts + 1);
    key(Qt::Key_3);
    EXPECT_EQ(plan().fronts.size(), fronts + 2);
    key(Qt::Key_A, Qt::ControlModifier);
    EXPECT_EQ(session().selection().openings.size(), fronts + 2);
}

TEST_F(DrawingKeys, ActInTheLookAsWell) {
    auto* area = window.findChild<CentralArea*>();
    ASSERT_NE(area, nullptr);
    area->choose(CentralArea::Shows::Look);
    area->setFocus();
    QApplication::processEvents();
    const auto fronts = plan().fronts.size();
    key(Qt::Key_C);
    EXPECT_EQ(plan().fronts.size(), fronts + 1);
}

} // namespace
} // namespace frontwright::testing
