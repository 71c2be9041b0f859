// A number is typed with point or comma, whatever the window speaks.

#include "ui/fields/decimal_box.h"
#include "ui/language/language.h"

#include <QTest>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

class DecimalBoxes : public ::testing::TestWithParam<std::tuple<std::string, std::string>> {};

TEST_P(DecimalBoxes, TakePointAndComma) {
    const SpokenLanguage spoken(QString::fromStdString(std::get<0>(GetParam())));
    DecimalBox box;
    box.setRange(0, 2000);
    box.selectAll();
    QTest::keyClicks(&box, QString::fromStdString(std::get<1>(GetParam())));
    EXPECT_EQ(box.value(), 12.5);
}

std::string boxName(const ::testing::TestParamInfo<std::tuple<std::string, std::string>>& each) {
    const auto [language, typed] = each.param;
    return language + (typed[2] == '.' ? "Point" : "Comma");
}

INSTANTIATE_TEST_SUITE_P(All, DecimalBoxes,
                         ::testing::Combine(::testing::Values<std::string>("en", "de"),
                                            ::testing::Values<std::string>("12.5", "12,5")),
                         boxName);

TEST(DecimalBoxMark, IsTakenOnce) {
    DecimalBox box;
    box.setRange(0, 2000);
    QString text = QStringLiteral("1,234.5");
    int at = 0;
    EXPECT_EQ(box.validate(text, at), QValidator::Invalid);
}

} // namespace
} // namespace frontwright::testing
