// Who has a file open, told by the lock file beside it.

#include "ui/files/file_lock.h"

#include "tests/ui/files/child_process.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>

namespace frontwright::testing {
namespace {

class Lock : public ::testing::Test {
protected:
    QString path() { return folder.filePath(QStringLiteral("case.frontwright")); }
    QStringList hidden() { return QDir(folder.path()).entryList(QDir::Files | QDir::Hidden); }
    /// A process that takes the lock and is then torn away.
    void takeAndDie() {
        const pid_t child = startChild([this] {
            FileLock lock(path());
            if (lock.take())
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

TEST_F(Lock, IsTakenOnceAndNamesWhoHasIt) {
    FileLock first(path());
    EXPECT_FALSE(first.take());
    FileLock second(path());
    const auto holder = second.take();
    ASSERT_TRUE(holder);
    EXPECT_EQ(holder->process, QCoreApplication::applicationPid());
    EXPECT_EQ(holder->host, QSysInfo::machineHostName());
}

TEST_F(Lock, IsAHiddenFileThatGoesWithIt) {
    {
        FileLock lock(path());
        ASSERT_FALSE(lock.take());
        EXPECT_EQ(hidden(), QStringList{QStringLiteral(".case.frontwright.lock")});
    }
    EXPECT_EQ(hidden(), QStringList());
}

TEST_F(Lock, OfADeadProcessIsTakenOver) {
    takeAndDie();
    ASSERT_EQ(hidden().size(), 1) << "the dead leave their lock behind";
    FileLock lock(path());
    EXPECT_FALSE(lock.take());
}

TEST_F(Lock, IsSeenByAnotherProcess) {
    FileLock lock(path());
    ASSERT_FALSE(lock.take());
    EXPECT_EQ(inChild([this] { return FileLock(path()).take() ? 1 : 0; }), 1);
}

TEST_F(Lock, ThatNamesNobodyHoldsOnlyWhileItIsBeingWritten) {
    QFile file(FileLock::lockPath(path()));
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    EXPECT_TRUE(FileLock(path()).take());
    ASSERT_TRUE(file.setFileTime(QDateTime::currentDateTime().addSecs(-60),
                                 QFileDevice::FileModificationTime));
    file.close();
    EXPECT_FALSE(FileLock(path()).take());
}

TEST_F(Lock, IsTheSameThroughALink) {
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.close();
    const QString link = folder.filePath(QStringLiteral("link.frontwright"));
    ASSERT_TRUE(QFile::link(path(), link));
    FileLock lock(link);
    ASSERT_FALSE(lock.take());
    EXPECT_TRUE(FileLock(path()).take());
}

TEST_F(Lock, IsNotWantedWhereNoneCanBeMade) {
    FileLock lock(folder.filePath(QStringLiteral("no/such/folder/case.frontwright")));
    EXPECT_FALSE(lock.take());
}

} // namespace
} // namespace frontwright::testing
