#include "ui/elevation/case_parts.h"
#include "ui/elevation/scene_rect.h"
#include "ui/rendering/look_view.h"

#include <QGestureEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

constexpr double notch = 120;
constexpr int clickSlop = 4;

} // namespace

std::optional<OpeningId> LookView::openingAt(QPointF viewportPos) const {
    if (!m_rendered)
        return std::nullopt;
    const QPointF at = mapToScene(viewportPos.toPoint());
    const Plan& plan = m_rendered->work->plan;
    const FrontPlaces& places = m_rendered->places;
    // Fronts lie before the spaces beside them.
    for (std::size_t i = places.fronts.size(); i-- > 0;)
        if (inScene(places.fronts[i]).contains(at))
            return plan.fronts[i].opening;
    for (std::size_t i = places.spaces.size(); i-- > 0;)
        if (inScene(places.spaces[i]).contains(at))
            return plan.spaces[i].opening;
    return std::nullopt;
}

void LookView::clickAt(QPointF viewportPos, Qt::KeyboardModifiers modifiers) {
    const auto opening = openingAt(viewportPos);
    if (!opening) {
        m_session.select({});
        return;
    }
    const OpeningId id = *opening;
    Selection selection = Selection::of(id);
    if (!isThere(m_session.plan(), selection))
        return;
    if (modifiers.testFlag(Qt::ShiftModifier)) {
        selection = m_session.selection();
        selection.member.reset();
        if (selection.contains(id))
            std::erase(selection.openings, id);
        else
            selection.openings.push_back(id);
    }
    m_session.select(std::move(selection));
}

void LookView::mousePressEvent(QMouseEvent* event) {
    m_pressedAt = m_lastPos = event->pos();
    m_isPanning = event->button() == Qt::MiddleButton;
    event->accept();
}

void LookView::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & (Qt::LeftButton | Qt::MiddleButton)))
        return;
    if ((event->pos() - m_pressedAt).manhattanLength() > clickSlop)
        m_isPanning = true;
    if (!m_isPanning)
        return;
    viewport()->setCursor(Qt::ClosedHandCursor);
    const QPoint moved = event->pos() - m_lastPos;
    m_lastPos = event->pos();
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() - moved.x());
    verticalScrollBar()->setValue(verticalScrollBar()->value() - moved.y());
    if (m_fitted) {
        setFitted(false);
        Q_EMIT zoomedByHand();
    }
}

void LookView::mouseReleaseEvent(QMouseEvent* event) {
    viewport()->unsetCursor();
    if (!m_isPanning && event->button() == Qt::LeftButton)
        clickAt(event->position(), event->modifiers());
    m_isPanning = false;
}

void LookView::wheelEvent(QWheelEvent* event) {
    const double turned = event->angleDelta().y() / notch;
    if (turned != 0)
        zoomBy(std::pow(LookView::zoomStep, std::clamp(turned, -1.5, 1.5)), event->position());
    event->accept();
}

void LookView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
        return walk(event->key());
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        return zoom(Zoom::In);
    case Qt::Key_Minus:
        return zoom(Zoom::Out);
    case Qt::Key_0:
        return fit();
    default:
        QGraphicsView::keyPressEvent(event);
    }
}

void LookView::walk(int key) {
    if (const auto next = openingTowards(m_session.plan(), m_session.selection(), key))
        m_session.select(*next);
}

bool LookView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::Gesture) {
        auto* gestures = static_cast<QGestureEvent*>(event);
        if (auto* pinch = static_cast<QPinchGesture*>(gestures->gesture(Qt::PinchGesture))) {
            zoomBy(pinch->scaleFactor(), viewport()->mapFromGlobal(pinch->centerPoint()));
            return true;
        }
    }
    return QGraphicsView::viewportEvent(event);
}

} // namespace frontwright
