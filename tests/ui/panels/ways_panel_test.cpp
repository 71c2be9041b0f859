#include "ui/panels/ways_panel.h"

#include "core/edits/uses.h"
#include "tests/ui/elevation/open_window.h"

#include <QApplication>
#include <QDockWidget>
#include <QLabel>
#include <QTableWidget>

#include <algorithm>
#include <array>

namespace frontwright::testing {
namespace {

class Ways : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        openSample(QStringLiteral("sink-base"));
        auto* dock = window.findChild<QDockWidget*>(QStringLiteral("ways"));
        dock->show();
        dock->raise();
        QApplication::processEvents();
    }
    void selectFirst(OpeningUse use) {
        const auto front = std::ranges::find_if(
            plan().fronts, [&](const FrontPlan& each) { return each.use == use && each.hardware; });
        ASSERT_NE(front, plan().fronts.end());
        session().select(Selection::of(front->opening));
    }
    int columnsSeen() {
        const auto* table = window.findChild<WaysPanel*>()->findChild<QTableWidget*>();
        int seen = 0;
        for (int i = 0; i < table->columnCount(); ++i)
            seen += table->isColumnHidden(i) ? 0 : 1;
        return seen;
    }
    QString note() { return window.findChild<WaysPanel*>()->findChild<QLabel*>()->text(); }
};

TEST_F(Ways, AreComparedForADrawersFront) {
    selectFirst(OpeningUse::Drawer);
    EXPECT_EQ(columnsSeen(), 3);
    EXPECT_TRUE(note().contains(QStringLiteral("Order of work"))) << note().toStdString();
}

TEST_F(Ways, AreOneBehindAFixedFront) {
    ASSERT_TRUE(
        session().apply(QStringLiteral("Handle"),
                        setUse(session().project(), std::array{plan().fronts.front().opening},
                               OpeningUse::FixedFront)));
    selectFirst(OpeningUse::FixedFront);
    EXPECT_EQ(columnsSeen(), 1);
    EXPECT_TRUE(note().contains(QStringLiteral("front alone"))) << note().toStdString();
    selectFirst(OpeningUse::Drawer);
    EXPECT_EQ(columnsSeen(), 3);
}

} // namespace
} // namespace frontwright::testing
