#include "core/boxes/runner.h"

#include "core/catalogue/stocked.h"

namespace frontwright {
namespace {

constexpr Length nothing{};

/// In both lower corners of what is that wide, `inset` from its ends, or in its middle.
std::vector<WallRect> atLowerEdge(const std::optional<UprightSize>& size, RunnerForm form,
                                  Length width, Length inset) {
    if (!size || size->width <= nothing || size->height <= nothing)
        return {};
    if (!isPair(form)) {
        const Length left = (width - size->width).half();
        return {{left, nothing, left + size->width, size->height}};
    }
    return {{inset, nothing, inset + size->width, size->height},
            {width - inset - size->width, nothing, width - inset, size->height}};
}

} // namespace

RunnerReach runnerReach(const BoxSpec& spec, const RunnerKind& kind, const RunnerPlace& place) {
    RunnerReach reach;
    reach.setback = kind.setback ? place.boxSetback + *kind.setback : place.frameThickness;
    reach.room = place.frameThickness + place.caseDepth - reach.setback;
    if (spec.runnerLength)
        reach.length = *spec.runnerLength;
    else if (kind.lengths.empty())
        reach.length = reach.room > nothing ? std::optional(reach.room) : std::nullopt;
    else
        reach.length =
            longestStocked(kind.lengths, {nothing, spec.depthRule == BoxDepthRule::AsRunner
                                                       ? reach.room
                                                       : least(reach.room, spec.depth)});
    return reach;
}

WrittenLength boxDepth(const BoxSpec& spec, const RunnerReach& reach) {
    return spec.depthRule == BoxDepthRule::AsRunner && reach.length ? WrittenLength(*reach.length)
                                                                    : spec.depth;
}

std::optional<RunnerPlan> planRunner(const BoxSpec& spec, const RunnerKind& kind,
                                     const BoxPlan& box, const RunnerReach& reach) {
    if (kind.form == RunnerForm::ClearancesOnly)
        return std::nullopt;
    RunnerPlan plan;
    plan.kind = &kind;
    plan.reach = reach;
    plan.top = kind.top;
    plan.foot = kind.top - kind.section.height;
    plan.sideNeeded = kind.sideClearance;
    if (kind.forSides)
        plan.sideNeeded += *kind.forSides - box.sideThickness;
    plan.clearZones = atLowerEdge(kind.clearZone, kind.form, box.width, {});
    plan.wallNotches = atLowerEdge(kind.wallNotch, kind.form, box.width, {});
    plan.backNotches = atLowerEdge(kind.backNotch, kind.form, box.width, box.sideThickness);
    if (spec.toCaseSide && isPair(kind.form))
        plan.furring = *spec.toCaseSide;
    if (kind.kicker) {
        const Length asked =
            spec.clearanceAbove ? Length(*spec.clearanceAbove) : kind.clearanceAbove;
        plan.kickerPlay = least(asked, box.clearanceAbove);
        plan.kickerHeight = box.clearanceBelow + box.height + *plan.kickerPlay;
    }
    return plan;
}

Length leastGrooveHeight(const RunnerPlan& plan) {
    if (!liesUnderBottom(plan.kind->form))
        return nothing;
    Length height = plan.top;
    for (const auto& notches : {plan.wallNotches, plan.backNotches})
        for (const WallRect& notch : notches)
            height = greatest(height, notch.top);
    return height;
}

Length leastInsideWidth(const RunnerPlan& plan, const BoxPlan& box) {
    const Length width = plan.kind->section.width;
    switch (plan.kind->form) {
    case RunnerForm::UnderMounted:
        return 2 * (width - box.sideClearance - box.sideThickness);
    case RunnerForm::Centre:
        return width;
    case RunnerForm::ClearancesOnly:
    case RunnerForm::Wooden:
    case RunnerForm::SideMounted:
        break;
    }
    return nothing;
}

} // namespace frontwright
