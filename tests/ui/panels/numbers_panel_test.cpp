// The list of numbers: by subject, searched by typing, each row saying which hole or row it means.

#include "ui/panels/numbers_panel.h"

#include "tests/ui/elevation/open_window.h"

#include <QApplication>
#include <QDockWidget>
#include <QLineEdit>
#include <QTest>
#include <QTreeWidget>

namespace frontwright::testing {
namespace {

class Numbers : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        openSample(QStringLiteral("glaze-chest"));
        session().select(Selection::of(plan().fronts.front().opening));
        auto* dock = window.findChild<QDockWidget*>(QStringLiteral("numbers"));
        dock->show();
        dock->raise();
        QApplication::processEvents();
    }
    NumbersPanel& panel() { return *window.findChild<NumbersPanel*>(); }
    QTreeWidget& list() { return panel().list(); }
    /// Names of rows that are seen, without their subjects.
    QStringList seen() {
        QStringList names;
        for (int i = 0; i < list().topLevelItemCount(); ++i) {
            const QTreeWidgetItem* group = list().topLevelItem(i);
            for (int j = 0; !group->isHidden() && j < group->childCount(); ++j)
                if (!group->child(j)->isHidden() && group->isExpanded())
                    names << group->child(j)->text(0);
        }
        return names;
    }
    QStringList subjects() {
        QStringList names;
        for (int i = 0; i < list().topLevelItemCount(); ++i)
            if (!list().topLevelItem(i)->isHidden())
                names << list().topLevelItem(i)->text(0);
        return names;
    }
    void searchFor(const QString& words) {
        panel().searchField().setFocus();
        panel().searchField().selectAll();
        QTest::keyClick(&panel().searchField(), Qt::Key_Delete);
        QTest::keyClicks(&panel().searchField(), words);
    }
};

TEST_F(Numbers, StandBySubject) {
    const QStringList all = subjects();
    EXPECT_EQ(all.mid(0, 4), (QStringList{QStringLiteral("Opening"), QStringLiteral("Front"),
                                          QStringLiteral("Overlays"), QStringLiteral("Gaps")}))
        << all.join(u';').toStdString();
    EXPECT_TRUE(all.contains(QStringLiteral("Weight")));
}

TEST_F(Numbers, SayWhichHoleTheyMean) {
    const QStringList all = seen();
    EXPECT_TRUE(all.contains(QStringLiteral("Tip cover, screw hole 2")))
        << all.join(u';').toStdString();
    EXPECT_EQ(QSet<QString>(all.begin(), all.end()).size(), all.size()) << "no two are alike";
}

TEST_F(Numbers, AreFoundAsTheMakerTypes) {
    searchFor(QStringLiteral("tip"));
    for (const QString& name : seen())
        EXPECT_TRUE(name.contains(QStringLiteral("tip"), Qt::CaseInsensitive))
            << name.toStdString();
    EXPECT_FALSE(seen().isEmpty());
    ASSERT_TRUE(panel().chosen());
    EXPECT_EQ(panel().chosen()->kind, QuantityKind::ScrewTipCover) << "the first that is left";
    // All words, in any order; the subject's name counts as well.
    searchFor(QStringLiteral("2 cover"));
    EXPECT_EQ(seen(), QStringList{QStringLiteral("Tip cover, screw hole 2")});
    searchFor(QStringLiteral("gaps"));
    EXPECT_EQ(subjects(), QStringList{QStringLiteral("Gaps")});
    const QString nothing = QStringLiteral("zebra");
    searchFor(nothing);
    EXPECT_TRUE(seen().isEmpty());
    EXPECT_FALSE(panel().chosen());
    panel().searchField().clear();
    EXPECT_GT(seen().size(), 20);
    ASSERT_TRUE(panel().chosen());
}

// Of the two fronts on the bin's box the lower one has the filler strip above it.
TEST_F(Numbers, OfAFillerStripStandWithTheFrontsBesideItAndWithTheGap) {
    openSample(QStringLiteral("sink-base"));
    ASSERT_FALSE(plan().fillers.empty());
    const Filler& strip = plan().fillers.front();
    for (const std::uint32_t front : {strip.lower, strip.upper}) {
        session().select(Selection::of(plan().fronts[front].opening));
        searchFor(QStringLiteral("filler width"));
        ASSERT_EQ(seen().size(), 1) << front;
        EXPECT_TRUE(seen().front().startsWith(QStringLiteral("Filler strip's width, between ")))
            << seen().front().toStdString();
    }
    panel().searchField().clear();
    session().select(Selection::of(plan().members[strip.member].id));
    searchFor(QStringLiteral("filler thickness"));
    EXPECT_GE(seen().size(), 2) << "as it is, and the least";
}

