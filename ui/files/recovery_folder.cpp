#include "ui/files/recovery_folder.h"

#include "ui/files/save_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace frontwright {

namespace {

const QString documentSuffix = QStringLiteral(".frontwright");
const QString noteSuffix = QStringLiteral(".origin");
const QString originKey = QStringLiteral("origin");
const QString nameKey = QStringLiteral("name");

QString withoutSuffix(const QString& document) {
    return document.chopped(documentSuffix.size());
}

QJsonObject noteBeside(const QString& base) {
    const auto bytes = readFile(base + noteSuffix);
    return bytes.ok() ? QJsonDocument::fromJson(bytes.value()).object() : QJsonObject();
}

} // namespace

RecoveryFolder::RecoveryFolder(QString folder) : m_folder(std::move(folder)) {}

std::optional<Error> RecoveryFolder::claim() {
    if (!m_base.isEmpty())
        return std::nullopt;
    if (!QDir().mkpath(m_folder))
        return Error{m_folder.toStdString(), text("the folder for recovery copies can't be made"),
                     text("save the case often until it can")};
    // Cases are the makers' own affair.
    QFile::setPermissions(m_folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    const QString time =
        QDateTime::currentDateTimeUtc().toString(QStringLiteral("yyyyMMdd-hhmmss"));
    for (int number = 1;; ++number) {
        const QString base = QDir(m_folder).filePath(QStringLiteral("%1-%2-%3")
                                                         .arg(time)
                                                         .arg(QCoreApplication::applicationPid())
                                                         .arg(number));
        auto lock = std::make_unique<FileLock>(base);
        if (QFileInfo::exists(base + documentSuffix) || lock->take())
            continue;
        m_base = base;
        m_lock = std::move(lock);
        return std::nullopt;
    }
}

std::optional<Error> RecoveryFolder::keep(const QByteArray& document, const QString& origin,
                                          const QString& name) {
    if (auto failed = claim())
        return failed;
    const QByteArray note =
        QJsonDocument(QJsonObject{{originKey, origin}, {nameKey, name}}).toJson();
    if (const QString told = QString::fromUtf8(note); told != m_told) {
        if (auto failed = writeFileWhole(m_base + noteSuffix, note))
            return failed;
        m_told = told;
    }
    if (auto failed = writeFileWhole(m_base + documentSuffix, document))
        return failed;
    m_hasCopy = true;
    return std::nullopt;
}

void RecoveryFolder::drop() {
    if (m_base.isEmpty())
        return;
    QFile::remove(m_base + documentSuffix);
    QFile::remove(m_base + noteSuffix);
    m_told.clear();
    m_hasCopy = false;
}

QList<RecoveryCopy> RecoveryFolder::abandoned() const {
    QList<RecoveryCopy> copies;
    const auto files = QDir(m_folder).entryInfoList({u'*' + documentSuffix}, QDir::Files);
    for (const QFileInfo& info : files) {
        const QString base = withoutSuffix(info.filePath());
        if (base == m_base || FileLock(base).take())
            continue;
        const QJsonObject note = noteBeside(base);
        copies << RecoveryCopy{info.filePath(), note.value(originKey).toString(),
                               note.value(nameKey).toString(info.fileName()), info.lastModified(),
                               info.size()};
    }
    std::sort(copies.begin(), copies.end(), [](const RecoveryCopy& a, const RecoveryCopy& b) {
        return a.written != b.written ? a.written > b.written : a.document > b.document;
    });
    return copies;
}

void RecoveryFolder::discard(const RecoveryCopy& copy) {
    QFile::remove(copy.document);
    QFile::remove(withoutSuffix(copy.document) + noteSuffix);
}

} // namespace frontwright
