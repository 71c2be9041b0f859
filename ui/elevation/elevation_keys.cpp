#include "core/edits/divisions.h"
#include "core/edits/snap.h"
#include "ui/elevation/case_parts.h"
#include "ui/elevation/elevation_view.h"
#include "ui/elevation/part_words.h"
#include "ui/elevation/scene_rect.h"
#include "ui/elevation/shown_grid.h"

#include "core/lengths/format.h"
#include "ui/language/told.h"

#include <QKeyEvent>

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

bool isArrow(int key) {
    return key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
}

/// How far one press of an arrow key moves.
Length stepOf(const QKeyEvent& event, LengthStyle style) {
    if (event.modifiers().testFlag(Qt::ControlModifier))
        return finestStep(style);
    return shownGrid(style) * (event.modifiers().testFlag(Qt::ShiftModifier) ? 10 : 1);
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
        else if (const auto part = selectedPart())
            m_session.select(Selection::of(part->opening));
        else
            m_session.select({});
    } else if (isArrow(key)) {
        if (const auto part = selectedPart())
            nudgePart(*event, *part);
        else if (m_session.selection().member)
            nudge(*event);
        else
            walk(key);
    } else if (key == Qt::Key_Tab || key == Qt::Key_Backtab) {
        stepParts(key == Qt::Key_Tab ? 1 : -1); // with Ctrl: else it leaves the drawing
    } else if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        wantEntryForSelection(event->modifiers());
    } else if ((key == Qt::Key_Delete || key == Qt::Key_Backspace) && selectedPart()) {
        removeHole();
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
    const LengthStyle style = m_session.style();
    const Length step = stepOf(event, style);
    const auto outcome = dragMember(m_session.project(), id, along < 0 ? -step : step);
    if (!outcome.ok()) {
        Q_EMIT hint(told(outcome.error().sentence()));
        return;
    }
    m_session.apply(tr("Nudge member"), outcome.value().project, Merge::Quick);
    if (!outcome.value().heldBecause.empty())
        Q_EMIT hint(told(outcome.value().heldBecause));
    else if (outcome.value().moved.isZero())
        Q_EMIT hint(
            tr("Sizes lie on a grid of %1; set a finer grid for the case to move less.")
                .arg(QString::fromStdString(shown(m_session.project().casework.grid, style))));
}

void ElevationView::nudgePart(const QKeyEvent& event, const PlacedPart& part) {
    const Length step = stepOf(event, m_session.style());
    CasePoint by;
    if (event.key() == Qt::Key_Left || event.key() == Qt::Key_Right)
        by.x = event.key() == Qt::Key_Left ? -step : step;
    else
        by.y = event.key() == Qt::Key_Down ? -step : step;
    const auto outcome = movePart(m_session.project(), m_session.plan(), part, by);
    if (!outcome.ok()) {
        Q_EMIT hint(told(outcome.error().sentence()));
        return;
    }
    const bool isHole = part.kind == PlacedPart::Kind::MountingHole;
    m_session.apply(isHole ? tr("Nudge mounting hole") : tr("Nudge handle"),
                    outcome.value().project, Merge::Quick);
    Q_EMIT hint(told(outcome.value().heldBecause));
}

void ElevationView::removeHole() {
    const auto part = selectedPart();
    if (!part || part->kind != PlacedPart::Kind::MountingHole)
        return;
    if (m_session.apply(
            tr("Remove mounting hole"),
            removeMountingHole(m_session.project(), m_session.plan(), part->opening, part->index)))
        m_session.select(Selection::of(part->opening));
}