// A long name goes on in a further line; a value never does.
TEST_F(Numbers, AreReadableInANarrowPanel) {
    window.resize(900, 800);
    QApplication::processEvents();
    const QFontMetrics letters = list().fontMetrics();
    for (const char* words : {"opening width", "screw hole from below"}) {
        searchFor(QLatin1String(words));
        QApplication::processEvents();
        const QModelIndex name = list().currentIndex();
        ASSERT_TRUE(name.isValid());
        const QRect cell = list().visualRect(name);
        const QRect needed = letters.boundingRect(QRect(0, 0, cell.width() - 6, 10'000),
                                                  Qt::TextWordWrap, name.data().toString());
        EXPECT_GE(cell.height(), needed.height()) << words;
        const QString value = name.siblingAtColumn(1).data().toString();
        EXPECT_GE(list().columnWidth(1), letters.horizontalAdvance(value)) << words;
    }
    EXPECT_LT(list().visualRect(list().model()->index(0, 0)).height(), 2 * letters.lineSpacing());
}

TEST_F(Numbers, AreLookedForInTheWholeCaseWhereTheSelectionHasNone) {
    openSample(QStringLiteral("sink-base"));
    session().select({});
    searchFor(QStringLiteral("filler width"));
    ASSERT_EQ(seen().size(), static_cast<qsizetype>(plan().fillers.size()));
    key(Qt::Key_Down);
    key(Qt::Key_Return);
    EXPECT_EQ(session().selection(),
              Selection::of(plan().members[plan().fillers.front().member].id));
    ASSERT_TRUE(panel().chosen());
    EXPECT_EQ(panel().chosen()->kind, QuantityKind::FillerWidth);
    // What is of the selection comes first, and alone.
    session().select({});
    searchFor(QStringLiteral("case width"));
    EXPECT_EQ(seen(), QStringList{QStringLiteral("Case width")});
}

TEST_F(Numbers, AreReachedFromTheSearchByKeys) {
    searchFor(QStringLiteral("cover"));
    key(Qt::Key_Down);
    EXPECT_TRUE(list().hasFocus());
    key(Qt::Key_Down);
    ASSERT_TRUE(panel().chosen());
    EXPECT_EQ(panel().chosen()->kind, QuantityKind::ScrewTipCover);
    EXPECT_EQ(panel().chosen()->index, 1U);
}

TEST_F(Numbers, StayChosenWhenAnotherFrontIsSelected) {
    panel().ask({QuantityKind::FrontHeight, 0, 0});
    session().select(Selection::of(plan().fronts.at(2).opening));
    ASSERT_TRUE(panel().chosen());
    EXPECT_EQ(panel().chosen()->kind, QuantityKind::FrontHeight);
    EXPECT_EQ(panel().chosen()->item, 2U);
}

TEST_F(Numbers, StayFoldedWhereTheMakerFoldedThem) {
    list().topLevelItem(0)->setExpanded(false);
    session().select(Selection::of(plan().fronts.at(1).opening));
    EXPECT_FALSE(list().topLevelItem(0)->isExpanded());
    EXPECT_TRUE(list().topLevelItem(1)->isExpanded());
    // A search looks everywhere, and leaves the folds as they were.
    searchFor(QStringLiteral("opening width"));
    EXPECT_TRUE(seen().contains(QStringLiteral("Opening width")));
    panel().searchField().clear();
    EXPECT_FALSE(list().topLevelItem(0)->isExpanded());
}

TEST_F(Numbers, AskedForAreFoundWhateverWasSearched) {
    searchFor(QStringLiteral("gap"));
    panel().ask({QuantityKind::BoxDepth, 0, 0});
    ASSERT_TRUE(panel().chosen());
    EXPECT_EQ(panel().chosen()->kind, QuantityKind::BoxDepth);
    EXPECT_TRUE(panel().searchField().text().isEmpty());
}

} // namespace
} // namespace frontwright::testing
