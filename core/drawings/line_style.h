#pragma once

#include "core/drawings/drawing.h"

#include <vector>

namespace frontwright {

/// How a layer is drawn on paper. Widths after ISO 128 (0.13 0.18 0.25 0.35 0.5 0.7 mm; wide to
/// narrow 2:1), never zero; dashes in mm, empty = continuous.
struct LineStyle {
    double width = 0.25;
    std::vector<double> dashes;
};
LineStyle lineStyle(Layer layer);

/// Stable name for files: "front-edge".
std::string_view key(Layer layer);

} // namespace frontwright
