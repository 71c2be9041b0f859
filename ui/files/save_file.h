#pragma once

#include "core/results/result.h"

#include <QByteArray>
#include <QString>

#include <optional>

namespace frontwright {

/// Reads a regular file of at most 16 MiB. Error: place = the file, what went wrong, what to do.
Result<QByteArray> readFile(const QString& path);

/// Either the whole new content is under that name afterwards, or the whole old one: writes beside
/// it, checks every step, syncs file and folder, then renames. Refuses anything but a regular file
/// or a new name. Returns the error, or nothing.
std::optional<Error> writeFileWhole(const QString& path, const QByteArray& bytes);

/// Where the previous version is kept on the first save of a session: "name.frontwright~".
std::optional<Error> keepBackup(const QString& path);

} // namespace frontwright
