#include "ui/paper/surface.h"

#include <QFontMetricsF>
#include <QHash>
#include <QPainter>
#include <QStaticText>

#include <algorithm>
#include <array>
#include <cmath>

namespace frontwright {

namespace {

/// Capitals of DejaVu Sans are 0.729 em high.
constexpr double capitalsPerEm = 0.729;

QPointF point(const PointMm& p) {
    return {p.x(), p.y()};
}

QPen printPen(Layer layer, double paperScale) {
    const LineStyle style = lineStyle(layer, paperScale);
    QPen pen(Qt::black, style.width / paperScale);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    if (!style.dashes.empty()) {
        QList<qreal> dashes;
        for (const double dash : style.dashes)
            dashes << dash / style.width;
        pen.setDashPattern(dashes);
    }
    return pen;
}

/// The pens of one painting, each made when its layer first comes.
class Pens {
public:
    Pens(double paperScale, Ink ink) : m_paperScale(paperScale), m_ink(ink) {}

    const QPen& of(Layer layer) {
        auto& pen = m_pens[static_cast<std::size_t>(layer)];
        if (!pen)
            pen = m_ink ? screenPen(layer, *m_ink) : printPen(layer, m_paperScale);
        return *pen;
    }

private:
    double m_paperScale;
    Ink m_ink;
    std::array<std::optional<QPen>, static_cast<std::size_t>(Layer::CheckBar) + 1> m_pens;
};

double startOf(const TextMark& text, double width) {
    switch (text.anchor) {
    case Anchor::Start:
        return 0;
    case Anchor::Middle:
        return -width / 2;
    case Anchor::End:
        break;
    }
    return -width;
}

/// A line as an area.
QPolygonF widened(const std::vector<PointMm>& points, double width) {
    QPolygonF polygon(static_cast<qsizetype>(2 * points.size()));
    const std::size_t last = points.size() - 1;
    for (std::size_t i = 0; i <= last; ++i) {
        const PointMm way =
            (points[std::min(i + 1, last)] - points[i == 0 ? 0 : i - 1]).normalized() * width / 2;
        const PointMm left(-way.y(), way.x());
        polygon[static_cast<qsizetype>(i)] = point(points[i] + left);
        polygon[static_cast<qsizetype>(2 * last + 1 - i)] = point(points[i] - left);
    }
    return polygon;
}

void lay(QPainter& painter, const WashMark& wash) {
    if (wash.points.size() < 2)
        return;
    const QColor colour(wash.tone.red, wash.tone.green, wash.tone.blue, wash.tone.opacity);
    const QTransform& t = painter.deviceTransform();
    // Lines of one pixel are drawn many times quicker than wider ones.
    constexpr double hairlinePixels = 2.2;
    const double pixelsPerUnit = std::hypot(t.m11(), t.m12());
    const bool isHairline = wash.width > 0 && wash.width * pixelsPerUnit <= hairlinePixels;
    if (wash.width > 0 && !isHairline) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawPolygon(widened(wash.points, wash.width), Qt::WindingFill);
        return;
    }
    QPolygonF polygon;
    polygon.reserve(static_cast<qsizetype>(wash.points.size()));
    for (const PointMm& p : wash.points)
        polygon << point(p);
    if (isHairline) {
        painter.setPen(QPen(colour, std::min(wash.width, 1 / pixelsPerUnit)));
        painter.drawPolyline(polygon);
        return;
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(polygon);
}

/// Print: glyphs at ten times their size in a tenth of the scale, since font sizes are whole.
void printText(QPainter& painter, const TextMark& text, double paperScale) {
    constexpr double fine = 100;
    QFont font = drawingFont();
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(fine * emForCapitals(1)))));
    painter.setFont(font);
    const double unit = text.height / paperScale / fine;
    painter.translate(point(text.at));
    painter.rotate(text.turned);
    painter.scale(unit, -unit);
    const QString words = QString::fromStdString(text.text);
    const double width = QFontMetricsF(font, painter.device()).horizontalAdvance(words);
    painter.drawText(QPointF(startOf(text, width), 0), words);
}

