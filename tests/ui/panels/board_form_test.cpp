// A pull-out board is described in the panel: what is typed is taken, or stays with its reason.

#include "tests/ui/elevation/open_window.h"

#include "core/edits/boards.h"
#include "ui/fields/length_field.h"
#include "ui/fields/text_field.h"
#include "ui/panels/selection_panel.h"

#include <QLabel>
#include <QLineEdit>
#include <QTest>

namespace frontwright::testing {
namespace {

class BoardForm : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        openSample(QStringLiteral("writing-chest"));
        session().select(Selection::of(plan().boards.at(0).opening));
        form = window.findChild<SelectionPanel*>()->reveal(QStringLiteral("board"));
        ASSERT_TRUE(form);
    }
    const PlannedBoard& board() { return plan().boards.at(0); }
    TextField& words(const char* label) {
        auto* field = qobject_cast<TextField*>(form->field(QString::fromUtf8(label)));
        if (!field)
            throw std::runtime_error(label);
        return *field;
    }
    static void type(QLineEdit& edit, const char* typed) {
        edit.setFocus();
        edit.selectAll();
        QTest::keyClick(&edit, Qt::Key_Delete);
        QTest::keyClicks(&edit, QString::fromUtf8(typed));
        QTest::keyClick(&edit, Qt::Key_Return);
    }
    static QString saidIn(const QWidget& field) {
        QString said;
        for (const QLabel* label : field.findChildren<QLabel*>())
            if (label->isVisibleTo(&field))
                said += label->text();
        return said;
    }
    PropertyForm* form = nullptr;
};

constexpr const char* loadLabel = "Load at the front edge";

TEST_F(BoardForm, TakesTheLoadThatIsTyped) {
    const Length before = board().fitted.safe.pullOut;
    type(words(loadLabel).lineEdit(), "150 lbf");
    EXPECT_EQ(board().fitted.load, Force::nearestToPoundsForce(150));
    EXPECT_LE(board().fitted.safe.pullOut, before);
    EXPECT_EQ(steps(), 1);
    type(words(loadLabel).lineEdit(), "");
    EXPECT_EQ(board().fitted.load, Force::nearestToPoundsForce(edgeTestPoundsForce));
}

TEST_F(BoardForm, ShowsPlaysThatAreLessThanTheCasesFraction) {
    ASSERT_EQ(session().style().denominator, 16);
    auto* play = qobject_cast<LengthField*>(form->field(QStringLiteral("Play in height")));
    ASSERT_TRUE(play);
    EXPECT_EQ(play->lineEdit().text(), QStringLiteral("1/32 in"));
}

TEST_F(BoardForm, KeepsALoadThatItCannotReadWithItsReason) {
    TextField& load = words(loadLabel);
    type(load.lineEdit(), "a lot");
    EXPECT_EQ(steps(), 0);
    EXPECT_EQ(load.lineEdit().text(), QStringLiteral("a lot"));
    EXPECT_TRUE(saidIn(load).contains(QStringLiteral("is not a force")))
        << saidIn(load).toStdString();
    // It was for this board: the other shows its own.
    session().select(Selection::of(plan().boards.at(1).opening));
    EXPECT_EQ(load.lineEdit().text(), QString());
    EXPECT_EQ(saidIn(load), QString());
}

TEST_F(BoardForm, GivesBackTheLoadOnEscape) {
    TextField& load = words(loadLabel);
    type(load.lineEdit(), "50 kg");
    QTest::keyClick(&load.lineEdit(), Qt::Key_Escape);
    EXPECT_EQ(load.lineEdit().text(), QString());
    EXPECT_EQ(saidIn(load), QString());
    EXPECT_EQ(steps(), 0);
}

TEST_F(BoardForm, InterruptsTheKeeperAtAFastener) {
    const auto pieces = [&] { return board().fitted.strips.left.pieces.size(); };
    const char* label = "Fasteners to reach";
    type(words(label).lineEdit(), "");
    EXPECT_EQ(pieces(), 1U);
    type(words(label).lineEdit(), "L 10 in : 1 in");
    EXPECT_EQ(pieces(), 2U);
    type(words(label).lineEdit(), "L ten");
    EXPECT_EQ(pieces(), 2U);
    EXPECT_NE(saidIn(words(label)), QString());
}

} // namespace
} // namespace frontwright::testing
