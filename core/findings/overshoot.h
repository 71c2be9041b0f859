#pragma once

#include "core/geometry/frames.h"

namespace frontwright::judging {

/// How far one rectangle reaches out of another, and where it does most; not more than 0 where it
/// lies within.
struct Overshoot {
    Length by;
    Side side = Side::Left;
};

template<class Frame>
Overshoot overshoot(const RectIn<Frame>& part, const RectIn<Frame>& within) {
    Overshoot most{within.left - part.left, Side::Left};
    for (const Overshoot& other : {Overshoot{part.right - within.right, Side::Right},
                                   Overshoot{within.bottom - part.bottom, Side::Bottom},
                                   Overshoot{part.top - within.top, Side::Top}})
        if (other.by > most.by)
            most = other;
    return most;
}

} // namespace frontwright::judging
