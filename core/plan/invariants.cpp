#include "core/plan/collisions.h"
#include "core/plan/facing.h"
#include "core/plan/plan.h"

namespace frontwright {
namespace {

/// Square nanometres: a case of a few metres already fills 64 bits.
__extension__ using Area = __int128;

Area areaOf(const CaseRect& r) {
    return Area{r.width().nanometres()} * r.height().nanometres();
}

std::string nameOf(const FrontPlan& front) {
    return "opening " + std::to_string(front.opening.number);
}
std::string nameOf(const MemberPlan& member) {
    return "member " + std::to_string(member.id.number);
}

std::string nameOf(const SpacePlan& space) {
    return "opening " + std::to_string(space.opening.number);
}

/// Rectangles that lie in the outline, do not overlap and have its area between them tile it.
std::string brokenTiling(const Plan& plan) {
    std::vector<CaseRect> parts;
    parts.reserve(plan.members.size() + plan.fronts.size() + plan.spaces.size());
    for (const MemberPlan& member : plan.members)
        parts.push_back(member.rect);
    for (const FrontPlan& front : plan.fronts)
        parts.push_back(front.openingRect);
    for (const SpacePlan& space : plan.spaces)
        parts.push_back(space.rect);
    const auto name = [&](std::size_t i) {
        const std::size_t fronts = plan.members.size(), spaces = fronts + plan.fronts.size();
        return i < fronts   ? nameOf(plan.members[i])
               : i < spaces ? nameOf(plan.fronts[i - fronts])
                            : nameOf(plan.spaces[i - spaces]);
    };
    Area sum = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i].isEmpty() || !plan.outline.contains(parts[i]))
            return name(i) + " does not lie in the case";
        sum += areaOf(parts[i]);
    }
    const auto overlaps = collisionsAmong(parts);
    if (!overlaps.empty())
        return name(overlaps.front().first) + " overlaps " + name(overlaps.front().second);
    return sum == areaOf(plan.outline) ? "" : "openings and members leave a part of the case over";
}

std::string brokenBox(const Plan& plan, const FrontPlan& front) {
    const CaseRect& behind = front.face ? plan.faces[*front.face].rect : front.openingRect;
    const BoxPlan& box = front.box;
    if (box.width + 2 * box.sideClearance != behind.width() ||
        box.height + box.clearanceBelow + box.clearanceAbove != behind.height())
        return nameOf(front) + ": box, opening and clearances do not sum";
    const CasePoint apart = behind.lowerLeft() - front.openingRect.lowerLeft();
    const FrontPoint byRule{box.sideClearance + front.overlay.left + apart.x,
                            box.clearanceBelow + front.overlay.bottom + apart.y};
    if (toFront(box, WallPoint{}) != byRule)
        return nameOf(front) + ": the box's frame is not tied to the front's";
    const WallPoint corner{box.width, box.height};
    if (toWall(box, toFront(box, corner)) != corner ||
        mirroredAcross(box, mirroredAcross(box, corner)) != corner)
        return nameOf(front) + ": front and box frames do not invert each other";
    return "";
}

std::string brokenFront(const Plan& plan, const FrontPlan& front) {
    const CaseRect& rect = front.rect;
    const CaseRect& opening = front.openingRect;
    const PerSide<Length> overlay{opening.left - rect.left, rect.right - opening.right,
                                  opening.bottom - rect.bottom, rect.top - opening.top};
    if (overlay != front.overlay)
        return nameOf(front) + ": front, opening and overlays do not sum";
    return front.hasBox() ? brokenBox(plan, front) : "";
}

std::string brokenSpacer(const Plan& plan, const Spacer& spacer) {
    const MemberPlan& member = plan.members[spacer.member];
    const FrontPlan& lower = plan.fronts[spacer.lower];
    const FrontPlan& upper = plan.fronts[spacer.upper];
    const Side ofLower = sideOfLower(member.kind), ofUpper = sideOfUpper(member.kind);
    if (lower.overlay[ofLower] + spacer.width + upper.overlay[ofUpper] != widthOf(member))
        return nameOf(member) + ": spacer and overlays do not sum to its width";
    const Length apart = isUpright(member.kind) ? upper.rect.left - lower.rect.right
                                                : upper.rect.bottom - lower.rect.top;
    return spacer.width == apart ? "" : nameOf(member) + ": its spacer does not fit the fronts";
}

std::string brokenStop(const Plan& plan, const Stop& stop) {
    const FrontPlan& front = plan.fronts[stop.front];
    const MemberPlan& member = plan.members[front.neighbours[stop.side].member];
    return stop.fromFarEdge + stop.fromOpening == widthOf(member)
               ? ""
               : nameOf(member) + ": a stop's two set-ups do not sum to its width";
}

template<class Items, class Check>
std::string firstBroken(const Items& items, Check check) {
    for (const auto& item : items)
        if (std::string broken = check(item); !broken.empty())
            return broken;
    return "";
}

} // namespace

std::string brokenInvariant(const Plan& plan) {
    std::string broken = brokenTiling(plan);
    if (broken.empty())
        broken = firstBroken(plan.fronts,
                             [&](const FrontPlan& front) { return brokenFront(plan, front); });
    if (broken.empty())
        broken = firstBroken(plan.spacers,
                             [&](const Spacer& spacer) { return brokenSpacer(plan, spacer); });
    if (broken.empty())
        broken = firstBroken(plan.stops, [&](const Stop& stop) { return brokenStop(plan, stop); });
    return broken;
}

} // namespace frontwright
