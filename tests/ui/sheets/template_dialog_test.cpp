#include "ui/sheets/template_dialog.h"

#include "tests/ui/elevation/open_window.h"
#include "ui/paper/printing.h"
#include "ui/sheets/printer_checks.h"
#include "ui/sheets/tile_map_view.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPrinter>
#include <QSpinBox>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>

namespace frontwright::testing {
namespace {

/// The templates of a sample that needs several tiles each.
class TemplatesWindow : public OpenWindow {
protected:
    void SetUp() override {
        OpenWindow::SetUp();
        settings.setValue(QStringLiteral("templates/paper"), QStringLiteral("A4"));
        openSample(QStringLiteral("plan-chest"));
        openDialog();
    }
    void openDialog() {
        dialog = std::make_unique<TemplateDialog>(session(), settings,
                                                  QStringLiteral("plan-chest.frontwright"));
        dialog->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(dialog.get()));
    }
    template<class Widget>
    Widget& named(const QString& name) {
        for (Widget* each : dialog->findChildren<Widget*>())
            if (each->accessibleName() == name)
                return *each;
        throw std::runtime_error("nothing is called " + name.toStdString());
    }
    QComboBox& combo(const char* name) { return named<QComboBox>(QLatin1String(name)); }
    QTreeWidgetItem* templateItem(const QString& title) {
        const auto found = named<QTreeWidget>(QStringLiteral("Sheets"))
                               .findItems(title, Qt::MatchExactly | Qt::MatchRecursive);
        return found.isEmpty() ? nullptr : found.first();
    }
    QString firstTitle() {
        const std::string label = dialog->shownPages().front().label.english();
        return QString::fromStdString(label.substr(0, label.find(" \u00b7 ")));
    }
    /// Answers the next message and tells its text.
    static void answerMessage(QString& text) {
        QTimer::singleShot(0, qApp, [&text] {
            if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) {
                text = box->text();
                box->accept();
            }
        });
    }
    void print() {
        for (QAbstractButton* button : dialog->findChildren<QAbstractButton*>())
            if (button->text() == QStringLiteral("&Print…"))
                button->click();
    }
    std::unique_ptr<TemplateDialog> dialog;
};

bool isLandscape(const Page& page) {
    return page.width > page.height;
}

TEST_F(TemplatesWindow, BeginsWithTheFewestPagesAndTellsWhatOthersWouldTake) {
    const auto fewest = dialog->shownPages().size();
    QComboBox& orientation = combo("Orientation");
    EXPECT_EQ(orientation.currentText(), QStringLiteral("Fewest pages"));
    orientation.setCurrentIndex(1);
    const auto upright = dialog->shownPages().size();
    orientation.setCurrentIndex(2);
    const auto lying = dialog->shownPages().size();
    EXPECT_LE(fewest, std::min(upright, lying));
    const QString told = named<QLabel>(QStringLiteral("Number of pages")).text();
    for (const auto count : {fewest, upright, lying})
        EXPECT_TRUE(told.contains(QString::number(count))) << told.toStdString();
}

TEST_F(TemplatesWindow, LaysOnlyTheTemplatesThatAreTicked) {
    const auto all = dialog->shownPages().size();
    QTreeWidgetItem* item = templateItem(firstTitle());
    ASSERT_NE(item, nullptr);
    const int tiles = item->childCount();
    ASSERT_GT(tiles, 1);
    item->setCheckState(0, Qt::Unchecked);
    QApplication::processEvents();
    EXPECT_EQ(dialog->shownPages().size(), all - static_cast<std::size_t>(tiles));
    EXPECT_NE(dialog->shownPages().front().label.english().find(
                  "page 1 of " + std::to_string(dialog->shownPages().size())),
              std::string::npos);
    item->setCheckState(0, Qt::Checked);
    QApplication::processEvents();
    EXPECT_EQ(dialog->shownPages().size(), all);
}

// One that slipped in the printer is printed again under its own number.
TEST_F(TemplatesWindow, LeavesOutATileAndKeepsTheOthersNumbers) {
    const std::vector<Page> all = dialog->shownPages();
    QTreeWidgetItem* item = templateItem(firstTitle());
    item->child(1)->setCheckState(0, Qt::Unchecked);
    QApplication::processEvents();
    ASSERT_EQ(dialog->shownPages().size(), all.size() - 1);
    EXPECT_EQ(dialog->shownPages()[0].label, all[0].label);
    EXPECT_EQ(dialog->shownPages()[1].label, all[2].label);
    EXPECT_EQ(item->checkState(0), Qt::PartiallyChecked);
}

