#include "ui/look/upright_scroll.h"

#include <QScrollBar>

namespace frontwright {

UprightScroll::UprightScroll(QWidget* held, QWidget* parent) : QScrollArea(parent) {
    setWidget(held);
    setWidgetResizable(true);
    setFrameShape(NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

QSize UprightScroll::sizeHint() const {
    return widget()->sizeHint() + QSize(verticalScrollBar()->sizeHint().width(), 0);
}

QSize UprightScroll::minimumSizeHint() const {
    return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(),
            fontMetrics().height() * 4};
}

} // namespace frontwright
