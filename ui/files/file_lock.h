#pragma once

#include <QLockFile>
#include <QString>

#include <optional>

namespace frontwright {

/// The living process that has a file open.
struct LockHolder {
    QString host;
    qint64 process = 0;
};

/// A hidden file with host and process id beside a file: whoever has it may write that file. Gone
/// with the object; one whose process is dead is taken over.
class FileLock {
public:
    /// `path` need not exist. Takes nothing yet.
    explicit FileLock(const QString& path);

    /// Nothing where the lock is ours now, and where the folder takes no lock file (read only, or
    /// a disk without locks): then nobody else has one either. Else who has it.
    std::optional<LockHolder> take();

    /// ".glaze-chest.frontwright.lock", beside the file that a link leads to.
    static QString lockPath(const QString& path);

private:
    [[nodiscard]] bool isUnfinished() const;

    QString m_path;
    QLockFile m_lock;
};

} // namespace frontwright
