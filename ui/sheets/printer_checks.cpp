#include "ui/sheets/printer_checks.h"

#include <QSettings>
#include <QUrl>

namespace frontwright {

namespace {

constexpr int decimals = 6; ///< as core rounds them

/// A group of the settings: names may hold any letter, a slash too.
QString groupOf(const PrinterSetup& setup) {
    const auto safe = [](const QString& name) {
        return QString::fromLatin1(QUrl::toPercentEncoding(name));
    };
    return QStringLiteral("printers/%1/%2/%3/")
        .arg(safe(setup.printer), safe(setup.paper),
             setup.orientation == Orientation::Portrait ? QStringLiteral("upright")
                                                        : QStringLiteral("landscape"));
}

} // namespace

std::optional<PrinterCheck> PrinterChecks::of(const PrinterSetup& setup) const {
    const QString group = groupOf(setup);
    const auto number = [&](const char* key) {
        return m_settings.value(group + QLatin1String(key)).toString().toDouble();
    };
    const auto date = [&](const char* key) {
        return QDate::fromString(m_settings.value(group + QLatin1String(key)).toString(),
                                 Qt::ISODate);
    };
    PrinterCheck check{{number("across"), number("up")}, date("measured"), date("proved")};
    if (!areAcceptable(check.factors) || !check.measured.isValid())
        return std::nullopt;
    return check;
}

void PrinterChecks::keep(const PrinterSetup& setup, const PrinterCheck& check) {
    const QString group = groupOf(setup);
    // As text, so that the point is a point in every language.
    m_settings.setValue(group + QLatin1String("across"),
                        QString::number(check.factors.across, 'f', decimals));
    m_settings.setValue(group + QLatin1String("up"),
                        QString::number(check.factors.up, 'f', decimals));
    m_settings.setValue(group + QLatin1String("measured"), check.measured.toString(Qt::ISODate));
    m_settings.setValue(group + QLatin1String("proved"), check.proved.toString(Qt::ISODate));
}

void PrinterChecks::forget(const PrinterSetup& setup) {
    m_settings.remove(groupOf(setup).chopped(1));
}

} // namespace frontwright
