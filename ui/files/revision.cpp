#include "ui/files/revision.h"

#include "core/documents/document.h"

#include <QByteArray>
#include <QCoreApplication>
#include <QCryptographicHash>

namespace frontwright {

std::string revisionOf(const Project& project) {
    const std::string text = writeDocument(project);
    const QByteArrayView bytes(text.data(), static_cast<qsizetype>(text.size()));
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(bytes);
    return QCoreApplication::translate("Revision", "revision %1")
        .arg(QString::fromLatin1(hash.result().toHex().left(6)))
        .toStdString();
}

} // namespace frontwright
