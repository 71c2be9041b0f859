// Several fronts over one opening are made and joined by keys.

#include "tests/ui/elevation/open_window.h"
#include "tests/ui/window/in_dialog.h"

#include "core/edits/divisions.h"

#include <QApplication>
#include <QTest>

namespace frontwright::testing {
namespace {

class Faces : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        // A bank of three rows beside one plain opening.
        Project project = newProject(Unit::Inch);
        const OpeningId first{firstFreeId};
        project =
            splitOpening(project, first, Direction::Columns, 2, Length::inches(1, 32)).value();
        project = splitOpening(project, first, Direction::Rows, 3, Length::inches(1)).value();
        open(project);
        view().setFocus();
    }
    void select(std::size_t front) {
        Selection selection;
        selection.openings.push_back(plan().fronts.at(front).opening);
        session().select(std::move(selection));
    }
};

TEST_F(Faces, AreLinedUpWithTheBankBesideThemByOneKey) {
    select(3);
    key(Qt::Key_D);
    ASSERT_EQ(plan().fronts.size(), 6U);
    EXPECT_EQ(plan().faces.size(), 1U);
    for (std::size_t row = 0; row < 3; ++row)
        EXPECT_EQ(plan().fronts[row + 3].rect.upright(), plan().fronts[row].rect.upright());
    EXPECT_EQ(steps(), 1);
    key(Qt::Key_J, Qt::ShiftModifier);
    EXPECT_EQ(plan().fronts.size(), 4U);
    EXPECT_TRUE(plan().faces.empty());
}

TEST_F(Faces, AreDividedIntoAsManyAsIsSaid) {
    select(3);
    inDialog([] {
        QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("2"));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    });
    key(Qt::Key_F);
    EXPECT_EQ(plan().fronts.size(), 5U);
    EXPECT_EQ(plan().fillers.size(), 1U);
    EXPECT_EQ(steps(), 1);
}

TEST_F(Faces, AreDividedAnewWithAMemberThatCanBe) {
    // The one division that is there is none that is built: it says nothing of a member's width.
    open(newProject(Unit::Inch));
    view().setFocus();
    select(0);
    inDialog([] {
        QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("2"));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    });
    key(Qt::Key_F);
    ASSERT_EQ(plan().fronts.size(), 2U);
    backTo(window, view());
    select(0);
    inDialog([] {
        QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("2"));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    });
    key(Qt::Key_F, Qt::ShiftModifier);
    EXPECT_EQ(plan().fronts.size(), 3U);
}

TEST_F(Faces, AreNotJoinedWhereNoneIsDivided) {
    select(3);
    key(Qt::Key_J, Qt::ShiftModifier);
    EXPECT_EQ(steps(), 0);
}

} // namespace
} // namespace frontwright::testing
