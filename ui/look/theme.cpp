#include "ui/look/theme.h"

#include <QPainter>
#include <QPainterPath>
#include <QPalette>

#include <array>
#include <cmath>
#include <numbers>

namespace frontwright {

namespace {

QColor pick(Theme theme, QRgb paper, QRgb blueprint) {
    return QColor::fromRgb(theme == Theme::Paper ? paper : blueprint);
}

/// Pencil for what is hidden or auxiliary, ink for edges.
QColor layerColour(Layer layer, Theme theme) {
    switch (layer) {
    case Layer::CaseOutline:
    case Layer::FrontEdge:
    case Layer::CutEdge:
    case Layer::Fastener:
    case Layer::Note:
        return inkColour(theme);
    case Layer::MemberEdge:
    case Layer::Runner:
    case Layer::Handle:
    case Layer::Hole:
    case Layer::Counterbore:
    case Layer::AccessHole:
    case Layer::Moved:
        return pick(theme, 0xff3a3a36, 0xffd3e2f2);
    case Layer::AllowedRegion:
        return pick(theme, 0xff2f7d4f, 0xff8fe0b4);
    case Layer::FieldEdge:
        return pick(theme, 0xff7a4a94, 0xffd9b8f0);
    case Layer::PartDimension:
        return accentColour(theme);
    case Layer::Surrounding:
    case Layer::SystemHole:
    case Layer::ProfileLine:
    case Layer::OpeningEdge:
    case Layer::BoxEdge:
    case Layer::BottomPanel:
    case Layer::HiddenRunner:
    case Layer::CutHatch:
    case Layer::Waste:
    case Layer::Centre:
    case Layer::Dimension:
        return pick(theme, 0xff66645c, 0xffa9c3de);
    case Layer::Wash:
    case Layer::Trim:
    case Layer::Register:
    case Layer::CheckBar:
        break;
    }
    return inkColour(theme);
}

QPolygonF regularPolygon(const QRectF& box, int corners, double firstDegrees) {
    QPolygonF polygon;
    const double r = std::min(box.width(), box.height()) / 2;
    for (int i = 0; i < corners; ++i) {
        const double angle = (firstDegrees + 360.0 * i / corners) * std::numbers::pi / 180;
        polygon << box.center() + QPointF(r * std::cos(angle), r * std::sin(angle));
    }
    return polygon;
}

} // namespace

Theme themeOf(const QPalette& palette) {
    return palette.color(QPalette::Window).lightnessF() >
                   palette.color(QPalette::WindowText).lightnessF()
               ? Theme::Paper
               : Theme::Blueprint;
}

QColor sheetColour(Theme theme) {
    return pick(theme, 0xfffbf7ec, 0xff17395c);
}
QColor partColour(Theme theme) {
    return pick(theme, 0xfff3ead6, 0xff1f4870);
}
QColor memberColour(Theme theme) {
    return pick(theme, 0xfff8f2e3, 0xff1a4066);
}
QColor inkColour(Theme theme) {
    return pick(theme, 0xff22211e, 0xfff2f7fc);
}
QColor accentColour(Theme theme) {
    return pick(theme, 0xff0f62ac, 0xffffd166);
}
QColor wrongColour(Theme theme) {
    return pick(theme, 0xffb4470b, 0xffff9e5e);
}

namespace {

/// Between the two widths of a drawing (ISO 128, 2:1), mm on paper.
constexpr double leastWide = 0.25;

QPen madeScreenPen(Layer layer, Theme theme) {
    const LineStyle style = lineStyle(layer);
    const double width = style.width >= leastWide ? 2.0 : 1.0;
    QPen pen(layerColour(layer, theme), width);
    pen.setCosmetic(true);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    if (!style.dashes.empty()) {
        constexpr double pixelsPerPaperMm = 3.0;
        QList<qreal> dashes;
        for (const double dash : style.dashes)
            dashes << std::max(1.0, dash * pixelsPerPaperMm) / width;
        pen.setDashPattern(dashes);
    }
    return pen;
}

} // namespace

QPen screenPen(Layer layer, Theme theme) {
    // Made once: a frame with a thousand fronts asks for tens of thousands.
    constexpr auto layers = static_cast<std::size_t>(Layer::CheckBar) + 1;
    static const auto pens = [] {
        std::array<std::array<QPen, layers>, 2> all;
        for (std::size_t i = 0; i < layers; ++i) {
            all[0][i] = madeScreenPen(static_cast<Layer>(i), Theme::Paper);
            all[1][i] = madeScreenPen(static_cast<Layer>(i), Theme::Blueprint);
        }
        return all;
    }();
    return pens[static_cast<std::size_t>(theme)][static_cast<std::size_t>(layer)];
}

QColor severityColour(Severity severity, Theme theme) {
    switch (severity) {
    case Severity::Ruins:
    case Severity::WontWork:
        return wrongColour(theme);
    case Severity::OutsidePractice:
        return pick(theme, 0xff7a5a00, 0xfff0d98a);
    case Severity::ToKnow:
        break;
    }
    return pick(theme, 0xff4b5a66, 0xffb9cfe4);
}

void drawSeverity(QPainter& painter, const QRectF& box, Severity severity, Theme theme) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor colour = severityColour(severity, theme);
    const QRectF inner = box.adjusted(1, 1, -1, -1);
    painter.setPen(QPen(colour, 1.6));
    switch (severity) {
    case Severity::Ruins:
        painter.setBrush(colour);
        painter.drawPolygon(regularPolygon(inner, 8, 22.5));
        break;
    case Severity::WontWork:
        painter.setBrush(colour);
        painter.drawPolygon(regularPolygon(inner, 3, -90));
        break;
    case Severity::OutsidePractice:
        painter.setBrush(Qt::NoBrush);
        painter.drawPolygon(regularPolygon(inner, 4, 0));
        break;
    case Severity::ToKnow:
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(inner);
        painter.drawLine(inner.center() + QPointF(0, -inner.height() * 0.05),
                         inner.center() + QPointF(0, inner.height() * 0.28));
        painter.drawPoint(inner.center() + QPointF(0, -inner.height() * 0.25));
        break;
    }
    painter.restore();
}

