#include "tests/ui/paper/private_cups.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <QThread>

#include <arpa/inet.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

namespace frontwright::testing {

namespace {

/// One that is free now.
int freePort() {
    const int socket = ::socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof(address);
    auto* plain = reinterpret_cast<sockaddr*>(&address);
    const bool isBound =
        ::bind(socket, plain, size) == 0 && ::getsockname(socket, plain, &size) == 0;
    ::close(socket);
    return isBound ? ntohs(address.sin_port) : 0;
}

QString program(const QString& name) {
    const QString found = QStandardPaths::findExecutable(name);
    return found.isEmpty() ? QStandardPaths::findExecutable(name, {QStringLiteral("/usr/sbin")})
                           : found;
}

void write(const QString& path, const QByteArray& text) {
    QFile file(path);
    if (file.open(QIODevice::WriteOnly))
        file.write(text);
}

QByteArray read(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

PrivateCups::PrivateCups() {
    const QString scheduler = program(QStringLiteral("cupsd"));
    const int port = freePort();
    if (scheduler.isEmpty() || program(QStringLiteral("lpadmin")).isEmpty())
        m_why = "no CUPS scheduler on this machine";
    else if (port == 0)
        m_why = "no port is free";
    if (!m_why.empty())
        return;
    m_server = QStringLiteral("127.0.0.1:%1").arg(port);
    writeSettings(port);
    m_scheduler.start(scheduler,
                      {QStringLiteral("-f"), QStringLiteral("-c"),
                       m_folder.filePath(QStringLiteral("cupsd.conf")), QStringLiteral("-s"),
                       m_folder.filePath(QStringLiteral("cups-files.conf"))});
    constexpr int tries = 50;
    for (int i = 0; i < tries && !answers(); ++i)
        QThread::msleep(100);
    if (!answers())
        m_why = "the CUPS scheduler did not start";
    else
        qputenv("CUPS_SERVER", m_server.toLatin1());
}

PrivateCups::~PrivateCups() {
    if (m_scheduler.state() == QProcess::NotRunning)
        return;
    m_scheduler.terminate();
    if (!m_scheduler.waitForFinished(5'000))
        m_scheduler.kill();
    m_scheduler.waitForFinished(1'000);
}

void PrivateCups::writeSettings(int port) {
    QByteArray files = "FileDevice Yes\n";
    for (const auto& [key, name] : {std::pair{"ServerRoot", "root"},
                                    {"RequestRoot", "spool"},
                                    {"CacheDir", "cache"},
                                    {"StateDir", "state"}}) {
        QDir(m_folder.path()).mkpath(QLatin1String(name));
        files += key + QByteArray(" ") + QFile::encodeName(m_folder.filePath(QLatin1String(name))) +
                 "\n";
    }
    for (const char* log : {"ErrorLog", "AccessLog", "PageLog"})
        files +=
            log + QByteArray(" ") + QFile::encodeName(m_folder.filePath(QLatin1String(log))) + "\n";
    write(m_folder.filePath(QStringLiteral("cups-files.conf")), files);
    write(m_folder.filePath(QStringLiteral("cupsd.conf")),
          "Listen 127.0.0.1:" + QByteArray::number(port) +
              "\nDirtyCleanInterval 0\nPreserveJobFiles Yes\nPreserveJobHistory "
              "Yes\nDefaultAuthType None\n"
              "WebInterface No\nBrowsing No\n<Location />\nAllow all\n</Location>\n"
              "<Location /admin>\nAllow all\n</Location>\n<Policy default>\n<Limit All>\n"
              "Allow all\n</Limit>\n</Policy>\n");
}

bool PrivateCups::answers() const {
    QProcess asked;
    asked.start(program(QStringLiteral("lpstat")),
                {QStringLiteral("-h"), m_server, QStringLiteral("-r")});
    return asked.waitForFinished(2'000) && asked.readAllStandardOutput().contains("is running");
}

void PrivateCups::addPrinter(const QString& name) {
    QProcess::execute(program(QStringLiteral("lpadmin")),
                      {QStringLiteral("-h"), m_server, QStringLiteral("-p"), name,
                       QStringLiteral("-E"), QStringLiteral("-v"), QStringLiteral("file:/dev/null"),
                       QStringLiteral("-m"), QStringLiteral("raw")});
}

std::vector<PrivateCups::Job> PrivateCups::jobs() const {
    std::vector<Job> all;
    const QDir spool(m_folder.filePath(QStringLiteral("spool")));
    for (const QString& name :
         spool.entryList({QStringLiteral("d*-001")}, QDir::Files, QDir::Name)) {
        const QString number = name.mid(1, name.indexOf(QLatin1Char('-')) - 1);
        all.push_back(
            {read(spool.filePath(name)), read(spool.filePath(QStringLiteral("c") + number))});
    }
    return all;
}

} // namespace frontwright::testing
