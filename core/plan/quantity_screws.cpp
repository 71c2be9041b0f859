#include "core/fastening/bounds.h"
#include "core/plan/chosen.h"
#include "core/plan/quantity_parts.h"

namespace frontwright::deriving {

namespace {

const Limits programLimits;

Length thinnestBehindHoles(const FrontPlan& front) {
    Length thinnest = front.thickness;
    for (const MountingHole& hole : front.mounting.holes)
        if (hole.thickness > Length{})
            thinnest = least(thinnest, hole.thickness);
    return thinnest;
}

Rule chosenLengthRule(const Asked& asked) {
    const MountingPlan& mounting = asked.front().mounting;
    if (chosenMounting(asked.project, asked.front()).length)
        return asGiven(asked, InputPlace::Mounting);
    return {text("longest stocked length from the least to the greatest"),
            asked.figures().plus(mounting.leastLength).text() + " ≤ " +
                asked.figures().plus(asked.value).text() + " ≤ " +
                asked.figures().plus(mounting.greatestLength).text(),
            mounting.screw->source,
            {InputPlace::Mounting, InputPlace::Catalogue, InputPlace::Box, InputPlace::Thickness,
             InputPlace::Limits},
            Ending::Complete};
}

Rule leastLengthRule(const Asked& asked) {
    const MountingPlan& mounting = asked.front().mounting;
    const Length limit = asked.project.limits.leastPenetration;
    return {text("wall − recess + least penetration"),
            asked.figures().plus(mounting.wall).minus(mounting.recess).plus(limit).text(),
            sourceOfLimit(limit, programLimits.leastPenetration),
            {InputPlace::Box, InputPlace::Mounting, InputPlace::Limits}};
}

Rule greatestLengthRule(const Asked& asked) {
    const MountingPlan& mounting = asked.front().mounting;
    const Length limit = asked.project.limits.leastTipCover;
    return {text("wall − recess + front behind the thinnest hole − least tip cover"),
            asked.figures()
                .plus(mounting.wall)
                .minus(mounting.recess)
                .plus(thinnestBehindHoles(asked.front()))
                .minus(limit)
                .text(),
            sourceOfLimit(limit, programLimits.leastTipCover),
            {InputPlace::Box, InputPlace::Mounting, InputPlace::Thickness, InputPlace::Profile,
             InputPlace::Limits}};
}

Rule penetrationRule(const Asked& asked) {
    const MountingPlan& mounting = asked.front().mounting;
    return {text("screw + recess − wall"),
            asked.figures()
                .plus(mounting.length.value_or(Length{}))
                .plus(mounting.recess)
                .minus(mounting.wall)
                .text(),
            commonPractice(),
            {InputPlace::Mounting, InputPlace::Box}};
}

Rule tipCoverRule(const Asked& asked) {
    const MountingHole& hole = asked.front().mounting.holes[asked.quantity.index];
    return {text("front behind the hole − penetration"),
            asked.figures().plus(hole.thickness).minus(hole.penetration).text(),
            commonPractice(),
            {InputPlace::Thickness, InputPlace::Profile, InputPlace::Mounting, InputPlace::Box}};
}

std::vector<InputPlace> holeInputs() {
    return {InputPlace::Mounting, InputPlace::Box};
}

Rule acrossRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const Length width = front.box.width;
    const bool isGiven = chosenMounting(asked.project, front).fromSides.has_value();
    const Source source = isGiven ? makersDecision() : commonPractice();
    if (asked.value == width.half())
        return {text("half the box's width"), asked.figures().plusPart(width, 1, 2).text(), source,
                holeInputs()};
    if (asked.value < width.half())
        return {isGiven ? text("the given distance from the box's left side")
                        : text("the least allowed distance from the box's left side"),
                asked.figures().plus(asked.value).text(), source, holeInputs()};
    return {isGiven ? text("box's width − the given distance from its right side")
                    : text("box's width − the least allowed distance from its right side"),
            asked.figures().plus(width).minus(width - asked.value).text(), source, holeInputs()};
}

Rule upRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const MountingSpec& spec = chosenMounting(asked.project, front);
    const Length height = front.box.height;
    if (spec.fromBottom && spec.fromBottom->length == asked.value)
        return asGiven(asked, InputPlace::Mounting);
    if (spec.fromTop && height - spec.fromTop->length == asked.value)
        return {text("box's height − the given distance from its top"),
                asked.figures().plus(height).minus(*spec.fromTop).text(), makersDecision(),
                holeInputs()};
    if (asked.value > height.half())
        return {text("box's height − the least allowed distance from its top"),
                asked.figures().plus(height).minus(height - asked.value).text(), commonPractice(),
                holeInputs()};
    return {text("the least allowed distance from the box's lower edge"),
            asked.figures().plus(asked.value).text(), commonPractice(), holeInputs()};
}

Rule leastHeightRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const MountingPlan& mounting = front.mounting;
    const Length tool = toolRadius(chosenMounting(asked.project, front), *mounting.screw);
    const std::vector<InputPlace> inputs{InputPlace::Box, InputPlace::Mounting, InputPlace::Limits};
    if (isSame(front.box.bottomTop + tool, asked.value))
        return {
            text("top of the bottom + radius of the recess tool, which is more than head radius + "
                 "margin"),
            asked.figures().plus(front.box.bottomTop).plus(tool).text(), commonPractice(), inputs};
    const Length margin = asked.project.limits.screwMargin;
    return {text("top of the bottom + head radius + margin"),
            asked.figures()
                .plus(front.box.bottomTop)
                .plus(mounting.screw->headDiameter.half())
                .plus(margin)
                .text(),
            sourceOfLimit(margin, programLimits.screwMargin), inputs};
}

} // namespace

Rule ruleOfScrew(const Asked& asked) {
    using enum QuantityKind;
    const QuantityKind kind = asked.quantity.kind;
    if (kind == ScrewLeastLength)
        return leastLengthRule(asked);
    if (kind == ScrewGreatestLength)
        return greatestLengthRule(asked);
    if (kind == ScrewPenetration)
        return penetrationRule(asked);
    if (kind == ScrewTipCover)
        return tipCoverRule(asked);
    return chosenLengthRule(asked);
}

Rule ruleOfHole(const Asked& asked) {
    using enum QuantityKind;
    const QuantityKind kind = asked.quantity.kind;
    if (kind == LeastHoleHeight)
        return leastHeightRule(asked);
    if (chosenMounting(asked.project, asked.front()).pattern == ScrewPattern::ByHand)
        return asGiven(asked, InputPlace::Mounting);
    if (!asked.front().hasBox())
        return {kind == HoleX ? text("where front and members meet, from the front's left edge")
                              : text("where front and members meet, from the front's lower edge"),
                asked.figures().plus(asked.value).text(),
                commonPractice(),
                {InputPlace::Mounting, InputPlace::Fit}};
    return kind == HoleX ? acrossRule(asked) : upRule(asked);
}

} // namespace frontwright::deriving
