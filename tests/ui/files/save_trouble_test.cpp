// Saving in trouble: afterwards the file is the whole old or the whole new one.

#include "ui/files/save_file.h"

#include "tests/ui/files/child_process.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <atomic>
#include <csignal>
#include <random>
#include <sys/mman.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <thread>

namespace frontwright::testing {
namespace {

constexpr int refused = 3;
constexpr int saved = 4;
constexpr int noTrouble = 5;
constexpr uid_t nobody = 65534;

class SaveInTrouble : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("work")));
        ASSERT_EQ(writeFileWhole(path(), old), std::nullopt);
    }
    QString work() { return folder.filePath(QStringLiteral("work")); }
    QString path() { return work() + QStringLiteral("/case.frontwright"); }
    QByteArray onDisk() {
        QFile file(path());
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("unreadable");
    }
    QStringList names() {
        return QDir(work()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
    }
    int save() { return writeFileWhole(path(), fresh) ? refused : saved; }

    const QByteArray old = QByteArray(300'000, 'o') + "end of the old one\n";
    const QByteArray fresh = QByteArray(500'000, 'n') + "end of the new one\n";
    QTemporaryDir folder;
};

TEST_F(SaveInTrouble, OnAFullDiskKeepsTheOldFileAndSaysSo) {
    for (const rlim_t room : {rlim_t{0}, rlim_t{1}, rlim_t{16'384}, rlim_t{500'000}}) {
        const int came = inChild([&] {
            std::signal(SIGXFSZ, SIG_IGN);
            const rlimit limit{room, room};
            if (::setrlimit(RLIMIT_FSIZE, &limit) != 0)
                return noTrouble;
            const auto failed = writeFileWhole(path(), fresh);
            const bool told =
                failed && failed->sentence().english().find("as it was") != std::string::npos;
            return told ? refused : saved;
        });
        EXPECT_EQ(came, refused) << room;
        EXPECT_EQ(onDisk(), old) << room;
        EXPECT_EQ(names(), QStringList{QStringLiteral("case.frontwright")}) << room;
    }
}

TEST_F(SaveInTrouble, OnADiskThatIsJustLargeEnoughWritesTheNewFile) {
    const int came = inChild([&] {
        std::signal(SIGXFSZ, SIG_IGN);
        const auto room = static_cast<rlim_t>(fresh.size());
        const rlimit limit{room, room};
        return ::setrlimit(RLIMIT_FSIZE, &limit) == 0 ? save() : noTrouble;
    });
    EXPECT_EQ(came, saved);
    EXPECT_EQ(onDisk(), fresh);
}

TEST_F(SaveInTrouble, InAFolderThatMayOnlyBeReadKeepsTheOldFile) {
    const QByteArray outer = QFile::encodeName(folder.path());
    const QByteArray inner = QFile::encodeName(work());
    ASSERT_EQ(::chmod(outer.constData(), 0755), 0);
    ASSERT_EQ(::chmod(inner.constData(), 0555), 0);
    ASSERT_EQ(::chmod(QFile::encodeName(path()).constData(), 0666), 0);
    const int came = inChild([&] {
        // The administrator may write everywhere.
        if (::geteuid() == 0 && ::seteuid(nobody) != 0)
            return noTrouble;
        return save();
    });
    ASSERT_EQ(::chmod(inner.constData(), 0755), 0);
    EXPECT_EQ(came, refused);
    EXPECT_EQ(onDisk(), old);
    EXPECT_EQ(names(), QStringList{QStringLiteral("case.frontwright")});
}

TEST_F(SaveInTrouble, InAFolderThatIsGoneSaysSoAndMakesNone) {
    ASSERT_TRUE(QDir(work()).removeRecursively());
    const auto failed = writeFileWhole(path(), fresh);
    ASSERT_TRUE(failed);
    EXPECT_NE(failed->sentence().english().find(path().toStdString()), std::string::npos);
    EXPECT_FALSE(QFileInfo::exists(work()));
}

/// A number that parent and child both see.
class SharedCount {
public:
    SharedCount()
        : m_page(::mmap(nullptr, sizeof(std::atomic<int>), PROT_READ | PROT_WRITE,
                        MAP_SHARED | MAP_ANONYMOUS, -1, 0)),
          m_count(new (m_page) std::atomic<int>(0)) {}
    SharedCount(const SharedCount&) = delete;
    SharedCount& operator=(const SharedCount&) = delete;
    ~SharedCount() { ::munmap(m_page, sizeof(std::atomic<int>)); }
    std::atomic<int>& operator*() { return *m_count; }

private:
    void* m_page;
    std::atomic<int>* m_count;
};

TEST_F(SaveInTrouble, KilledAtAnyMomentLeavesAWholeFile) {
    constexpr int rounds = 200;
    constexpr int greatestDelay = 10'000; // microseconds
    std::mt19937 random(20'240'229);
    std::uniform_int_distribution<int> delay(0, greatestDelay);
    SharedCount saves;
    int olds = 0;
    for (int round = 0; round < rounds; ++round) {
        const pid_t child = startChild([&] {
            for (;;) {
                for (const QByteArray* bytes : {&fresh, &old}) {
                    if (writeFileWhole(path(), *bytes))
                        return refused;
                    ++*saves;
                }
            }
        });
        ASSERT_GT(child, 0);
        // From a finished save on, so that every moment of the next ones is met.
        for (const int before = *saves; *saves == before;) {
            ASSERT_EQ(::waitpid(child, nullptr, WNOHANG), 0) << "a save failed of itself";
            std::this_thread::sleep_for(std::chrono::microseconds(100));
        }
        std::this_thread::sleep_for(std::chrono::microseconds(delay(random)));
        ASSERT_EQ(::kill(child, SIGKILL), 0);
        int status = 0;
        ASSERT_EQ(::waitpid(child, &status, 0), child);
        EXPECT_TRUE(WIFSIGNALED(status)) << "a save failed of itself";
        const QByteArray found = onDisk();
        ASSERT_TRUE(found == old || found == fresh) << "round " << round << ": " << found.size();
        olds += found == old;
    }
    EXPECT_GE(*saves, rounds);
    RecordProperty("saves", *saves);
    RecordProperty("roundsThatLeftTheOldFile", olds);
}

} // namespace
} // namespace frontwright::testing
