#include "core/plan/arrangement.h"

#include "core/plan/blocks.h"
#include "core/plan/overlays.h"

namespace frontwright {

Arrangement arrange(const Layout& layout, const FrontFit& ofCase) {
    Arrangement all{layout, facingOpenings(layout), {}, {}, {}, {}, {}, {}, {}};
    all.members.reserve(layout.members.size());
    for (const PlacedMember& member : layout.members)
        all.members.push_back({member.id, member.kind, member.rect, {}, false});
    setOverlays(all, ofCase);
    setRects(all);
    setNeighbours(all);
    setStops(all);
    return all;
}

Arrangement rearranged(const Arrangement& from, std::vector<PerSide<Length>> overlays) {
    Arrangement all{from.layout, from.facing, from.members, from.fits, std::move(overlays),
                    {},          {},          {},           {}};
    for (MemberPlan& member : all.members) {
        member.reveal = {};
        member.hasFronts = false;
    }
    setRects(all);
    setNeighbours(all);
    setStops(all);
    return all;
}

} // namespace frontwright
