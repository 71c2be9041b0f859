// The field for one length: what it shows, what it understands, what it never does.

#include "ui/fields/length_field.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

constexpr LengthStyle sixteenths{Unit::Inch, 16};
constexpr LengthStyle millimetres{Unit::Millimetre, 16};

class Field : public ::testing::Test {
protected:
    Field() : field(new LengthField(QStringLiteral("Opening height"))), other(new QLineEdit) {
        auto* column = new QVBoxLayout(&window);
        column->addWidget(field);
        column->addWidget(other);
        QObject::connect(field, &LengthField::decided, field,
                         [this](const WrittenLength& value) { decisions.push_back(value); });
        QObject::connect(field, &LengthField::cleared, field, [this] { ++cleared; });
        QObject::connect(field, &LengthField::abandoned, field, [this] { ++abandoned; });
    }
    void SetUp() override {
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        field->setValue(Length::inches(12, 40), sixteenths);
        field->startTyping();
    }
    QLineEdit& edit() { return field->lineEdit(); }
    void type(const QString& text) {
        edit().selectAll();
        QTest::keyClicks(&edit(), text);
    }
    void leave() { other->setFocus(); }
    /// What is said below the text; empty where nothing is.
    std::string said() {
        for (const QLabel* label : field->findChildren<QLabel*>())
            if (label->isVisible() && !label->text().isEmpty())
                return label->text().toStdString();
        return {};
    }

    QWidget window;
    LengthField* field;
    QLineEdit* other;
    std::vector<WrittenLength> decisions;
    int cleared = 0;
    int abandoned = 0;
};

TEST_F(Field, ShowsItsValueAndHasAName) {
    EXPECT_EQ(edit().text().toStdString(), "12 5/8 in");
    EXPECT_EQ(edit().accessibleName().toStdString(), "Opening height");
}

TEST_F(Field, EchoesInBothUnitsWhatWasUnderstood) {
    type(QStringLiteral("321 mm"));
    EXPECT_TRUE(field->isUnderstood());
    EXPECT_NE(said().find("321 mm"), std::string::npos) << said();
    EXPECT_NE(said().find("in"), std::string::npos) << said();
    EXPECT_TRUE(decisions.empty()) << "typing alone decides nothing";
}

TEST_F(Field, DecidesOnEnterOnceWithTheMakersNotation) {
    type(QStringLiteral("32.1 cm"));
    QTest::keyClick(&edit(), Qt::Key_Return);
    ASSERT_EQ(decisions.size(), 1U);
    EXPECT_EQ(decisions[0], WrittenLength(Length::millimetres(321), Notation::Centimetre));
    leave();
    EXPECT_EQ(decisions.size(), 1U);
}

TEST_F(Field, DecidesWhenItIsLeftAfterAChange) {
    type(QStringLiteral("13"));
    leave();
    ASSERT_EQ(decisions.size(), 1U);
    EXPECT_EQ(decisions[0].length, Length::inches(13));
}

TEST_F(Field, ComputesSumsAndChanges) {
    type(QStringLiteral("12 + 2*1/4"));
    QTest::keyClick(&edit(), Qt::Key_Return);
    type(QStringLiteral("+=1/8"));
    QTest::keyClick(&edit(), Qt::Key_Return);
    ASSERT_EQ(decisions.size(), 2U);
    EXPECT_EQ(decisions[0].length, Length::inches(12, 32));
    EXPECT_EQ(decisions[1].length, Length::inches(12, 40));
}

TEST_F(Field, KeepsTextItCantReadWithTheReason) {
    type(QStringLiteral("12 5/0"));
    EXPECT_FALSE(field->isUnderstood());
    EXPECT_FALSE(said().empty());
    QTest::keyClick(&edit(), Qt::Key_Return);
    leave();
    EXPECT_TRUE(decisions.empty());
    EXPECT_EQ(edit().text().toStdString(), "12 5/0");
    EXPECT_FALSE(said().empty());
    field->setValue(Length::inches(3), sixteenths);
    EXPECT_EQ(edit().text().toStdString(), "12 5/0") << "what is typed is not taken away";
}

TEST_F(Field, EmptiedIsAMistakeUnlessEmptyMeansSomething) {
    type(QStringLiteral("1"));
    QTest::keyClick(&edit(), Qt::Key_Backspace);
    EXPECT_FALSE(field->isUnderstood());
    leave();
    EXPECT_EQ(cleared, 0);
    field->setEmpty(LengthField::Empty::Clears);
    field->startTyping();
    type(QStringLiteral("1"));
    QTest::keyClick(&edit(), Qt::Key_Backspace);
    EXPECT_TRUE(field->isUnderstood());
    QTest::keyClick(&edit(), Qt::Key_Return);
    EXPECT_EQ(cleared, 1);
    EXPECT_TRUE(decisions.empty());
}

