// Which language the window speaks: the maker's choice, else the desktop's, else English.

#include "ui/language/language.h"
#include "ui/language/language_menu.h"

#include "tests/ui/language/longer_words.h"

#include <QAction>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

class Languages : public ::testing::Test {
protected:
    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
};

TEST_F(Languages, FollowTheDesktopWhereTheMakerChoseNone) {
    EXPECT_EQ(languageOf(QLocale(QStringLiteral("de_AT"))), QStringLiteral("de"));
    EXPECT_EQ(languageOf(QLocale(QStringLiteral("en_GB"))), QStringLiteral("en"));
    EXPECT_EQ(languageOf(QLocale(QStringLiteral("fr_FR"))), QStringLiteral("en"));
    EXPECT_EQ(languageOf(QLocale::c()), QStringLiteral("en"));
    EXPECT_FALSE(keptLanguage(settings));
}

TEST_F(Languages, AreKeptForTheNextStart) {
    keepLanguage(settings, QStringLiteral("de"));
    EXPECT_EQ(keptLanguage(settings), QStringLiteral("de"));
    keepLanguage(settings, std::nullopt);
    EXPECT_FALSE(keptLanguage(settings));
}

TEST_F(Languages, ThatTheWindowDoesNotSpeakAreAsIfNotChosen) {
    settings.setValue(QStringLiteral("language"), QStringLiteral("tlh"));
    EXPECT_FALSE(keptLanguage(settings));
}

TEST_F(Languages, TakeNumbersAndDatesWithThemAndGiveThemBack) {
    const QLocale before;
    {
        const SpokenLanguage german(QStringLiteral("de"));
        EXPECT_EQ(QLocale().decimalPoint(), QStringLiteral(","));
    }
    EXPECT_EQ(QLocale(), before);
}

TEST_F(Languages, LeaveTheCountrysWayOfWritingAsItWas) {
    const QLocale before;
    QLocale::setDefault(QLocale(QStringLiteral("de_CH")));
    {
        const SpokenLanguage german(QStringLiteral("de"));
        EXPECT_EQ(QLocale().name(), QStringLiteral("de_CH"));
    }
    QLocale::setDefault(QLocale(QStringLiteral("en_DE")));
    {
        const SpokenLanguage english(QStringLiteral("en"));
        EXPECT_EQ(QLocale().measurementSystem(), QLocale::MetricSystem);
    }
    QLocale::setDefault(before);
}

TEST_F(Languages, OfOurOwnForTestsAreLonger) {
    const LongerWords longer;
    EXPECT_EQ(LanguageMenu::tr("&Windows of %1: <b>three</b>"),
              QStringLiteral("&Windowsnn ofn %1: <b>threenn</b>"));
}

TEST_F(Languages, AreChosenInTheMenuAndTellWhenTheyAreSpoken) {
    LanguageMenu menu(settings, nullptr);
    QString told;
    QObject::connect(&menu, &LanguageMenu::chosen,
                     [&told](const QString& sentence) { told = sentence; });
    ASSERT_EQ(menu.actions().size(), 1 + windowLanguages().size());
    EXPECT_TRUE(menu.actions()[0]->isChecked());
    menu.actions()[2]->trigger();
    EXPECT_EQ(keptLanguage(settings), QStringLiteral("de"));
    EXPECT_FALSE(told.isEmpty());
    EXPECT_TRUE(LanguageMenu(settings, nullptr).actions()[2]->isChecked());
    menu.actions()[0]->trigger();
    EXPECT_FALSE(keptLanguage(settings));
}

} // namespace
} // namespace frontwright::testing
