// A crash leaves a report, which is told once.

#include "ui/files/crash_report.h"

#include "tests/ui/files/child_process.h"
#include "ui/files/save_file.h"

#include <QDir>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <sys/resource.h>

namespace frontwright::testing {
namespace {

TEST(CrashReport, SaysWhatEndedTheProgramAndIsGivenOnce) {
    const QTemporaryDir folder;
    const pid_t child = startChild([&] {
        const rlimit none{0, 0};
        ::setrlimit(RLIMIT_CORE, &none);
        writeCrashReportsTo(folder.path(), QStringLiteral("9.8.7"));
        ::raise(SIGSEGV);
        return 0;
    });
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status));
    EXPECT_EQ(WTERMSIG(status), SIGSEGV) << "whoever started it sees the true cause";
    const QStringList reports = takeCrashReports(folder.path());
    ASSERT_EQ(reports.size(), 1);
    const QByteArray report = readFile(reports[0]).value();
    EXPECT_TRUE(report.startsWith("Frontwright 9.8.7, started ")) << report.constData();
    EXPECT_TRUE(report.contains("SIGSEGV"));
    EXPECT_GT(report.count('\n'), 3) << "the calls that led there";
    EXPECT_TRUE(takeCrashReports(folder.path()).isEmpty());
    EXPECT_TRUE(QFileInfo::exists(reports[0]));
}

TEST(CrashReport, IsNotLeftByAProgramThatEndsWell) {
    const QTemporaryDir folder;
    EXPECT_EQ(inChild([&] {
                  writeCrashReportsTo(folder.path(), QStringLiteral("1"));
                  return 0;
              }),
              0);
    EXPECT_TRUE(QDir(folder.path()).isEmpty());
}

} // namespace
} // namespace frontwright::testing
