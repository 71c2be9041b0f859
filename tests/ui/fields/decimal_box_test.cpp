// A number is typed with point or comma, whatever the window speaks.

#include "ui/fields/decimal_box.h"
#include "ui/language/language.h"

#include <QTest>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

class DecimalBoxes : public ::testing::TestWithParam<std::tuple<const char*, const char*>> {};

TEST_P(DecimalBoxes, TakePointAndComma) {
    const SpokenLanguage spoken(QLatin1String(std::get<0>(GetParam())));
    DecimalBox box;
    box.setRange(0, 2000);
    box.selectAll();
    QTest::keyClicks(&box, QString::fromLatin1(std::get<1>(GetParam())));
    EXPECT_EQ(box.value(), 12.5);
}

INSTANTIATE_TEST_SUITE_P(All, DecimalBoxes,
                         ::testing::Combine(::testing::Values("en", "de"),
                                            ::testing::Values("12.5", "12,5")));

TEST(DecimalBoxMark, IsTakenOnce) {
    DecimalBox box;
    box.setRange(0, 2000);
    QString text = QStringLiteral("1,234.5");
    int at = 0;
    EXPECT_EQ(box.validate(text, at), QValidator::Invalid);
}

} // namespace
} // namespace frontwright::testing
