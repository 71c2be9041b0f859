#include "ui/elevation/emphasis_item.h"

#include "ui/elevation/notice_box.h"
#include "ui/elevation/tag_boxes.h"
#include "ui/paper/surface.h"

#include <QPainter>

namespace frontwright {

namespace {

constexpr double signPixels = 14;

QPen accentPen(Theme theme, double width) {
    QPen pen(accentColour(theme), width);
    pen.setCosmetic(true);
    pen.setJoinStyle(Qt::MiterJoin);
    return pen;
}

bool same(const Emphasis::Tag& a, const Emphasis::Tag& b) {
    return a.at == b.at && a.text == b.text && a.kind == b.kind;
}
bool sameLine(const Emphasis::Notice::Line& a, const Emphasis::Notice::Line& b) {
    return a.text == b.text && a.severity == b.severity;
}
bool sameNotice(const std::optional<Emphasis::Notice>& a,
                const std::optional<Emphasis::Notice>& b) {
    if (!a || !b)
        return !a && !b;
    return a->at == b->at && a->towards == b->towards && a->visible == b->visible &&
           std::equal(a->lines.begin(), a->lines.end(), b->lines.begin(), b->lines.end(), sameLine);
}
bool samePlace(const Emphasis::Place& a, const Emphasis::Place& b) {
    return a.at == b.at && a.severity == b.severity;
}

} // namespace

bool operator==(const Emphasis& a, const Emphasis& b) {
    return a.selected == b.selected && a.hovered == b.hovered && a.ghost == b.ghost &&
           a.guides == b.guides && a.band == b.band && sameNotice(a.notice, b.notice) &&
           std::equal(a.tags.begin(), a.tags.end(), b.tags.begin(), b.tags.end(), same) &&
           std::equal(a.findings.begin(), a.findings.end(), b.findings.begin(), b.findings.end(),
                      samePlace);
}

EmphasisItem::EmphasisItem() {
    setZValue(100);
    setAcceptedMouseButtons(Qt::NoButton);
}

void EmphasisItem::show(const Emphasis& emphasis, Theme theme, double pixelsPerMm) {
    if (emphasis == m_emphasis && theme == m_theme && pixelsPerMm == m_pixelsPerMm)
        return;
    update();
    prepareGeometryChange();
    m_emphasis = emphasis;
    m_theme = theme;
    m_pixelsPerMm = pixelsPerMm;
    QRectF bounds;
    for (const QRectF& rect : emphasis.selected)
        bounds |= rect;
    for (const auto& rect : {emphasis.hovered, emphasis.ghost, emphasis.band})
        if (rect)
            bounds |= *rect;
    for (const QLineF& guide : emphasis.guides)
        bounds |= QRectF(guide.p1(), guide.p2()).normalized().adjusted(-1e-6, -1e-6, 1e-6, 1e-6);
    if (emphasis.notice)
        bounds |= noticeRect(*emphasis.notice, pixelsPerMm);
    const double sign = signPixels / pixelsPerMm;
    for (const auto& place : emphasis.findings)
        bounds |= QRectF(place.at.x() - sign, place.at.y() - sign, 2 * sign, 2 * sign);
    m_tags = tagBoxes(emphasis.tags, pixelsPerMm);
    for (std::size_t i = 0; i < m_tags.size(); ++i) {
        const QRectF& box = m_tags[i];
        const QPointF at = emphasis.tags[i].at;
        bounds |= QRectF(at.x() + box.left() / pixelsPerMm, at.y() - box.bottom() / pixelsPerMm,
                         box.width() / pixelsPerMm, box.height() / pixelsPerMm);
    }
    const double spare = 12 / pixelsPerMm;
    m_bounds = bounds.adjusted(-spare, -spare, spare, spare);
    update();
}

void EmphasisItem::paintTags(QPainter& painter) const {
    const QTransform transform = painter.transform();
    painter.resetTransform();
    painter.setFont(tagFont());
    for (const auto& place : m_emphasis.findings) {
        const QPointF at = transform.map(place.at);
        drawSeverity(painter,
                     {at.x() - signPixels / 2, at.y() - signPixels / 2, signPixels, signPixels},
                     place.severity, m_theme);
    }
    for (std::size_t i = 0; i < m_tags.size(); ++i) {
        const Emphasis::Tag& tag = m_emphasis.tags[i];
        const QRectF box = m_tags[i].translated(transform.map(tag.at));
        const bool warns = tag.kind == Emphasis::Tag::Kind::Warning;
        const QColor edge = warns ? wrongColour(m_theme) : accentColour(m_theme);
        painter.setPen(QPen(edge, 1));
        painter.setBrush(sheetColour(m_theme));
        painter.drawRoundedRect(box, 3, 3);
        painter.setPen(warns ? edge : inkColour(m_theme));
        painter.drawText(box, Qt::AlignCenter, tag.text);
    }
    painter.setTransform(transform);
}

void EmphasisItem::paintNotice(QPainter& painter) const {
    const QTransform transform = painter.transform();
    const QRectF box =
        transform.mapRect(noticeRect(*m_emphasis.notice, m_pixelsPerMm)).adjusted(1, 1, -1, -1);
    painter.resetTransform();
    drawNotice(painter, *m_emphasis.notice, box, m_theme);
    painter.setTransform(transform);
}

void EmphasisItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    painter->setBrush(Qt::NoBrush);
    if (m_emphasis.hovered) {
        QColor veil = accentColour(m_theme);
        veil.setAlphaF(0.16F);
        painter->fillRect(*m_emphasis.hovered, veil);
        painter->setPen(accentPen(m_theme, 1));
        painter->drawRect(*m_emphasis.hovered);
    }
    if (m_emphasis.ghost) {
        QPen pen = accentPen(m_theme, 1);
        pen.setDashPattern({4, 4});
        painter->setPen(pen);
        painter->drawRect(*m_emphasis.ghost);
    }
    painter->setPen(accentPen(m_theme, 3));
    for (const QRectF& rect : m_emphasis.selected)
        painter->drawRect(rect);
    painter->setPen(accentPen(m_theme, 1));
    for (const QLineF& guide : m_emphasis.guides)
        painter->drawLine(guide);
    if (m_emphasis.band) {
        QPen pen = accentPen(m_theme, 1);
        pen.setDashPattern({2, 2});
        painter->setPen(pen);
        painter->drawRect(*m_emphasis.band);
    }
    paintTags(*painter);
    if (m_emphasis.notice)
        paintNotice(*painter);
}

} // namespace frontwright
