// The list of steps, and the mark that says whether the file holds what is shown.

#include "tests/ui/elevation/open_window.h"

#include "core/documents/document.h"
#include "core/edits/divisions.h"
#include "ui/files/save_file.h"
#include "ui/window/panel_dock.h"

#include <QApplication>
#include <QTest>
#include <QUndoView>

#include <random>

namespace frontwright::testing {
namespace {

class Steps : public OpenWindow {
protected:
    QString path() { return folder.filePath(QStringLiteral("case.frontwright")); }
    QUndoView& list() {
        auto* dock = window.findChild<PanelDock*>(QStringLiteral("steps"));
        dock->bringForward();
        return *window.findChild<QUndoView*>();
    }
    void widen(int inches) {
        session().apply(
            QStringLiteral("Widen case"),
            setCaseSize(session().project(), Length::inches(inches), Length::inches(30)));
    }
    void click(int row) {
        const QModelIndex index = list().model()->index(row, 0);
        list().scrollTo(index);
        QApplication::processEvents();
        QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, list().visualRect(index).center());
    }
};

TEST_F(Steps, AreListedByNameAndGoneBackToByAClick) {
    const std::string first = bytes();
    widen(25);
    widen(26);
    const std::string last = bytes();
    EXPECT_EQ(list().model()->index(1, 0).data().toString(), QStringLiteral("Widen case"));
    click(0);
    EXPECT_EQ(bytes(), first);
    EXPECT_EQ(steps(), 0);
    click(2);
    EXPECT_EQ(bytes(), last);
}

TEST_F(Steps, SurviveASave) {
    const std::string first = bytes();
    widen(25);
    ASSERT_FALSE(window.file().saveAs(path()));
    EXPECT_EQ(session().undoStack().count(), 1);
    click(0);
    EXPECT_EQ(bytes(), first);
    EXPECT_TRUE(window.isWindowModified());
    click(1);
    EXPECT_FALSE(window.isWindowModified());
}

TEST_F(Steps, AreMarkedUnsavedWheneverTheFileHoldsSomethingElse) {
    ASSERT_FALSE(window.file().saveAs(path()));
    std::mt19937 random(3);
    int clean = 0;
    for (int i = 0; i < 300; ++i) {
        switch (random() % 6) {
        case 0:
            session().undoStack().undo();
            break;
        case 1:
            session().undoStack().redo();
            break;
        case 2:
            ASSERT_FALSE(window.file().save());
            EXPECT_FALSE(window.file().isUnsaved());
            break;
        default:
            session().apply(QStringLiteral("Widen case"),
                            setCaseSize(session().project(),
                                        Length::inches(24 + static_cast<int>(random() % 4)),
                                        Length::inches(30)),
                            random() % 2 == 0 ? Merge::Quick : Merge::Never);
        }
        const bool same = readFile(path()).value().toStdString() == bytes();
        clean += same;
        EXPECT_EQ(window.isWindowModified(), window.file().isUnsaved());
        EXPECT_TRUE(same || window.file().isUnsaved()) << "step " << i;
    }
    EXPECT_GT(clean, 20);
}

} // namespace
} // namespace frontwright::testing
