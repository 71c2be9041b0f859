// Banks are copied, repeated and mirrored by keys.

#include "tests/ui/elevation/open_window.h"
#include "tests/ui/window/in_dialog.h"

#include "core/edits/divisions.h"

#include <QApplication>
#include <QTest>

namespace frontwright::testing {
namespace {

class Banks : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        // One bank of three rows beside two plain openings.
        Project project = newProject(Unit::Inch);
        const OpeningId first{firstFreeId};
        project =
            splitOpening(project, first, Direction::Columns, 3, Length::inches(1, 32)).value();
        project = splitOpening(project, first, Direction::Rows, 3, Length::inches(1)).value();
        open(project);
        view().setFocus();
    }
    void select(std::initializer_list<std::size_t> fronts) {
        Selection selection;
        for (const std::size_t i : fronts)
            selection.openings.push_back(plan().fronts.at(i).opening);
        session().select(std::move(selection));
    }
};

TEST_F(Banks, ArePastedOntoAllThatIsSelected) {
    select({1});
    key(Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(steps(), 0);
    select({3, 4});
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(plan().fronts.size(), 9U);
    EXPECT_EQ(steps(), 1);
}

TEST_F(Banks, AreNotPastedBeforeOneIsCopiedNorIntoAnotherCase) {
    select({3});
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(plan().fronts.size(), 5U);
    select({0});
    key(Qt::Key_C, Qt::ControlModifier);
    open(threeRows());
    select({0});
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(plan().fronts.size(), 3U);
}

TEST_F(Banks, AreSelectedWhole) {
    select({2});
    key(Qt::Key_B);
    EXPECT_EQ(session().selection().openings.size(), 3U);
    select({3});
    key(Qt::Key_B);
    EXPECT_EQ(session().selection().openings.size(), 1U);
}

TEST_F(Banks, AreRepeatedAsOftenAsIsSaid) {
    select({0});
    inDialog([] {
        QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("2"));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    });
    key(Qt::Key_N);
    EXPECT_EQ(plan().fronts.size(), 8U);
    EXPECT_EQ(steps(), 1);
}

TEST_F(Banks, AreMirrored) {
    const std::string before = bytes();
    const OpeningId first = plan().fronts.front().opening;
    key(Qt::Key_M, Qt::ShiftModifier);
    EXPECT_NE(bytes(), before);
    EXPECT_GT(plan().frontOf(first)->rect.left, plan().fronts.front().rect.right);
    select({0});
    key(Qt::Key_M);
    EXPECT_EQ(bytes(), before) << "the smallest part with columns is the whole case";
    EXPECT_EQ(steps(), 2);
}

} // namespace
} // namespace frontwright::testing
