#pragma once

#include <QSize>

class QWidget;

namespace frontwright {

/// The size in which a window opens, pixels: `wanted`, but with its frame no larger than the screen
/// it opens on.
QSize firstSize(const QWidget& window, QSize wanted);

} // namespace frontwright
