#pragma once

#include "core/drawings/dimension_rows.h"

#include <functional>

namespace frontwright {

/// Rows round a corner from others: as near as they may be, farther out by the others' reach where
/// a line or text of theirs would be in the way.
struct RowsPlace {
    Side side = Side::Bottom;
    double edge = 0; ///< drawn mm
    double paperScale = 1;
    double reach = 0; ///< of the others past the edge, mm on paper
};
std::vector<Mark> laidClear(const RowsPlace&, const std::vector<Mark>& others,
                            const std::function<void(DimensionRows&)>& lay);

/// How far lines and texts of rows reach along their side past a place there, mm on paper;
/// `outwards` is −1 towards low, 1 towards high.
double reachPast(std::initializer_list<const DimensionRows*>, double edgeOnPaper, int outwards);

} // namespace frontwright