TEST_F(TemplatesWindow, WithoutATickHasNothingToPrint) {
    auto& tree = named<QTreeWidget>(QStringLiteral("Sheets"));
    for (int i = 0; i < tree.topLevelItemCount(); ++i)
        tree.topLevelItem(i)->setCheckState(0, Qt::Unchecked);
    QApplication::processEvents();
    EXPECT_TRUE(dialog->shownPages().empty());
    for (QAbstractButton* button : dialog->findChildren<QAbstractButton*>())
        if (button->text() == QStringLiteral("&Print…")) {
            EXPECT_FALSE(button->isEnabled());
        }
}

TEST_F(TemplatesWindow, OffersOnlyTheSelectedFrontsWithTheirBoxWalls) {
    openSample(QStringLiteral("glaze-chest"));
    const OpeningId id = plan().fronts.front().opening;
    session().select(Selection::of(id));
    openDialog();
    for (QCheckBox* box : dialog->findChildren<QCheckBox*>())
        if (box->text().contains(QStringLiteral("selected")))
            box->setChecked(true);
    QApplication::processEvents();
    ASSERT_FALSE(dialog->shownPages().empty());
    const std::string name = label(session().project(), plan().fronts.front());
    for (const Page& page : dialog->shownPages()) {
        EXPECT_NE(page.label.english().find(name), std::string::npos) << page.label;
        EXPECT_EQ(page.label.english().find("Story"), std::string::npos);
    }
}

TEST_F(TemplatesWindow, TurnsPagesByKeysButtonsAndTheTileMap) {
    auto& box = named<QSpinBox>(QStringLiteral("Page"));
    EXPECT_EQ(dialog->currentPage(), 0);
    QTest::keyClick(dialog.get(), Qt::Key_PageDown);
    EXPECT_EQ(dialog->currentPage(), 1);
    QTest::keyClick(dialog.get(), Qt::Key_PageUp);
    EXPECT_EQ(box.value(), 1);
    const PagePlace third = dialog->shownPages()[2].place;
    auto& map = *dialog->findChild<TileMapView*>();
    QTest::mouseClick(&map, Qt::LeftButton, {}, map.cellOf(third.column, third.row).center());
    EXPECT_EQ(dialog->currentPage(), 2);
    map.setFocus();
    QTest::keyClick(&map, Qt::Key_Left);
    EXPECT_EQ(dialog->currentPage(), 1);
    EXPECT_TRUE(
        map.accessibleDescription().contains(QString::fromStdString(dialog->shownPages()[1].tile)));
}

TEST_F(TemplatesWindow, RemembersItsPaper) {
    combo("Paper").setCurrentText(QStringLiteral("ARCH C"));
    openDialog();
    EXPECT_EQ(combo("Paper").currentText(), QStringLiteral("ARCH C"));
    EXPECT_NEAR(std::min(dialog->shownPages()[0].width, dialog->shownPages()[0].height), 457.2,
                1e-9);
}

TEST_F(TemplatesWindow, LaysARollAsOnePageForEachPart) {
    QComboBox& paper = combo("Paper");
    paper.setCurrentIndex(paper.findText(QStringLiteral("Roll…")));
    for (const Page& page : dialog->shownPages())
        EXPECT_TRUE(page.tile.empty()) << page.label;
}

TEST_F(TemplatesWindow, HasANameForAllThatTakesTheKeyboard) {
    int count = 0;
    for (QWidget* widget : dialog->findChildren<QWidget*>()) {
        const bool isControl =
            qobject_cast<QAbstractButton*>(widget) || qobject_cast<QComboBox*>(widget) ||
            qobject_cast<QSpinBox*>(widget) || qobject_cast<QTreeWidget*>(widget) ||
            qobject_cast<TileMapView*>(widget);
        if (!isControl || widget->focusPolicy() == Qt::NoFocus)
            continue;
        ++count;
        QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(widget);
        EXPECT_FALSE(accessible->text(QAccessible::Name).trimmed().isEmpty())
            << widget->metaObject()->className();
    }
    EXPECT_GT(count, 10);
}

TEST_F(TemplatesWindow, BeginsWithDefaultsWhereSettingsCantBeRead) {
    for (const char* key : {"paper", "orientation", "overlap", "margin", "rollWidth"})
        settings.setValue(QStringLiteral("templates/") + QLatin1String(key),
                          QStringLiteral("-3 nonsense"));
    openDialog();
    EXPECT_FALSE(dialog->shownPages().empty());
    EXPECT_EQ(combo("Orientation").currentText(), QStringLiteral("Fewest pages"));
}

TEST_F(TemplatesWindow, TellsPaperInTheCasesUnit) {
    const auto overlap = [&] {
        return named<QLineEdit>(QStringLiteral("Overlap of tiles")).text();
    };
    EXPECT_EQ(overlap(), QStringLiteral("10 mm"));
    openSample(QStringLiteral("glaze-chest"));
    openDialog();
    EXPECT_EQ(overlap(), QStringLiteral("3/8 in"));
    EXPECT_EQ(named<QLineEdit>(QStringLiteral("Margin of the sheets")).text(),
              QStringLiteral("3/8 in"));
}

// --- Printing.

