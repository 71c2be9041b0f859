#pragma once

#include "ui/files/file_lock.h"
#include "ui/session/session.h"

#include <QByteArray>
#include <QObject>
#include <QString>

#include <memory>

namespace frontwright {

/// The file behind the session: opens, saves, knows whether it changed outside. The maker's file is
/// written whole or not at all; the first save of a session keeps the version before it. While it
/// is open a lock file beside it tells other windows so.
class CaseFile : public QObject {
    Q_OBJECT
public:
    explicit CaseFile(Session&, QObject* parent = nullptr);

    enum class OpenAs : std::uint8_t {
        Own,      ///< to be saved again; read only where somebody else has it
        ReadOnly, ///< save() is refused
        Copy      ///< a case without a file, named after this one
    };
    /// Error: what is wrong with the file and where. The open case stays as it was.
    std::optional<Error> open(const QString& path, OpenAs as = OpenAs::Own);
    /// A new case without a file.
    std::optional<Error> startNew(Project project);
    enum class Mark : std::uint8_t { Saved, Unsaved };
    /// A case without a file that has a name already: a sample, a copy, what was recovered.
    std::optional<Error> startNamed(Project project, const QString& name, Mark mark);
    /// To the file it came from. Precondition: hasPath().
    std::optional<Error> save();
    std::optional<Error> saveAs(const QString& path);

    /// Who has that file open, but for this case itself.
    [[nodiscard]] std::optional<LockHolder> holderOf(const QString& path) const;

    [[nodiscard]] bool hasPath() const { return !m_path.isEmpty(); }
    [[nodiscard]] QString path() const { return m_path; }
    [[nodiscard]] bool isReadOnly() const { return hasPath() && !m_lock; }
    /// "glaze-chest.frontwright" or "New case".
    [[nodiscard]] QString name() const;
    /// False for a new case that was never saved.
    [[nodiscard]] bool isNamed() const { return hasPath() || !m_name.isEmpty(); }
    [[nodiscard]] bool isUnsaved() const;
    /// The file on disk is no longer what was read or written last. Judged by its content: neither
    /// size nor time alone would tell.
    [[nodiscard]] bool changedOutside() const;

Q_SIGNALS:
    void changed(); ///< path or unsaved mark
    void opened();  ///< a case that was there before, not a new one

private:
    std::optional<Error> write(const QString& path);
    void remember(const QString& path, const QByteArray& bytes, std::unique_ptr<FileLock> lock);

    Session& m_session;
    QString m_path;
    QString m_name;      ///< of a case without a file; may be empty
    QByteArray m_onDisk; ///< hash of what this session read or wrote last
    bool m_backedUp = false;
    std::unique_ptr<FileLock> m_lock;
};

} // namespace frontwright
