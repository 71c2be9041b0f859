#include "ui/sheets/printer_checks.h"

#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

class Checks : public ::testing::Test {
protected:
    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("s.ini")), QSettings::IniFormat};
    PrinterChecks checks{settings};
    const PrinterSetup office{QStringLiteral("Office / 2nd floor"), QStringLiteral("A4"),
                              Orientation::Portrait};
    const PrinterCheck found{{1.004016, 0.995025}, QDate(2026, 3, 1), QDate(2026, 3, 2)};
};

TEST_F(Checks, ComeBackAsTheyWereKept) {
    checks.keep(office, found);
    settings.sync();
    QSettings again(settings.fileName(), QSettings::IniFormat);
    const auto check = PrinterChecks(again).of(office);
    ASSERT_TRUE(check);
    EXPECT_EQ(check->factors, found.factors);
    EXPECT_EQ(check->measured, found.measured);
    EXPECT_EQ(check->proved, found.proved);
}

TEST_F(Checks, HoldForOnePrinterPaperAndOrientationOnly) {
    checks.keep(office, found);
    PrinterSetup other = office;
    other.orientation = Orientation::Landscape;
    EXPECT_FALSE(checks.of(other));
    other = office;
    other.paper = QStringLiteral("Letter");
    EXPECT_FALSE(checks.of(other));
    other = office;
    other.printer = QStringLiteral("Office");
    EXPECT_FALSE(checks.of(other));
}

TEST_F(Checks, AreForgottenOneByOne) {
    PrinterSetup lying = office;
    lying.orientation = Orientation::Landscape;
    checks.keep(office, found);
    checks.keep(lying, found);
    checks.forget(office);
    EXPECT_FALSE(checks.of(office));
    EXPECT_TRUE(checks.of(lying));
}

TEST_F(Checks, ThatWereNotProvedYetHaveNoDateOfProof) {
    checks.keep(office, {{1.01, 1}, QDate(2026, 3, 1), {}});
    ASSERT_TRUE(checks.of(office));
    EXPECT_FALSE(checks.of(office)->proved.isValid());
}

TEST_F(Checks, WithSpoiltFiguresCountAsNeverMade) {
    for (const char* spoilt : {"nan", "inf", "0", "-1", "1.5", "1,01", "words", ""}) {
        checks.keep(office, found);
        for (const QString& key : settings.allKeys())
            if (key.endsWith(QStringLiteral("/across")))
                settings.setValue(key, QString::fromLatin1(spoilt));
        EXPECT_FALSE(checks.of(office)) << spoilt;
    }
}

} // namespace
} // namespace frontwright::testing
