// R or C, then a number.

#include "tests/ui/elevation/open_window.h"

#include "core/edits/divisions.h"

namespace frontwright::testing {
namespace {

class SplitByKeys : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        Project project = newProject(Unit::Inch);
        open(project);
        view().setFocus();
        key(Qt::Key_Right); // selects the one front
    }
    std::size_t openings() { return plan().fronts.size(); }
};

TEST_F(SplitByKeys, ALetterAloneMakesTwo) {
    key(Qt::Key_R);
    EXPECT_EQ(openings(), 2U);
    EXPECT_EQ(steps(), 1);
}

TEST_F(SplitByKeys, ADigitMakesAsMany) {
    key(Qt::Key_R);
    key(Qt::Key_5);
    EXPECT_EQ(openings(), 5U);
    EXPECT_EQ(session().undoStack().count(), 1) << "one step";
    const Length height = plan().fronts.front().openingRect.height();
    for (const FrontPlan& front : plan().fronts)
        EXPECT_LE((front.openingRect.height() - height).magnitude(), Length::inches(0, 40));
    session().undoStack().undo();
    EXPECT_EQ(openings(), 1U);
}

TEST_F(SplitByKeys, TwoDigitsMakeADozen) {
    ASSERT_TRUE(session().apply(
        {}, setCaseSize(session().project(), Length::inches(96), Length::inches(30))));
    key(Qt::Key_C);
    key(Qt::Key_1);
    EXPECT_EQ(openings(), 2U) << "nobody splits into one";
    key(Qt::Key_2);
    EXPECT_EQ(openings(), 12U);
    EXPECT_EQ(session().undoStack().count(), 2) << "the case's size, and one split";
}

TEST_F(SplitByKeys, TooManyForTheRoomLeavesWhatThereIs) {
    ASSERT_TRUE(session().apply(
        {}, setCaseSize(session().project(), Length::inches(12), Length::inches(12))));
    key(Qt::Key_R);
    ASSERT_EQ(openings(), 2U);
    key(Qt::Key_9);
    EXPECT_EQ(openings(), 2U);
}

TEST_F(SplitByKeys, AnythingElseInBetweenEndsIt) {
    key(Qt::Key_R);
    key(Qt::Key_Down);
    key(Qt::Key_4);
    EXPECT_EQ(openings(), 2U);
    key(Qt::Key_R);
    session().undoStack().undo();
    key(Qt::Key_4);
    EXPECT_EQ(openings(), 2U);
}

} // namespace
} // namespace frontwright::testing
