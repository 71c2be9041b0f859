#pragma once

#include "core/sheets/page_furniture.h"

namespace frontwright {

/// The part's lines in a tile, cut to it, and their labels inside what is left after trimming.
void addContent(Page&, const TileOnPage&);

/// Anything of the part itself lies in that part of it: waste and words do not count.
bool showsPart(const Template&, const BoxMm& area);

/// Centres of holes; large ones with points round them, so that a joint clear of the points by
/// 5 mm is clear of the whole hole.
std::vector<PointMm> holesToKeepOffJoints(const Template&);
/// Upright and level lines that a joint should not run along: points at their x or their y.
std::vector<PointMm> linesToKeepOffJoints(const Template&);

/// What can be measured of a mark in the part's frame: centres of circles, corners of outlines,
/// ends of named lines. Only what lies in `area`.
std::vector<PageMark> pageMarks(const Template&, const BoxMm& area, const PointMm& shift);

} // namespace frontwright
