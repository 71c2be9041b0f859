#pragma once

#include "core/drawings/drawing.h"

#include <string_view>
#include <vector>

namespace frontwright {

/// How a layer is drawn on paper. Widths after ISO 128 (0.13 0.18 0.25 0.35 0.5 0.7 mm; wide to
/// narrow 2:1), never zero; dashes in mm, empty = continuous.
struct LineStyle {
    double width = 0.25;
    std::vector<double> dashes;
};
/// For reduced scales: wide 0.35 mm, narrow 0.18 mm. Dashes after ISO 128-2 (dash 12 d, gap 3 d,
/// long dash 24 d, dot 0.5 d; from memory).
LineStyle lineStyle(Layer layer);

/// At full scale (paperScale 1) lines are cut and drilled to: none is wider than 0.25 mm.
LineStyle lineStyle(Layer layer, double paperScale);

/// Stable name for files: "front-edge".
std::string_view key(Layer layer);

} // namespace frontwright
