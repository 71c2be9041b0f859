#include "core/plan/quantity_parts.h"
#include "core/plan/round_case.h"

namespace frontwright::deriving {

Rule ruleOfTotal(const Asked& asked) {
    const CaseRect& inner = asked.plan.outline;
    const CaseRect& whole = asked.plan.whole;
    const std::vector<InputPlace> inputs{InputPlace::CaseSize, InputPlace::Surroundings};
    if (asked.quantity.kind == QuantityKind::TotalWidth)
        return {text("case + what the top stands out at the left and at the right"),
                asked.figures()
                    .plus(inner.width())
                    .plus(inner.left - whole.left)
                    .plus(whole.right - inner.right)
                    .text(),
                commonPractice(), inputs};
    return {text("plinth or legs + case + top"),
            asked.figures()
                .plus(inner.bottom - whole.bottom)
                .plus(inner.height())
                .plus(whole.top - inner.top)
                .text(),
            commonPractice(), inputs};
}

Rule ruleOfSurround(const Asked& asked, Side side) {
    const Length obstacle = asked.plan.limits[side]->obstacle;
    const Length inside = insideCase(asked.plan.outline, asked.front().rect, side);
    const std::vector<InputPlace> inputs{InputPlace::Fit, InputPlace::Surroundings};
    if (obstacle < Length{})
        return {text("from the front to the case's outer edge − what covers that edge"),
                asked.figures().plus(inside).minus(-obstacle).text(), commonPractice(), inputs};
    return {text("from the front to the case's outer edge + from there to what stands beside it"),
            asked.figures().plus(inside).plus(obstacle).text(), commonPractice(), inputs};
}

Rule ruleOfStep(const Asked& asked) {
    const FrontPlan& front = asked.front();
    return {
        text("front's height + gap above it"),
        asked.figures().plus(front.rect.height()).plus(asked.value - front.rect.height()).text(),
        commonPractice(),
        {InputPlace::Divisions, InputPlace::Fit, InputPlace::SystemHoles}};
}

} // namespace frontwright::deriving
