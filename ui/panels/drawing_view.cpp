#include "ui/panels/drawing_view.h"

#include "ui/paper/surface.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace frontwright {

namespace {
constexpr double margin = 6;            // px
constexpr double capitalsOnPaper = 2.5; // mm
} // namespace

DrawingView::DrawingView(const QString& accessibleName, Maker make, QWidget* parent)
    : QWidget(parent),
      m_make(std::move(make)) {
    setAccessibleName(accessibleName);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void DrawingView::setHint(QSize hint) {
    m_hint = hint;
    updateGeometry();
}

void DrawingView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme theme = themeOf(palette());
    painter.fillRect(rect(), sheetColour(theme));
    const double pixelsPerPaperMm = QFontMetricsF(font()).capHeight() / capitalsOnPaper;
    const double width = this->width() - 2 * margin, height = this->height() - 2 * margin;
    const auto drawing = m_make(width / pixelsPerPaperMm, height / pixelsPerPaperMm);
    if (!drawing) {
        painter.setPen(palette().color(QPalette::PlaceholderText));
        painter.drawText(rect().adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap,
                         m_whenEmpty);
        return;
    }
    const PointMm size = drawing->extent.sizes(), centre = drawing->extent.center();
    const double scale =
        std::min({pixelsPerPaperMm * drawing->paperScale, width / size.x(), height / size.y()});
    painter.translate(this->width() / 2.0, this->height() / 2.0);
    painter.scale(scale, -scale);
    painter.translate(-centre.x(), -centre.y());
    paint(painter, *drawing, theme);
}

} // namespace frontwright
