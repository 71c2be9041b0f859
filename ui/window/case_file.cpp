#include "ui/window/case_file.h"

#include "core/documents/document.h"
#include "ui/files/save_file.h"

#include <QCryptographicHash>
#include <QFileInfo>

namespace frontwright {

namespace {

QByteArray fingerprint(const QByteArray& bytes) {
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
}

std::string_view view(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

Error inFile(const QString& path, const Error& error) {
    Error whole = error;
    const std::string name = QFileInfo(path).fileName().toStdString();
    whole.place = error.place.empty() ? Phrase(name) : phrase("%1, %2", name, error.place);
    return whole;
}

/// What can't be read as a case was not written by this version: it is somebody's only copy.
std::optional<Error> refuseUnreadable(const QString& path) {
    if (!QFileInfo::exists(path))
        return std::nullopt;
    const auto bytes = readFile(path);
    if (!bytes.ok())
        return bytes.error();
    if (readDocument(view(bytes.value())).ok())
        return std::nullopt;
    return Error{path.toStdString(),
                 text("the file there can't be read as a case and was not replaced"),
                 text("save under another name")};
}

Error heldBy(const QString& path, const LockHolder& holder) {
    return {path.toStdString(),
            phrase("is open in another window (process %1 on %2)", std::to_string(holder.process),
                   holder.host.toStdString()),
            text("close it there, or save under another name")};
}

} // namespace

CaseFile::CaseFile(Session& session, QObject* parent) : QObject(parent), m_session(session) {
    connect(&session.undoStack(), &QUndoStack::cleanChanged, this, &CaseFile::changed);
}

std::optional<LockHolder> CaseFile::holderOf(const QString& path) const {
    if (m_lock && FileLock::lockPath(path) == FileLock::lockPath(m_path))
        return std::nullopt;
    return FileLock(path).take();
}

std::optional<Error> CaseFile::open(const QString& path, OpenAs as) {
    const auto bytes = readFile(path);
    if (!bytes.ok())
        return bytes.error();
    auto project = readDocument(view(bytes.value()));
    if (!project.ok())
        return inFile(path, project.error());
    if (as == OpenAs::Copy)
        return startNamed(std::move(project).value(),
                          tr("Copy of %1").arg(QFileInfo(path).fileName()), Mark::Saved);
    if (auto failed = m_session.start(std::move(project).value()))
        return inFile(path, *failed);
    // Its own lock first, so that a case opened anew is not in its own way.
    m_lock.reset();
    std::unique_ptr<FileLock> lock;
    if (as == OpenAs::Own) {
        lock = std::make_unique<FileLock>(path);
        if (lock->take())
            lock.reset();
    }
    m_backedUp = false;
    m_name.clear();
    remember(QFileInfo(path).absoluteFilePath(), bytes.value(), std::move(lock));
    Q_EMIT opened();
    return std::nullopt;
}

std::optional<Error> CaseFile::startNew(Project project) {
    if (auto failed = m_session.start(std::move(project)))
        return failed;
    m_backedUp = false;
    m_name.clear();
    remember({}, {}, nullptr);
    return std::nullopt;
}

std::optional<Error> CaseFile::startNamed(Project project, const QString& name, Mark mark) {
    if (auto failed = startNew(std::move(project)))
        return failed;
    m_name = name;
    if (mark == Mark::Unsaved)
        m_session.undoStack().resetClean();
    Q_EMIT changed();
    Q_EMIT opened();
    return std::nullopt;
}

std::optional<Error> CaseFile::save() {
    if (isReadOnly())
        return Error{m_path.toStdString(), text("was opened to read only"),
                     text("save under another name")};
    return write(m_path);
}

std::optional<Error> CaseFile::saveAs(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    if (whole == m_path && !isReadOnly())
        return write(whole);
    auto lock = std::make_unique<FileLock>(whole);
    if (const auto holder = lock->take())
        return heldBy(whole, *holder);
    m_backedUp = false;
    std::swap(m_lock, lock);
    auto failed = write(whole);
    if (failed)
        std::swap(m_lock, lock);
    return failed;
}

std::optional<Error> CaseFile::write(const QString& path) {
    const std::string document = writeDocument(m_session.settled().project);
    // What could not be opened again must not replace what can.
    const auto again = readDocument(document);
    if (!again.ok() || writeDocument(again.value()) != document)
        return Error{path.toStdString(),
                     again.ok() ? text("the case could not be read back and was not saved")
                                : phrase("the case could not be read back and was not saved: %1",
                                         again.error().sentence()),
                     text("undo the last step and save again; the file on disk is as it was")};
    if (auto failed = refuseUnreadable(path))
        return failed;
    if (!m_backedUp) {
        if (auto failed = keepBackup(path))
            return failed;
    }
    const QByteArray bytes = QByteArray::fromStdString(document);
    if (auto failed = writeFileWhole(path, bytes))
        return failed;
    m_backedUp = true;
    m_name.clear();
    m_session.undoStack().setClean();
    remember(path, bytes, std::move(m_lock));
    return std::nullopt;
}

void CaseFile::remember(const QString& path, const QByteArray& bytes,
                        std::unique_ptr<FileLock> lock) {
    m_lock = std::move(lock);
    m_path = path;
    m_onDisk = fingerprint(bytes);
    Q_EMIT changed();
}

QString CaseFile::name() const {
    if (hasPath())
        return QFileInfo(m_path).fileName();
    return m_name.isEmpty() ? tr("New case") : m_name;
}

bool CaseFile::isUnsaved() const {
    return !m_session.undoStack().isClean();
}

bool CaseFile::changedOutside() const {
    if (!hasPath())
        return false;
    const auto bytes = readFile(m_path);
    return !bytes.ok() ? QFileInfo::exists(m_path) : fingerprint(bytes.value()) != m_onDisk;
}

} // namespace frontwright
