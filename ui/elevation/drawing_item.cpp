#include "ui/elevation/drawing_item.h"

#include "ui/paper/surface.h"

#include <QFontMetricsF>
#include <QPainter>

namespace frontwright {

namespace {

/// Where a text lies, turned by quarters at most.
QRectF textRect(const TextMark& text, double paperScale) {
    QFont font = drawingFont();
    font.setPixelSize(100);
    const double em = emForCapitals(text.height) / paperScale;
    const double width =
        QFontMetricsF(font).horizontalAdvance(QString::fromStdString(text.text)) * em / 100;
    double start = 0;
    if (text.anchor == Anchor::Middle)
        start = -width / 2;
    if (text.anchor == Anchor::End)
        start = -width;
    QTransform turn;
    turn.translate(text.at.x(), text.at.y());
    turn.rotate(text.turned);
    return turn.mapRect(QRectF(start, -0.25 * em, width, em * 1.1));
}

QRectF boundsOf(const std::vector<PointMm>& points) {
    QPolygonF polygon;
    for (const PointMm& p : points)
        polygon << QPointF(p.x(), p.y());
    return polygon.boundingRect();
}

bool isMember(Layer layer) {
    return layer == Layer::MemberEdge;
}

} // namespace

void DrawingItem::show(Mark mark, double paperScale, Theme theme) {
    if (theme == m_theme && paperScale == m_paperScale && mark == m_mark)
        return;
    m_theme = theme;
    m_paperScale = paperScale;
    m_mark = std::move(mark);
    Drawing drawing;
    drawing.paperScale = paperScale;
    drawing.marks.push_back(m_mark);
    m_marks = plain(drawing);
    m_figures = {};
    for (const LabelMark& label : m_marks.labels)
        if (label.quantity) {
            m_figures = textRect(label.text, m_paperScale);
            break;
        }
    prepareGeometryChange();
    m_bounds = extentOf(m_marks);
    update();
}

std::optional<Quantity> DrawingItem::quantity() const {
    for (const LabelMark& label : m_marks.labels)
        if (label.quantity)
            return label.quantity;
    return std::nullopt;
}

QRectF DrawingItem::extentOf(const PlainMarks& marks) const {
    QRectF extent;
    for (const StrokeMark& stroke : marks.strokes) {
        // A level line has no area; QRectF would drop it from the union.
        extent |= boundsOf(stroke.points).adjusted(-1e-6, -1e-6, 1e-6, 1e-6);
    }
    for (const FillMark& fill : marks.fills)
        extent |= boundsOf(fill.points);
    for (const RoundMark& round : marks.rounds)
        extent |= QRectF(round.centre.x() - round.radius, round.centre.y() - round.radius,
                         2 * round.radius, 2 * round.radius);
    for (const LabelMark& label : marks.labels)
        extent |= textRect(label.text, m_paperScale);
    const double spare = 0.8 / m_paperScale;
    return extent.adjusted(-spare, -spare, spare, spare);
}

void DrawingItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    if (m_fill == Fill::Members)
        for (const StrokeMark& stroke : m_marks.strokes)
            if (isMember(stroke.layer) && stroke.end == PathMark::End::Closed)
                painter->fillRect(boundsOf(stroke.points), memberColour(m_theme));
    // Lies over neighbouring fronts: its figures stay readable there.
    for (const LabelMark& label : m_marks.labels)
        if (label.layer == Layer::PartDimension)
            painter->fillRect(textRect(label.text, m_paperScale), sheetColour(m_theme));
    frontwright::paint(*painter, m_marks, m_paperScale, m_theme);
}

} // namespace frontwright
