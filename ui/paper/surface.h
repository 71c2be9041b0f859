#pragma once

#include "core/drawings/plain_marks.h"
#include "ui/look/theme.h"

#include <QFont>

#include <optional>

class QPainter;

namespace frontwright {

/// How a drawing is coloured and how wide its lines are. None: print, black, true widths.
/// A theme: screen, its colours, cosmetic pens.
using Ink = std::optional<Theme>;

/// Draws with a painter whose units are the drawing's millimetres, y up (see paperFrame). Floating
/// point throughout; text heights and widths are paper millimetres over `paperScale`.
void paint(QPainter&, const PlainMarks&, double paperScale, Ink);
void paint(QPainter&, const Drawing&, Ink);

/// The one place where millimetres become device units: y up, origin at the lower left corner of
/// a page `heightMm` tall whose top left corner is the device's origin. Separate x and y, since
/// some printers are 300 × 600 dpi.
void paperFrame(QPainter&, double unitsPerMmX, double unitsPerMmY, double heightMm);

/// The drawing's typeface, the same on every machine. `emMm` for capitals of `capMm`.
QFont drawingFont();
double emForCapitals(double capMm);

} // namespace frontwright
