#pragma once

#include "core/results/result.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <span>
#include <utility>

namespace frontwright {

/// Names with their bytes.
using FilesToWrite = std::span<const std::pair<QString, QByteArray>>;

/// All of them or none: each is first written whole under a name of its own beside its place, then
/// all are renamed. Where that fails, what was new is removed again. Refuses anything but regular
/// files or new names. Returns the error, or nothing.
std::optional<Error> writeFilesWhole(FilesToWrite files);

} // namespace frontwright
