#include "core/plan/arrangement.h"

namespace frontwright {

Arrangement arranged(const Layout& layout) {
    Arrangement result;
    result.members.reserve(layout.members.size());
    for (const PlacedMember& member : layout.members)
        result.members.push_back({member.id, member.kind, member.rect, {}, false});
    result.fronts.resize(layout.openings.size());
    for (std::size_t i = 0; i < layout.openings.size(); ++i) {
        FrontPlace& front = result.fronts[i];
        front.opening = layout.openings[i].id;
        front.openingRect = layout.openings[i].rect;
        for (Side side : allSides)
            front.neighbours[side].member = layout.openings[i].bounds[side];
    }
    return result;
}

} // namespace frontwright
