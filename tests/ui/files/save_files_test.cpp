// Several files at once: all of them or none.

#include "ui/files/save_files.h"

#include "tests/ui/files/child_process.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <sys/resource.h>
#include <vector>

namespace frontwright::testing {
namespace {

class SaveFiles : public ::testing::Test {
protected:
    QString path(const QString& name) { return folder.filePath(name); }
    QByteArray onDisk(const QString& name) {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("none");
    }
    QStringList names() {
        return QDir(folder.path())
            .entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot, QDir::Name);
    }
    std::vector<std::pair<QString, QByteArray>> sheets(int count, qsizetype size) {
        std::vector<std::pair<QString, QByteArray>> all;
        for (int i = 0; i < count; ++i)
            all.emplace_back(path(QStringLiteral("%1.svg").arg(i)),
                             QByteArray(size * (i + 1), static_cast<char>('a' + i % 26)));
        return all;
    }
    QTemporaryDir folder;
};

TEST_F(SaveFiles, WritesAllWithTheirBytes) {
    EXPECT_FALSE(writeFilesWhole(sheets(3, 1'000)));
    EXPECT_EQ(names().size(), 3);
    EXPECT_EQ(onDisk(QStringLiteral("2.svg")), QByteArray(3'000, 'c'));
}

TEST_F(SaveFiles, TakesTheOldOnesPlaces) {
    ASSERT_FALSE(writeFilesWhole(sheets(3, 10)));
    EXPECT_FALSE(writeFilesWhole(sheets(2, 500)));
    EXPECT_EQ(onDisk(QStringLiteral("0.svg")).size(), 500);
    EXPECT_EQ(onDisk(QStringLiteral("2.svg")).size(), 30); // was not among them
    EXPECT_EQ(names().size(), 3);
}

// More than a process may have open at once.
TEST_F(SaveFiles, WritesMoreThanCanBeOpenTogether) {
    const int came = inChild([&] {
        const rlimit limit{64, 64};
        return ::setrlimit(RLIMIT_NOFILE, &limit) == 0 && !writeFilesWhole(sheets(200, 10)) ? 1 : 2;
    });
    EXPECT_EQ(came, 1);
    EXPECT_EQ(names().size(), 200);
}

// The disk is full at the fourth of five: none is there afterwards, and what was there stays.
TEST_F(SaveFiles, OnAFullDiskLeavesNothingNewAndTheOldOnesAsTheyWere) {
    ASSERT_FALSE(writeFilesWhole(sheets(1, 7)));
    const int came = inChild([&] {
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{3'500, 3'500};
        if (::setrlimit(RLIMIT_FSIZE, &limit) != 0)
            return 9;
        const auto failed = writeFilesWhole(sheets(5, 1'000));
        return failed &&
                       failed->sentence().english().find("nothing was written") != std::string::npos
                   ? 1
                   : 2;
    });
    EXPECT_EQ(came, 1);
    EXPECT_EQ(names(), QStringList{QStringLiteral("0.svg")});
    EXPECT_EQ(onDisk(QStringLiteral("0.svg")), QByteArray(7, 'a'));
}

TEST_F(SaveFiles, RefusesWhatIsNoRegularFileAndWritesNone) {
    ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("1.svg")));
    const auto failed = writeFilesWhole(sheets(3, 10));
    ASSERT_TRUE(failed);
    EXPECT_NE(failed->what.english().find("regular"), std::string::npos);
    EXPECT_EQ(names(), QStringList{QStringLiteral("1.svg")});
}

} // namespace
} // namespace frontwright::testing
