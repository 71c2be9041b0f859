#include "ui/rendering/screen_size.h"

#include "core/drawings/seen_size.h"

#include <QScreen>

#include <cmath>

namespace frontwright {

namespace {
const QString measuredKey = QStringLiteral("pixelsPerMillimetre");
const QString eyeKey = QStringLiteral("eyeDistanceMillimetres");
// What no screen has comes from a damaged settings file.
constexpr double leastPixelsPerMm = 0.5;
constexpr double greatestPixelsPerMm = 60;
constexpr double leastEyeMm = 100;
constexpr double greatestEyeMm = 10'000;
} // namespace

ScreenSize::ScreenSize(QSettings& settings, const QScreen& screen)
    : m_settings(settings),
      m_screen(screen) {}

QString ScreenSize::key(const QString& what) const {
    const QSize pixels = m_screen.size() * m_screen.devicePixelRatio();
    QString name = m_screen.name();
    name.replace(u'/', u'-');
    return QStringLiteral("screens/%1 %2x%3/%4")
        .arg(name)
        .arg(pixels.width())
        .arg(pixels.height())
        .arg(what);
}

bool ScreenSize::isMeasured() const {
    const double value = m_settings.value(key(measuredKey)).toDouble();
    return value >= leastPixelsPerMm && value <= greatestPixelsPerMm;
}

double ScreenSize::pixelsPerMm() const {
    // Kept in the screen's own pixels: a window's scaling does not change the glass.
    if (isMeasured())
        return m_settings.value(key(measuredKey)).toDouble() / m_screen.devicePixelRatio();
    constexpr double mmPerInch = 25.4;
    const double told = m_screen.physicalDotsPerInchX() / mmPerInch;
    return std::isfinite(told) && told >= leastPixelsPerMm && told <= greatestPixelsPerMm
               ? told
               : 96 / mmPerInch;
}

void ScreenSize::setMeasured(double widgetPixelsPerMm) {
    m_settings.setValue(key(measuredKey), widgetPixelsPerMm * m_screen.devicePixelRatio());
}

Length ScreenSize::eyeDistance() const {
    const double mm = m_settings.value(key(eyeKey)).toDouble();
    return mm >= leastEyeMm && mm <= greatestEyeMm ? Length::nearestToMillimetres(mm)
                                                   : usualEyeDistance;
}

void ScreenSize::setEyeDistance(Length distance) {
    m_settings.setValue(key(eyeKey), distance.inMillimetres());
}

} // namespace frontwright
