#pragma once

#include "core/plan/arrangement.h"

#include <optional>

namespace frontwright {

/// How far each edge of the front goes outwards as its size across the grain changes by that part
/// of it: from the row that holds it, in proportion to the distance.
PerSide<Length> outward(const FrontPlan&, Grain, double relative);

/// Sets what the air makes of every front, gap, reveal and spacer. Reads fronts that are outfitted;
/// the arrangement is that of the plan. Error: the air is impossible.
std::optional<Error> addSeasons(Plan&, const Project&, const Catalogue&, Arrangement&);

/// The plan with its fronts as they are at that moisture, `times` as far moved as they are: for
/// drawings. Frame, boxes and holes stay. Without air, or where nothing moves, it is the same.
/// Precondition: the plan is the project's.
Plan movedPlan(const Project&, const Plan&, double moisture, double times);

/// The smallest gap between fronts, or round an inset front, at that moisture. nullopt where there
/// is no gap, or no air.
std::optional<Length> smallestGap(const Project&, const Plan&, double moisture);

} // namespace frontwright
