#include "ui/window/recovery.h"

#include "core/documents/document.h"
#include "ui/files/save_file.h"

#include <QUndoStack>

namespace frontwright {

Recovery::Recovery(Session& session, CaseFile& file, const QString& folder, RecoveryPace pace,
                   QObject* parent)
    : QObject(parent),
      m_session(session),
      m_file(file),
      m_folder(folder) {
    for (QTimer* timer : {&m_idle, &m_most}) {
        timer->setSingleShot(true);
        timer->setTimerType(Qt::PreciseTimer);
        connect(timer, &QTimer::timeout, this, &Recovery::keepOrTell);
    }
    m_idle.setInterval(pace.idle);
    m_most.setInterval(pace.most);
    connect(&session, &Session::started, this, [this] { m_origin.clear(); });
    connect(&session.undoStack(), &QUndoStack::indexChanged, this, &Recovery::noteChange);
    connect(&file, &CaseFile::changed, this, &Recovery::noteChange);
}

void Recovery::noteChange() {
    if (!m_file.isUnsaved()) {
        finish();
        return;
    }
    m_idle.start();
    if (!m_most.isActive())
        m_most.start();
}

void Recovery::finish() {
    m_idle.stop();
    m_most.stop();
    m_folder.drop();
}

std::optional<Error> Recovery::keepNow() {
    m_idle.stop();
    m_most.stop();
    return m_folder.keep(QByteArray::fromStdString(writeDocument(m_session.settled().project)),
                         m_file.hasPath() ? m_file.path() : m_origin, m_file.name());
}

void Recovery::keepOrTell() {
    const auto error = keepNow();
    if (error && !m_told)
        Q_EMIT failed(*error);
    m_told = error.has_value();
    // The work is still in no copy.
    if (error)
        m_most.start();
}

std::optional<Error> Recovery::openCopy(const RecoveryCopy& copy) {
    const auto bytes = readFile(copy.document);
    if (!bytes.ok())
        return bytes.error();
    auto project = readDocument(bytes.value().toStdString());
    if (!project.ok())
        return project.error();
    if (auto refused = m_file.startNamed(
            std::move(project).value(), tr("Recovered %1").arg(copy.name), CaseFile::Mark::Unsaved))
        return refused;
    m_origin = copy.origin;
    if (!keepNow())
        RecoveryFolder::discard(copy);
    return std::nullopt;
}

} // namespace frontwright
