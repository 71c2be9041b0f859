#pragma once

#include "ui/session/session.h"

#include <QByteArray>
#include <QObject>
#include <QString>

namespace frontwright {

/// The file behind the session: opens, saves, knows whether it changed outside. The maker's file is
/// written whole or not at all; the first save of a session keeps the version before it.
class CaseFile : public QObject {
    Q_OBJECT
public:
    explicit CaseFile(Session&, QObject* parent = nullptr);

    /// Error: what is wrong with the file and where. The open case stays as it was.
    std::optional<Error> open(const QString& path);
    /// A new case without a file.
    std::optional<Error> startNew(Project project);
    /// To the file it came from. Precondition: hasPath().
    std::optional<Error> save();
    std::optional<Error> saveAs(const QString& path);

    [[nodiscard]] bool hasPath() const { return !m_path.isEmpty(); }
    [[nodiscard]] QString path() const { return m_path; }
    /// "glaze-chest.frontwright" or "New case".
    [[nodiscard]] QString name() const;
    [[nodiscard]] bool isUnsaved() const;
    /// The file on disk is no longer what was read or written last.
    [[nodiscard]] bool changedOutside() const;

Q_SIGNALS:
    void changed(); ///< path or unsaved mark

private:
    std::optional<Error> write(const QString& path);
    void remember(const QString& path, const QByteArray& bytes);

    Session& m_session;
    QString m_path;
    QByteArray m_onDisk; ///< hash of what this session read or wrote last
    bool m_backedUp = false;
};

} // namespace frontwright
