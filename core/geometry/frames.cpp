#include "core/geometry/frames.h"

namespace frontwright {

Side opposite(Side side) {
    switch (side) {
    case Side::Left:
        return Side::Right;
    case Side::Right:
        return Side::Left;
    case Side::Bottom:
        return Side::Top;
    case Side::Top:
        break;
    }
    return Side::Bottom;
}

} // namespace frontwright
