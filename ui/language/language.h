#pragma once

#include <QList>
#include <QLocale>
#include <QSettings>
#include <QString>
#include <QTranslator>

#include <optional>

namespace frontwright {

struct WindowLanguage {
    QString code; ///< ISO 639-1
    QString name; ///< what its speakers call it
};

/// The languages that the window speaks; English, the language of the code, first.
const QList<WindowLanguage>& windowLanguages();

/// The code of the language that the maker chose; nullopt: the desktop's.
std::optional<QString> keptLanguage(const QSettings&);
/// For the next start.
void keepLanguage(QSettings&, const std::optional<QString>& code);

/// The code of the first language of the desktop's that the window speaks, else English.
QString languageOf(const QLocale& desktop);

/// The program speaks a language as long as this lives: its own texts, those of Qt's buttons where
/// they are installed, dates and numbers. Windows keep the language that they were made in.
class SpokenLanguage {
public:
    explicit SpokenLanguage(const QString& code);
    ~SpokenLanguage();
    SpokenLanguage(const SpokenLanguage&) = delete;
    SpokenLanguage& operator=(const SpokenLanguage&) = delete;

private:
    QTranslator m_qtsTexts;
    QTranslator m_ourTexts;
    QLocale m_before;
};

} // namespace frontwright
