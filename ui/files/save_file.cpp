#include "ui/files/save_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <unistd.h>
#include <utility>

namespace frontwright {

namespace {

constexpr qint64 greatestFile = 16 * 1024 * 1024;

Error failed(const QString& path, Phrase what, Text remedy) {
    return {path.toStdString(), std::move(what), remedy};
}

std::optional<Error> refuseSpecial(const QString& path) {
    const QFileInfo info(path);
    if (info.exists() && !info.isFile())
        return failed(path, text("is not a regular file"), text("choose another name"));
    return std::nullopt;
}

/// The rename itself must survive a power cut, which only syncing the folder promises.
void syncFolder(const QString& path) {
    const QByteArray folder = QFile::encodeName(QFileInfo(path).absolutePath());
    const int fd = ::open(folder.constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (fd < 0)
        return;
    ::fsync(fd);
    ::close(fd);
}

} // namespace

Result<QByteArray> readFile(const QString& path) {
    QFile file(path);
    const QFileInfo info(path);
    if (!info.exists())
        return failed(path, text("there is no such file"), text("check the name"));
    if (!info.isFile())
        return failed(path, text("is not a regular file"), text("choose a case file"));
    if (info.size() > greatestFile)
        return failed(path, text("is larger than 16 MiB"),
                      text("a case file is far smaller; check that it is one"));
    if (!file.open(QIODevice::ReadOnly))
        return failed(path, file.errorString().toStdString(), text("check that you may read it"));
    QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError)
        return failed(path, file.errorString().toStdString(),
                      text("copy it to another disk and try again"));
    return bytes;
}

std::optional<Error> writeFileWhole(const QString& path, const QByteArray& bytes) {
    if (auto special = refuseSpecial(path))
        return special;
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return failed(path, file.errorString().toStdString(),
                      text("save under another name or in another folder"));
    constexpr Text keep = text("the file on disk is as it was; free some room or save elsewhere");
    const bool written = file.write(bytes) == bytes.size() && file.flush() &&
                         file.error() == QFileDevice::NoError && ::fsync(file.handle()) == 0;
    if (!written) {
        const QString reason = file.error() != QFileDevice::NoError
                                   ? file.errorString()
                                   : QString::fromLocal8Bit(std::strerror(errno));
        file.cancelWriting();
        return failed(path, reason.toStdString(), keep);
    }
    if (!file.commit())
        return failed(path, file.errorString().toStdString(), keep);
    syncFolder(path);
    return std::nullopt;
}

std::optional<Error> keepBackup(const QString& path) {
    if (!QFileInfo::exists(path))
        return std::nullopt;
    auto old = readFile(path);
    if (!old.ok())
        return old.error();
    return writeFileWhole(path + QLatin1Char('~'), old.value());
}

} // namespace frontwright
