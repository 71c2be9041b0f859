#include "ui/elevation/notice_box.h"

#include "ui/paper/surface.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace frontwright {

namespace {

constexpr double sign = 13;
constexpr double besideSign = 7;
constexpr double padding = 8;
constexpr double betweenLines = 4;
constexpr double fromPointer = 24;
constexpr double widest = 340;

double indentOf(const Emphasis::Notice::Line& line) {
    return line.severity ? sign + besideSign : 0;
}

/// Of a line's words, wrapped.
QSizeF wordsSize(const Emphasis::Notice::Line& line) {
    const QRectF room(0, 0, widest - indentOf(line), 4000);
    return QFontMetricsF(tagFont()).boundingRect(room, Qt::TextWordWrap, line.text).size();
}

QSizeF sizeOf(const Emphasis::Notice& notice) {
    double width = 0, height = 0;
    for (const auto& line : notice.lines) {
        const QSizeF words = wordsSize(line);
        width = std::max(width, words.width() + indentOf(line));
        height += words.height() + (height > 0 ? betweenLines : 0);
    }
    return {std::ceil(width) + 2 * padding, std::ceil(height) + 2 * padding};
}

} // namespace

QFont tagFont() {
    QFont font = drawingFont();
    font.setPixelSize(13);
    return font;
}

QRectF noticeRect(const Emphasis::Notice& notice, double pixelsPerMm) {
    const QSizeF size = sizeOf(notice) / pixelsPerMm;
    const double away = fromPointer / pixelsPerMm;
    const double right = notice.towards.x() < 0 ? -1 : 1, up = notice.towards.y() < 0 ? -1 : 1;
    const auto beside = [&](double x, double y) {
        return QRectF(x > 0 ? notice.at.x() + away : notice.at.x() - away - size.width(),
                      y > 0 ? notice.at.y() + away : notice.at.y() - away - size.height(),
                      size.width(), size.height());
    };
    const std::array places{beside(right, up), beside(-right, up), beside(right, -up),
                            beside(-right, -up)};
    for (const QRectF& place : places)
        if (notice.visible.contains(place))
            return place;
    QRectF held = places.front();
    held.moveLeft(std::max(std::min(held.left(), notice.visible.right() - size.width()),
                           notice.visible.left()));
    held.moveTop(std::max(std::min(held.top(), notice.visible.bottom() - size.height()),
                          notice.visible.top()));
    return held;
}

void drawNotice(QPainter& painter, const Emphasis::Notice& notice, const QRectF& box, Theme theme) {
    painter.setPen(QPen(accentColour(theme), 1));
    painter.setBrush(sheetColour(theme));
    painter.drawRoundedRect(box, 4, 4);
    painter.setFont(tagFont());
    double y = box.top() + padding;
    for (const auto& line : notice.lines) {
        const QSizeF words = wordsSize(line);
        const double x = box.left() + padding;
        if (line.severity)
            drawSeverity(painter, {x, y + 1, sign, sign}, *line.severity, theme);
        painter.setPen(inkColour(theme));
        painter.drawText(
            QRectF(x + indentOf(line), y, words.width() + 1, words.height()).adjusted(0, 0, 1, 1),
            Qt::TextWordWrap, line.text);
        y += words.height() + betweenLines;
    }
}

} // namespace frontwright
