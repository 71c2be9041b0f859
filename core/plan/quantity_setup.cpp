#include "core/plan/quantity_parts.h"

namespace frontwright::deriving {

namespace {

std::vector<InputPlace> fitAndMember() {
    return {InputPlace::Fit, InputPlace::MemberWidth};
}

Rule spacerRule(const Asked& asked) {
    const Spacer& spacer = asked.plan.spacers[asked.quantity.item];
    const MemberPlan& member = asked.plan.members[spacer.member];
    const FrontPlan& lower = asked.plan.fronts[spacer.lower];
    const FrontPlan& upper = asked.plan.fronts[spacer.upper];
    return {text("member − overlay − overlay"),
            asked.figures()
                .plus(widthOf(member))
                .minus(lower.overlay[sideOfLower(member.kind)])
                .minus(upper.overlay[sideOfUpper(member.kind)])
                .text(),
            commonPractice(), fitAndMember()};
}

Rule stopRule(const Asked& asked) {
    const Stop& stop = asked.plan.stops[asked.quantity.item];
    const FrontPlan& front = asked.plan.fronts[stop.front];
    if (asked.quantity.kind == QuantityKind::StopFromOpening)
        return {text("the front's overlay at that side"),
                asked.figures().plus(stop.fromOpening).text(),
                commonPractice(),
                {InputPlace::Fit}};
    return {text("member − overlay"),
            asked.figures()
                .plus(memberWidthAt(asked.plan, front, stop.side))
                .minus(front.overlay[stop.side])
                .text(),
            commonPractice(), fitAndMember()};
}

} // namespace

Rule ruleOfSetup(const Asked& asked) {
    return asked.quantity.kind == QuantityKind::SpacerWidth ? spacerRule(asked) : stopRule(asked);
}

} // namespace frontwright::deriving
