#include "ui/files/crash_report.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>

#include <array>
#include <csignal>
#include <cstring>
#include <execinfo.h>
#include <fcntl.h>
#include <unistd.h>

namespace frontwright {

namespace {

constexpr std::array crashSignals{SIGSEGV, SIGBUS, SIGILL, SIGFPE, SIGABRT};
const QString freshPrefix = QStringLiteral("crash-");
const QString toldPrefix = QStringLiteral("told-");

// A signal handler may allocate nothing: all that it says is laid ready here.
std::array<char, 4096> reportPath{};
std::array<char, 128> heading{};

void say(int fd, const char* text) {
    [[maybe_unused]] const auto written = ::write(fd, text, std::strlen(text));
}

const char* nameOf(int signal) {
    switch (signal) {
    case SIGSEGV:
        return "reached for memory that is not there (SIGSEGV)\n";
    case SIGBUS:
        return "reached for memory in a wrong way (SIGBUS)\n";
    case SIGILL:
        return "met an instruction that is none (SIGILL)\n";
    case SIGFPE:
        return "computed what can't be computed (SIGFPE)\n";
    default:
        return "ended itself (SIGABRT)\n";
    }
}

extern "C" void onCrash(int signal) {
    const int fd = ::open(reportPath.data(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
    if (fd >= 0) {
        say(fd, heading.data());
        say(fd, nameOf(signal));
        std::array<void*, 64> calls{};
        const int count = ::backtrace(calls.data(), static_cast<int>(calls.size()));
        ::backtrace_symbols_fd(calls.data(), count, fd);
        ::fsync(fd);
        ::close(fd);
    }
    // The default action has been put back: whoever started the program sees the true cause.
    ::raise(signal);
}

template<std::size_t size>
void lay(std::array<char, size>& ready, const QByteArray& text) {
    std::strncpy(ready.data(), text.constData(), size - 1);
}

} // namespace

void writeCrashReportsTo(const QString& folder, const QString& version) {
    if (!QDir().mkpath(folder))
        return;
    const QDateTime now = QDateTime::currentDateTime();
    lay(reportPath,
        QFile::encodeName(QDir(folder).filePath(
            freshPrefix + now.toString(QStringLiteral("yyyyMMdd-hhmmss-")) +
            QString::number(QCoreApplication::applicationPid()) + QStringLiteral(".txt"))));
    lay(heading, QStringLiteral("Frontwright %1, started %2\n")
                     .arg(version, now.toString(Qt::ISODate))
                     .toUtf8());
    std::array<void*, 1> once{};
    ::backtrace(once.data(), 1); // loads what it needs now, not in the handler
    struct sigaction action {};
    action.sa_handler = onCrash;
    action.sa_flags = static_cast<int>(SA_RESETHAND) | SA_NODEFER;
    for (const int signal : crashSignals)
        ::sigaction(signal, &action, nullptr);
}

QStringList takeCrashReports(const QString& folder) {
    QStringList paths;
    const QDir dir(folder);
    for (const QString& name : dir.entryList({freshPrefix + u'*'}, QDir::Files, QDir::Name)) {
        const QString told = dir.filePath(toldPrefix + name);
        paths << (QFile::rename(dir.filePath(name), told) ? told : dir.filePath(name));
    }
    return paths;
}

} // namespace frontwright
