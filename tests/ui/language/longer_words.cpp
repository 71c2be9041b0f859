#include "tests/ui/language/longer_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace frontwright::testing {

LongerWords::LongerWords() {
    QCoreApplication::installTranslator(this);
}

QString LongerWords::translate(const char*, const char* source, const char*, int) const {
    // Each word by itself, so that lines break where they would; places and marks stay.
    static const QRegularExpression word(QStringLiteral("(?<![%</=\\w'])\\p{L}{2,}(?![\\w=>'])"));
    QString longer = QString::fromUtf8(source);
    qsizetype at = 0;
    for (auto found = word.match(longer, at); found.hasMatch(); found = word.match(longer, at)) {
        const qsizetype more = std::max<qsizetype>(1, found.capturedLength() * 4 / 10);
        longer.insert(found.capturedEnd(), QString(more, u'n'));
        at = found.capturedEnd() + more;
    }
    return longer;
}

} // namespace frontwright::testing