QPalette windowPalette(Theme theme) {
    QPalette palette;
    const auto set = [&](QPalette::ColorRole role, QRgb paper, QRgb blueprint) {
        palette.setColor(role, pick(theme, paper, blueprint));
    };
    set(QPalette::Window, 0xfff1ede2, 0xff10293f);
    set(QPalette::WindowText, 0xff22211e, 0xffe8f0f8);
    set(QPalette::Base, 0xfffdfbf5, 0xff0c2236);
    set(QPalette::AlternateBase, 0xfff6f1e5, 0xff12304b);
    set(QPalette::Text, 0xff22211e, 0xffe8f0f8);
    set(QPalette::Button, 0xffe9e3d4, 0xff1a3d5f);
    set(QPalette::ButtonText, 0xff22211e, 0xffe8f0f8);
    set(QPalette::ToolTipBase, 0xfffffdf6, 0xff0c2236);
    set(QPalette::ToolTipText, 0xff22211e, 0xffe8f0f8);
    set(QPalette::PlaceholderText, 0xff6b6860, 0xff9db6cd);
    set(QPalette::Highlight, 0xff0f62ac, 0xffffd166);
    set(QPalette::HighlightedText, 0xffffffff, 0xff10293f);
    set(QPalette::Link, 0xff0f62ac, 0xffffd166);
    set(QPalette::Light, 0xffffffff, 0xff2b557c);
    set(QPalette::Midlight, 0xfff7f3ea, 0xff234b70);
    set(QPalette::Mid, 0xffc9c2b0, 0xff2f5a82);
    set(QPalette::Dark, 0xff9b9484, 0xff081826);
    set(QPalette::Shadow, 0xff5e5a50, 0xff040d16);
    const QColor faint = pick(theme, 0xff8b867a, 0xff7d98b1);
    palette.setColor(QPalette::Disabled, QPalette::Text, faint);
    palette.setColor(QPalette::Disabled, QPalette::WindowText, faint);
    palette.setColor(QPalette::Disabled, QPalette::ButtonText, faint);
    return palette;
}

} // namespace frontwright
