#include "ui/elevation/elevation_view.h"
#include "ui/elevation/scene_rect.h"

#include "core/lengths/format.h"

#include <QKeyEvent>

#include <cmath>

namespace frontwright {

namespace {

bool isArrow(int key) {
    return key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
}

PointMm directionOf(int key) {
    switch (key) {
    case Qt::Key_Left:
        return {-1, 0};
    case Qt::Key_Right:
        return {1, 0};
    case Qt::Key_Up:
        return {0, 1};
    default:
        return {0, -1};
    }
}

/// The shown grid: 1/16 in or 1 mm; finest: 1/64 in or 0.1 mm.
Length shownGrid(LengthStyle style) {
    return style.unit == Unit::Inch ? Length::fromSixtyFourths(64 / style.denominator)
                                    : Length::millimetres(1);
}
Length finest(LengthStyle style) {
    return style.unit == Unit::Inch ? Length::fromSixtyFourths(1) : Length::fromMicrometres(100);
}

} // namespace

void ElevationView::keyPressEvent(QKeyEvent* event) {
    if (m_drag && handleDragKey(*event))
        return;
    const int key = event->key();
    if (key == Qt::Key_Space && !event->isAutoRepeat()) {
        m_spaceHeld = true;
        viewport()->setCursor(Qt::OpenHandCursor);
    } else if (key == Qt::Key_Escape) {
        if (m_band || m_drag)
            cancelGesture();
        else
            m_session.select({});
    } else if (isArrow(key)) {
        if (m_session.selection().member)
            nudge(*event);
        else
            walk(key);
    } else if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        wantEntryForSelection();
    } else {
        QGraphicsView::keyPressEvent(event);
    }
}

void ElevationView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        m_spaceHeld = false;
        viewport()->setCursor(Qt::ArrowCursor);
        return;
    }
    QGraphicsView::keyReleaseEvent(event);
}

bool ElevationView::handleDragKey(const QKeyEvent& event) {
    if (event.key() == Qt::Key_Escape) {
        cancelGesture();
        return true;
    }
    const QString text = event.text();
    if (!text.isEmpty() && (text[0].isDigit() || text[0] == u'.' || text[0] == u',')) {
        Q_EMIT dragEntryWanted(text, m_lastPos);
        return true;
    }
    return false;
}

void ElevationView::nudge(const QKeyEvent& event) {
    const MemberId id = *m_session.selection().member;
    const MemberPlan* member = m_session.plan().memberOf(id);
    const PointMm direction = directionOf(event.key());
    const double along = dragAxis(*member) == DragAxis::LeftRight ? direction.x() : direction.y();
    if (along == 0)
        return;
    const bool fine = event.modifiers().testFlag(Qt::ControlModifier);
    const bool coarse = event.modifiers().testFlag(Qt::ShiftModifier);
    const LengthStyle style = m_session.style();
    const Length step = fine ? finest(style) : shownGrid(style) * (coarse ? 10 : 1);
    const auto outcome = dragMember(m_session.project(), id, along < 0 ? -step : step);
    if (!outcome.ok()) {
        Q_EMIT hint(QString::fromStdString(outcome.error().sentence()));
        return;
    }
    m_session.apply(tr("Nudge member"), outcome.value().project, Merge::Quick);
    if (!outcome.value().heldBecause.empty())
        Q_EMIT hint(QString::fromStdString(outcome.value().heldBecause));
    else if (outcome.value().moved.isZero())
        Q_EMIT hint(
            tr("Sizes lie on a grid of %1; set a finer grid for the case to move less.")
                .arg(QString::fromStdString(shown(m_session.project().casework.grid, style))));
}

/// To the nearest front in that direction; sideways offset counts double.
void ElevationView::walk(int key) {
    const Plan& plan = m_session.plan();
    const auto current = m_session.selection().lastOpening();
    const FrontPlan* from = current ? plan.frontOf(*current) : nullptr;
    if (!from) {
        if (!plan.fronts.empty())
            m_session.select(Selection::of(plan.fronts.front().opening));
        return;
    }
    const PointMm direction = directionOf(key);
    const FrontPlan* best = nullptr;
    double bestCost = 0;
    for (const FrontPlan& front : plan.fronts) {
        const PointMm step = toMm(front.rect.centre()) - toMm(from->rect.centre());
        const double ahead = step.dot(direction);
        if (ahead <= 1e-6)
            continue;
        const double cost =
            ahead + 2 * std::abs(step.x() * direction.y() - step.y() * direction.x());
        if (!best || cost < bestCost) {
            best = &front;
            bestCost = cost;
        }
    }
    if (!best)
        return;
    m_session.select(Selection::of(best->opening));
    ensureVisible(inScene(best->rect), 20, 20);
}

void ElevationView::wantEntryForSelection() {
    const Plan& plan = m_session.plan();
    const Selection& selection = m_session.selection();
    Quantity quantity;
    QRectF place;
    if (selection.member) {
        const MemberPlan* member = plan.memberOf(*selection.member);
        quantity = {QuantityKind::MemberWidth,
                    static_cast<std::uint32_t>(member - plan.members.data()), 0};
        place = inScene(member->rect);
    } else if (const auto id = selection.lastOpening()) {
        const FrontPlan* front = plan.frontOf(*id);
        quantity = {QuantityKind::OpeningHeight,
                    static_cast<std::uint32_t>(front - plan.fronts.data()), 0};
        place = inScene(front->rect);
    } else {
        return;
    }
    const QPoint middle = mapFromScene(place.center());
    Q_EMIT entryWanted(quantity, QRect(middle - QPoint(60, 12), QSize(120, 24)));
}

/// Tab first cycles through the members under the pointer, then leaves as usual.
bool ElevationView::focusNextPrevChild(bool next) {
    if (next && m_hovered.member && viewport()->underMouse()) {
        const Hit before = m_hovered;
        ++m_skip;
        hover(m_lastPos);
        if (m_hovered != before)
            return true;
    }
    return QGraphicsView::focusNextPrevChild(next);
}

} // namespace frontwright
