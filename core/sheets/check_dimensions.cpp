#include "core/sheets/check_dimensions.h"

#include "core/lengths/format.h"

namespace frontwright {

namespace {

constexpr double enough = 0.6; ///< of the part; holes that span less do not prove its size
// From the part's lower and left edge to its overall dimensions; at the left past a box's side.
constexpr double fromBelow = 8; ///< mm
constexpr double fromLeft = 22; ///< mm

} // namespace

void addChecks(TemplateDraft& draft, LengthStyle style, Length width, Length height,
               CheckedStretch across, CheckedStretch upright, const PointMm& throughHole) {
    const double w = width.inMillimetres(), h = height.inMillimetres();
    if (!across.value.isZero())
        draft.checkDimension({across.from, throughHole.y()}, {across.to, throughHole.y()},
                             shown(across.value, style));
    if (!upright.value.isZero())
        draft.checkDimension({throughHole.x(), upright.from}, {throughHole.x(), upright.to},
                             shown(upright.value, style));
    const double marginY = std::min(fromBelow, h / 4), marginX = std::min(fromLeft, w / 4);
    if (across.to - across.from < enough * w)
        draft.checkDimension({0, marginY}, {w, marginY}, shown(width, style));
    if (upright.to - upright.from < enough * h)
        draft.checkDimension({marginX, 0}, {marginX, h}, shown(height, style));
}

} // namespace frontwright
