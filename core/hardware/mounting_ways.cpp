#include "core/hardware/bolts.h"

#include "core/catalogue/stocked.h"

#include <algorithm>

namespace frontwright {
namespace {

/// The lengths of bolt that do, both ends included.
Span window(Length grip, const HardwareForm& form) {
    return {grip + form.leastEngagement, grip + form.threadDepth};
}

std::optional<Length> shortestStocked(const Bolt& bolt, Span window) {
    const auto found = std::lower_bound(bolt.lengths.begin(), bolt.lengths.end(), window.low);
    if (found == bolt.lengths.end() || *found > window.high)
        return std::nullopt;
    return *found;
}

/// Where the spec gives no depth: flush with the front's back, or as deep as the bolt needs.
Length depthInFront(const HardwareSpec& spec, const HardwareForm& form, const Bolt& bolt,
                    const Limits& limits, Length thickness) {
    const auto needed = [&](Length length) { return thickness + form.leastEngagement - length; };
    if (spec.boltLength)
        return greatest(bolt.headHeight, needed(*spec.boltLength));
    const Span flush = window(thickness - bolt.headHeight, form);
    const auto shorter =
        longestStocked(bolt.lengths, {Length{}, flush.low - Length::fromNanometres(1)});
    if (shortestStocked(bolt, flush) || !shorter)
        return bolt.headHeight;
    const Length deeper = needed(*shorter);
    return thickness - deeper < limits.leastWoodUnderHead ? bolt.headHeight : deeper;
}

Length depthInForce(MountingWay way, const HardwareSpec& spec, const HardwareForm& form,
                    const Bolt& bolt, const Limits& limits, Length thickness) {
    if (spec.counterbore)
        return *spec.counterbore;
    switch (way) {
    case MountingWay::FrontCounterbore:
        return depthInFront(spec, form, bolt, limits, thickness);
    case MountingWay::ThroughWall:
    case MountingWay::FrontAccessHole:
        break;
    }
    return {};
}

void judgeTooShort(WayPlan& plan, const HardwareForm& form, const Bolt& bolt,
                   const Limits& limits) {
    plan.shortBy = plan.leastLength - *plan.length;
    plan.curingCounterbore = plan.throughWood + form.leastEngagement - *plan.length;
    plan.leftUnderHead = plan.throughWood - *plan.curingCounterbore;
    plan.curingStock = shortestStocked(bolt, {plan.leastLength, plan.greatestLength});
    plan.verdict = plan.leftUnderHead < limits.leastWoodUnderHead ? BoltVerdict::TooDeep
                                                                  : BoltVerdict::TooShort;
}

void judgeTooLong(WayPlan& plan, const Bolt& bolt) {
    plan.shortBy = *plan.length - plan.greatestLength;
    plan.curingWashers = plan.shortBy;
    plan.curingStock = shortestStocked(bolt, {plan.leastLength, plan.greatestLength});
    plan.verdict = BoltVerdict::BottomsOut;
}

void judgeLength(WayPlan& plan, const HardwareForm& form, const Bolt& bolt, const Limits& limits) {
    if (!plan.length)
        plan.verdict = BoltVerdict::NoneStocked;
    else if (*plan.length < plan.leastLength)
        judgeTooShort(plan, form, bolt, limits);
    else if (*plan.length > plan.greatestLength)
        judgeTooLong(plan, bolt);
    else if (!plan.counterbore.isZero() && plan.grip < limits.leastWoodUnderHead)
        plan.verdict = BoltVerdict::TooDeep;
}

} // namespace

WayPlan planWay(MountingWay way, const HardwareSpec& spec, const HardwareForm& form,
                const Bolt& bolt, const Limits& limits, Length frontThickness,
                Length wallThickness) {
    WayPlan plan;
    plan.way = way;
    plan.throughWood =
        way == MountingWay::ThroughWall ? frontThickness + wallThickness : frontThickness;
    plan.counterbore = depthInForce(way, spec, form, bolt, limits, plan.throughWood);
    plan.grip = plan.throughWood - plan.counterbore;
    plan.leftUnderHead = plan.grip;
    const Span fitting = window(plan.grip, form);
    plan.leastLength = fitting.low;
    plan.greatestLength = fitting.high;
    if (spec.boltLength)
        plan.length = *spec.boltLength;
    else
        plan.length = shortestStocked(bolt, fitting);
    judgeLength(plan, form, bolt, limits);
    return plan;
}

} // namespace frontwright
