#include "ui/elevation/elevation_view.h"
#include "ui/elevation/scene_rect.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QMouseEvent>
#include <QScrollBar>

namespace frontwright {

PointerAt ElevationView::pointer(QPointF pos, Qt::KeyboardModifiers modifiers) const {
    return {viewportTransform().inverted().map(pos), modifiers, scale()};
}

Hit ElevationView::hitUnder(QPointF pos) const {
    const QPointF mm = viewportTransform().inverted().map(pos);
    return hitAt(m_session.plan(), PointMm(mm.x(), mm.y()), reach(), m_skip);
}

void ElevationView::mousePressEvent(QMouseEvent* event) {
    setFocus(Qt::MouseFocusReason);
    if (m_drag)
        return;
    m_pressedAt = event->position().toPoint();
    m_lastPos = m_pressedAt;
    const bool pans =
        event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && m_spaceHeld);
    if (pans) {
        m_pressed = Pressed::Pan;
        viewport()->setCursor(Qt::ClosedHandCursor);
        return;
    }
    if (event->button() != Qt::LeftButton)
        return;
    const QPointF mm = pointer(event->position(), {}).mm;
    if (const auto dimension = m_scene.dimensionAt(mm, 2 / scale())) {
        m_pressed = Pressed::Nothing;
        Q_EMIT entryWanted(dimension->quantity, mapFromScene(dimension->figures).boundingRect());
        return;
    }
    const Hit hit = hitUnder(event->position());
    m_pressed = hit.member ? Pressed::Member : hit.opening ? Pressed::Part : Pressed::Band;
}

void ElevationView::mouseMoveEvent(QMouseEvent* event) {
    const QPoint pos = event->position().toPoint();
    const QPoint step = pos - m_lastPos;
    m_lastPos = pos;
    if (m_pressed == Pressed::Pan) {
        m_fitted = false;
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() - step.x());
        verticalScrollBar()->setValue(verticalScrollBar()->value() - step.y());
        return;
    }
    if (m_drag) {
        m_drag->moved(pointer(event->position(), event->modifiers()));
        refreshEmphasis();
        return;
    }
    if (m_pressed == Pressed::Nothing) {
        m_skip = 0;
        hover(event->position());
        return;
    }
    const bool far = (pos - m_pressedAt).manhattanLength() >= QApplication::startDragDistance();
    if (m_pressed == Pressed::Member && far) {
        startDrag(m_pressedAt, event->modifiers());
        m_drag->moved(pointer(event->position(), event->modifiers()));
        refreshEmphasis();
    } else if ((m_pressed == Pressed::Band || m_pressed == Pressed::Part) && far) {
        m_pressed = Pressed::Band;
        m_band = QRectF(pointer(m_pressedAt, {}).mm, pointer(pos, {}).mm).normalized();
        refreshEmphasis();
    }
}

void ElevationView::startDrag(const QPoint& from, Qt::KeyboardModifiers modifiers) {
    const Hit hit = hitUnder(from);
    m_session.select(Selection::of(*hit.member));
    m_drag = std::make_unique<MemberDrag>(m_session, *hit.member, m_dragEmphasis);
    m_drag->begin(pointer(from, modifiers));
    Q_EMIT hint(tr("Type a distance to move by exactly that. Alt suspends snapping. Esc puts it "
                   "back."));
}

void ElevationView::mouseReleaseEvent(QMouseEvent* event) {
    const Pressed pressed = std::exchange(m_pressed, Pressed::Nothing);
    if (pressed == Pressed::Pan) {
        hover(event->position());
        return;
    }
    if (m_drag) {
        // A typed value beats the mouse until Enter or Esc.
        if (!m_drag->isTyped())
            finishDrag();
        return;
    }
    if (event->button() != Qt::LeftButton)
        return;
    if (m_band)
        selectBand();
    else if (pressed != Pressed::Nothing)
        clickAt(*event);
    hover(event->position());
}

void ElevationView::clickAt(const QMouseEvent& event) {
    const Hit hit = hitUnder(event.position());
    if (hit.member) {
        m_session.select(Selection::of(*hit.member));
        return;
    }
    if (!hit.opening) {
        m_session.select({});
        return;
    }
    if (event.modifiers().testFlag(Qt::ShiftModifier)) {
        Selection selection = m_session.selection();
        selection.member.reset();
        if (selection.contains(*hit.opening))
            std::erase(selection.openings, *hit.opening);
        else
            selection.openings.push_back(*hit.opening);
        m_session.select(std::move(selection));
        return;
    }
    Selection selection = Selection::of(*hit.opening);
    selection.mountingHole = hit.mountingHole;
    selection.handleHole = hit.handleHole;
    m_session.select(std::move(selection));
}

void ElevationView::selectBand() {
    Selection selection;
    for (const FrontPlan& front : m_session.plan().fronts)
        if (m_band->intersects(inScene(front.rect)))
            selection.openings.push_back(front.opening);
    m_band.reset();
    m_session.select(std::move(selection));
}

void ElevationView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        clickAt(*event);
        wantEntryForSelection();
    }
}

void ElevationView::hover(QPointF pos) {
    const QPointF mm = pointer(pos, {}).mm;
    Hit hit = hitUnder(pos);
    if (m_scene.dimensionAt(mm, 2 / scale())) {
        viewport()->setCursor(Qt::IBeamCursor);
        hit = {};
        Q_EMIT hint(tr("Click to type this size."));
    } else if (hit.member) {
        const MemberPlan* member = m_session.plan().memberOf(*hit.member);
        viewport()->setCursor(dragAxis(*member) == DragAxis::LeftRight ? Qt::SplitHCursor
                                                                       : Qt::SplitVCursor);
        Q_EMIT hint(tr("Drag to move. Double-click to type its width. Tab: what else is here."));
    } else {
        viewport()->setCursor(m_spaceHeld ? Qt::OpenHandCursor : Qt::ArrowCursor);
        Q_EMIT hint(hit.opening ? tr("Click to select; Shift-click to add. Double-click to type "
                                     "a size.")
                                : QString());
    }
    if (hit != m_hovered) {
        m_hovered = hit;
        refreshEmphasis();
    }
}

void ElevationView::dragTyped(Length distance) {
    if (!m_drag)
        return;
    m_drag->typed(distance);
    refreshEmphasis();
}

void ElevationView::finishDrag() {
    if (!m_drag)
        return;
    m_drag->released(pointer(m_lastPos, {}));
    endGesture();
}

void ElevationView::cancelGesture() {
    if (m_drag)
        m_drag->cancel();
    m_band.reset();
    m_pressed = Pressed::Nothing;
    endGesture();
}

void ElevationView::endGesture() {
    m_drag.reset();
    m_dragEmphasis = {};
    m_hovered = {};
    refreshEmphasis();
    Q_EMIT hint({});
}

void ElevationView::leaveEvent(QEvent* event) {
    QGraphicsView::leaveEvent(event);
    if (m_drag || m_hovered == Hit())
        return;
    m_hovered = {};
    refreshEmphasis();
}

void ElevationView::contextMenuEvent(QContextMenuEvent* event) {
    const Hit hit = hitUnder(event->pos());
    if (hit.member)
        m_session.select(Selection::of(*hit.member));
    else if (hit.opening && !m_session.selection().contains(*hit.opening))
        m_session.select(Selection::of(*hit.opening));
    Q_EMIT contextMenuWanted(event->globalPos());
}

} // namespace frontwright
