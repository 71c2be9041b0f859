#include "core/hardware/way_words.h"

namespace frontwright {

std::string_view nameOf(MountingWay way) {
    switch (way) {
    case MountingWay::ThroughWall:
        return "through wall and front";
    case MountingWay::FrontCounterbore:
        return "front only, counterbore";
    case MountingWay::FrontAccessHole:
        break;
    }
    return "front only, access hole";
}

std::string_view orderOfWork(MountingWay way) {
    switch (way) {
    case MountingWay::ThroughWall:
        return "Fasten the front to its box first, then drill front and wall together from the "
               "show face, with scrap behind.";
    case MountingWay::FrontCounterbore:
        return "Drill and counterbore, and put the bolts in, before the front goes on; scrap "
               "behind.";
    case MountingWay::FrontAccessHole:
        break;
    }
    return "Drill the front before it goes on, with scrap behind; the wall has access holes.";
}

} // namespace frontwright
