#include "ui/language/told.h"

#include <QCoreApplication>
#include <QLocale>

namespace frontwright {

Language spokenLanguage() {
    const QLocale locale;
    return {locale.name().section(u'_', 0, 0).toStdString(),
            [](std::string_view english) {
                // The code's texts stand in one context, whichever file they come from.
                return QCoreApplication::translate("frontwright", std::string(english).c_str())
                    .toStdString();
            },
            locale.decimalPoint() == QLatin1String(",") ? DecimalMark::Comma : DecimalMark::Point};
}

QString told(const Phrase& phrase) {
    return QString::fromStdString(told(phrase, spokenLanguage()));
}

QString told(Text text) {
    return told(Phrase(text));
}

} // namespace frontwright
