#pragma once

#include "ui/elevation/emphasis_item.h"

#include <QRectF>

#include <vector>

namespace frontwright {

/// Where each tag is drawn, in pixels from its own place, y down: round it, or lower where it would
/// meet one before it.
std::vector<QRectF> tagBoxes(const std::vector<Emphasis::Tag>&, double pixelsPerMm);

} // namespace frontwright
