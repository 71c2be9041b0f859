#include "ui/elevation/hit.h"

#include "core/edits/snap.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace frontwright {

namespace {

struct Grab {
    double distance;
    MemberId member;
};

/// Distance from the member's middle line, where `at` is in its grab zone.
std::optional<double> grabDistance(const MemberPlan& member, const PointMm& at, double reach) {
    const BoxMm box = toMm(member.rect);
    const bool upright = dragAxis(member) == DragAxis::LeftRight;
    const int along = upright ? 1 : 0;
    if (at[along] < box.min()[along] || at[along] > box.max()[along])
        return std::nullopt;
    const double distance = std::abs(at[1 - along] - box.center()[1 - along]);
    const double showing =
        member.hasFronts ? member.reveal.least.inMillimetres() / 2 : box.sizes()[1 - along] / 2;
    return distance <= std::max(reach, showing) ? std::optional(distance) : std::nullopt;
}

std::optional<MemberId> memberAt(const Plan& plan, const PointMm& at, double reach, int skip) {
    std::vector<Grab> grabs;
    for (const MemberPlan& member : plan.members)
        if (const auto distance = grabDistance(member, at, reach))
            grabs.push_back({*distance, member.id});
    if (grabs.empty())
        return std::nullopt;
    std::stable_sort(grabs.begin(), grabs.end(),
                     [](const Grab& a, const Grab& b) { return a.distance < b.distance; });
    return grabs[static_cast<std::size_t>(skip) % grabs.size()].member;
}

std::optional<std::uint32_t> mountingHoleAt(const FrontPlan& front, const PointMm& at,
                                            double reach) {
    const PointMm origin = toMm(front.box.origin);
    for (std::uint32_t i = 0; i < front.mounting.holes.size(); ++i) {
        const double hole = front.mounting.clearanceHole.inMillimetres() / 2;
        if ((origin + toMm(front.mounting.holes[i].at) - at).norm() <= std::max(reach / 2, hole))
            return i;
    }
    return std::nullopt;
}

std::optional<std::uint32_t> handleHoleAt(const FrontPlan& front, const PointMm& at, double reach) {
    if (!front.hardware)
        return std::nullopt;
    const PointMm origin = toMm(front.rect.lowerLeft());
    for (std::uint32_t i = 0; i < front.hardware->holes.size(); ++i)
        if ((origin + toMm(front.hardware->holes[i]) - at).norm() <= reach / 2)
            return i;
    return std::nullopt;
}

} // namespace

Hit hitAt(const Plan& plan, const PointMm& at, double reach, int skip) {
    Hit hit;
    hit.member = memberAt(plan, at, reach, skip);
    for (const FrontPlan& front : plan.fronts) {
        if (!toMm(front.rect).contains(at) && !toMm(front.openingRect).contains(at))
            continue;
        hit.opening = front.opening;
        hit.mountingHole = mountingHoleAt(front, at, reach);
        if (!hit.mountingHole)
            hit.handleHole = handleHoleAt(front, at, reach);
        break;
    }
    return hit;
}

} // namespace frontwright
