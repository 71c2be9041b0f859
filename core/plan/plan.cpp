#include "core/plan/plan.h"

#include <algorithm>

namespace frontwright {
namespace {

template<class Item, class Id, class IdOf>
const Item* found(const std::vector<Item>& items, const std::vector<std::uint32_t>& byId, Id id,
                  IdOf idOf) {
    const auto place =
        std::lower_bound(byId.begin(), byId.end(), id,
                         [&](std::uint32_t i, Id wanted) { return idOf(items[i]) < wanted; });
    return place != byId.end() && idOf(items[*place]) == id ? &items[*place] : nullptr;
}

} // namespace

const FrontPlan* Plan::frontOf(OpeningId id) const {
    return found(fronts, frontsById, id, [](const FrontPlan& front) { return front.opening; });
}

const SpacePlan* Plan::spaceOf(OpeningId id) const {
    return found(spaces, spacesById, id, [](const SpacePlan& space) { return space.opening; });
}

const PlannedBoard* Plan::boardOf(OpeningId id) const {
    const auto place = std::ranges::find(boards, id, &PlannedBoard::opening);
    return place == boards.end() ? nullptr : &*place;
}

const MemberPlan* Plan::memberOf(MemberId id) const {
    return found(members, membersById, id, [](const MemberPlan& member) { return member.id; });
}

} // namespace frontwright
