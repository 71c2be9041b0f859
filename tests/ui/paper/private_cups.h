#pragma once

#include <QProcess>
#include <QString>
#include <QTemporaryDir>

#include <string>
#include <vector>

namespace frontwright::testing {

/// A print scheduler of our own, on a port of its own; the system's is not touched. Its printers
/// print into nothing and keep their job files. Where there is no scheduler to be found, or it
/// does not start, `why` says so.
class PrivateCups {
public:
    PrivateCups();
    ~PrivateCups();

    [[nodiscard]] bool runs() const { return m_why.empty(); }
    [[nodiscard]] const std::string& why() const { return m_why; }
    /// A printer without a driver.
    void addPrinter(const QString& name);

    /// What arrived, one entry for each job in order: the file as it was sent, and its attributes
    /// as they lie on disk.
    struct Job {
        QByteArray file;
        QByteArray attributes;
    };
    [[nodiscard]] std::vector<Job> jobs() const;

private:
    void writeSettings(int port);
    bool answers() const;

    QTemporaryDir m_folder;
    QProcess m_scheduler;
    QString m_server;
    std::string m_why;
};

} // namespace frontwright::testing
