#include "ui/elevation/hit.h"

#include "core/edits/snap.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace frontwright {

namespace {

struct Grab {
    double distance;
    std::optional<MemberId> member;
    std::optional<PlacedPart> part;
};
using Grabs = std::vector<Grab>;

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

void addMembers(Grabs& grabs, const Plan& plan, const PointMm& at, double reach) {
    for (const MemberPlan& member : plan.members)
        if (const auto distance = grabDistance(member, at, reach))
            grabs.push_back({*distance, member.id, {}});
}

void addHoles(Grabs& grabs, const FrontPlan& front, const PointMm& at, double reach) {
    const PointMm origin = toMm(front.box.origin);
    const double rim = front.mounting.clearanceHole.inMillimetres() / 2;
    for (std::uint32_t i = 0; i < front.mounting.holes.size(); ++i) {
        const double distance = (origin + toMm(front.mounting.holes[i].at) - at).norm();
        if (distance <= std::max(reach, rim))
            grabs.push_back(
                {distance, {}, PlacedPart{PlacedPart::Kind::MountingHole, front.opening, i}});
    }
}

/// A handle covers holes and members: what is nearer than most of the reach goes before it.
void addHandles(Grabs& grabs, const FrontPlan& front, const PointMm& at, double reach) {
    if (!front.hardware)
        return;
    constexpr double behind = 0.75;
    const PointMm origin = toMm(front.rect.lowerLeft());
    for (std::uint32_t i = 0; i < front.hardware->handles.size(); ++i) {
        const double distance = std::sqrt(
            toMm(front.hardware->handles[i].footprint).squaredExteriorDistance(at - origin));
        if (distance <= reach)
            grabs.push_back({std::max(distance, behind * reach),
                             {},
                             PlacedPart{PlacedPart::Kind::Handle, front.opening, i}});
    }
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

Hit hitAt(const Plan& plan, const PointMm& at, double reach, int skip, Shown holes) {
    Hit hit;
    Grabs grabs;
    addMembers(grabs, plan, at, reach);
    const PointMm zone(reach, reach);
    for (const FrontPlan& front : plan.fronts) {
        const BoxMm rect = toMm(front.rect), opening = toMm(front.openingRect);
        if (!hit.opening && (rect.contains(at) || opening.contains(at))) {
            hit.opening = front.opening;
            hit.handleHole = handleHoleAt(front, at, reach);
        }
        if (!BoxMm(rect.min() - zone, rect.max() + zone).contains(at))
            continue;
        if (holes == Shown::Yes)
            addHoles(grabs, front, at, reach);
        addHandles(grabs, front, at, reach);
    }
    for (const SpacePlan& space : plan.spaces)
        if (!hit.opening && toMm(space.rect).contains(at))
            hit.opening = space.opening;
    if (grabs.empty())
        return hit;
    std::stable_sort(grabs.begin(), grabs.end(),
                     [](const Grab& a, const Grab& b) { return a.distance < b.distance; });
    const Grab& grab = grabs[static_cast<std::size_t>(skip) % grabs.size()];
    hit.member = grab.member;
    hit.part = grab.part;
    if (hit.part && hit.part->kind == PlacedPart::Kind::MountingHole) {
        hit.opening = hit.part->opening;
        hit.mountingHole = hit.part->index;
        hit.handleHole.reset();
    }
    return hit;
}

} // namespace frontwright