/// From hole to hole, then from handle to handle of the one selected front; false past the last.
bool ElevationView::walkParts(bool forward) {
    const Selection& selection = m_session.selection();
    const auto opening = selection.lastOpening();
    const FrontPlan* front = opening ? m_session.plan().frontOf(*opening) : nullptr;
    if (!front || selection.openings.size() != 1)
        return false;
    std::vector<PlacedPart> parts;
    if (m_layers.holes == Shown::Yes)
        parts = partsOn(*front, PlacedPart::Kind::MountingHole);
    for (const PlacedPart& handle : partsOn(*front, PlacedPart::Kind::Handle))
        parts.push_back(handle);
    if (!forward)
        std::reverse(parts.begin(), parts.end());
    auto next = parts.begin();
    if (const auto current = selectedPart()) {
        next = std::find(parts.begin(), parts.end(), *current);
        if (next != parts.end())
            ++next;
    }
    if (next == parts.end()) {
        m_session.select(Selection::of(*opening));
        return false;
    }
    const PartWords words(m_session.project(), m_session.plan(), m_session.style());
    const QString name = words.name(*next);
    m_session.select(selectionOf(*next, m_session.plan()));
    Q_EMIT hint(tr("Selected: %1. Arrow keys nudge it, Enter types its height, Shift+Enter its "
                   "place across, Delete takes a hole away.")
                    .arg(name));
    return true;
}

void ElevationView::walk(int key) {
    const auto next = openingTowards(m_session.plan(), m_session.selection(), key);
    if (!next)
        return;
    m_session.select(*next);
    ensureVisible(inScene(placeOf(*next, m_session.plan())), 20, 20);
}

void ElevationView::stepParts(int by) {
    const auto parts = allParts(m_session.plan());
    if (parts.empty())
        return;
    const auto count = static_cast<int>(parts.size());
    const auto at = std::find(parts.begin(), parts.end(), m_session.selection());
    const int now = at == parts.end() ? (by > 0 ? -1 : 0) : static_cast<int>(at - parts.begin());
    const Selection& next = parts[static_cast<std::size_t>((now + by + count) % count)];
    m_session.select(next);
    ensureVisible(inScene(placeOf(next, m_session.plan())), 20, 20);
}

void ElevationView::wantEntryForSelection(Qt::KeyboardModifiers modifiers) {
    const Plan& plan = m_session.plan();
    const Selection& selection = m_session.selection();
    Quantity quantity;
    QRectF place;
    const bool isAcross = modifiers.testFlag(Qt::ShiftModifier);
    if (const auto part = selectedPart()) {
        const FrontPlan& front = *plan.frontOf(part->opening);
        const bool isHole = part->kind == PlacedPart::Kind::MountingHole;
        if (isHole)
            quantity.kind = isAcross ? QuantityKind::HoleX : QuantityKind::HoleY;
        else
            quantity.kind = isAcross ? QuantityKind::HandleX : QuantityKind::HandleY;
        quantity.item = static_cast<std::uint32_t>(&front - plan.fronts.data());
        quantity.index = isHole ? part->index : firstHoleOf(*front.hardware, part->index);
        place = partRect(plan, *part);
    } else if (selection.member) {
        const MemberPlan* member = plan.memberOf(*selection.member);
        quantity = {QuantityKind::MemberWidth,
                    static_cast<std::uint32_t>(member - plan.members.data()), 0};
        place = inScene(member->rect);
    } else if (const auto id = selection.lastOpening()) {
        if (const FrontPlan* front = plan.frontOf(*id)) {
            quantity = {QuantityKind::OpeningHeight,
                        static_cast<std::uint32_t>(front - plan.fronts.data()), 0};
            place = inScene(front->rect);
        } else if (const SpacePlan* space = plan.spaceOf(*id)) {
            quantity = {QuantityKind::SpaceHeight,
                        static_cast<std::uint32_t>(space - plan.spaces.data()), 0};
            place = inScene(space->rect);
        }
    } else {
        return;
    }
    const QPoint middle = mapFromScene(place.center());
    Q_EMIT entryWanted(quantity, QRect(middle - QPoint(60, 12), QSize(120, 24)));
}

/// Tab first cycles through what can be grabbed under the pointer, then walks the selected front's
/// holes, then leaves as usual.
bool ElevationView::focusNextPrevChild(bool next) {
    if (next && (m_hovered.member || m_hovered.part) && viewport()->underMouse()) {
        const Hit before = m_hovered;
        ++m_skip;
        hover(m_lastPos);
        if (m_hovered != before)
            return true;
    }
    // A field on the drawing that closes passes the keyboard on too: that is no Tab.
    if (hasFocus() && walkParts(next))
        return true;
    return QGraphicsView::focusNextPrevChild(next);
}

} // namespace frontwright
