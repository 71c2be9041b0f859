#include "ui/language/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>

#include <algorithm>

// A static library's resources have to be asked for, outside any namespace.
static void loadTranslations() {
    Q_INIT_RESOURCE(translations);
}

namespace frontwright {

namespace {

const QString languageKey = QStringLiteral("language");

bool isSpoken(const QString& code) {
    const auto& all = windowLanguages();
    return std::any_of(all.begin(), all.end(),
                       [&](const WindowLanguage& each) { return each.code == code; });
}

/// Numbers and dates as in the desktop's country; the country's paper with them.
QLocale localeFor(const QString& code, const QLocale& before) {
    const bool isSpokenThere = before == QLocale::c()
                                   ? code == windowLanguages().front().code
                                   : before.language() == QLocale(code).language();
    return isSpokenThere ? before : QLocale(QLocale(code).language(), before.territory());
}

} // namespace

const QList<WindowLanguage>& windowLanguages() {
    static const QList<WindowLanguage> all{{QStringLiteral("en"), QStringLiteral("English")},
                                           {QStringLiteral("de"), QStringLiteral("Deutsch")}};
    return all;
}

std::optional<QString> keptLanguage(const QSettings& settings) {
    const QString kept = settings.value(languageKey).toString();
    return isSpoken(kept) ? std::optional(kept) : std::nullopt;
}

void keepLanguage(QSettings& settings, const std::optional<QString>& code) {
    if (code)
        settings.setValue(languageKey, *code);
    else
        settings.remove(languageKey);
}

QString languageOf(const QLocale& desktop) {
    for (const QString& wanted : desktop.uiLanguages())
        if (const QString code = wanted.section(u'-', 0, 0); isSpoken(code))
            return code;
    return windowLanguages().front().code;
}

SpokenLanguage::SpokenLanguage(const QString& code) : m_before(QLocale()) {
    loadTranslations();
    QLocale::setDefault(localeFor(code, m_before));
    // The one installed last is asked first.
    if (m_qtsTexts.load(QStringLiteral("qtbase_") + code,
                        QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(&m_qtsTexts);
    if (m_ourTexts.load(QStringLiteral(":/translations/frontwright_") + code))
        QCoreApplication::installTranslator(&m_ourTexts);
}

SpokenLanguage::~SpokenLanguage() {
    QCoreApplication::removeTranslator(&m_ourTexts);
    QCoreApplication::removeTranslator(&m_qtsTexts);
    QLocale::setDefault(m_before);
}

} // namespace frontwright
