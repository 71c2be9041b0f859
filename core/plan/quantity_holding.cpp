#include "core/holding/withdrawal.h"
#include "core/plan/chosen.h"
#include "core/plan/quantity_parts.h"

namespace frontwright::deriving {

namespace {

Source handbook() {
    return {SourceKind::Published,
            "Forest Products Laboratory, Wood Handbook, chapter 8: average ultimate load, side "
            "grain, specific gravity on volume at 12 % moisture"};
}
Source designStandard() {
    return {SourceKind::Published,
            "National Design Specification (NDS): reference design value, side grain only, "
            "specific gravity on ovendry volume"};
}
Source pullTest() {
    return {SourceKind::Published,
            "Architectural Woodwork Standards, 1st ed., 2009: 50 lbf (222 N) on a pull; shared by "
            "the statics of a stiff front on equal screws (common practice)"};
}

std::vector<InputPlace> holdingInputs() {
    return {InputPlace::Mounting, InputPlace::Box, InputPlace::Thickness, InputPlace::Catalogue};
}

/// "15 700 × 0.5² × 0.164 in × 0.625 in", in the style's units.
std::string withdrawalFigures(const Asked& asked, double inMetric, double inInch, double gravity) {
    const FrontPlan& front = asked.front();
    const Length shank = front.mounting.screw->shankDiameter;
    const MountingHole& hole = front.mounting.holes[asked.quantity.index];
    const Length thread = hole.thickness > Length{}
                              ? threadInWood(hole.penetration, *front.mounting.length)
                              : Length{};
    const bool inches = asked.style.unit == Unit::Inch;
    const auto size = [&](Length length) {
        return inches ? decimal(length.inInches(), 3) + " in"
                      : decimal(length.inMillimetres(), 2) + " mm";
    };
    return decimal(inches ? inInch : inMetric, inches ? 0 : 2) + " × " + decimal(gravity, 3) +
           "² × " + size(shank) + " × " + size(thread);
}

Rule withdrawalRule(const Asked& asked) {
    const SpecificGravity gravity = *asked.plan.wood->gravity;
    const bool isUltimate = asked.quantity.kind == QuantityKind::ScrewUltimate;
    const FrontPlan& front = asked.front();
    std::string formula = isUltimate ? "15 700 (108.25 in N, mm) × G² × shank × thread in the front"
                                     : "2850 (19.65 in N, mm) × G² × shank × thread in the front";
    if (!isInTestedRange(front.mounting.screw->shankDiameter, *front.mounting.length))
        formula +=
            "; gauge and length lie outside the handbook's tests, so it is likely to be less";
    return {formula,
            isUltimate
                ? withdrawalFigures(asked, ultimateCoefficient, 15'700, gravityAt12Percent(gravity))
                : withdrawalFigures(asked, designCoefficient, 2'850, gravityOvendry(gravity)),
            isUltimate ? handbook() : designStandard(), holdingInputs()};
}

/// The hole whose ratio is the least.
Rule safetyRule(const Asked& asked) {
    const bool isUltimate = asked.quantity.kind == QuantityKind::PullSafety;
    const auto force = isUltimate ? &HoleHolding::ultimate : &HoleHolding::design;
    const HoleHolding* worst = nullptr;
    Ratio least;
    for (const HoleHolding& hole : asked.front().holding.holes) {
        if (!(hole.*force) || !hole.pull)
            continue;
        const Ratio ratio = Ratio::of((hole.*force)->inNewtons(), hole.pull->inNewtons());
        if (worst == nullptr || ratio < least) {
            worst = &hole;
            least = ratio;
        }
    }
    return {std::string(isUltimate ? "ultimate withdrawal" : "design value of withdrawal") +
                " / share of the pull test, at the worst screw",
            shown(*(worst->*force), asked.style) + " / " + shown(*worst->pull, asked.style),
            isUltimate ? handbook() : designStandard(), holdingInputs()};
}

Rule pullRule(const Asked& asked) {
    const auto count = std::to_string(asked.front().holding.holes.size());
    return {"pull test × (1 / screws + its part of the turning), at the handle",
            shown(Force::nearestToPoundsForce(pullTestPoundsForce), asked.style) + " on " + count +
                " screws",
            pullTest(),
            {InputPlace::Hardware, InputPlace::Mounting}};
}

Rule threadRule(const Asked& asked) {
    const MountingPlan& mounting = asked.front().mounting;
    const Length penetration = *mounting.length + mounting.recess - mounting.wall;
    const Source source{SourceKind::Published,
                        "trade reference: the thread is two thirds of a wood screw's length"};
    if (isSame(asked.value, penetration))
        return {"screw + recess − wall, all of it thread",
                asked.figures()
                    .plus(*mounting.length)
                    .plus(mounting.recess)
                    .minus(mounting.wall)
                    .text(),
                source, holdingInputs()};
    if (asked.value.isZero())
        return {"the screw does not reach the front", asked.figures().plus({}).text(), source,
                holdingInputs()};
    return {"two thirds of the screw: its thread",
            asked.figures().plusPart(*mounting.length, 2, 3).text(), source, holdingInputs()};
}

Rule distanceRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const WallPoint at = front.mounting.holes[asked.quantity.index].at;
    const bool acrossGrain = asked.quantity.kind == QuantityKind::ScrewToEdge;
    const bool isLevel = acrossGrain == isEnd(Side::Bottom, front.holding.grain);
    const Length own = isLevel ? at.x : at.y;
    const Length wall = isLevel ? front.box.wallOnFront.x : front.box.wallOnFront.y;
    const Length size = isLevel ? front.rect.width() : front.rect.height();
    const std::string what =
        std::string(isLevel ? "left " : "bottom ") + (acrossGrain ? "edge" : "end");
    const std::vector<InputPlace> inputs{InputPlace::Mounting, InputPlace::Box, InputPlace::Fit};
    if (isSame(asked.value, own + wall))
        return {"hole on the wall + wall from the front's " + what,
                asked.figures().plus(own).plus(wall).text(), commonPractice(), inputs};
    return {"front − hole on the wall − wall from the front's " + what,
            asked.figures().plus(size).minus(own).minus(wall).text(), commonPractice(), inputs};
}

Rule pilotRuleOf(const Asked& asked) {
    const FrontPlan& front = asked.front();
    if (chosenMounting(asked.project, front).pilotHole)
        return asGiven(asked, InputPlace::Mounting);
    const std::string figures = asked.figures().plus(asked.value).text();
    const std::vector<InputPlace> inputs{InputPlace::Mounting, InputPlace::Catalogue};
    if (!front.holding.pilot)
        return {"the catalogue's for the screw", figures, front.mounting.screw->source, inputs};
    const double part = leadHolePart(gravityOvendry(*asked.plan.wood->gravity));
    const std::string root = asked.figures().plus(front.holding.pilot->root).text();
    return {"nearest drill to " + std::string(part > 0.8 ? "90" : "70") +
                " % of the screw's root of " + root +
                (front.holding.pilot->isNeeded ? "" : "; wood so light needs none"),
            figures,
            {SourceKind::Published,
             "National Design Specification (NDS), lead holes by ovendry specific gravity: above "
             "0.60 90 %, above 0.50 70 % of the root; root: appendix L, from memory"},
            inputs};
}

Rule clearanceRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    if (chosenMounting(asked.project, front).clearanceHole)
        return asGiven(asked, InputPlace::Mounting);
    return {"the catalogue's for the screw",
            asked.figures().plus(asked.value).text(),
            front.mounting.screw->source,
            {InputPlace::Mounting, InputPlace::Catalogue}};
}

Rule engagementRule(const Asked& asked) {
    const HardwarePlan& hardware = *asked.front().hardware;
    const WayPlan& way = hardware.ways[asked.quantity.index];
    const std::vector<InputPlace> inputs{InputPlace::Hardware, InputPlace::Thickness,
                                         InputPlace::Catalogue};
    if (isSame(asked.value, *way.length - way.grip))
        return {"bolt − grip", asked.figures().plus(*way.length).minus(way.grip).text(),
                commonPractice(), inputs};
    return {asked.value.isZero() ? "the bolt does not reach" : "all of the handle's thread",
            asked.figures().plus(asked.value).text(), hardware.form->source, inputs};
}

} // namespace

Rule ruleOfHolding(const Asked& asked) {
    using enum QuantityKind;
    const QuantityKind kind = asked.quantity.kind;
    if (kind == ScrewUltimate || kind == ScrewDesign)
        return withdrawalRule(asked);
    if (kind == PullSafety || kind == PullDesignSafety)
        return safetyRule(asked);
    if (kind == ScrewPull)
        return pullRule(asked);
    if (kind == ScrewThread)
        return threadRule(asked);
    if (kind == ScrewToEdge || kind == ScrewToEnd)
        return distanceRule(asked);
    if (kind == PilotHole)
        return pilotRuleOf(asked);
    if (kind == ClearanceHole)
        return clearanceRule(asked);
    return engagementRule(asked);
}

} // namespace frontwright::deriving
