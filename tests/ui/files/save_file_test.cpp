// Files are read and written whole, and only where they are files.

#include "ui/files/save_file.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <sys/stat.h>

namespace frontwright::testing {
namespace {

class SaveFile : public ::testing::Test {
protected:
    QString path(const char* name = "case.frontwright") {
        return folder.filePath(QString::fromLatin1(name));
    }
    QByteArray native(const char* name) { return QFile::encodeName(path(name)); }
    QStringList names() {
        return QDir(folder.path())
            .entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot);
    }
    QTemporaryDir folder;
};

TEST_F(SaveFile, WrittenIsReadBackByteForByte) {
    QByteArray bytes("line\nwith \0 in it\xff", 17);
    EXPECT_EQ(writeFileWhole(path(), bytes), std::nullopt);
    EXPECT_EQ(readFile(path()).value(), bytes);
    EXPECT_EQ(writeFileWhole(path(), "other"), std::nullopt);
    EXPECT_EQ(readFile(path()).value(), QByteArray("other"));
    EXPECT_EQ(names(), QStringList{QStringLiteral("case.frontwright")}) << "nothing is left beside";
}

TEST_F(SaveFile, KeepsItsRights) {
    ASSERT_EQ(writeFileWhole(path(), "old"), std::nullopt);
    ASSERT_EQ(::chmod(native("case.frontwright").constData(), 0640), 0);
    ASSERT_EQ(writeFileWhole(path(), "new"), std::nullopt);
    struct stat info {};
    ASSERT_EQ(::stat(native("case.frontwright").constData(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777U, 0640U);
}

TEST_F(SaveFile, ThroughALinkChangesWhatTheLinkLeadsTo) {
    ASSERT_EQ(writeFileWhole(path("real"), "old"), std::nullopt);
    ASSERT_TRUE(QFile::link(path("real"), path("link")));
    ASSERT_EQ(writeFileWhole(path("link"), "new"), std::nullopt);
    EXPECT_EQ(readFile(path("real")).value(), QByteArray("new"));
    EXPECT_TRUE(QFileInfo(path("link")).isSymLink());
}

TEST_F(SaveFile, RefusesAFolder) {
    ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("case.frontwright")));
    const auto failed = writeFileWhole(path(), "bytes");
    ASSERT_TRUE(failed);
    EXPECT_NE(failed->sentence().english().find("not a regular file"), std::string::npos);
    EXPECT_FALSE(readFile(path()).ok());
    EXPECT_TRUE(QFileInfo(path()).isDir());
}

TEST_F(SaveFile, RefusesAPipeWithoutWaitingForIt) {
    ASSERT_EQ(::mkfifo(native("case.frontwright").constData(), 0600), 0);
    const auto failed = writeFileWhole(path(), "bytes");
    ASSERT_TRUE(failed);
    EXPECT_NE(failed->sentence().english().find("not a regular file"), std::string::npos);
    EXPECT_FALSE(readFile(path()).ok());
    struct stat info {};
    ASSERT_EQ(::stat(native("case.frontwright").constData(), &info), 0);
    EXPECT_TRUE(S_ISFIFO(info.st_mode));
}

TEST_F(SaveFile, RefusesADevice) {
    EXPECT_TRUE(writeFileWhole(QStringLiteral("/dev/null"), "bytes"));
    EXPECT_FALSE(readFile(QStringLiteral("/dev/zero")).ok());
}

TEST_F(SaveFile, ThatIsNotThereSaysSo) {
    const auto bytes = readFile(path());
    ASSERT_FALSE(bytes.ok());
    EXPECT_NE(bytes.error().sentence().english().find("no such file"), std::string::npos);
}

TEST_F(SaveFile, OfMoreThan16MebibytesIsNotRead) {
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_TRUE(file.resize(16 * 1024 * 1024 + 1));
    file.close();
    const auto bytes = readFile(path());
    ASSERT_FALSE(bytes.ok());
    EXPECT_NE(bytes.error().sentence().english().find("16 MiB"), std::string::npos);
    ASSERT_TRUE(file.resize(16 * 1024 * 1024));
    EXPECT_TRUE(readFile(path()).ok());
}

TEST_F(SaveFile, BackupIsTheVersionThatWasThere) {
    EXPECT_EQ(keepBackup(path()), std::nullopt) << "nothing to keep yet";
    EXPECT_TRUE(names().isEmpty());
    ASSERT_EQ(writeFileWhole(path(), "old"), std::nullopt);
    EXPECT_EQ(keepBackup(path()), std::nullopt);
    ASSERT_EQ(writeFileWhole(path(), "new"), std::nullopt);
    EXPECT_EQ(readFile(path("case.frontwright~")).value(), QByteArray("old"));
}

} // namespace
} // namespace frontwright::testing