/// A text with its glyphs in their places: the same few words are painted again and again.
struct LaidText {
    QFont font;
    QStaticText text;
    double ascent = 0;
};

const LaidText& laidText(const std::string& words, int pixels) {
    constexpr qsizetype mostTexts = 4'000;
    static QHash<std::pair<QByteArray, int>, LaidText> laid;
    if (laid.size() > mostTexts)
        laid.clear();
    LaidText& entry = laid[{QByteArray::fromStdString(words), pixels}];
    if (entry.text.text().isEmpty()) {
        entry.font = drawingFont();
        entry.font.setPixelSize(pixels);
        entry.text = QStaticText(QString::fromStdString(words));
        entry.text.setTextFormat(Qt::PlainText);
        entry.text.prepare({}, entry.font);
        entry.ascent = QFontMetricsF(entry.font).ascent();
    }
    return entry;
}

/// Screen: whole pixels, so that small figures stay crisp.
void screenText(QPainter& painter, const TextMark& text, double paperScale) {
    const QTransform& t = painter.deviceTransform();
    const double ratio = painter.device()->devicePixelRatioF();
    const double pixelsPerUnit = std::hypot(t.m11(), t.m12()) / ratio;
    const double em = emForCapitals(text.height / paperScale * pixelsPerUnit);
    if (em < 5)
        return;
    const LaidText& laid = laidText(text.text, static_cast<int>(std::lround(em)));
    const QPointF at = painter.transform().map(point(text.at));
    painter.resetTransform();
    painter.translate(at);
    painter.rotate(-text.turned);
    painter.setFont(laid.font);
    painter.drawStaticText(QPointF(startOf(text, laid.text.size().width()), -laid.ascent),
                           laid.text);
}

} // namespace

QFont drawingFont() {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setStyleHint(QFont::SansSerif);
    return font;
}

double emForCapitals(double capMm) {
    return capMm / capitalsPerEm;
}

void paperFrame(QPainter& painter, double unitsPerMmX, double unitsPerMmY, double heightMm) {
    painter.scale(unitsPerMmX, -unitsPerMmY);
    painter.translate(0, -heightMm);
}

void paint(QPainter& painter, const PlainMarks& marks, double paperScale, Ink ink) {
    for (const WashMark& wash : marks.washes)
        lay(painter, wash);
    Pens pens(paperScale, ink);
    painter.setBrush(Qt::NoBrush);
    for (const StrokeMark& stroke : marks.strokes) {
        painter.setPen(pens.of(stroke.layer));
        QPolygonF polygon;
        polygon.reserve(static_cast<qsizetype>(stroke.points.size()));
        for (const PointMm& p : stroke.points)
            polygon << point(p);
        if (stroke.end == PathMark::End::Closed)
            painter.drawPolygon(polygon);
        else
            painter.drawPolyline(polygon);
    }
    for (const RoundMark& round : marks.rounds) {
        painter.setPen(pens.of(round.layer));
        painter.drawEllipse(point(round.centre), round.radius, round.radius);
    }
    for (const FillMark& fill : marks.fills) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(pens.of(fill.layer).color());
        QPolygonF polygon;
        for (const PointMm& p : fill.points)
            polygon << point(p);
        painter.drawPolygon(polygon);
        painter.setBrush(Qt::NoBrush);
    }
    for (const LabelMark& label : marks.labels) {
        painter.save();
        painter.setPen(pens.of(label.layer).color());
        if (ink)
            screenText(painter, label.text, paperScale);
        else
            printText(painter, label.text, paperScale);
        painter.restore();
    }
}

void paint(QPainter& painter, const Drawing& drawing, Ink ink) {
    paint(painter, plain(drawing), drawing.paperScale, ink);
}

} // namespace frontwright
