#include "ui/window/own_entries_dialog.h"

#include "ui/files/built_in_catalogue.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>

namespace frontwright::testing {
namespace {

struct OpenEntries {
    Session session{builtInCatalogue()};
    OwnEntriesDialog dialog{session};
    [[nodiscard]] QTabWidget& tabs() { return *dialog.findChild<QTabWidget*>(); }
    [[nodiscard]] QTableWidget& table() {
        return *tabs().currentWidget()->findChild<QTableWidget*>();
    }
    void press(const QString& text) {
        for (QPushButton* button : tabs().currentWidget()->findChildren<QPushButton*>())
            if (button->text() == text)
                button->click();
    }
    [[nodiscard]] QString message() {
        for (const QLabel* label : dialog.findChildren<QLabel*>())
            if (label->accessibleName() == QLatin1String("What could not be done"))
                return label->text();
        return {};
    }
};

TEST(OwnEntriesDialog, MakesATypedChangeAnOwnEntryAsOneStep) {
    OpenEntries open;
    const int steps = open.session.undoStack().index();
    open.table().item(0, 4)->setText(QStringLiteral("9/64 in"));
    ASSERT_EQ(open.session.project().own.woodScrews.size(), 1U);
    EXPECT_EQ(open.session.project().own.woodScrews[0].clearanceHole, Length::fromSixtyFourths(9));
    EXPECT_EQ(open.session.undoStack().index(), steps + 1);
    open.session.undoStack().undo();
    EXPECT_TRUE(open.session.project().own.woodScrews.empty());
}

TEST(OwnEntriesDialog, SaysWhatCannotBeReadAndKeepsWhatWasThere) {
    OpenEntries open;
    const QString before = open.table().item(0, 1)->text();
    open.table().item(0, 1)->setText(QStringLiteral("thick"));
    EXPECT_FALSE(open.message().isEmpty());
    EXPECT_EQ(open.table().item(0, 1)->text(), before);
    EXPECT_TRUE(open.session.project().own.woodScrews.empty());
    open.table().item(0, 1)->setText(QStringLiteral("0 in"));
    EXPECT_TRUE(open.message().contains(QStringLiteral("more than 0")));
}

TEST(OwnEntriesDialog, AddsACopyAndRemovesItAgain) {
    OpenEntries open;
    for (int kind = 0; kind < open.tabs().count(); ++kind) {
        open.tabs().setCurrentIndex(kind);
        const int rows = open.table().rowCount();
        open.table().setCurrentCell(0, 0);
        open.press(QStringLiteral("&Add a copy"));
        EXPECT_EQ(open.table().rowCount(), rows + 1) << kind;
        open.press(QStringLiteral("&Remove own entry"));
        EXPECT_EQ(open.table().rowCount(), rows) << kind;
    }
    EXPECT_EQ(open.session.project().own, Catalogue());
}

} // namespace
} // namespace frontwright::testing