TEST_F(Field, LeftAsItWasChangesNothingEvenWhereTheShownValueIsRounded) {
    // 321 mm is 12 5/8 in to the nearest 1/16, but not exactly.
    field->setValue(Length::millimetres(321), sixteenths);
    field->startTyping();
    QTest::keyClick(&edit(), Qt::Key_Return);
    leave();
    EXPECT_TRUE(decisions.empty());
    EXPECT_NE(edit().toolTip().toStdString().find("Exactly"), std::string::npos);
}

TEST_F(Field, TypedTheSameAgainChangesNothing) {
    type(QStringLiteral("12 5/8"));
    QTest::keyClick(&edit(), Qt::Key_Return);
    EXPECT_TRUE(decisions.empty());
}

TEST_F(Field, TakesNoNoticeOfTheWheel) {
    const QPoint at = edit().rect().center();
    for (const int turn : {120, -120, 1200}) {
        QWheelEvent wheel(at, edit().mapToGlobal(at), {}, {0, turn}, Qt::NoButton, Qt::NoModifier,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(&edit(), &wheel);
    }
    leave();
    EXPECT_EQ(edit().text().toStdString(), "12 5/8 in");
    EXPECT_TRUE(decisions.empty());
}

TEST_F(Field, StepsBySixteenthsWithUpAndDown) {
    QTest::keyClick(&edit(), Qt::Key_Up);
    QTest::keyClick(&edit(), Qt::Key_Up);
    QTest::keyClick(&edit(), Qt::Key_Down);
    QTest::keyClick(&edit(), Qt::Key_Return);
    ASSERT_EQ(decisions.size(), 1U);
    EXPECT_EQ(decisions[0].length, Length::inches(12, 44));
}

TEST_F(Field, StepsTenfoldWithShiftAndFinestWithControl) {
    QTest::keyClick(&edit(), Qt::Key_Up, Qt::ShiftModifier);
    QTest::keyClick(&edit(), Qt::Key_Return);
    QTest::keyClick(&edit(), Qt::Key_Down, Qt::ControlModifier);
    QTest::keyClick(&edit(), Qt::Key_Return);
    ASSERT_EQ(decisions.size(), 2U);
    EXPECT_EQ(decisions[0].length, Length::inches(13, 16));
    EXPECT_EQ(decisions[1].length, Length::inches(13, 15));
}

TEST_F(Field, StepsByMillimetresInAMetricView) {
    field->setValue(Length::millimetres(100), millimetres);
    field->startTyping();
    QTest::keyClick(&edit(), Qt::Key_Up);
    QTest::keyClick(&edit(), Qt::Key_Return);
    ASSERT_EQ(decisions.size(), 1U);
    EXPECT_EQ(decisions[0].length, Length::millimetres(101));
}

TEST_F(Field, ReadsPointAndCommaAsDecimalMark) {
    for (const char* text : {"12.5", "12,5"}) {
        field->setValue(Length::inches(1), sixteenths);
        field->startTyping();
        type(QString::fromLatin1(text));
        QTest::keyClick(&edit(), Qt::Key_Return);
        ASSERT_FALSE(decisions.empty());
        EXPECT_EQ(decisions.back().length, Length::inches(12, 32)) << text;
    }
}

TEST_F(Field, EscapePutsTheValueBack) {
    type(QStringLiteral("99"));
    QTest::keyClick(&edit(), Qt::Key_Escape);
    EXPECT_EQ(edit().text().toStdString(), "12 5/8 in");
    EXPECT_EQ(said(), "");
    EXPECT_EQ(abandoned, 1);
    leave();
    EXPECT_TRUE(decisions.empty());
}

TEST_F(Field, ShowsWhyAnEditWasRefusedUntilTheNextKey) {
    field->refuse(QStringLiteral("There is no room."));
    EXPECT_EQ(said(), "There is no room.");
    type(QStringLiteral("4"));
    EXPECT_NE(said(), "There is no room.");
    EXPECT_TRUE(field->isUnderstood());
}

TEST_F(Field, ThatOnlyShowsCantBeTypedIn) {
    field->setReadOnly(QStringLiteral("It follows from the openings."));
    type(QStringLiteral("4"));
    QTest::keyClick(&edit(), Qt::Key_Up);
    QTest::keyClick(&edit(), Qt::Key_Return);
    EXPECT_EQ(edit().text().toStdString(), "12 5/8 in");
    EXPECT_TRUE(decisions.empty());
    EXPECT_EQ(edit().toolTip().toStdString(), "It follows from the openings.");
}

} // namespace
} // namespace frontwright::testing
