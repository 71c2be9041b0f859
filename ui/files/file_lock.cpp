#include "ui/files/file_lock.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>

namespace frontwright {

namespace {
constexpr qint64 writingLockMs = 10'000;
}

FileLock::FileLock(const QString& path) : m_path(lockPath(path)), m_lock(m_path) {
    // Never stale by age alone: a case may stay open for days.
    m_lock.setStaleLockTime(0);
}

QString FileLock::lockPath(const QString& path) {
    const QFileInfo given(path);
    const QString canonical = given.canonicalFilePath();
    const QFileInfo info(canonical.isEmpty() ? given.absoluteFilePath() : canonical);
    return info.absoluteDir().filePath(QStringLiteral(".%1.lock").arg(info.fileName()));
}

bool FileLock::isUnfinished() const {
    const QFileInfo info(m_path);
    return info.isFile() && info.size() == 0 &&
           info.lastModified().msecsTo(QDateTime::currentDateTime()) > writingLockMs;
}

std::optional<LockHolder> FileLock::take() {
    if (m_lock.tryLock(0) || m_lock.error() != QLockFile::LockFailedError)
        return std::nullopt;
    // A process that died between making and writing it leaves one that names nobody.
    if (isUnfinished() && QFile::remove(m_path) && m_lock.tryLock(0))
        return std::nullopt;
    LockHolder holder;
    QString program;
    m_lock.getLockInfo(&holder.process, &holder.host, &program);
    return holder;
}

} // namespace frontwright
