#pragma once

#include "core/geometry/frames.h"
#include "core/words/phrase.h"

namespace frontwright {

/// "left", "right", "bottom", "top"
constexpr Text nameOf(Side side) {
    switch (side) {
    case Side::Left:
        return text("left");
    case Side::Right:
        return text("right");
    case Side::Bottom:
        return text("bottom");
    case Side::Top:
        break;
    }
    return text("top");
}

} // namespace frontwright
