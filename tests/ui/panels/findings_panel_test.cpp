// What to heed, and the remedies as buttons.

#include "ui/panels/findings_panel.h"

#include "core/edits/choices.h"
#include "tests/ui/elevation/open_window.h"

#include <QApplication>
#include <QPushButton>
#include <QStyle>
#include <QTest>
#include <QTreeWidget>

#include <algorithm>

namespace frontwright::testing {
namespace {

class Findings : public OpenWindow {
protected:
    FindingsPanel& panel() { return window.findings(); }
    QTreeWidget& list() { return window.findings().list(); }
    void choose(int row) {
        list().setCurrentItem(list().topLevelItem(row));
        // The last one's buttons are deleted when events are next handled.
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QApplication::processEvents();
    }
    QList<QPushButton*> remedyButtons() {
        return panel().findChildren<QPushButton*>(QStringLiteral("remedy"));
    }
    bool present(const Finding& finding) {
        const auto& all = session().work().findings;
        return std::any_of(all.begin(), all.end(), [&](const Finding& f) {
            return f.code == finding.code && f.where == finding.where;
        });
    }
};

TEST_F(Findings, LeaveTheMakerWhereHeWorks) {
    openSample(QStringLiteral("first-try"));
    choose(0);
    const Finding first = session().work().findings.front();
    const auto other = std::find_if(plan().fronts.begin(), plan().fronts.end(), [&](const auto& f) {
        return f.opening != first.where.opening;
    });
    ASSERT_NE(other, plan().fronts.end());
    const OpeningId id = other->opening;
    session().select(Selection::of(id));
    // What this changes brings other findings; the chosen one stays, and so does the selection.
    ASSERT_TRUE(session().apply(QStringLiteral("Thin"),
                                setThickness(session().project(), {id}, Length::inches(0, 24))));
    EXPECT_EQ(session().selection(), Selection::of(id));
    EXPECT_FALSE(list().selectedItems().isEmpty());
}

TEST_F(Findings, AreListedGravestFirst) {
    openSample(QStringLiteral("first-try"));
    const auto& all = session().work().findings;
    ASSERT_GE(all.size(), 5U);
    ASSERT_EQ(static_cast<std::size_t>(list().topLevelItemCount()), all.size());
    EXPECT_TRUE(std::is_sorted(all.begin(), all.end(), [](const Finding& a, const Finding& b) {
        return a.severity < b.severity;
    }));
    for (int row = 0; row < list().topLevelItemCount(); ++row)
        for (int column = 0; column < 3; ++column)
            EXPECT_FALSE(list().topLevelItem(row)->text(column).isEmpty());
}

TEST_F(Findings, ChosenSelectTheirPlace) {
    openSample(QStringLiteral("first-try"));
    choose(0);
    const Finding first = session().work().findings.front();
    ASSERT_TRUE(first.where.opening);
    EXPECT_EQ(session().selection().lastOpening(), first.where.opening);
    EXPECT_EQ(session().undoStack().count(), 0);
}

TEST_F(Findings, GoAwayByTheirRemedyInOneStep) {
    openSample(QStringLiteral("first-try"));
    const std::string before = bytes();
    const auto all = session().work().findings;
    int cured = 0;
    for (std::size_t row = 0; row < all.size(); ++row) {
        choose(static_cast<int>(row));
        const auto count = remedyButtons().size();
        for (qsizetype i = 0; i < count; ++i) {
            choose(static_cast<int>(row));
            ASSERT_LT(i, remedyButtons().size());
            QPushButton* button = remedyButtons()[i];
            const QString label = button->text();
            QTest::mouseClick(button, Qt::LeftButton);
            QApplication::processEvents();
            EXPECT_FALSE(present(all[row])) << label.toStdString();
            EXPECT_EQ(steps(), 1) << label.toStdString();
            EXPECT_EQ(session().undoStack().undoText().toStdString(), label.toStdString());
            session().undoStack().undo();
            ASSERT_EQ(bytes(), before);
            ++cured;
        }
    }
    EXPECT_GE(cured, 5) << "the sample has five mistakes that can be cured";
}

TEST_F(Findings, FollowUndoAndRedo) {
    openSample(QStringLiteral("first-try"));
    const int before = list().topLevelItemCount();
    choose(0);
    ASSERT_FALSE(remedyButtons().isEmpty());
    QTest::mouseClick(remedyButtons().front(), Qt::LeftButton);
    EXPECT_LT(list().topLevelItemCount(), before);
    session().undoStack().undo();
    EXPECT_EQ(list().topLevelItemCount(), before);
}

// A window so narrow that no sentence fits in one line.
TEST_F(Findings, AreReadableInANarrowWindow) {
    openSample(QStringLiteral("first-try"));
    window.resize(900, 700);
    QApplication::processEvents();
    choose(0);
    QApplication::processEvents();
    const QFontMetrics letters = list().fontMetrics();
    for (int column = 0; column < 3; ++column) {
        const QModelIndex index = list().model()->index(0, column);
        const QRect cell = list().visualRect(index);
        const int margin =
            list().style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, &list()) + 1;
        const int room = cell.width() - 2 * margin - (column == 0 ? letters.height() * 3 / 2 : 0);
        const QRect needed = letters.boundingRect(QRect(0, 0, room, 10'000), Qt::TextWordWrap,
                                                  index.data().toString());
        EXPECT_LE(needed.width(), room) << "no word is cut in column " << column;
        EXPECT_LE(needed.height(), cell.height() + letters.height() / 2) << column;
        EXPECT_LE(cell.right(), list().viewport()->width()) << column;
    }
    EXPECT_GT(list().columnWidth(2), list().viewport()->width() / 3);
    for (const QPushButton* button : remedyButtons()) {
        const QRect needed = button->fontMetrics().boundingRect(
            QRect(0, 0, button->width() - 4 * letters.averageCharWidth(), 10'000), Qt::TextWordWrap,
            button->text());
        EXPECT_LE(needed.height(), button->height()) << button->text().toStdString();
        EXPECT_LE(needed.width(), button->width()) << button->text().toStdString();
    }
}

} // namespace
} // namespace frontwright::testing
