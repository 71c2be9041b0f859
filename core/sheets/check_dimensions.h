#pragma once

#include "core/sheets/template_draft.h"

namespace frontwright {

/// A distance between two coordinates along one axis, with its exact value.
struct CheckedStretch {
    double from = 0;
    double to = 0;
    Length value;
};
/// First and last of some coordinates; nothing where they are one.
template<class Range, class Get>
CheckedStretch firstToLast(const Range& range, Get get) {
    if (std::empty(range))
        return {};
    Length low = get(*std::begin(range)), high = low;
    for (const auto& item : range) {
        low = least(low, get(item));
        high = greatest(high, get(item));
    }
    return {low.inMillimetres(), high.inMillimetres(), high - low};
}

/// Dimensions to be measured across the joints: first to last hole, and edge to edge where the
/// holes span less than most of the part. Those of the holes run through that hole.
void addChecks(TemplateDraft&, LengthStyle, Length width, Length height, CheckedStretch across,
               CheckedStretch upright, const PointMm& throughHole);

} // namespace frontwright
