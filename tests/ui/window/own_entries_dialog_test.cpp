#include "ui/window/own_entries_dialog.h"

#include "ui/files/built_in_catalogue.h"

#include <gtest/gtest.h>

#include <QComboBox>
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

TEST(OwnEntriesDialog, KeepsAFittingOfTheMakersOwnWithItsMortises) {
    OpenEntries open;
    open.tabs().setCurrentIndex(open.tabs().count() - 1);
    const auto columnOf = [&](const char* title) {
        for (int i = 0; i < open.table().columnCount(); ++i)
            if (open.table().horizontalHeaderItem(i)->text() == QLatin1String(title))
                return i;
        return -1;
    };
    open.table()
        .item(0, columnOf("Screws, from the centre"))
        ->setText(QStringLiteral("-1 in | 1/4 in; 1 in | 1/4 in"));
    open.table()
        .item(0, columnOf("Mortises"))
        ->setText(QStringLiteral("back | -1 in | -1/2 in | 1 in | 1/2 in | 3/8 in"));
    open.table().item(0, columnOf("Bores"))->setText(QStringLiteral("show face | 0 | 0 | 1/4 in"));
    ASSERT_EQ(open.session.project().own.fittings.size(), 1U);
    const FittingForm& own = open.session.project().own.fittings.front();
    ASSERT_EQ(own.screws.size(), 2U);
    EXPECT_EQ(own.screws[1], (FrontPoint{Length::inches(1), Length::inches(0, 16)}));
    ASSERT_EQ(own.mortises.size(), 1U);
    EXPECT_EQ(own.mortises[0].from, FrontFace::Back);
    EXPECT_EQ(own.mortises[0].place.width(), Length::inches(2));
    EXPECT_EQ(own.mortises[0].depth, Length::inches(0, 24));
    ASSERT_EQ(own.bores.size(), 1U);
    EXPECT_FALSE(own.bores[0].depth.has_value());
    open.table().item(0, columnOf("Mortises"))->setText(QStringLiteral("back | 1 in"));
    EXPECT_TRUE(open.message().contains(QStringLiteral("cannot be read")));
    EXPECT_EQ(open.session.project().own.fittings.front().mortises.size(), 1U);
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

/// The column of that title.
int columnOf(const QTableWidget& table, const QString& title) {
    for (int i = 0; i < table.columnCount(); ++i)
        if (table.horizontalHeaderItem(i)->text() == title)
            return i;
    ADD_FAILURE() << title.toStdString();
    return 0;
}

TEST(OwnEntriesDialog, MovesAHandlesHoles) {
    OpenEntries open;
    open.tabs().setCurrentIndex(2);
    const int across = columnOf(open.table(), QStringLiteral("Holes, right of the centre"));
    const int up = columnOf(open.table(), QStringLiteral("Holes, above it"));
    open.table().item(0, across)->setText(QStringLiteral("-51 mm; 51 mm"));
    const auto& own = open.session.project().own.hardware;
    ASSERT_EQ(own.size(), 1U);
    const Length half = Length::millimetres(51);
    ASSERT_EQ(own[0].holes.size(), 2U);
    EXPECT_EQ(own[0].holes[0].x, -half);
    EXPECT_EQ(own[0].holes[1].x, half);
    EXPECT_EQ(own[0].holes[0].y, own[0].holes[1].y);
    open.table().item(0, up)->setText(QStringLiteral("4 mm"));
    EXPECT_EQ(open.session.project().own.hardware[0].holes[1].y, Length::millimetres(4));
    open.table().item(0, up)->setText(QStringLiteral("1 mm; 2 mm; 3 mm"));
    EXPECT_TRUE(open.message().contains(QStringLiteral("as many heights as holes")));
    open.table().item(0, across)->setText(QString());
    EXPECT_FALSE(open.message().isEmpty());
    EXPECT_EQ(open.session.project().own.hardware[0].holes.size(), 2U);
}

TEST(OwnEntriesDialog, KeepsWhoseVolumeAGravityIsOf) {
    OpenEntries open;
    open.tabs().setCurrentIndex(4);
    const int gravity = columnOf(open.table(), QStringLiteral("Specific gravity"));
    const int basis = columnOf(open.table(), QStringLiteral("Of the volume"));
    open.table().item(0, basis)->setText(QStringLiteral("green"));
    open.table().item(0, gravity)->setText(QStringLiteral("0,47"));
    const auto& own = open.session.project().own.species;
    ASSERT_EQ(own.size(), 1U);
    EXPECT_EQ(own[0].gravity, (SpecificGravity{470, GravityBasis::Green}));
    open.table().item(0, gravity)->setText(QString());
    EXPECT_EQ(open.session.project().own.species[0].gravity, std::nullopt);
    open.table().item(0, basis)->setText(QStringLiteral("ovendry"));
    EXPECT_TRUE(open.message().contains(QStringLiteral("no specific gravity is known")));
}

TEST(OwnEntriesDialog, OffersTheVolumesToChooseFrom) {
    OpenEntries open;
    open.dialog.show();
    open.tabs().setCurrentIndex(4);
    const int basis = columnOf(open.table(), QStringLiteral("Of the volume"));
    open.table().editItem(open.table().item(0, basis));
    const auto* box = open.table().findChild<QComboBox*>();
    ASSERT_NE(box, nullptr);
    EXPECT_EQ(box->count(), 3);
    EXPECT_EQ(box->currentText(), open.table().item(0, basis)->text());
    EXPECT_EQ(box->accessibleName(), QStringLiteral("Of the volume"));
}

TEST(OwnEntriesDialog, TakesAWoodsOwnMovement) {
    OpenEntries open;
    open.tabs().setCurrentIndex(4);
    const int flat = columnOf(open.table(), QStringLiteral("Moves, flat-sawn"));
    open.table().item(0, flat)->setText(QStringLiteral("0.00312"));
    const auto& own = open.session.project().own.species;
    ASSERT_EQ(own.size(), 1U);
    EXPECT_EQ(own[0].figures.coefficients->tangential, 3120);
    open.table().item(0, flat)->setText(QStringLiteral("3"));
    EXPECT_TRUE(open.message().contains(QStringLiteral("0.00248")));
}

} // namespace
} // namespace frontwright::testing
