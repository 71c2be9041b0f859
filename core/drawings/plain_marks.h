#pragma once

#include "core/drawings/drawing.h"

#include <array>

namespace frontwright {

/// What a surface has to be able to draw: everything else (dimensions, hatches) is made of these.
struct StrokeMark {
    Layer layer;
    std::vector<PointMm> points;
    PathMark::End end = PathMark::End::Open;
    Part part;
};
struct RoundMark {
    Layer layer;
    PointMm centre;
    double radius;
    Part part;
};
struct LabelMark {
    Layer layer;
    TextMark text; ///< height still in paper mm
    Part part;
    std::optional<Quantity> quantity;
};
/// Filled in the line's colour: arrow heads.
struct FillMark {
    Layer layer;
    std::vector<PointMm> points;
};
/// Filled, or a line of that width in drawn mm; in the order in which they lie on each other.
struct WashMark {
    std::vector<PointMm> points;
    Tone tone;
    double width = 0;
    Part part;
};
struct PlainMarks {
    std::vector<WashMark> washes; ///< below everything else
    std::vector<StrokeMark> strokes;
    std::vector<RoundMark> rounds;
    std::vector<LabelMark> labels;
    std::vector<FillMark> fills;
};

/// Resolves dimensions and hatches into strokes, fills and labels at the drawing's paper scale. No
/// extension line runs through the figures of a dimension.
PlainMarks plain(const Drawing&);

/// SVG text of a drawing: width and height in mm, viewBox in mm, one group per layer; decimal
/// points, six decimals at most, LF, final newline.
std::string svg(const Drawing&, std::string_view title);

} // namespace frontwright
