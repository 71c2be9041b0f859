#include "ui/elevation/scene_rect.h"
#include "ui/rendering/look_view.h"
#include "ui/rendering/reveal_words.h"

#include <QFontMetricsF>
#include <QPainter>

#include <tuple>

namespace frontwright {

namespace {

/// The middle of what shows beside a front.
QPointF middleOf(const RevealAt& at, const FrontPlaces& places) {
    const BoxMm& front = places.fronts[at.front];
    BoxMm along = front;
    if (at.other) {
        const BoxMm& other = places.fronts[*at.other];
        along = BoxMm(front.min().cwiseMax(other.min()), front.max().cwiseMin(other.max()));
    }
    const double half = at.width.inMillimetres() * places.reveals / 2;
    switch (at.side) {
    case Side::Left:
        return {front.min().x() - half, along.center().y()};
    case Side::Right:
        return {front.max().x() + half, along.center().y()};
    case Side::Bottom:
        return {along.center().x(), front.min().y() - half};
    case Side::Top:
        break;
    }
    return {along.center().x(), front.max().y() + half};
}

} // namespace

void LookView::drawForeground(QPainter* painter, const QRectF&) {
    if (!m_rendered)
        return;
    drawSelection(*painter);
    if (m_rendered->places.reveals != 1)
        drawRevealTags(*painter);
}

std::optional<QRectF> LookView::placeOf(OpeningId id) const {
    const Plan& plan = m_rendered->work->plan;
    const FrontPlaces& places = m_rendered->places;
    if (const FrontPlan* front = plan.frontOf(id))
        return inScene(places.fronts[static_cast<std::size_t>(front - plan.fronts.data())]);
    if (const SpacePlan* space = plan.spaceOf(id))
        return inScene(places.spaces[static_cast<std::size_t>(space - plan.spaces.data())]);
    return std::nullopt;
}

void LookView::drawSelection(QPainter& painter) const {
    // A frame of sheet and accent: it is seen on every wood, and colours none of it.
    painter.setBrush(Qt::NoBrush);
    for (const auto& [colour, width, beyondPixels] :
         {std::tuple(sheetColour(theme()), 6.0, 3.5),
          std::tuple(accentColour(theme()), 3.0, 3.5)}) {
        QPen pen(colour, width);
        pen.setCosmetic(true);
        pen.setJoinStyle(Qt::MiterJoin);
        painter.setPen(pen);
        const double beyond = beyondPixels / scale();
        for (const OpeningId id : m_session.selection().openings)
            if (const auto place = placeOf(id))
                painter.drawRect(place->adjusted(-beyond, -beyond, beyond, beyond));
    }
}

void LookView::drawRevealTags(QPainter& painter) const {
    const LengthStyle style = m_session.style();
    for (const RevealRange& range : revealRanges(m_rendered->work->plan)) {
        if (range.isEven())
            continue;
        drawTag(painter, middleOf(range.smallest, m_rendered->places),
                revealTag(RevealExtreme::Smallest, range.smallest.width, style));
        drawTag(painter, middleOf(range.largest, m_rendered->places),
                revealTag(RevealExtreme::Largest, range.largest.width, style));
    }
}

void LookView::drawTag(QPainter& painter, QPointF scenePos, const QString& text) const {
    painter.save();
    const QPointF at = painter.transform().map(scenePos);
    painter.resetTransform();
    painter.setFont(font());
    const QFontMetricsF metrics(font());
    QRectF box(QPointF(0, 0), QSizeF(metrics.horizontalAdvance(text) + 10, metrics.height() + 4));
    box.moveCenter(at);
    painter.setPen(QPen(inkColour(theme()), 1));
    painter.setBrush(sheetColour(theme()));
    painter.drawRoundedRect(box, 3, 3);
    painter.drawText(box, Qt::AlignCenter, text);
    painter.restore();
}

} // namespace frontwright
