#pragma once

#include "ui/elevation/emphasis_item.h"

#include <QFont>

class QPainter;

namespace frontwright {

/// The typeface of what is said on the elevation for the moment.
QFont tagFont();

/// Where the notice lies, in the case's millimetres: beside the pointer in the preferred direction,
/// in another one where there is no room, and always within what is visible where it fits.
QRectF noticeRect(const Emphasis::Notice&, double pixelsPerMm);

/// In pixels, `box` as large as noticeRect made it.
void drawNotice(QPainter&, const Emphasis::Notice&, const QRectF& box, Theme);

} // namespace frontwright
