#pragma once

#include "core/results/result.h"
#include "ui/files/file_lock.h"

#include <QByteArray>
#include <QDateTime>
#include <QList>
#include <QString>

#include <memory>
#include <optional>

namespace frontwright {

/// A case that a program which is no more had not saved.
struct RecoveryCopy {
    QString document; ///< a whole case file in the recovery folder
    QString origin;   ///< the maker's file; empty for a case that had none
    QString name;     ///< "glaze-chest.frontwright" or "New case"
    QDateTime written;
    qint64 size = 0; ///< bytes
};

/// The copies that open cases leave behind when the program is torn away. One object for each open
/// case; a lock tells the living ones' copies from those that are to be offered.
class RecoveryFolder {
public:
    /// Nothing is touched before the first keep().
    explicit RecoveryFolder(QString folder);

    /// Writes this case's copy, whole or not at all, in place of the one before. Error: why not;
    /// the one before is still there.
    std::optional<Error> keep(const QByteArray& document, const QString& origin,
                              const QString& name);
    /// The case is saved or was left: its copy goes.
    void drop();
    [[nodiscard]] bool hasCopy() const { return m_hasCopy; }

    /// Of dead programs, latest first.
    [[nodiscard]] QList<RecoveryCopy> abandoned() const;
    static void discard(const RecoveryCopy& copy);

private:
    std::optional<Error> claim();

    QString m_folder;
    QString m_base; ///< path of this case's files without suffix; empty until claimed
    QString m_told; ///< what the note beside the copy says
    bool m_hasCopy = false;
    std::unique_ptr<FileLock> m_lock;
};

} // namespace frontwright
