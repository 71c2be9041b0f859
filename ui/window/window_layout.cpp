#include "ui/window/window_layout.h"
#include "ui/look/first_size.h"

#include <QGuiApplication>
#include <QMainWindow>
#include <QScreen>

#include <algorithm>

namespace frontwright {

namespace {
const QString geometryKey = QStringLiteral("window/geometry");
const QString panelsKey = QStringLiteral("window/panels");
constexpr QSize usualSize(1360, 900);
} // namespace

void restoreLayout(QMainWindow& window, const QSettings& settings) {
    window.resize(firstSize(window, usualSize));
    window.restoreState(settings.value(panelsKey).toByteArray(), layoutVersion);
    if (!window.restoreGeometry(settings.value(geometryKey).toByteArray()))
        return;
    const auto screens = QGuiApplication::screens();
    const bool visible = std::any_of(screens.begin(), screens.end(), [&](const QScreen* s) {
        return s->availableGeometry().intersects(window.frameGeometry());
    });
    if (!visible)
        window.move(QGuiApplication::primaryScreen()->availableGeometry().topLeft());
}

void keepLayout(const QMainWindow& window, const QByteArray& panels, QSettings& settings) {
    settings.setValue(geometryKey, window.saveGeometry());
    settings.setValue(panelsKey, panels);
}

} // namespace frontwright
