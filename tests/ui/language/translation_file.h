#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace frontwright::testing {

struct TranslationEntry {
    QString context;
    QString source;
    QStringList told; ///< more than one where a number decides
    bool isUnfinished = false;
    bool isCounted = false;
};

/// All .ts files of a language in the source tree.
QStringList translationFiles(const QString& language);
std::vector<TranslationEntry> entriesOf(const QString& path);

} // namespace frontwright::testing
