// The program is killed at random moments while it edits, saves and keeps recovery copies.
// FRONTWRIGHT_KILLS says how often; some dozens where it says nothing.

#include "tests/ui/kill/subject.h"

#include "core/documents/document.h"
#include "tests/ui/elevation/open_window.h"
#include "tests/ui/files/child_process.h"
#include "ui/files/recovery_folder.h"
#include "ui/files/save_file.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <random>
#include <sstream>
#include <thread>

namespace frontwright::testing {
namespace {

constexpr int killsByDefault = 40;
constexpr int longestLife = 80'000;       // microseconds from the moment it is open
constexpr std::int64_t clockRounding = 2; // ms

struct LogLine {
    char what = 0;
    int number = 0;
    std::int64_t ms = 0;
};

class Killed : public ::testing::Test {
protected:
    void SetUp() override {
        Project project =
            readDocument(readFile(samplePath(QStringLiteral("glaze-chest"))).value().toStdString())
                .value();
        project.title = "0";
        ASSERT_FALSE(writeFileWhole(path(), QByteArray::fromStdString(writeDocument(project))));
    }
    QString path() { return folder.filePath(QStringLiteral("case.frontwright")); }
    QString state() { return folder.filePath(QStringLiteral("recovery")); }
    QString logPath() { return folder.filePath(QStringLiteral("log")); }

    std::vector<LogLine> log() {
        std::vector<LogLine> lines;
        const auto bytes = readFile(logPath());
        std::istringstream text(bytes.ok() ? bytes.value().toStdString() : std::string());
        for (LogLine line; text >> line.what >> line.number >> line.ms;)
            lines.push_back(line);
        return lines;
    }
    /// The number of a document that is whole; -1 of any other.
    static int numberIn(const QString& file) {
        const auto bytes = readFile(file);
        if (!bytes.ok())
            return -1;
        const auto project = readDocument(bytes.value().toStdString());
        const bool whole =
            project.ok() && writeDocument(project.value()) == bytes.value().toStdString();
        return whole ? std::stoi(project.value().title) : -1;
    }
    void liveAndBeKilled(int seed, int microseconds) {
        QFile::remove(logPath());
        const QByteArray file = QFile::encodeName(path());
        const QByteArray kept = QFile::encodeName(state());
        const QByteArray written = QFile::encodeName(logPath());
        const std::string number = std::to_string(seed);
        const pid_t child = startChild([&] {
            ::execl(FRONTWRIGHT_KILL_SUBJECT, FRONTWRIGHT_KILL_SUBJECT, file.constData(),
                    kept.constData(), written.constData(), number.c_str(), nullptr);
            return 1;
        });
        ASSERT_GT(child, 0);
        int status = 0;
        while (log().empty()) {
            ASSERT_EQ(::waitpid(child, &status, WNOHANG), 0)
                << "ended by itself with " << WEXITSTATUS(status);
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        }
        std::this_thread::sleep_for(std::chrono::microseconds(microseconds));
        ASSERT_EQ(::kill(child, SIGKILL), 0);
        ASSERT_EQ(::waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFSIGNALED(status)) << "ended by itself with " << WEXITSTATUS(status);
    }
    /// The last edit that has to be in file or copy, whatever moment the kill came at: all that was
    /// made the greatest time before the last turns of the event loop.
    static int owed(const std::vector<LogLine>& lines) {
        std::vector<std::int64_t> turns;
        for (const LogLine& line : lines)
            if (line.what == logTurn)
                turns.push_back(line.ms);
        int number = lines.front().number;
        if (turns.size() < 3)
            return number;
        const std::int64_t until = turns[turns.size() - 3] - subjectMost.count() - clockRounding;
        for (const LogLine& line : lines)
            if (line.what == logEdit && line.ms <= until)
                number = line.number;
        return number;
    }

    QTemporaryDir folder;
    int savedLast = 0; ///< known to be on disk
    int killsWithCopy = 0;
    int killsWhileSaving = 0;
};

TEST_F(Killed, AtAnyMomentLosesNothingSavedAndAtMostAMinuteOfWork) {
    const int kills = qEnvironmentVariableIntValue("FRONTWRIGHT_KILLS");
    std::mt19937 random(20'261'125);
    std::uniform_int_distribution<int> life(0, longestLife);
    for (int round = 0; round < (kills > 0 ? kills : killsByDefault); ++round) {
        SCOPED_TRACE(round);
        ASSERT_NO_FATAL_FAILURE(liveAndBeKilled(round + 1, life(random)));
        const auto lines = log();
        int saving = savedLast;
        for (const LogLine& line : lines) {
            if (line.what == logSaved)
                savedLast = line.number;
            if (line.what == logSaved || line.what == logSaving)
                saving = line.number;
        }
        const int found = numberIn(path());
        ASSERT_TRUE(found == savedLast || found == saving)
            << "file holds " << found << ", saved " << savedLast << ", being saved " << saving;
        killsWhileSaving += saving != savedLast;
        savedLast = found;
        const QString backup = path() + u'~';
        if (QFile::exists(backup))
            ASSERT_GE(numberIn(backup), 0) << "the version before is whole too";

        int kept = found;
        const auto copies = RecoveryFolder(state()).abandoned();
        ASSERT_LE(copies.size(), 1);
        for (const RecoveryCopy& copy : copies) {
            const int number = numberIn(copy.document);
            ASSERT_GE(number, 0) << "the copy is whole";
            ASSERT_EQ(copy.origin, path());
            kept = std::max(kept, number);
            RecoveryFolder::discard(copy);
            ++killsWithCopy;
        }
        ASSERT_GE(kept, owed(lines)) << "edits older than the greatest time are in no copy";
    }
    EXPECT_GT(killsWithCopy, 0) << "else nothing was tried";
    RecordProperty("killsWithCopy", killsWithCopy);
    RecordProperty("killsWhileSaving", killsWhileSaving);
}

} // namespace
} // namespace frontwright::testing
