#pragma once

#include "core/geometry/frames.h"

#include <algorithm>
#include <iterator>
#include <optional>
#include <vector>

namespace frontwright {

/// The longest stocked length in the window, both ends included; nullopt where there is none.
/// Precondition: the lengths are ascending.
inline std::optional<Length> longestStocked(const std::vector<Length>& ascending, Span window) {
    const auto above = std::upper_bound(ascending.begin(), ascending.end(), window.high);
    if (above == ascending.begin() || *std::prev(above) < window.low)
        return std::nullopt;
    return *std::prev(above);
}

} // namespace frontwright
