#pragma once

#include "core/lengths/length.h"

#include <QSettings>
#include <QString>

class QScreen;

namespace frontwright {

/// How large a screen's pixels are, as the maker measured them with a card. Kept in the settings
/// for each screen (its name and resolution), with the distance from which it is looked at.
class ScreenSize {
public:
    ScreenSize(QSettings& settings, const QScreen& screen);

    /// Whether a card was held against this screen at this resolution.
    [[nodiscard]] bool isMeasured() const;
    /// Pixels of a widget per millimetre: measured, or else as the screen itself says.
    [[nodiscard]] double pixelsPerMm() const;
    void setMeasured(double widgetPixelsPerMm);
    [[nodiscard]] Length eyeDistance() const;
    void setEyeDistance(Length);

private:
    [[nodiscard]] QString key(const QString& what) const;

    QSettings& m_settings;
    const QScreen& m_screen;
};

} // namespace frontwright
