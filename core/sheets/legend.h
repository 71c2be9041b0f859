#pragma once

#include "core/sheets/sheets.h"

namespace frontwright {

/// Height in mm of the signs and their words in that width.
double legendHeight(double width, const Language&);

/// What the signs on the pages mean, in lines from the area's upper left corner.
void addLegend(Page&, const BoxMm& area, const Language&);

/// A register mark: a cross in a diamond, which is never taken for a hole. `reach` in mm from the
/// middle to the cross's ends.
std::vector<Mark> registerMark(const PointMm& centre, double reach);

} // namespace frontwright
