// Copies that are left behind, and to whom they are offered.

#include "ui/files/recovery_folder.h"

#include "tests/ui/files/child_process.h"
#include "ui/files/save_file.h"

#include <QDir>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>

namespace frontwright::testing {
namespace {

class Copies : public ::testing::Test {
protected:
    QString state() { return folder.filePath(QStringLiteral("state/recovery")); }
    QStringList files() { return QDir(state()).entryList(QDir::Files); }
    /// A program that keeps a copy of that document and is torn away.
    void leaveBehind(const QByteArray& document, const QString& origin, const QString& name) {
        const pid_t child = startChild([&] {
            RecoveryFolder copies(state());
            if (copies.keep(document, origin, name))
                return 1;
            ::raise(SIGKILL);
            return 2;
        });
        int status = 0;
        ASSERT_EQ(::waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFSIGNALED(status));
    }

    QTemporaryDir folder;
};

TEST_F(Copies, OfALivingProgramAreNotOffered) {
    RecoveryFolder mine(state());
    ASSERT_FALSE(
        mine.keep("{}\n", QStringLiteral("/a/chest.frontwright"), QStringLiteral("chest")));
    EXPECT_TRUE(mine.abandoned().isEmpty());
    EXPECT_TRUE(RecoveryFolder(state()).abandoned().isEmpty()) << "another window of this program";
    EXPECT_EQ(
        inChild([this] { return static_cast<int>(RecoveryFolder(state()).abandoned().size()); }),
        0);
}

TEST_F(Copies, OfADeadProgramAreOfferedWithNameTimeAndSize) {
    const QDateTime before = QDateTime::currentDateTime().addSecs(-2);
    leaveBehind("{ \"a\": 1 }\n", QStringLiteral("/home/ä, b\n/chest.frontwright"),
                QStringLiteral("chest.frontwright"));
    leaveBehind("{}\n", {}, QStringLiteral("New case"));
    const auto copies = RecoveryFolder(state()).abandoned();
    ASSERT_EQ(copies.size(), 2);
    // Both may be of the same moment; the later one has the greater process number or not.
    const RecoveryCopy& named = copies[0].origin.isEmpty() ? copies[1] : copies[0];
    const RecoveryCopy& untitled = copies[0].origin.isEmpty() ? copies[0] : copies[1];
    EXPECT_EQ(named.origin, QStringLiteral("/home/ä, b\n/chest.frontwright"));
    EXPECT_EQ(named.name, QStringLiteral("chest.frontwright"));
    EXPECT_EQ(named.size, 11);
    EXPECT_GE(named.written, before);
    EXPECT_EQ(readFile(named.document).value(), "{ \"a\": 1 }\n");
    EXPECT_EQ(untitled.name, QStringLiteral("New case"));
    EXPECT_EQ(untitled.size, 3);
}

TEST_F(Copies, AreReplacedByLaterOnesAndGoWhenDropped) {
    RecoveryFolder mine(state());
    mine.drop();
    EXPECT_FALSE(QFileInfo::exists(state())) << "nothing is made before it is wanted";
    ASSERT_FALSE(mine.keep("1", {}, QStringLiteral("New case")));
    ASSERT_FALSE(mine.keep("2", {}, QStringLiteral("New case")));
    EXPECT_EQ(files().size(), 2) << "a document and a note";
    EXPECT_TRUE(mine.hasCopy());
    mine.drop();
    EXPECT_EQ(files(), QStringList());
    EXPECT_FALSE(mine.hasCopy());
}

TEST_F(Copies, FollowTheCaseToAnotherName) {
    {
        RecoveryFolder mine(state());
        ASSERT_FALSE(mine.keep("1", {}, QStringLiteral("New case")));
        ASSERT_FALSE(mine.keep("2", QStringLiteral("/b"), QStringLiteral("b")));
    }
    const auto copies = RecoveryFolder(state()).abandoned();
    ASSERT_EQ(copies.size(), 1);
    EXPECT_EQ(copies[0].name, QStringLiteral("b"));
    EXPECT_EQ(copies[0].origin, QStringLiteral("/b"));
}

TEST_F(Copies, OfTwoCasesInOneProgramAreTwo) {
    RecoveryFolder one(state());
    RecoveryFolder two(state());
    ASSERT_FALSE(one.keep("1", {}, QStringLiteral("New case")));
    ASSERT_FALSE(two.keep("2", {}, QStringLiteral("New case")));
    EXPECT_EQ(files().size(), 4);
    one.drop();
    EXPECT_EQ(files().size(), 2);
}

TEST_F(Copies, AreOfferedUntilThrownAway) {
    leaveBehind("{}\n", {}, QStringLiteral("New case"));
    RecoveryFolder next(state());
    ASSERT_EQ(next.abandoned().size(), 1);
    const auto again = next.abandoned();
    ASSERT_EQ(again.size(), 1);
    RecoveryFolder::discard(again[0]);
    EXPECT_TRUE(next.abandoned().isEmpty());
    EXPECT_EQ(files(), QStringList());
}

TEST_F(Copies, WithoutTheirNoteAreStillOffered) {
    leaveBehind("{}\n", QStringLiteral("/a"), QStringLiteral("a"));
    for (const QString& name : files())
        if (name.endsWith(QLatin1String(".origin")))
            ASSERT_TRUE(QFile::remove(QDir(state()).filePath(name)));
    const auto copies = RecoveryFolder(state()).abandoned();
    ASSERT_EQ(copies.size(), 1);
    EXPECT_FALSE(copies[0].name.isEmpty());
}

TEST_F(Copies, ThatCantBeWrittenSayWhere) {
    const QString file = folder.filePath(QStringLiteral("file"));
    ASSERT_FALSE(writeFileWhole(file, "in the way"));
    RecoveryFolder mine(file + QStringLiteral("/recovery"));
    const auto failed = mine.keep("1", {}, QStringLiteral("New case"));
    ASSERT_TRUE(failed);
    EXPECT_NE(failed->sentence().english().find(file.toStdString()), std::string::npos);
    EXPECT_FALSE(mine.hasCopy());
}

} // namespace
} // namespace frontwright::testing
