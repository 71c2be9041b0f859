#include "core/plan/chosen.h"
#include "core/plan/quantity_parts.h"
#include "core/wood/movement.h"

namespace frontwright::deriving {

namespace {

using enum QuantityKind;

/// What the runner's own entry says, and where it is from.
Rule ofKind(const Asked& asked, Text formula) {
    return {formula,
            asked.figures().plus(asked.value).text(),
            asked.front().runner->kind->source,
            {InputPlace::Runner, InputPlace::Catalogue}};
}

Rule clearanceRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const BoxSpec& spec = chosenBox(asked.project, front);
    if (spec.sideClearance || !front.runner)
        return asGiven(asked, spec.sideClearance ? InputPlace::Box : InputPlace::Runner);
    return ofKind(asked, text("what the runner asks for"));
}

Rule setbackRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const RunnerKind& kind = *front.runner->kind;
    if (!kind.setback)
        return {asked.plan.construction == Construction::Frameless
                    ? text("it begins at the panels' front edges")
                    : text("it begins behind the frame: the frame's thickness"),
                asked.figures().plus(asked.value).text(),
                kind.source,
                {InputPlace::Frame, InputPlace::Runner}};
    return {text("the box's setback + the runner's own behind the box's face"),
            asked.figures().plus(front.box.setback).plus(*kind.setback).text(),
            kind.source,
            {InputPlace::Fit, InputPlace::Runner}};
}

std::string roomFigures(const Asked& asked) {
    const Case& casework = asked.project.casework;
    return asked.figures()
        .plus(thicknessOfFrame(casework))
        .plus(casework.depth)
        .minus(asked.front().runner->reach.setback)
        .text();
}

Rule lengthRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const BoxSpec& spec = chosenBox(asked.project, front);
    const RunnerPlan& runner = *front.runner;
    if (spec.runnerLength)
        return asGiven(asked, InputPlace::Box);
    const std::vector<InputPlace> inputs{InputPlace::CaseSize, InputPlace::Box, InputPlace::Runner};
    if (runner.kind->lengths.empty())
        return {text("cut to the room: frame + case inside − setback"), roomFigures(asked),
                runner.kind->source, inputs};
    const std::string length = shown(asked.value, asked.style);
    const std::string room = shown(runner.reach.room, asked.style);
    if (spec.depthRule == BoxDepthRule::AsRunner)
        return {
            text("the longest stocked one that is no longer than its room: frame + case "
                 "inside − setback"),
            phrase("%1 = %2; the longest stocked up to that: %3", roomFigures(asked), room, length),
            runner.kind->source, inputs, Ending::Complete};
    return {text("the longest stocked one that is no longer than its room (frame + case inside − "
                 "setback) and than the box"),
            phrase("%1 = %2; box %3; the longest stocked up to both: %4", roomFigures(asked), room,
                   shown(spec.depth.length, asked.style), length),
            runner.kind->source, inputs, Ending::Complete};
}

Rule kickerRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    return {text("clearance below + box height + play under the kicker"),
            asked.figures()
                .plus(front.box.clearanceBelow)
                .plus(front.box.height)
                .plus(*front.runner->kickerPlay)
                .text(),
            front.runner->kind->source,
            {InputPlace::Box, InputPlace::Runner}};
}

Rule furringRule(const Asked& asked) {
    return {text("from the opening's edge to the case's side, so that the runner stands flush with "
                 "the opening"),
            asked.figures().plus(asked.value).text(),
            commonPractice(),
            {InputPlace::Box}};
}

Rule swellingRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const SeasonMoisture& moisture = *asked.plan.season;
    const double relative = front.box.height.isZero()
                                ? 0
                                : asked.value.inMillimetres() / front.box.height.inMillimetres();
    return {text("box height × change of the wood's moisture from when it is cut to the wettest "
                 "air × the wood's coefficient, sides flat-sawn"),
            phrase("%1 × %2 (from %3 % to %4 %)", shown(front.box.height, asked.style),
                   asked.number(relative, 5), asked.number(moisture.whenCut, 1),
                   asked.number(moisture.wettest, 1)),
            sourceNamed(SourceKind::Published,
                        text("Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13: "
                             "change = size × coefficient × change of moisture")),
            {InputPlace::Box, InputPlace::Air}};
}

} // namespace

Rule ruleOfRunner(const Asked& asked) {
    const QuantityKind kind = asked.quantity.kind;
    if (kind == SideClearance)
        return clearanceRule(asked);
    if (kind == RunnerLength)
        return lengthRule(asked);
    if (kind == RunnerSetback)
        return setbackRule(asked);
    if (kind == RunnerTop)
        return ofKind(asked, text("the top of the runner, above the box's lower edge"));
    if (kind == BackNotchWidth || kind == BackNotchHeight)
        return ofKind(asked, text("what the runner needs free at the back's lower edge"));
    if (kind == WallNotchWidth || kind == WallNotchHeight)
        return ofKind(asked, text("what the runner needs free at the wall's lower edge"));
    if (kind == ClearZoneWidth || kind == ClearZoneHeight)
        return ofKind(asked, text("where the runner's parts lie on the wall: no screw there"));
    if (kind == KickerHeight)
        return kickerRule(asked);
    return kind == RunnerFurring ? furringRule(asked) : swellingRule(asked);
}

} // namespace frontwright::deriving
