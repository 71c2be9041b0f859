// Banks are copied, repeated and mirrored by keys.

#include "tests/ui/elevation/open_window.h"
#include "tests/ui/window/in_dialog.h"

#include "core/edits/divisions.h"

#include "ui/fields/length_field.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
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

TEST_F(Banks, AreMadeLikeTheOtherSideByOneKey) {
    select({1});
    key(Qt::Key_M, Qt::ControlModifier);
    // three rows, a plain opening, three rows
    EXPECT_EQ(plan().fronts.size(), 7U);
    EXPECT_EQ(steps(), 1);
}

TEST_F(Banks, AreGraduatedBetweenTwoHeightsThatAreTyped) {
    select({1});
    inDialog([] {
        auto* dialog = QApplication::activeModalWidget();
        auto* kind = dialog->findChild<QComboBox*>();
        kind->setFocus();
        QTest::keyClick(kind, Qt::Key_End);
        for (const auto& [name, typed] :
             {std::pair{"Topmost height", "4 in"}, std::pair{"Lowest height", "9 in"}})
            for (LengthField* field : dialog->findChildren<LengthField*>())
                if (field->lineEdit().accessibleName() == QLatin1String(name)) {
                    field->startTyping();
                    QTest::keyClicks(&field->lineEdit(), QLatin1String(typed));
                    QTest::keyClick(&field->lineEdit(), Qt::Key_Tab);
                }
        for (QComboBox* box : dialog->findChildren<QComboBox*>())
            if (box->accessibleName() == QLatin1String("What makes room")) {
                box->setFocus();
                QTest::keyClick(box, Qt::Key_End);
            }
        QTest::keyClick(dialog, Qt::Key_Return);
    });
    key(Qt::Key_G);
    // 4, 6 and 9 in: each half as high again, and the case as high as they need
    EXPECT_EQ(plan().fronts[0].openingRect.height(), Length::inches(4));
    EXPECT_EQ(plan().fronts[1].openingRect.height(), Length::inches(6));
    EXPECT_EQ(plan().fronts[2].openingRect.height(), Length::inches(9));
    EXPECT_EQ(steps(), 1);
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
