#include "ui/elevation/case_parts.h"
#include "ui/elevation/elevation_view.h"
#include "ui/elevation/member_drag.h"
#include "ui/elevation/part_drag.h"
#include "ui/elevation/part_words.h"
#include "ui/elevation/scene_rect.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QMouseEvent>
#include <QScrollBar>

namespace frontwright {

PointerAt ElevationView::pointer(QPointF pos, Qt::KeyboardModifiers modifiers) const {
    const QTransform inverse = viewportTransform().inverted();
    return {inverse.map(pos), modifiers, scale(), inverse.mapRect(QRectF(viewport()->rect()))};
}

Hit ElevationView::hitUnder(QPointF pos) const {
    const QPointF mm = viewportTransform().inverted().map(pos);
    return hitAt(m_session.plan(), PointMm(mm.x(), mm.y()), reach(), m_skip, m_layers.holes);
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
    const bool isGrabbed = hit.member || hit.part;
    m_pressed = isGrabbed ? Pressed::Grabbed : hit.opening ? Pressed::Front : Pressed::Band;
}

void ElevationView::mouseMoveEvent(QMouseEvent* event) {
    const QPoint pos = event->position().toPoint();
    const QPoint step = pos - m_lastPos;
    m_lastPos = pos;
    if (m_pressed == Pressed::Pan) {
        setFitted(false);
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() - step.x());
        verticalScrollBar()->setValue(verticalScrollBar()->value() - step.y());
        return;
    }
    if (m_drag) {
        dragTo(*event);
        return;
    }
    if (m_pressed == Pressed::Nothing) {
        m_skip = 0;
        hover(event->position());
        return;
    }
    const bool far = (pos - m_pressedAt).manhattanLength() >= QApplication::startDragDistance();
    if (m_pressed == Pressed::Grabbed && far) {
        startDrag(m_pressedAt, event->modifiers());
        dragTo(*event);
    } else if ((m_pressed == Pressed::Band || m_pressed == Pressed::Front) && far) {
        m_pressed = Pressed::Band;
        m_band = QRectF(pointer(m_pressedAt, {}).mm, pointer(pos, {}).mm).normalized();
        refreshEmphasis();
    }
}

void ElevationView::startDrag(const QPoint& from, Qt::KeyboardModifiers modifiers) {
    const Hit hit = hitUnder(from);
    if (hit.part) {
        m_session.select(selectionOf(*hit.part, m_session.plan()));
        m_drag = std::make_unique<PartDrag>(m_session, *hit.part, m_dragEmphasis);
    } else if (hit.member) {
        m_session.select(Selection::of(*hit.member));
        m_drag = std::make_unique<MemberDrag>(m_session, *hit.member, m_dragEmphasis);
    } else {
        return;
    }
    m_drag->begin(pointer(from, modifiers));
}

void ElevationView::dragTo(const QMouseEvent& event) {
    if (!m_drag)
        return;
    m_drag->moved(pointer(event.position(), event.modifiers()));
    refreshEmphasis();
    if (m_drag)
        Q_EMIT hint(m_drag->hint());
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
    if (!hit.opening && !hit.part) {
        m_session.select({});
        return;
    }
    if (hit.opening && event.modifiers().testFlag(Qt::ShiftModifier)) {
        Selection selection = m_session.selection();
        selection.member.reset();
        if (selection.contains(*hit.opening))
            std::erase(selection.openings, *hit.opening);
        else
            selection.openings.push_back(*hit.opening);
        m_session.select(std::move(selection));
        return;
    }
    Selection selection =
        hit.part ? selectionOf(*hit.part, m_session.plan()) : Selection::of(*hit.opening);
    if (hit.handleHole && hit.part && hit.part->kind == PlacedPart::Kind::Handle)
        selection.handleHole = hit.handleHole;
    m_session.select(std::move(selection));
}

void ElevationView::selectBand() {
    Selection selection;
    for (const FrontPlan& front : m_session.plan().fronts)
        if (m_band->intersects(inScene(front.rect)))
            selection.openings.push_back(front.opening);
    for (const SpacePlan& space : m_session.plan().spaces)
        if (m_band->intersects(inScene(space.rect)))
            selection.openings.push_back(space.opening);
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
    } else if (hit.part) {
        viewport()->setCursor(Qt::SizeAllCursor);
        const PartWords words(m_session.project(), m_session.plan(), m_session.style());
        Q_EMIT hint(tr("Drag %1; Shift moves those down the bank along. Click, then arrow keys "
                       "nudge it and Enter types its height.")
                        .arg(words.name(*hit.part)));
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
    const bool wasDragged = m_drag != nullptr;
    m_drag.reset();
    m_pressed = Pressed::Nothing;
    m_dragEmphasis = {};
    m_hovered = {};
    refreshEmphasis();
    Q_EMIT hint({});
    if (wasDragged)
        Q_EMIT dragEnded();
}

void ElevationView::leaveEvent(QEvent* event) {
    QGraphicsView::leaveEvent(event);
    if (m_drag || m_hovered == Hit())
        return;
    m_hovered = {};
    refreshEmphasis();
}

void ElevationView::contextMenuEvent(QContextMenuEvent* event) {
    // By the Menu key there is no place: it is about what is selected.
    if (event->reason() == QContextMenuEvent::Keyboard) {
        Q_EMIT contextMenuWanted(event->globalPos(),
                                 numbersOf(m_session.selection(), m_session.plan()));
        return;
    }
    const Hit hit = hitUnder(event->pos());
    if (hit.member)
        m_session.select(Selection::of(*hit.member));
    else if (hit.opening && !m_session.selection().contains(*hit.opening))
        m_session.select(Selection::of(*hit.opening));
    Q_EMIT contextMenuWanted(event->globalPos(), numbersAt(event->pos()));
}

std::vector<Quantity> ElevationView::numbersAt(QPoint pos) const {
    if (const auto dimension = m_scene.dimensionAt(pointer(pos, {}).mm, 2 / scale()))
        return {dimension->quantity};
    return numbersOf(selectionAt(hitUnder(pos)), m_session.plan());
}

} // namespace frontwright
