#pragma once

#include <QString>
#include <QStringList>

namespace frontwright {

/// From now on a crash writes a report into that folder: the version, what ended the program, the
/// calls that led there. It stays on this machine. Once per process.
void writeCrashReportsTo(const QString& folder, const QString& version);

/// Paths of the reports that nobody was told of yet; each is given once.
QStringList takeCrashReports(const QString& folder);

} // namespace frontwright
