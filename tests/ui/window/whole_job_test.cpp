// A whole job, from an empty window to drilling templates on disk: once by mouse, once by keys.

#include "tests/ui/elevation/open_window.h"
#include "tests/ui/window/in_dialog.h"

#include "ui/panels/findings_panel.h"

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFileDialog>
#include <QFileInfo>
#include <QLineEdit>
#include <QMenuBar>
#include <QPushButton>
#include <QTest>
#include <QToolBar>
#include <QTreeWidget>

#include <algorithm>

namespace frontwright::testing {
namespace {

QString plain(QString text) {
    return text.remove(QLatin1Char('&'));
}

class WholeJob : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        target = folder.filePath(QStringLiteral("sheets.pdf"));
    }

    [[nodiscard]] int grave() {
        return static_cast<int>(std::count_if(
            session().work().findings.begin(), session().work().findings.end(), [](const auto& f) {
                return f.severity == Severity::Ruins || f.severity == Severity::WontWork;
            }));
    }
    [[nodiscard]] QTreeWidget& findingsList() {
        return *window.findings().findChild<QTreeWidget*>();
    }
    [[nodiscard]] QPushButton* firstRemedy() {
        for (auto* button : window.findings().findChildren<QPushButton*>())
            if (button->isVisible())
                return button;
        return nullptr;
    }

    QString target;
};

// By mouse ------------------------------------------------------------------------------------

class ByMouse : public WholeJob {
protected:
    static void clickOn(QWidget& widget) { QTest::mouseClick(&widget, Qt::LeftButton); }

    void clickTool(const QString& text) {
        for (QAction* action : window.findChild<QToolBar*>(QStringLiteral("tools"))->actions())
            if (plain(action->iconText()).startsWith(text) ||
                plain(action->text()).startsWith(text)) {
                auto* bar = window.findChild<QToolBar*>(QStringLiteral("tools"));
                ASSERT_TRUE(action->isEnabled()) << text.toStdString();
                clickOn(*bar->widgetForAction(action));
                return;
            }
        FAIL() << "no such tool: " << text.toStdString();
    }
    static void clickButton(QWidget& in, const QString& text) {
        for (auto* button : in.findChildren<QAbstractButton*>())
            if (plain(button->text()).startsWith(text)) {
                clickOn(*button);
                return;
            }
        FAIL() << "no such button: " << text.toStdString();
    }
    void clickMenu(const QString& menu, const QString& entry) {
        for (QAction* top : window.menuBar()->actions()) {
            if (plain(top->text()) != menu)
                continue;
            QTest::mouseClick(window.menuBar(), Qt::LeftButton, {},
                              window.menuBar()->actionGeometry(top).center());
            for (QAction* action : top->menu()->actions())
                if (plain(action->text()).startsWith(entry)) {
                    QTest::mouseClick(top->menu(), Qt::LeftButton, {},
                                      top->menu()->actionGeometry(action).center());
                    return;
                }
        }
        FAIL() << "no such entry: " << entry.toStdString();
    }
    void clickFront(std::size_t i, Qt::KeyboardModifiers modifiers = {}) {
        ASSERT_LT(i, plan().fronts.size());
        const CaseRect& rect = plan().fronts[i].rect;
        // Beside the handle in its middle.
        const CaseRect quarter{rect.left, rect.bottom, rect.centre().x, rect.centre().y};
        click(middleOf(quarter), modifiers);
    }
    void dragMember(MemberKind kind, QPoint by) {
        const QPoint at = middleOf(member(kind).rect);
        press(at);
        moveTo(at + by / 2);
        moveTo(at + by);
        release(at + by);
    }

    void newCase();
    void tenEdits();
    void cure();
    void templates();
};

void ByMouse::newCase() {
    inDialog([] {
        QWidget& dialog = *QApplication::activeModalWidget();
        const auto fields = dialog.findChildren<QLineEdit*>();
        clickOn(*fields[0]);
        fields[0]->selectAll();
        QTest::keyClicks(fields[0], QStringLiteral("40"));
        clickButton(dialog, QStringLiteral("Make"));
    });
    clickMenu(QStringLiteral("File"), QStringLiteral("New case"));
    view().fit();
    ASSERT_EQ(plan().outline.width(), Length::inches(40));
}

void ByMouse::tenEdits() {
    const int before = steps();
    clickFront(0);
    clickTool(QStringLiteral("Split into columns"));
    clickFront(0);
    clickTool(QStringLiteral("Split into rows"));
    dragMember(MemberKind::Stile, {18, 0});
    dragMember(MemberKind::Rail, {0, 14});
    clickFront(0);
    clickFront(1, Qt::ShiftModifier);
    clickTool(QStringLiteral("Join openings"));
    clickTool(QStringLiteral("Undo"));
    clickTool(QStringLiteral("Redo"));
    clickTool(QStringLiteral("Undo"));
    clickFront(2);
    clickTool(QStringLiteral("Split into rows"));
    clickFront(0);
    clickTool(QStringLiteral("Make heights equal"));
    clickFront(plan().fronts.size() - 1);
    inDialog([] { clickButton(*QApplication::activeModalWidget(), QStringLiteral("OK")); });
    clickTool(QStringLiteral("Graduate"));
    clickFront(1);
    clickTool(QStringLiteral("Split into columns"));
    clickFront(0);
    clickTool(QStringLiteral("Split into columns"));
    EXPECT_GE(steps() - before, 8);
    EXPECT_EQ(brokenInvariant(plan()), "");
}

