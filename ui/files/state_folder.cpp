#include "ui/files/state_folder.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

namespace frontwright {

QString stateFolder() {
    const QString own = QStringLiteral("frontwright");
    if (QStandardPaths::isTestModeEnabled())
        return QDir::home().filePath(QStringLiteral(".qttest/state/") + own);
    const QString named = QFile::decodeName(qgetenv("XDG_STATE_HOME"));
    // The specification has relative paths ignored.
    if (QDir::isAbsolutePath(named))
        return QDir(named).filePath(own);
    return QDir::home().filePath(QStringLiteral(".local/state/") + own);
}

} // namespace frontwright
