// A printer is measured as a maker does it: print, measure, type, print again.

#include "ui/sheets/calibration_dialog.h"

#include "ui/fields/length_field.h"
#include "ui/help/tell_tale_words.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

const QString measuredPrinter = QStringLiteral("Shop");

class Calibration : public ::testing::Test {
protected:
    void SetUp() override { open(); }
    void open() {
        dialog = std::make_unique<CalibrationDialog>(
            settings, measuredPrinter, paperNamed("A4").value(), Length::millimetres(10),
            LengthStyle{Unit::Millimetre, 16}, Orientation::Portrait, [this](const Page& page) {
                printed.push_back(page);
                return true;
            });
        dialog->setToday(today);
        dialog->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(dialog.get()));
    }
    LengthField& field(const QString& name) {
        for (LengthField* each : dialog->findChildren<LengthField*>())
            if (each->lineEdit().accessibleName() == name)
                return *each;
        throw std::runtime_error("no such field");
    }
    void press(const QString& text) {
        for (QPushButton* button : dialog->findChildren<QPushButton*>())
            if (button->text().contains(text) && button->isVisible()) {
                QTest::mouseClick(button, Qt::LeftButton);
                return;
            }
        ADD_FAILURE() << "no button " << text.toStdString();
    }
    /// Types both lengths, as parts of what they should be, and compares.
    void measure(double across, double up) {
        const auto type = [&](const QString& name, double mm) {
            QLineEdit& edit = field(name).lineEdit();
            edit.setFocus();
            edit.selectAll();
            QTest::keyClicks(&edit, QString::number(mm, 'f', 3));
            QTest::keyClick(&edit, Qt::Key_Return);
        };
        const LengthsOnPage nominal = dialog->sheet().nominal;
        type(QStringLiteral("Measured length of bar A"), nominal.across.inMillimetres() * across);
        type(QStringLiteral("Measured length of bar B"), nominal.up.inMillimetres() * up);
        press(QStringLiteral("Compare"));
    }
    QString label(const QString& name) {
        for (QLabel* each : dialog->findChildren<QLabel*>())
            if (each->accessibleName() == name)
                return each->text();
        return {};
    }
    std::optional<PrinterCheck> stored() {
        return PrinterChecks(settings).of(
            {measuredPrinter, QStringLiteral("A4"), Orientation::Portrait});
    }

    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("s.ini")), QSettings::IniFormat};
    const QDate today{2026, 5, 4};
    std::vector<Page> printed;
    std::unique_ptr<CalibrationDialog> dialog;
};

TEST_F(Calibration, PrintsTheFirstPageWithoutCorrectionAndTheSecondWithIt) {
    press(QStringLiteral("Print the test page"));
    measure(0.995, 1.004);
    ASSERT_TRUE(stored());
    EXPECT_NEAR(stored()->factors.across, 1 / 0.995, 1e-5);
    EXPECT_NEAR(stored()->factors.up, 1 / 1.004, 1e-5);
    EXPECT_FALSE(stored()->proved.isValid());
    press(QStringLiteral("Print the page that proves it"));
    ASSERT_EQ(printed.size(), 2U);
    const auto barEnd = [](const Page& page) {
        for (const PageMark& mark : page.marks)
            if (mark.part.starts_with("A, ") && mark.part.ends_with("to"))
                return mark.x;
        return 0.0;
    };
    EXPECT_NEAR(barEnd(printed[1]) / barEnd(printed[0]), 1 / 0.995, 0.002);
}

TEST_F(Calibration, IsProvedByASecondPrintThatMeasuresRight) {
    measure(0.995, 1.004);
    measure(1.0005, 1);
    ASSERT_TRUE(stored());
    EXPECT_EQ(stored()->proved, today);
    EXPECT_NEAR(stored()->factors.across, 1 / 0.995, 1e-5);
}

TEST_F(Calibration, IsTakenBackWhereTheSecondPrintIsOffAgain) {
    measure(0.995, 1.004);
    measure(0.99, 1);
    EXPECT_FALSE(stored());
    EXPECT_TRUE(label(QStringLiteral("Outcome")).contains(QStringLiteral("taken back")));
}

TEST_F(Calibration, NeedsNoSecondPrintWhereTheFirstIsRight) {
    measure(1, 1);
    ASSERT_TRUE(stored());
    EXPECT_TRUE(stored()->factors.areNone());
    EXPECT_EQ(stored()->proved, today);
}

// 94.1 %: an A4 page fitted to Letter.
TEST_F(Calibration, OutOfReachStoresNothingAndMarksTheLikeliestCause) {
    measure(0.941, 0.941);
    EXPECT_FALSE(stored());
    EXPECT_TRUE(settings.allKeys().isEmpty());
    EXPECT_TRUE(
        label(QStringLiteral("Outcome")).contains(causeWords(ScaleCause::FittedToOtherPaper)));
    EXPECT_EQ(label(QStringLiteral("Tell-tale sizes")),
              tellTaleTable(ScaleCause::FittedToOtherPaper));
}

TEST_F(Calibration, AcceptsTwoPercentAndNotMore) {
    measure(1 / 1.0201, 1);
    EXPECT_FALSE(stored());
    measure(1 / 1.0199, 1);
    EXPECT_TRUE(stored());
}

TEST_F(Calibration, AsksForBothLengths) {
    press(QStringLiteral("Compare"));
    EXPECT_TRUE(label(QStringLiteral("Outcome")).contains(QStringLiteral("both")));
    EXPECT_FALSE(stored());
}

TEST_F(Calibration, GoesOnWhereItWasLeftBetweenThePrints) {
    measure(0.995, 1);
    open();
    EXPECT_FALSE(dialog->sheet().page.label.empty());
    press(QStringLiteral("Print the page that proves it"));
    measure(1, 1);
    EXPECT_EQ(stored()->proved, today);
}

TEST_F(Calibration, CanBeginAgainWithoutTheOldCorrection) {
    measure(0.995, 1);
    press(QStringLiteral("gain without correction"));
    EXPECT_FALSE(stored());
    press(QStringLiteral("Print the test page"));
}

TEST(TellTaleTable, HasARowForEachTellTaleOfCoreAndMarksOne) {
    const QString plain = tellTaleTable();
    EXPECT_EQ(plain.count(QStringLiteral("<tr>")), static_cast<int>(tellTales().size()) + 1);
    EXPECT_FALSE(plain.contains(QStringLiteral("<b>")));
    for (const TellTale& row : tellTales()) {
        for (double size : row.sizes)
            EXPECT_TRUE(plain.contains(QString::number(size))) << size;
        EXPECT_TRUE(plain.contains(causeWords(row.cause)));
        EXPECT_EQ(tellTaleTable(row.cause).count(QStringLiteral("<b>")), 3);
        EXPECT_TRUE(
            tellTaleTable(row.cause).contains(QStringLiteral("<b>") + causeWords(row.cause)));
    }
}

} // namespace
} // namespace frontwright::testing
