#include "core/holding/withdrawal.h"
#include "core/plan/chosen.h"
#include "core/plan/quantity_parts.h"

#include <array>

namespace frontwright::deriving {

namespace {

Source handbook() {
    return sourceNamed(
        SourceKind::Published,
        text("Forest Products Laboratory, Wood Handbook, chapter 8: average ultimate load, side "
             "grain, specific gravity on volume at 12 % moisture"));
}
Source designStandard() {
    return sourceNamed(
        SourceKind::Published,
        text("National Design Specification (NDS): reference design value, side grain only, "
             "specific gravity on ovendry volume"));
}
Source pullTest() {
    return sourceNamed(
        SourceKind::Published,
        text("Architectural Woodwork Standards, 1st ed., 2009: 50 lbf (222 N) on a pull; shared by "
             "the statics of a stiff front on equal screws (common practice)"));
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
        return inches ? asked.number(length.inInches(), 3) + " in"
                      : asked.number(length.inMillimetres(), 2) + " mm";
    };
    return asked.number(inches ? inInch : inMetric, inches ? 0 : 2) + " × " +
           asked.number(gravity, 3) + "² × " + size(shank) + " × " + size(thread);
}

Rule withdrawalRule(const Asked& asked) {
    const SpecificGravity gravity = *asked.front().wood->gravity;
    const bool isUltimate = asked.quantity.kind == QuantityKind::ScrewUltimate;
    const FrontPlan& front = asked.front();
    Phrase formula = isUltimate
                         ? text("15 700 (108.25 in N, mm) × G² × shank × thread in the front")
                         : text("2850 (19.65 in N, mm) × G² × shank × thread in the front");
    if (!isInTestedRange(front.mounting.screw->shankDiameter, *front.mounting.length))
        formula = phrase("%1; gauge and length lie outside the handbook's tests, so it is likely "
                         "to be less",
                         std::move(formula));
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
    for (const HoleHolding& hole : asked.front().holding->holes) {
        if (!(hole.*force) || !hole.pull)
            continue;
        const Ratio ratio = Ratio::of((hole.*force)->inNewtons(), hole.pull->inNewtons());
        if (worst == nullptr || ratio < least) {
            worst = &hole;
            least = ratio;
        }
    }
    return {isUltimate
                ? text("ultimate withdrawal / share of the pull test, at the worst screw")
                : text("design value of withdrawal / share of the pull test, at the worst screw"),
            shown(*(worst->*force), asked.style) + " / " + shown(*worst->pull, asked.style),
            isUltimate ? handbook() : designStandard(), holdingInputs()};
}

Rule pullRule(const Asked& asked) {
    const std::string test = shown(Force::nearestToPoundsForce(pullTestPoundsForce), asked.style);
    const std::size_t count = asked.front().holding->holes.size();
    return {text("pull test × (1 / screws + its part of the turning), at the handle"),
            count == 1 ? phrase("%1 on one screw", test)
                       : phrase("%1 on %2 screws", test, std::to_string(count)),
            pullTest(),
            {InputPlace::Hardware, InputPlace::Mounting}};
}

Rule threadRule(const Asked& asked) {
    const MountingPlan& mounting = asked.front().mounting;
    const Length penetration = *mounting.length + mounting.recess - mounting.wall;
    const Source source =
        sourceNamed(SourceKind::Published,
                    text("trade reference: the thread is two thirds of a wood screw's length"));
    if (isSame(asked.value, penetration))
        return {text("screw + recess − wall, all of it thread"),
                asked.figures()
                    .plus(*mounting.length)
                    .plus(mounting.recess)
                    .minus(mounting.wall)
                    .text(),
                source, holdingInputs()};
    if (asked.value.isZero())
        return {text("the screw does not reach the front"), asked.figures().plus({}).text(), source,
                holdingInputs()};
    return {text("two thirds of the screw: its thread"),
            asked.figures().plusPart(*mounting.length, 2, 3).text(), source, holdingInputs()};
}

/// From the side that holes are measured from, and from the one beyond.
struct DistanceFormulas {
    Text near;
    Text far;
};
/// By the side, bottom or left, and by what lies there, an edge or an end of the grain.
constexpr std::array<std::array<DistanceFormulas, 2>, 2> distanceFormulas{
    {{{{text("hole on the wall + wall from the front's bottom edge"),
        text("front − hole on the wall − wall from the front's bottom edge")},
       {text("hole on the wall + wall from the front's bottom end"),
        text("front − hole on the wall − wall from the front's bottom end")}}},
     {{{text("hole on the wall + wall from the front's left edge"),
        text("front − hole on the wall − wall from the front's left edge")},
       {text("hole on the wall + wall from the front's left end"),
        text("front − hole on the wall − wall from the front's left end")}}}}};

Rule distanceRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    const WallPoint at = front.mounting.holes[asked.quantity.index].at;
    const bool acrossGrain = asked.quantity.kind == QuantityKind::ScrewToEdge;
    const bool isLevel = acrossGrain == isEnd(Side::Bottom, front.holding->grain);
    const Length own = isLevel ? at.x : at.y;
    const Length wall = isLevel ? front.box.wallOnFront.x : front.box.wallOnFront.y;
    const Length size = isLevel ? front.rect.width() : front.rect.height();
    const DistanceFormulas& formulas = distanceFormulas[isLevel ? 1 : 0][acrossGrain ? 0 : 1];
    const std::vector<InputPlace> inputs{InputPlace::Mounting, InputPlace::Box, InputPlace::Fit};
    if (isSame(asked.value, own + wall))
        return {formulas.near, asked.figures().plus(own).plus(wall).text(), commonPractice(),
                inputs};
    return {formulas.far, asked.figures().plus(size).minus(own).minus(wall).text(),
            commonPractice(), inputs};
}

