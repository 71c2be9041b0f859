#pragma once

#include "core/plan/plan.h"

namespace frontwright {

// A filler strip as a beam: on two supports, where the screws beside the gap hold the fronts, with
// a hand's push in the middle. The wall behind it is not counted, so that the strip is stiff before
// it is glued to anything.
//   bend b = F · l³ / (48 · E · I),  I = width · thickness³ / 12
//   least thickness = ∛(F · l³ / (4 · E · width · greatest bend))

/// What a hand pushes with: 10 lbf (44.5 N); common practice, no source.
inline constexpr double handPushPoundsForce = 10;
/// Stiffness of a furniture wood along its grain: 10 000 N/mm²; the Wood Handbook, chapter 5, has 8
/// to 14 thousand for most, from memory.
inline constexpr double stiffnessNewtonsPerSquareMillimetre = 10'000;

/// None where a size is not more than 0.
std::optional<Length> bendOf(Length span, Length width, Length thickness);
/// Rounded up to the nanometre's nearest; none where a size is not more than 0.
std::optional<Length> thicknessThatBends(Length by, Length span, Length width);

/// One for each gap between two fronts of drawers on one box; none where they leave no gap. The
/// plan has its fronts, members and spacers.
std::vector<Filler> fillersOf(const Plan&, const Limits&);

/// The one at that member whose first front, in the plan's order, is the opening's; null where
/// there is none.
const Filler* fillerOf(const Plan&, OpeningId first, MemberId);

/// Where it lies in the gap, in the elevation.
CaseRect placeOf(const Plan&, const Filler&);

} // namespace frontwright
