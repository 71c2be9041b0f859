#include "ui/files/local_files.h"

#include <QMimeData>
#include <QUrl>

namespace frontwright {

QStringList localFiles(const QMimeData& dropped) {
    QStringList paths;
    for (const QUrl& url : dropped.urls())
        if (url.isLocalFile())
            paths << url.toLocalFile();
    return paths;
}

} // namespace frontwright
