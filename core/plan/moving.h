#pragma once

#include "core/plan/arrangement.h"

#include <optional>

namespace frontwright {

/// How far each edge of the front goes outwards as its size across the grain changes by that part
/// of it: from the row that holds it, in proportion to the distance.
PerSide<Length> outward(const FrontPlan&, Grain, double relative);

/// What the wood takes up from the project's air; none where there is no air. Error: the air is
/// impossible.
Result<std::optional<SeasonMoisture>> moistureOf(const Project&);

/// How a front of that stock moves by itself: the same for all fronts of one size, stock and
/// screws. Overlays and gaps are left to addSeasonGaps. Reads the front's size, box and screws.
FrontSeason seasonOf(const FrontPlan&, const Stock&, const WoodFigures&, const SeasonMoisture&,
                     Unit drills);

/// Sets what becomes of every overlay, gap, reveal and spacer. Reads the fronts' seasons; the
/// arrangement is that of the plan.
void addSeasonGaps(Plan&, const Project&, Arrangement&);

/// The plan with its fronts as they are at that moisture, `times` as far moved as they are: for
/// drawings. Frame, boxes and holes stay. Without air, or where nothing moves, it is the same.
/// Precondition: the plan is the project's.
Plan movedPlan(const Project&, const Plan&, double moisture, double times);

/// The smallest gap between fronts, or round an inset front, at that moisture. nullopt where there
/// is no gap, or no air.
std::optional<Length> smallestGap(const Project&, const Plan&, double moisture);

} // namespace frontwright