/// Follows what the panel offers until nothing grave is left.
void ByMouse::cure() {
    for (int round = 0; round < 40 && grave() > 0; ++round) {
        QTreeWidget& list = findingsList();
        QTest::mouseClick(list.viewport(), Qt::LeftButton, {},
                          list.visualItemRect(list.topLevelItem(0)).center());
        QPushButton* remedy = firstRemedy();
        ASSERT_NE(remedy, nullptr) << session().work().findings.size();
        clickOn(*remedy);
    }
    EXPECT_EQ(grave(), 0);
}

void ByMouse::templates() {
    inDialog([this] {
        QWidget& dialog = *QApplication::activeModalWidget();
        inDialog([this] {
            auto& files = *qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
            auto* name = files.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
            name->setText(target);
            clickButton(files, QStringLiteral("Save"));
        });
        clickButton(dialog, QStringLiteral("Save"));
        clickButton(dialog, QStringLiteral("Close"));
    });
    clickTool(QStringLiteral("Templates"));
    EXPECT_GT(QFileInfo(target).size(), 5'000);
}

TEST_F(ByMouse, IsHeldBackByASizeThatCantBeRead) {
    inDialog([] {
        QWidget& dialog = *QApplication::activeModalWidget();
        const auto fields = dialog.findChildren<QLineEdit*>();
        clickOn(*fields[0]);
        fields[0]->selectAll();
        QTest::keyClicks(fields[0], QStringLiteral("4 feat"));
        clickButton(dialog, QStringLiteral("Make"));
        EXPECT_TRUE(dialog.isVisible());
        EXPECT_EQ(fields[0]->text(), QStringLiteral("4 feat"));
        EXPECT_TRUE(fields[0]->hasFocus());
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    clickMenu(QStringLiteral("File"), QStringLiteral("New case"));
}

TEST_F(ByMouse, GoesFromAnEmptyWindowToTemplates) {
    newCase();
    tenEdits();
    cure();
    templates();
}

// By keys -------------------------------------------------------------------------------------

class ByKeys : public WholeJob {
protected:
    static bool isOnSave() {
        const auto* button = qobject_cast<QAbstractButton*>(QApplication::focusWidget());
        return button && plain(button->text()).startsWith(QStringLiteral("Save"));
    }
    void newCase();
    void tenEdits();
    void cure();
    void templates();
};

void ByKeys::newCase() {
    inDialog([this] {
        type(QStringLiteral("40"));
        key(Qt::Key_Return); // the width is decided,
        key(Qt::Key_Return); // and so is the case
    });
    key(Qt::Key_N, Qt::ControlModifier);
    backTo(window, view());
    ASSERT_EQ(plan().outline.width(), Length::inches(40));
}

void ByKeys::tenEdits() {
    const int before = steps();
    key(Qt::Key_Right);
    key(Qt::Key_C);
    key(Qt::Key_Right);
    key(Qt::Key_R);
    key(Qt::Key_Z, Qt::ControlModifier);
    key(Qt::Key_Y, Qt::ControlModifier);
    key(Qt::Key_Return); // its size
    type(QStringLiteral("4 1/2"));
    key(Qt::Key_Return);
    backTo(window, view());
    key(Qt::Key_Down);
    key(Qt::Key_R);
    key(Qt::Key_E);
    key(Qt::Key_L);
    key(Qt::Key_L);
    key(Qt::Key_Down);
    key(Qt::Key_R);
    inDialog([this] { key(Qt::Key_Return); });
    key(Qt::Key_G);
    backTo(window, view());
    key(Qt::Key_Left);
    key(Qt::Key_C);
    key(Qt::Key_M); // mirrored
    key(Qt::Key_Escape);
    EXPECT_GE(steps() - before, 8);
    EXPECT_EQ(brokenInvariant(plan()), "");
}

/// Tab leads from the list to what cures the chosen finding.
void ByKeys::cure() {
    for (int round = 0; round < 40 && grave() > 0; ++round) {
        findingsList().setFocus(Qt::TabFocusReason);
        key(Qt::Key_Home);
        QPushButton* remedy = firstRemedy();
        ASSERT_NE(remedy, nullptr);
        for (int tab = 0; tab < 10 && !remedy->hasFocus(); ++tab)
            key(Qt::Key_Tab);
        ASSERT_TRUE(remedy->hasFocus());
        key(Qt::Key_Space);
    }
    EXPECT_EQ(grave(), 0);
}

void ByKeys::templates() {
    backTo(window, view());
    inDialog([this] {
        inDialog([this] {
            auto& files = *qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
            files.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))->setFocus();
            key(Qt::Key_A, Qt::ControlModifier);
            type(target);
            key(Qt::Key_Return);
        });
        for (int tab = 0; tab < 60 && !isOnSave(); ++tab)
            key(Qt::Key_Tab);
        ASSERT_TRUE(isOnSave());
        key(Qt::Key_Space);
        QTest::keyClick(QApplication::activeModalWidget(), Qt::Key_Escape);
    });
    key(Qt::Key_P, Qt::ControlModifier);
    EXPECT_GT(QFileInfo(target).size(), 5'000);
}

TEST_F(ByKeys, GoesFromAnEmptyWindowToTemplates) {
    newCase();
    tenEdits();
    cure();
    templates();
}

} // namespace
} // namespace frontwright::testing
