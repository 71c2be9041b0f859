#pragma once

#include "core/geometry/frames.h"

#include <vector>

namespace frontwright {

/// Not on its border.
template<class Frame>
bool isInside(PointIn<Frame> p, const RectIn<Frame>& r) {
    return r.left < p.x && p.x < r.right && r.bottom < p.y && p.y < r.top;
}

/// A part of a plane: a rectangle less rectangles and discs. The region where a mounting screw is
/// allowed is one of these, in the box wall's frame. A point on a border is inside.
template<class Frame>
struct RegionIn {
    RectIn<Frame> outer;
    std::vector<RectIn<Frame>> withoutRects; ///< open: their border is still allowed
    std::vector<DiscIn<Frame>> withoutDiscs; ///< open: their border is still allowed

    [[nodiscard]] bool contains(PointIn<Frame> p) const {
        if (outer.isEmpty() || !outer.contains(p))
            return false;
        for (const auto& r : withoutRects)
            if (isInside(p, r))
                return false;
        for (const auto& d : withoutDiscs)
            if (isWithin(p, d.centre, d.radius))
                return false;
        return true;
    }
    friend bool operator==(const RegionIn&, const RegionIn&) = default;
};
using WallRegion = RegionIn<WallFrame>;

} // namespace frontwright
