// Letters half as large again: nothing is cut off; and what is clicked is large enough to be hit.

#include "ui/files/built_in_catalogue.h"
#include "ui/help/help_window.h"
#include "ui/language/language.h"

#include "tests/ui/language/longer_words.h"
#include "tests/ui/window/every_dialog.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QDockWidget>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QScreen>
#include <QStyleOptionComboBox>
#include <QTabBar>

namespace frontwright::testing {
namespace {

constexpr int leastTarget = 24; // WCAG 2.5.8

/// The application's font for as long as it lives.
class LargerFont {
public:
    explicit LargerFont(double factor) : m_before(QApplication::font()) {
        QFont larger = m_before;
        larger.setPointSizeF(m_before.pointSizeF() * factor);
        QApplication::setFont(larger);
    }
    LargerFont(const LargerFont&) = delete;
    LargerFont& operator=(const LargerFont&) = delete;
    ~LargerFont() { QApplication::setFont(m_before); }

private:
    QFont m_before;
};

/// Buttons that shorten their text and keep it whole in the tool tip.
bool mayShorten(const QWidget& widget) {
    return !widget.toolTip().isEmpty() &&
           widget.sizePolicy().horizontalPolicy() == QSizePolicy::Ignored;
}

std::string told(const QWidget& widget, const QString& text) {
    return std::string(widget.metaObject()->className()) + " “" + text.toStdString() + "” has " +
           std::to_string(widget.width()) + " × " + std::to_string(widget.height()) + ", wants " +
           std::to_string(widget.sizeHint().width()) + " × " +
           std::to_string(widget.sizeHint().height());
}

void expectWhole(const QWidget& top) {
    for (const auto* button : top.findChildren<QAbstractButton*>()) {
        if (!button->isVisibleTo(&top) || button->text().isEmpty() || mayShorten(*button))
            continue;
        const int text = button->fontMetrics().size(Qt::TextShowMnemonic, button->text()).width();
        EXPECT_GE(button->width(), text) << told(*button, button->text());
        EXPECT_GE(button->height(), button->fontMetrics().height())
            << told(*button, button->text());
    }
    for (const auto* label : top.findChildren<QLabel*>()) {
        if (!label->isVisibleTo(&top) || label->text().isEmpty())
            continue;
        const int wanted =
            label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        EXPECT_GE(label->height(), std::min(wanted, label->sizeHint().height()))
            << told(*label, label->text());
        if (label->wordWrap())
            EXPECT_GE(label->height(), wanted) << told(*label, label->text());
        else
            EXPECT_GE(label->width(), label->minimumSizeHint().width())
                << told(*label, label->text());
    }
    for (const auto* combo : top.findChildren<QComboBox*>()) {
        if (!combo->isVisibleTo(&top) || mayShorten(*combo) ||
            combo->toolTip() == combo->currentText())
            continue;
        QStyleOptionComboBox option;
        option.initFrom(combo);
        const QRect room = combo->style()->subControlRect(QStyle::CC_ComboBox, &option,
                                                          QStyle::SC_ComboBoxEditField, combo);
        EXPECT_GE(room.width(), combo->fontMetrics().horizontalAdvance(combo->currentText()))
            << told(*combo, combo->currentText());
    }
    for (const auto* bar : top.findChildren<QTabBar*>())
        for (int i = 0; bar->isVisibleTo(&top) && i < bar->count(); ++i)
            EXPECT_GE(bar->tabRect(i).width(),
                      bar->fontMetrics().size(Qt::TextShowMnemonic, bar->tabText(i)).width() +
                          bar->style()->pixelMetric(QStyle::PM_TabBarTabHSpace))
                << told(*bar, bar->tabText(i));
    for (const auto* edit : top.findChildren<QLineEdit*>())
        if (edit->isVisibleTo(&top))
            EXPECT_GE(edit->height(), edit->fontMetrics().height()) << told(*edit, edit->text());
}

void expectLargeEnough(const QWidget& top) {
    for (const QWidget* widget : top.findChildren<QWidget*>()) {
        const bool isTarget = qobject_cast<const QAbstractButton*>(widget) ||
                              qobject_cast<const QComboBox*>(widget) ||
                              (qobject_cast<const QLineEdit*>(widget) &&
                               !qobject_cast<const QComboBox*>(widget->parentWidget()));
        // What a style draws inside another control, and a title bar's own buttons, are not ours.
        if (!isTarget || !widget->isVisibleTo(&top) ||
            widget->objectName().startsWith(QLatin1String("qt_")))
            continue;
        EXPECT_GE(widget->height(), leastTarget)
            << told(*widget, widget->accessibleName()) << " in "
            << widget->parentWidget()->metaObject()->className();
        EXPECT_GE(widget->width(), leastTarget) << told(*widget, widget->accessibleName());
    }
}

void settle() {
    for (int turn = 0; turn < 5; ++turn)
        QApplication::processEvents();
}

/// A language's code; "longer" is one of our own.
class LargeLetters : public ::testing::TestWithParam<std::tuple<double, std::string>> {
protected:
    LargeLetters() {
        const QString language = QString::fromStdString(std::get<std::string>(GetParam()));
        if (language == QLatin1String("longer"))
            longer.emplace();
        else
            spoken.emplace(language);
    }

