#pragma once

#include "core/geometry/mm.h"

#include <QRectF>

namespace frontwright {

/// A part of the case in scene units: millimetres, y up, so that "top" is the lower edge.
inline QRectF inScene(const CaseRect& rect) {
    return {rect.left.inMillimetres(), rect.bottom.inMillimetres(), rect.width().inMillimetres(),
            rect.height().inMillimetres()};
}
inline QRectF inScene(const BoxMm& box) {
    return {box.min().x(), box.min().y(), box.sizes().x(), box.sizes().y()};
}
inline QPointF inScene(const PointMm& p) {
    return {p.x(), p.y()};
}

} // namespace frontwright
