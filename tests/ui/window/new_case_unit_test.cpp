// A new case is begun in the unit of the country, and from what the maker types.

#include "ui/language/language.h"
#include "ui/window/new_case_dialog.h"

#include <QApplication>
#include <QComboBox>
#include <QLocale>
#include <QSpinBox>
#include <QTest>

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

TEST(NewCases, CanBeMadeAsTheyAreOffered) {
    NewCaseDialog dialog;
    const auto boxes = dialog.findChildren<QComboBox*>();
    for (const int unit : {0, 1})
        for (const int construction : {0, 1})
            for (const int drawers : {1, 4}) {
                boxes[0]->setCurrentIndex(unit);
                boxes[1]->setCurrentIndex(construction);
                for (auto* count : dialog.findChildren<QSpinBox*>())
                    count->setValue(drawers);
                const auto made = dialog.project();
                EXPECT_TRUE(made.ok()) << unit << construction << drawers << ": "
                                       << (made.ok() ? "" : made.error().sentence().english());
            }
}

TEST(NewCases, KeepTheSizesThatWereTypedWhenTheConstructionIsChosen) {
    NewCaseDialog dialog;
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    const auto boxes = dialog.findChildren<QComboBox*>();
    boxes[0]->setCurrentIndex(1); // millimetres
    const auto type = [&](Qt::Key letter, const char* text) {
        QTest::keyClick(&dialog, letter, Qt::AltModifier);
        QTest::keyClicks(QApplication::focusWidget(), QLatin1String(text));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    };
    type(Qt::Key_W, "900");
    type(Qt::Key_H, "720");
    boxes[1]->setCurrentIndex(1); // frameless
    ASSERT_TRUE(dialog.project().ok()) << dialog.project().error().sentence().english();
    const auto made = dialog.project().value().casework;
    EXPECT_EQ(made.width.length, Length::millimetres(900));
    EXPECT_EQ(made.height.length, Length::millimetres(720));
    EXPECT_EQ(made.depth.length,
              newProject(Unit::Millimetre, Construction::Frameless).casework.depth.length)
        << "what was not typed follows";
}

} // namespace
} // namespace frontwright::testing
