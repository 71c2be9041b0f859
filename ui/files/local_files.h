#pragma once

#include <QStringList>

class QMimeData;

namespace frontwright {

/// The files of this machine among what is dropped.
QStringList localFiles(const QMimeData& dropped);

} // namespace frontwright
