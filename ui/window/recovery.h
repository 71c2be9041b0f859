#pragma once

#include "ui/files/recovery_folder.h"
#include "ui/window/case_file.h"

#include <QObject>
#include <QTimer>

#include <chrono>

namespace frontwright {

/// How often unsaved work is copied.
struct RecoveryPace {
    std::chrono::milliseconds idle{10'000}; ///< after the last step
    /// After the first step that is in no copy. Short of a minute, so that a copy that takes its
    /// time to be written is no older than one.
    std::chrono::milliseconds most{55'000};
};

/// Keeps a recovery copy of the open case while there is unsaved work. Never touches the maker's
/// file. The copy goes when the case is saved or left.
class Recovery : public QObject {
    Q_OBJECT
public:
    Recovery(Session&, CaseFile&, const QString& folder, RecoveryPace pace = {},
             QObject* parent = nullptr);

    /// What programs that were torn away left behind.
    [[nodiscard]] QList<RecoveryCopy> abandoned() const { return m_folder.abandoned(); }
    /// Opens such a copy as an unsaved case without a file; what the maker saved stays as it is.
    /// The copy goes as soon as this case has its own. Error: the open case stays as it was.
    std::optional<Error> openCopy(const RecoveryCopy& copy);
    /// The case is left for good, saved or not.
    void finish();

Q_SIGNALS:
    /// No copy could be written; told once until one could.
    void failed(const frontwright::Error& error);

private:
    void noteChange();
    std::optional<Error> keepNow();
    void keepOrTell();

    Session& m_session;
    CaseFile& m_file;
    RecoveryFolder m_folder;
    QString m_origin; ///< of a recovered case
    QTimer m_idle;
    QTimer m_most;
    bool m_told = false;
};

} // namespace frontwright
