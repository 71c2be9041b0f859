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
    whole.place = error.place.empty() ? name : name + ", " + error.place;
    return whole;
}

} // namespace

CaseFile::CaseFile(Session& session, QObject* parent) : QObject(parent), m_session(session) {
    connect(&session.undoStack(), &QUndoStack::cleanChanged, this, &CaseFile::changed);
}

std::optional<Error> CaseFile::open(const QString& path) {
    const auto bytes = readFile(path);
    if (!bytes.ok())
        return bytes.error();
    auto project = readDocument(view(bytes.value()));
    if (!project.ok())
        return inFile(path, project.error());
    if (auto failed = m_session.start(std::move(project).value()))
        return inFile(path, *failed);
    m_backedUp = false;
    remember(QFileInfo(path).absoluteFilePath(), bytes.value());
    return std::nullopt;
}

std::optional<Error> CaseFile::startNew(Project project) {
    if (auto failed = m_session.start(std::move(project)))
        return failed;
    m_backedUp = false;
    remember({}, {});
    return std::nullopt;
}

std::optional<Error> CaseFile::save() {
    return write(m_path);
}

std::optional<Error> CaseFile::saveAs(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    if (whole != m_path)
        m_backedUp = false;
    return write(whole);
}

std::optional<Error> CaseFile::write(const QString& path) {
    const std::string text = writeDocument(m_session.settled().project);
    // What could not be opened again must not replace what can.
    const auto again = readDocument(text);
    if (!again.ok() || writeDocument(again.value()) != text)
        return Error{path.toStdString(),
                     "the case could not be read back and was not saved" +
                         (again.ok() ? std::string() : ": " + again.error().sentence()),
                     "undo the last step and save again; the file on disk is as it was"};
    if (!m_backedUp) {
        if (auto failed = keepBackup(path))
            return failed;
    }
    const QByteArray bytes = QByteArray::fromStdString(text);
    if (auto failed = writeFileWhole(path, bytes))
        return failed;
    m_backedUp = true;
    m_session.undoStack().setClean();
    remember(path, bytes);
    return std::nullopt;
}

void CaseFile::remember(const QString& path, const QByteArray& bytes) {
    m_path = path;
    m_onDisk = fingerprint(bytes);
    Q_EMIT changed();
}

QString CaseFile::name() const {
    return hasPath() ? QFileInfo(m_path).fileName() : tr("New case");
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
