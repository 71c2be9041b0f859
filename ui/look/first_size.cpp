#include "ui/look/first_size.h"

#include <QScreen>
#include <QStyle>
#include <QWidget>

namespace frontwright {

QSize firstSize(const QWidget& window, QSize wanted) {
    // The frame is not known before the window is shown.
    const int title = window.style()->pixelMetric(QStyle::PM_TitleBarHeight, nullptr, &window);
    const QSize room = window.screen()->availableGeometry().size() - QSize(title / 2, title);
    return wanted.boundedTo(room);
}

} // namespace frontwright
