#pragma once

#include "core/geometry/frames.h"

#include <string_view>

namespace frontwright {

/// "left", "right", "bottom", "top"
constexpr std::string_view nameOf(Side side) {
    switch (side) {
    case Side::Left:
        return "left";
    case Side::Right:
        return "right";
    case Side::Bottom:
        return "bottom";
    case Side::Top:
        break;
    }
    return "top";
}

} // namespace frontwright
