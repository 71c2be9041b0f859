#include "ui/elevation/elevation_view.h"
#include "ui/elevation/scene_rect.h"

#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

constexpr double notch = 120;
constexpr double stepPerNotch = 1.2;
constexpr double leastScale = 0.02; // px per mm
constexpr double greatestScale = 40;
/// Zoomed out as far as can be, the case still takes that part of the view.
constexpr double farthestShare = 0.2;
/// Room for the dimensions that a selected front adds.
constexpr int fitMargin = 34;
constexpr double fitStep = 0.95;
/// Where a small view would be all figures, these give way until the case has that part of the
/// room: first in size, as far as they can be read, then in number.
constexpr double leastShare = 0.62;
constexpr struct {
    double letters;
    std::size_t rows;
} givingWay[] = {{1, DimensionRows::defaultMostRows},
                 {0.9, DimensionRows::defaultMostRows},
                 {0.8, DimensionRows::defaultMostRows},
                 {0.8, 4},
                 {0.8, 2},
                 {0.8, 1}};

} // namespace

void ElevationView::setFitted(bool fitted) {
    m_fitted = fitted;
    // Where all is in view there is nothing to scroll to, and the drawing has the room.
    const auto bars = fitted ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded;
    setHorizontalScrollBarPolicy(bars);
    setVerticalScrollBarPolicy(bars);
}

/// Rows of dimensions come and go with the divisions.
void ElevationView::keepInView() {
    const QRectF seen = mapToScene(viewport()->rect()).boundingRect();
    if (m_fitted && !m_drag && !seen.contains(m_scene.extent()))
        fit();
}

void ElevationView::fit() {
    setFitted(true);
    const QSizeF room =
        viewport()->size().shrunkBy(QMargins(fitMargin, fitMargin, fitMargin, fitMargin));
    const QSizeF outline = inScene(m_session.plan().outline).size();
    if (room.isEmpty() || outline.isEmpty())
        return;
    const double most =
        std::min({room.width() / outline.width(), room.height() / outline.height(), greatestScale});
    double fitted = leastShare * most;
    for (const auto& [letters, rows] : givingWay) {
        m_figures = {letters, rows, greatestScale};
        fitted = scaleFor(room, leastShare * most);
        if (fitted > leastShare * most)
            break;
    }
    if (fitted <= leastShare * most)
        fitted = scaleFor(room, leastScale);
    m_figures.scale = fitted;
    setTransform(QTransform::fromScale(fitted, -fitted));
    refresh();
    centerOn(m_scene.extent().center());
}

double ElevationView::scaleFor(const QSizeF& room, double least) const {
    const QRectF outline = inScene(m_session.plan().outline);
    const double most = std::min(room.width() / outline.width(), room.height() / outline.height());
    // Figures keep their size on screen, and rows of them come and go: the largest case round
    // which they have room.
    for (double s = std::min(most, greatestScale); s > least; s *= fitStep) {
        const ElevationOptions tried = options(s);
        QRectF extent = outline;
        if (tried.dimensions == Shown::Yes) {
            const Drawing figures =
                elevationDimensions(m_session.project(), m_session.plan(), tried);
            if (!figures.extent.isEmpty())
                extent |= inScene(figures.extent);
        }
        if (extent.width() * s <= room.width() && extent.height() * s <= room.height())
            return s;
    }
    return least;
}

double ElevationView::farthestScale() const {
    const QSizeF room = viewport()->size(), outline = inScene(m_session.plan().outline).size();
    if (room.isEmpty() || outline.isEmpty())
        return leastScale;
    const double share = std::min(room.width() / outline.width(), room.height() / outline.height());
    return std::clamp(farthestShare * share, leastScale, greatestScale);
}

void ElevationView::zoom(Zoom direction) {
    zoomBy(direction == Zoom::In ? stepPerNotch : 1 / stepPerNotch, viewport()->rect().center());
}

void ElevationView::zoomBy(double factor, QPointF anchor) {
    setFitted(false);
    const double s = std::clamp(scale() * factor, farthestScale(), greatestScale);
    const QPointF before = mapToScene(anchor.toPoint());
    setTransform(QTransform::fromScale(s, -s));
    refresh();
    const QPoint shift = mapFromScene(before) - anchor.toPoint();
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() + shift.x());
    verticalScrollBar()->setValue(verticalScrollBar()->value() + shift.y());
}

void ElevationView::wheelEvent(QWheelEvent* event) {
    const double turned = event->angleDelta().y() / notch;
    if (turned == 0) {
        QGraphicsView::wheelEvent(event);
        return;
    }
    zoomBy(std::pow(stepPerNotch, std::clamp(turned, -1.5, 1.5)), event->position());
    event->accept();
}

} // namespace frontwright
