#pragma once

#include "core/plan/quantity.h"

namespace frontwright {

using Value = std::optional<Measure>;
using Index = std::uint32_t;

/// Index 0 is the least, 1 the greatest; nullopt beyond.
inline Value ofRange(const SeasonRange& range, Index index) {
    return index > 1 ? std::nullopt : Value(index == 0 ? range.least : range.greatest);
}

/// Precondition: a kind of a front's.
Value valueOfFront(const FrontPlan&, QuantityKind, Index);

/// Precondition: a kind of a filler strip's.
Value valueOfFiller(const Filler&, QuantityKind);

} // namespace frontwright
