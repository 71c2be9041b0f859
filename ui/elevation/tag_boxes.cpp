#include "ui/elevation/tag_boxes.h"

#include "ui/elevation/notice_box.h"

#include <QFontMetricsF>

#include <algorithm>

namespace frontwright {

namespace {

constexpr double apart = 4; // pixels

QRectF boxOf(const QString& text) {
    const QFontMetricsF metrics(tagFont());
    const QRectF words(0, 0, metrics.horizontalAdvance(text), metrics.height());
    return words.adjusted(-6, -3, 6, 3).translated(-words.width() / 2, -words.height() / 2);
}

} // namespace

std::vector<QRectF> tagBoxes(const std::vector<Emphasis::Tag>& tags, double pixelsPerMm) {
    std::vector<QRectF> taken, boxes;
    for (const Emphasis::Tag& tag : tags) {
        const QRectF own = boxOf(tag.text);
        const QPointF at(tag.at.x() * pixelsPerMm, -tag.at.y() * pixelsPerMm);
        QRectF placed = own.translated(at);
        // Each turn lowers it below one that it meets: no more turns than tags.
        for (std::size_t turn = 0; turn < taken.size(); ++turn)
            for (const QRectF& other : taken)
                if (placed.intersects(other.adjusted(-apart, -apart, apart, apart)))
                    placed.moveTop(other.bottom() + apart + 1);
        taken.push_back(placed);
        boxes.push_back(placed.translated(-at));
    }
    return boxes;
}

} // namespace frontwright