    const LargerFont larger{std::get<double>(GetParam())};
    std::optional<SpokenLanguage> spoken;
    std::optional<LongerWords> longer;
};

TEST_P(LargeLetters, LeaveTheWindowWhole) {
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    MainWindow window(builtInCatalogue(), settings);
    // A copy: a case that another test has open asks before it opens.
    const QString copy = folder.filePath(QStringLiteral("first-try.frontwright"));
    ASSERT_TRUE(QFile::copy(samplePath(QStringLiteral("first-try")), copy));
    window.openPath(copy);
    window.resize(1360, 900);
    window.show();
    settle();
    expectWhole(window);
    const auto& plan = window.session().plan();
    for (QDockWidget* dock : window.findChildren<QDockWidget*>()) {
        dock->raise();
        for (const Selection& selection : {Selection(), Selection::of(plan.fronts[0].opening),
                                           Selection::of(plan.members[4].id)}) {
            window.session().select(selection);
            settle();
            expectWhole(window);
            expectLargeEnough(window);
        }
    }
}

TEST_P(LargeLetters, LeaveEveryDialogWhole) {
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    Session session(builtInCatalogue());
    ASSERT_FALSE(session.start(threeRows()));
    for (const auto& dialog : everyDialog(session, settings)) {
        dialog->show();
        settle();
        SCOPED_TRACE(dialog->windowTitle().toStdString());
        expectWhole(*dialog);
        expectLargeEnough(*dialog);
    }
}

TEST(SmallScreen, HasRoomForEveryDialog) {
    // 1500 × 1000 pixels at 150 %, less a title and a panel.
    constexpr QSize room(1000, 620);
    for (const char* language : {"en", "de"}) {
        const SpokenLanguage spoken(language);
        const QTemporaryDir folder;
        QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
        Session session(builtInCatalogue());
        ASSERT_FALSE(session.start(threeRows()));
        for (const auto& dialog : everyDialog(session, settings)) {
            dialog->show();
            settle();
            const QSize least = dialog->minimumSizeHint();
            EXPECT_TRUE(least.width() <= room.width() && least.height() <= room.height())
                << dialog->windowTitle().toStdString() << ": " << least.width() << " × "
                << least.height();
            const QSize most = dialog->screen()->availableGeometry().size().expandedTo(least);
            EXPECT_TRUE(dialog->width() <= most.width() && dialog->height() <= most.height())
                << dialog->windowTitle().toStdString();
        }
    }
}

TEST_P(LargeLetters, LeaveTheHelpWhole) {
    HelpWindow help([] { return QString(); }, nullptr);
    help.showTopic(QStringLiteral("start"));
    settle();
    expectWhole(help);
    expectLargeEnough(help);
}

std::string sizeName(const ::testing::TestParamInfo<std::tuple<double, std::string>>& each) {
    const auto [factor, language] = each.param;
    return language + (factor > 1 ? "Large" : "AsUsual");
}

INSTANTIATE_TEST_SUITE_P(Factors, LargeLetters,
                         ::testing::Combine(::testing::Values(1.0, 1.5),
                                            ::testing::Values<std::string>("en", "de", "longer")),
                         sizeName);

} // namespace
} // namespace frontwright::testing
