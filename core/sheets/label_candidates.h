#pragma once

#include "core/sheets/sheets.h"

namespace frontwright {

/// Width and height in mm of the upright rectangle that a label's lines cover.
PointMm sizeOf(const TemplateLabel& label);

/// The label's texts in a rectangle of that size with its lower left corner at `at`.
std::vector<Mark> textsOf(const TemplateLabel& label, const PointMm& at);

/// Rectangles beside what the label names, the nearest and preferred ones first. `line`: the part
/// of it that can be seen.
std::vector<BoxMm> placesBeside(const CircleMark& circle, const PointMm& size);
std::vector<BoxMm> placesBeside(const LineMark& line, const PointMm& size,
                                TemplateLabel::Prefer prefer);

/// Rectangles on a grid over `bounds`, the nearest to `to` first.
std::vector<BoxMm> placesWithin(const BoxMm& bounds, const PointMm& size, const PointMm& to);

/// From what is named to the nearest point of its label; none where they are side by side.
std::optional<LineMark> leaderTo(const BoxMm& box, const CircleMark& circle);
std::optional<LineMark> leaderTo(const BoxMm& box, const LineMark& line);

} // namespace frontwright
