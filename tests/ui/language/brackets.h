#pragma once

#include "tests/ui/language/translation_file.h"

#include <QCoreApplication>
#include <QSet>
#include <QTranslator>

namespace frontwright::testing {

/// A language that puts brackets round every text that it is asked for, and knows only the texts
/// that the translation files list: what is seen without brackets can't be translated.
class Brackets : public QTranslator {
public:
    Brackets() {
        for (const QString& file : translationFiles(QStringLiteral("de")))
            for (const TranslationEntry& entry : entriesOf(file))
                m_known.insert({entry.context, entry.source});
        QCoreApplication::installTranslator(this);
    }

    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char*,
                                    int) const override {
        const QString text = QString::fromUtf8(source);
        // Qt's own contexts are its classes' names.
        const bool isKnown = context[0] == 'Q' || m_known.contains({QLatin1String(context), text});
        return isKnown ? u'[' + text + u']' : QString();
    }

private:
    QSet<std::pair<QString, QString>> m_known;
};

/// Before the window is made.
struct Bracketed {
    Brackets brackets;
};

} // namespace frontwright::testing
