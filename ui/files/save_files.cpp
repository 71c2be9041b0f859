#include "ui/files/save_files.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryFile>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <unistd.h>
#include <utility>
#include <vector>

namespace frontwright {

namespace {

constexpr QFileDevice::Permissions readableByAll = QFileDevice::ReadOwner |
                                                   QFileDevice::WriteOwner |
                                                   QFileDevice::ReadGroup | QFileDevice::ReadOther;

/// A file under a passing name; removed with this unless it came to its place.
class Waiting {
public:
    explicit Waiting(QString path) : m_path(std::move(path)), m_isNew(!QFileInfo::exists(m_path)) {}
    Waiting(Waiting&& other) noexcept
        : m_path(std::move(other.m_path)),
          m_passing(std::exchange(other.m_passing, QString())),
          m_isNew(other.m_isNew) {}
    Waiting& operator=(Waiting&&) = delete;
    ~Waiting() {
        if (!m_passing.isEmpty())
            QFile::remove(m_passing);
    }

    std::optional<Error> put(const QByteArray& bytes);
    bool takePlace();
    void undo() const {
        if (m_isNew)
            QFile::remove(m_path);
    }
    [[nodiscard]] const QString& path() const { return m_path; }

private:
    QString m_path;
    QString m_passing;
    bool m_isNew;
};

Error failed(const QString& path, const QString& what) {
    return {path.toStdString(), what.toStdString(),
            text("nothing was written; free some room or choose another folder")};
}

QString systemReason() {
    return QString::fromLocal8Bit(std::strerror(errno));
}

/// The old file's permissions, or those of any new file.
QFileDevice::Permissions permissionsFor(const QFileInfo& info) {
    return info.exists() ? info.permissions() : readableByAll;
}

std::optional<Error> Waiting::put(const QByteArray& bytes) {
    const QFileInfo info(m_path);
    if (info.exists() && !info.isFile())
        return Error{m_path.toStdString(), text("is not a regular file"),
                     text("choose another name")};
    // Not kept open: many may wait.
    QTemporaryFile file(m_path + QStringLiteral(".XXXXXX"));
    if (!file.open())
        return failed(m_path, file.errorString());
    // The system knows why; the file often says "Unknown error".
    errno = 0;
    if (file.write(bytes) != bytes.size() || !file.flush())
        return failed(m_path, errno != 0 ? systemReason() : file.errorString());
    if (::fsync(file.handle()) != 0)
        return failed(m_path, systemReason());
    file.setPermissions(permissionsFor(info));
    file.setAutoRemove(false);
    m_passing = file.fileName();
    return std::nullopt;
}

/// Renaming over an old file: QFile's own refuses that.
bool Waiting::takePlace() {
    const QByteArray from = QFile::encodeName(m_passing), to = QFile::encodeName(m_path);
    if (std::rename(from.constData(), to.constData()) != 0)
        return false;
    m_passing.clear();
    return true;
}

} // namespace

std::optional<Error> writeFilesWhole(FilesToWrite files) {
    std::vector<Waiting> all;
    for (const auto& [path, bytes] : files) {
        all.emplace_back(path);
        if (auto error = all.back().put(bytes))
            return error;
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].takePlace())
            continue;
        const QString reason = systemReason();
        for (std::size_t k = 0; k < i; ++k)
            all[k].undo();
        return failed(all[i].path(), reason);
    }
    return std::nullopt;
}

} // namespace frontwright