Rule pilotRuleOf(const Asked& asked) {
    const FrontPlan& front = asked.front();
    if (chosenMounting(asked.project, front).pilotHole)
        return asGiven(asked, InputPlace::Mounting);
    const std::string figures = asked.figures().plus(asked.value).text();
    const std::vector<InputPlace> inputs{InputPlace::Mounting, InputPlace::Catalogue};
    if (!front.holding->pilot)
        return {text("the catalogue's for the screw"), figures, front.mounting.screw->source,
                inputs};
    const double part = leadHolePart(gravityOvendry(*asked.front().wood->gravity));
    const std::string root = asked.figures().plus(front.holding->pilot->root).text();
    const std::string percent = part > 0.8 ? "90" : "70";
    return {
        front.holding->pilot->isNeeded
            ? phrase("nearest drill to %1 % of the screw's root of %2", percent, root)
            : phrase("nearest drill to %1 % of the screw's root of %2; wood so light needs none",
                     percent, root),
        figures,
        sourceNamed(SourceKind::Published,
                    text("National Design Specification (NDS), lead holes by ovendry specific "
                         "gravity: above "
                         "0.60 90 %, above 0.50 70 % of the root; root: appendix L, from memory")),
        inputs};
}

Rule clearanceRule(const Asked& asked) {
    const FrontPlan& front = asked.front();
    if (chosenMounting(asked.project, front).clearanceHole)
        return asGiven(asked, InputPlace::Mounting);
    return {text("the catalogue's for the screw"),
            asked.figures().plus(asked.value).text(),
            front.mounting.screw->source,
            {InputPlace::Mounting, InputPlace::Catalogue}};
}

Rule headBearingRule(const Asked& asked) {
    const MountingPlan& mounting = asked.front().mounting;
    return {text("(the screw's head − the clearance hole) / 2"),
            asked.figures()
                .plus(mounting.screw->headDiameter)
                .minus(mounting.clearanceHole)
                .halved()
                .text(),
            commonPractice(),
            {InputPlace::Mounting, InputPlace::Catalogue}};
}

Rule engagementRule(const Asked& asked) {
    const HardwarePlan& hardware = *asked.front().hardware;
    const WayPlan& way = hardware.ways[asked.quantity.index];
    const std::vector<InputPlace> inputs{InputPlace::Hardware, InputPlace::Thickness,
                                         InputPlace::Catalogue};
    if (isSame(asked.value, *way.length - way.grip))
        return {text("bolt − grip"), asked.figures().plus(*way.length).minus(way.grip).text(),
                commonPractice(), inputs};
    return {asked.value.isZero() ? text("the bolt does not reach")
                                 : text("all of the handle's thread"),
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
    if (kind == HeadBearing)
        return headBearingRule(asked);
    return engagementRule(asked);
}

} // namespace frontwright::deriving
