#pragma once

#include "core/plan/plan.h"

#include <span>
#include <vector>

namespace frontwright {

/// More pairs than anybody reads; keeps a case of absurd overlays from filling the memory.
inline constexpr std::size_t mostCollisions = 100'000;

/// All pairs of rectangles with a common part of positive area, also such as do not lie side by
/// side; ascending by first, then second. Where there are more than mostCollisions, so many of
/// them. Empty rectangles meet nothing.
std::vector<Collision> collisionsAmong(std::span<const CaseRect>);

} // namespace frontwright