TEST_F(TemplatesWindow, PrintsExactlyWhatItShows) {
    templateItem(firstTitle())->child(0)->setCheckState(0, Qt::Unchecked);
    QApplication::processEvents();
    const QString file = folder.filePath(QStringLiteral("out.pdf"));
    dialog->setAsk([&](QPrinter& printer, QWidget*) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(file);
        return true;
    });
    print();
    QFile out(file);
    ASSERT_TRUE(out.open(QIODevice::ReadOnly));
    EXPECT_EQ(static_cast<std::size_t>(out.readAll().count("/Type /Page\n")),
              dialog->shownPages().size());
}

TEST_F(TemplatesWindow, LaysAnewForThePaperThePrinterIsSetTo) {
    const QString file = folder.filePath(QStringLiteral("out.pdf"));
    dialog->setAsk([&](QPrinter& printer, QWidget*) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(file);
        printer.setPageSize(QPageSize(QPageSize::Letter));
        return true;
    });
    QString told;
    answerMessage(told);
    print();
    EXPECT_TRUE(told.contains(QStringLiteral("Letter"))) << told.toStdString();
    EXPECT_FALSE(QFile::exists(file));
    EXPECT_EQ(combo("Paper").currentText(), QStringLiteral("Letter"));
    EXPECT_NEAR(dialog->shownPages()[0].width + dialog->shownPages()[0].height, 215.9 + 279.4,
                1e-9);
}

TEST_F(TemplatesWindow, DrawsWithThePrintersCorrectionAndTellsIt) {
    const QString printer = QStringLiteral("Shop");
    for (const Orientation each : {Orientation::Portrait, Orientation::Landscape})
        PrinterChecks(settings).keep({printer, QStringLiteral("A4"), each},
                                     {{1.01, 0.99}, QDate(2026, 3, 1), QDate(2026, 3, 2)});
    QComboBox& printers = combo("Printer");
    EXPECT_EQ(printers.currentData().toString(), QString()); // a file at first
    printers.addItem(printer, printer);
    printers.setCurrentIndex(printers.findData(printer));
    std::map<std::string, PageMark> marks;
    for (const PageMark& mark : dialog->shownPages()[0].marks)
        marks[mark.part] = mark;
    EXPECT_NEAR(marks.at("100 mm across / to").x - marks.at("100 mm across / from").x, 101, 1e-9);
    EXPECT_NEAR(marks.at("100 mm up / to").y - marks.at("100 mm up / from").y, 99, 1e-9);
    const QString state = named<QLabel>(QStringLiteral("State of this printer and paper")).text();
    EXPECT_TRUE(state.contains(QStringLiteral("1.0100")) && state.contains(QStringLiteral("100 %")))
        << state.toStdString();
}

TEST_F(TemplatesWindow, SaysThatAPrinterWasNeverChecked) {
    QComboBox& printers = combo("Printer");
    printers.addItem(QStringLiteral("New one"), QStringLiteral("New one"));
    printers.setCurrentIndex(printers.count() - 1);
    EXPECT_TRUE(named<QLabel>(QStringLiteral("State of this printer and paper"))
                    .text()
                    .contains(QStringLiteral("never checked")));
}

// Corrected pages must not reach a file, or another printer, unseen.
TEST_F(TemplatesWindow, StopsWhereThePrintGoesElsewhereThanTheCorrection) {
    const QString printer = QStringLiteral("Shop");
    for (const Orientation each : {Orientation::Portrait, Orientation::Landscape})
        PrinterChecks(settings).keep({printer, QStringLiteral("A4"), each},
                                     {{1.01, 0.99}, QDate(2026, 3, 1), {}});
    combo("Printer").addItem(printer, printer);
    combo("Printer").setCurrentIndex(combo("Printer").findData(printer));
    const QString file = folder.filePath(QStringLiteral("out.pdf"));
    dialog->setAsk([&](QPrinter& chosen, QWidget*) {
        chosen.setOutputFormat(QPrinter::PdfFormat);
        chosen.setOutputFileName(file);
        return true;
    });
    QString told;
    answerMessage(told);
    print();
    EXPECT_TRUE(told.contains(QStringLiteral("correction"))) << told.toStdString();
    EXPECT_FALSE(QFile::exists(file));
    EXPECT_EQ(combo("Printer").currentData().toString(), QString());
    print(); // the pages are uncorrected now
    EXPECT_TRUE(QFile::exists(file));
}

TEST_F(TemplatesWindow, MixesUprightAndLandscapePagesWhereThatTakesFewer) {
    openSample(QStringLiteral("glaze-chest"));
    openDialog();
    const auto& all = dialog->shownPages();
    EXPECT_TRUE(std::any_of(all.begin(), all.end(), isLandscape));
    EXPECT_FALSE(std::all_of(all.begin(), all.end(), isLandscape));
}

} // namespace
} // namespace frontwright::testing
