#pragma once

#include <QSettings>

class QMainWindow;

namespace frontwright {

/// Place, size and panels of a window, kept from one start to the next. A screen that is gone
/// takes no window with it.
void restoreLayout(QMainWindow& window, const QSettings& settings);
/// `panels`: what QMainWindow::saveState gave, which may be of a moment before.
void keepLayout(const QMainWindow& window, const QByteArray& panels, QSettings& settings);

/// Of the panels and bars that this version has; another version's are not restored.
inline constexpr int layoutVersion = 1;

} // namespace frontwright
