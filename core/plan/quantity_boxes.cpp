#include "core/plan/chosen.h"
#include "core/plan/own_part.h"
#include "core/plan/quantity_parts.h"

namespace frontwright::deriving {

namespace {

Rule widthRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    return {text("opening − 2 × side clearance"),
            asked.figures()
                .plus(openingBehind(asked).width())
                .minusTwice(front.box.sideClearance)
                .text(),
            commonPractice(),
            {InputPlace::Divisions, InputPlace::Box, InputPlace::Runner}};
}

Rule heightRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    if (chosenBox(asked.project, front).height)
        return asGiven(asked, InputPlace::Box);
    return {text("opening − clearance below − clearance above"),
            asked.figures()
                .plus(openingBehind(asked).height())
                .minus(front.box.clearanceBelow)
                .minus(front.box.clearanceAbove)
                .text(),
            commonPractice(),
            {InputPlace::Divisions, InputPlace::Box, InputPlace::Runner}};
}

Rule setbackRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    if (asked.value == front.thickness)
        return {text("front's thickness, as the front lies in the opening"),
                asked.figures().plus(front.thickness).text(),
                commonPractice(),
                {InputPlace::Fit, InputPlace::Thickness}};
    return {asked.plan.construction == Construction::Frameless
                ? text("the box wall is flush with the panels' front edges")
                : text("the box wall is flush with the frame's face"),
            asked.figures().plus(asked.value).text(),
            commonPractice(),
            {InputPlace::Fit}};
}

Rule bottomRule(const Asked& asked) {
    const BoxPlan& box = asked.front().box;
    return {
        text("groove height + bottom's thickness"),
        asked.figures().plus(box.bottomUnderside).plus(box.bottomTop - box.bottomUnderside).text(),
        commonPractice(),
        {InputPlace::Box}};
}

Rule depthRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const bool follows = chosenBox(asked.project, front).depthRule == BoxDepthRule::AsRunner;
    if (!follows || !front.runner || front.runner->reach.length != asked.value)
        return asGiven(asked, InputPlace::Box);
    return {text("as long as the runner"),
            asked.figures().plus(asked.value).text(),
            commonPractice(),
            {InputPlace::Box, InputPlace::Runner, InputPlace::CaseSize}};
}

} // namespace

const CaseRect& openingBehind(const Asked& asked) {
    return frontwright::openingBehind(asked.plan, asked.front());
}

Rule ruleOfBox(const Asked& asked) {
    using enum QuantityKind;
    const QuantityKind kind = asked.quantity.kind;
    if (kind == BoxWidth)
        return widthRule(asked);
    if (kind == BoxHeight)
        return heightRule(asked);
    if (kind == BoxSetback)
        return setbackRule(asked);
    if (kind == BoxDepth)
        return depthRule(asked);
    if (kind == BottomTop)
        return bottomRule(asked);
    return asGiven(asked, InputPlace::Box);
}

} // namespace frontwright::deriving
