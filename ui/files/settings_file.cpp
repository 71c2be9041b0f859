#include "ui/files/settings_file.h"

#include <QFile>
#include <QFileInfo>

namespace frontwright {

namespace {

bool canBeRead(const QString& path) {
    const QFileInfo info(path);
    if (!info.exists())
        return true;
    QFile file(path);
    if (!info.isFile() || !file.open(QIODevice::ReadOnly))
        return false;
    // QSettings takes a zero byte for a character of a key.
    if (file.readAll().contains('\0'))
        return false;
    const QSettings settings(path, QSettings::IniFormat);
    settings.allKeys();
    return settings.status() == QSettings::NoError;
}

QString freeNameBeside(const QString& path) {
    QString name = path + QStringLiteral(".bad");
    for (int number = 2; QFileInfo::exists(name); ++number)
        name = path + QStringLiteral(".bad%1").arg(number);
    return name;
}

} // namespace

OpenedSettings openSettings(const QString& path) {
    OpenedSettings opened;
    if (!canBeRead(path)) {
        const QString aside = freeNameBeside(path);
        if (QFile::rename(path, aside))
            opened.keptAside = aside;
    }
    opened.settings = std::make_unique<QSettings>(path, QSettings::IniFormat);
    return opened;
}

} // namespace frontwright
