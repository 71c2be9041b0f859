// A new case is begun in the unit of the country.

#include "ui/language/language.h"
#include "ui/window/new_case_dialog.h"

#include <QComboBox>
#include <QLocale>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

QString firstUnit(const QString& locale) {
    const QLocale before;
    QLocale::setDefault(QLocale(locale));
    const NewCaseDialog dialog;
    QLocale::setDefault(before);
    return dialog.findChild<QComboBox*>()->currentText();
}

TEST(NewCases, BeginInTheUnitOfTheCountry) {
    EXPECT_EQ(firstUnit(QStringLiteral("en_US")), QStringLiteral("Inches"));
    EXPECT_EQ(firstUnit(QStringLiteral("de_DE")), QStringLiteral("Millimetres"));
    EXPECT_EQ(firstUnit(QStringLiteral("en_GB")), QStringLiteral("Millimetres"));
    EXPECT_EQ(firstUnit(QStringLiteral("C")), QStringLiteral("Inches"));
}

} // namespace
} // namespace frontwright::testing
