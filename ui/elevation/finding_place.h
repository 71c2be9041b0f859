#pragma once

#include "core/findings/finding.h"

#include <QPointF>

#include <optional>

namespace frontwright {

/// Where a finding is in the elevation (case mm): at its hole, at its side, else in the middle of
/// its part. Nothing for what concerns the whole case.
std::optional<QPointF> placeOf(const Finding&, const Plan&);

} // namespace frontwright
