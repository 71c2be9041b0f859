// Settings that can't be read harm nothing and are not lost.

#include "ui/files/settings_file.h"

#include "ui/files/save_file.h"
#include "ui/files/state_folder.h"

#include <QDir>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace frontwright::testing {
namespace {

class Settings : public ::testing::Test {
protected:
    QString path() { return folder.filePath(QStringLiteral("settings.conf")); }
    QTemporaryDir folder;
};

TEST_F(Settings, AreKeptFromOneStartToTheNext) {
    {
        const auto opened = openSettings(path());
        EXPECT_EQ(opened.keptAside, QString());
        opened.settings->setValue(QStringLiteral("view/unit"), QStringLiteral("mm"));
    }
    const auto opened = openSettings(path());
    EXPECT_EQ(opened.keptAside, QString());
    EXPECT_EQ(opened.settings->value(QStringLiteral("view/unit")).toString(), QStringLiteral("mm"));
}

TEST_F(Settings, ThatCantBeReadStartWithDefaultsAndAreKeptBeside) {
    int number = 0;
    for (const QByteArray& bad :
         {QByteArray("[view]\nunit=mm\nthis is no setting\n"), QByteArray("[view\nunit=mm\n"),
          QByteArray("[view]\nunit=mm\n\0\0\0\0", 21)}) {
        ASSERT_FALSE(writeFileWhole(path(), bad));
        const auto opened = openSettings(path());
        const QString expected = path() + (++number == 1 ? QStringLiteral(".bad")
                                                         : QStringLiteral(".bad%1").arg(number));
        EXPECT_EQ(opened.keptAside, expected);
        EXPECT_EQ(readFile(expected).value(), bad);
        EXPECT_TRUE(opened.settings->allKeys().isEmpty()) << number;
        opened.settings->setValue(QStringLiteral("view/unit"), QStringLiteral("in"));
        opened.settings->sync();
        EXPECT_EQ(opened.settings->status(), QSettings::NoError);
    }
    EXPECT_EQ(openSettings(path()).keptAside, QString()) << "told once";
}

TEST_F(Settings, ThatAreAFolderAreSetAsideToo) {
    ASSERT_TRUE(QDir().mkdir(path()));
    const auto opened = openSettings(path());
    EXPECT_EQ(opened.keptAside, path() + QStringLiteral(".bad"));
    EXPECT_TRUE(QFileInfo(opened.keptAside).isDir());
}

TEST(StateFolder, IsTheOneThatTheDesktopNames) {
    const QByteArray before = qgetenv("XDG_STATE_HOME");
    QStandardPaths::setTestModeEnabled(false);
    qputenv("XDG_STATE_HOME", "/some/state");
    EXPECT_EQ(stateFolder(), QStringLiteral("/some/state/frontwright"));
    qputenv("XDG_STATE_HOME", "relative/is/ignored");
    EXPECT_EQ(stateFolder(), QDir::home().filePath(QStringLiteral(".local/state/frontwright")));
    qunsetenv("XDG_STATE_HOME");
    EXPECT_EQ(stateFolder(), QDir::home().filePath(QStringLiteral(".local/state/frontwright")));
    QStandardPaths::setTestModeEnabled(true);
    EXPECT_NE(stateFolder(), QDir::home().filePath(QStringLiteral(".local/state/frontwright")));
    if (!before.isNull())
        qputenv("XDG_STATE_HOME", before);
}

} // namespace
} // namespace frontwright::testing
