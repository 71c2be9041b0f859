#include "core/plan/round_case.h"

namespace frontwright {

namespace {

/// The outer members stand first in a plan, in the order of the sides.
bool isAtEdge(const FrontPlan& front, Side side) {
    return front.neighbours[side].member == static_cast<std::uint32_t>(side);
}

} // namespace

Length insideCase(const CaseRect& outline, const CaseRect& front, Side side) {
    switch (side) {
    case Side::Left:
        return front.left - outline.left;
    case Side::Right:
        return outline.right - front.right;
    case Side::Bottom:
        return front.bottom - outline.bottom;
    case Side::Top:
        break;
    }
    return outline.top - front.top;
}

void addSurroundings(Plan& plan, const Case& casework) {
    plan.surroundings = casework.surroundings;
    const PerSide<Length> out = standingOut(casework.surroundings);
    plan.whole = {plan.outline.left - out.left, plan.outline.bottom - out.bottom,
                  plan.outline.right + out.right, plan.outline.top + out.top};
    for (const Side side : allSides) {
        const auto limit = plan.limits[side] = edgeLimit(casework.surroundings[side]);
        if (!limit)
            continue;
        for (FrontPlan& front : plan.fronts) {
            if (!isAtEdge(front, side))
                continue;
            if (!front.toSurround)
                front.toSurround.emplace();
            (*front.toSurround)[side] =
                insideCase(plan.outline, front.rect, side) + limit->obstacle;
        }
    }
}

/// From drawer to drawer: several fronts on one box count as one, from the lowest.
void addSteps(Plan& plan) {
    const auto lowest = [&](const FrontPlan& front) {
        Length bottom = front.rect.bottom;
        if (front.face)
            for (std::uint32_t i = 0; i < plan.faces[*front.face].count; ++i)
                bottom = least(bottom, plan.fronts[plan.faces[*front.face].first + i].rect.bottom);
        return bottom;
    };
    for (FrontPlan& front : plan.fronts) {
        const auto above = front.neighbours.top.front;
        if (!above || front.use != OpeningUse::Drawer)
            continue;
        const FrontPlan& next = plan.fronts[*above];
        const bool isOneBox = front.face && front.face == next.face;
        if (next.bank == front.bank && next.use == OpeningUse::Drawer && !isOneBox)
            front.step = lowest(next) - lowest(front);
    }
}

} // namespace frontwright
