#pragma once

#include "core/drawings/drawing.h"

#include <optional>
#include <vector>

namespace frontwright {

/// The part of a line that lies in `area`, border included; none where less than a point is left.
std::optional<LineMark> clipped(const LineMark& line, const BoxMm& area);

/// The pieces of a path in `area`; one closed path where nothing is cut off.
std::vector<PathMark> clipped(const PathMark& path, const BoxMm& area);

/// The arcs of a circle in `area`, as open paths that leave the circle by no more than 0.5 µm.
/// Precondition: the circle is not wholly inside.
std::vector<PathMark> arcs(const CircleMark& circle, const BoxMm& area);

/// The part of a convex outline in `area`; no points where nothing is left.
std::vector<PointMm> clippedOutline(const std::vector<PointMm>& outline, const BoxMm& area);

bool isInside(const CircleMark& circle, const BoxMm& area);

/// A line, path, circle or hatch cut to `area`; layer and part stay. Texts and dimensions are laid
/// out anew on each page: none of them comes out of here.
std::vector<Mark> clipped(const Mark& mark, const BoxMm& area);

} // namespace frontwright
