#include "ui/window/view_settings.h"

#include "ui/look/theme.h"
#include "ui/session/session.h"
#include "ui/window/case_file.h"

#include <QAction>

namespace frontwright {

namespace {

const QString unitKey = QStringLiteral("view/unit");
const QString denominatorKey = QStringLiteral("view/denominator");
const QString millimetres = QStringLiteral("mm");
const QString inches = QStringLiteral("in");

QString keyOf(const QString& name) {
    return QStringLiteral("view/") + name;
}

} // namespace

std::optional<Theme> keptTheme(const QSettings& settings) {
    const QVariant dark = settings.value(keyOf(QStringLiteral("dark")));
    if (!dark.isValid())
        return std::nullopt;
    return dark.toBool() ? Theme::Blueprint : Theme::Paper;
}

ViewSettings::ViewSettings(QSettings& settings, Session& session, const CaseFile& file,
                           QObject* parent)
    : QObject(parent),
      m_settings(settings),
      m_session(session) {
    connect(&file, &CaseFile::opened, this, &ViewSettings::showStyle);
}

void ViewSettings::keepSwitch(QAction& action) {
    const QString key = keyOf(action.objectName());
    if (const QVariant kept = m_settings.value(key); kept.isValid())
        action.setChecked(kept.toBool());
    connect(&action, &QAction::toggled, this,
            [this, key](bool on) { m_settings.setValue(key, on); });
}

void ViewSettings::keepStyleOf(const QAction& action) {
    connect(&action, &QAction::triggered, this, [this] {
        const LengthStyle style = m_session.style();
        m_settings.setValue(unitKey, style.unit == Unit::Inch ? inches : millimetres);
        m_settings.setValue(denominatorKey, style.denominator);
    });
}

void ViewSettings::showStyle() {
    LengthStyle style = m_session.style();
    const QString unit = m_settings.value(unitKey).toString();
    if (unit == inches)
        style.unit = Unit::Inch;
    else if (unit == millimetres)
        style.unit = Unit::Millimetre;
    const int denominator = m_settings.value(denominatorKey).toInt();
    if (denominator == 8 || denominator == 16 || denominator == 32 || denominator == 64)
        style.denominator = denominator;
    m_session.setStyle(style);
}

} // namespace frontwright
