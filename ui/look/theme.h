#pragma once

#include "core/drawings/line_style.h"
#include "core/findings/finding.h"

#include <QColor>
#include <QPen>

class QPalette;
class QPainter;
class QRectF;

namespace frontwright {

/// Light is ink and pencil on warm paper, dark is a blueprint. Follows the window's palette: light
/// where its background is lighter than its text.
enum class Theme : std::uint8_t { Paper, Blueprint };
Theme themeOf(const QPalette&);

/// The sheet that the drawing lies on.
QColor sheetColour(Theme);
/// Behind a front: the quiet tone of a part, against the sheet.
QColor partColour(Theme);
QColor memberColour(Theme);
QColor inkColour(Theme);
/// The one accent for what is selected or held; always with a thicker line or a handle as well.
QColor accentColour(Theme);
/// The one accent for what is wrong; always with a shape as well.
QColor wrongColour(Theme);

/// How a layer looks on screen: cosmetic, in pixels, dashes as on paper.
QPen screenPen(Layer, Theme);

/// A severity's own shape, so that it is told apart without colour: filled octagon, filled
/// triangle, open diamond, open circle with an i. Fills `box`.
void drawSeverity(QPainter&, const QRectF& box, Severity, Theme);
QColor severityColour(Severity, Theme);

/// The palette of the whole window in that theme, on top of the style's own.
QPalette windowPalette(Theme);

} // namespace frontwright
