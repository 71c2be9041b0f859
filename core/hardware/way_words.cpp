#include "core/hardware/way_words.h"

namespace frontwright {

Text nameOf(MountingWay way) {
    switch (way) {
    case MountingWay::ThroughWall:
        return text("through wall and front");
    case MountingWay::FrontCounterbore:
        return text("front only, counterbore");
    case MountingWay::FrontAccessHole:
        break;
    }
    return text("front only, access hole");
}

Text howHeld(const WayPlan& way) {
    switch (way.way) {
    case MountingWay::ThroughWall:
        return text("through wall and front");
    case MountingWay::FrontCounterbore:
        return way.counterbore.isZero() ? text("in the front only")
                                        : text("in the front only, head in a counterbore");
    case MountingWay::FrontAccessHole:
        break;
    }
    return text("in the front only, reached through an access hole");
}

Text orderOfWork(const WayPlan& way) {
    if (way.way == MountingWay::FrontCounterbore && way.counterbore.isZero())
        return text("Drill the front, with scrap behind, and put the bolts in before it goes on.");
    return orderOfWork(way.way);
}

Text orderOfWork(MountingWay way) {
    switch (way) {
    case MountingWay::ThroughWall:
        return text(
            "Fasten the front to its box first, then drill front and wall together from the "
            "show face, with scrap behind.");
    case MountingWay::FrontCounterbore:
        return text("Drill and counterbore, and put the bolts in, before the front goes on; scrap "
                    "behind.");
    case MountingWay::FrontAccessHole:
        break;
    }
    return text("Drill the front before it goes on, with scrap behind; the wall has access holes.");
}

} // namespace frontwright
