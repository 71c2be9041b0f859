#include "core/plan/chosen.h"
#include "core/plan/quantity_parts.h"

namespace frontwright::deriving {

namespace {

std::vector<InputPlace> boltInputs() {
    return {InputPlace::Hardware, InputPlace::Thickness, InputPlace::Profile, InputPlace::Box,
            InputPlace::Catalogue};
}

/// "front + wall" for a bolt that goes through both, "front" for the other ways.
bool goesThroughWall(const Asked& asked, MountingWay way) {
    return way == MountingWay::ThroughWall && asked.front().hasBox();
}
Text woodWords(const Asked& asked, MountingWay way) {
    return goesThroughWall(asked, way) ? text("front + wall") : text("front");
}
Figures woodFigures(const Asked& asked, const WayPlan& way) {
    if (!goesThroughWall(asked, way.way))
        return asked.figures().plus(way.throughWood);
    const Length wall = asked.front().box.wallThickness;
    return asked.figures().plus(way.throughWood - wall).plus(wall);
}

Rule lengthRule(const Asked& asked, const WayPlan& way) {
    const HardwarePlan& hardware = *asked.front().hardware;
    if (chosenHardware(asked.project, asked.front()).boltLength)
        return asGiven(asked, InputPlace::Hardware);
    return {text("shortest stocked length from the least to the greatest"),
            asked.figures().plus(way.leastLength).text() + " ≤ " +
                asked.figures().plus(asked.value).text() + " ≤ " +
                asked.figures().plus(way.greatestLength).text(),
            hardware.bolt->source, boltInputs(), Ending::Complete};
}

Rule counterboreRule(const Asked& asked, const WayPlan& way) {
    const HardwarePlan& hardware = *asked.front().hardware;
    if (chosenHardware(asked.project, asked.front()).counterbore)
        return asGiven(asked, InputPlace::Hardware);
    if (way.counterbore.isZero())
        return {text("none"), asked.figures().plus({}).text(), commonPractice(), boltInputs()};
    if (way.counterbore == hardware.bolt->headHeight || !way.length)
        return {text("height of the bolt's head, so that it lies flush"),
                asked.figures().plus(way.counterbore).text(), hardware.bolt->source, boltInputs()};
    return {phrase("%1 + least engagement − bolt", woodWords(asked, way.way)),
            woodFigures(asked, way).plus(hardware.form->leastEngagement).minus(*way.length).text(),
            hardware.form->source, boltInputs()};
}

Rule underHeadRule(const Asked& asked, const WayPlan& way) {
    const bool cures = way.curingCounterbore.has_value();
    const Text wood = woodWords(asked, way.way);
    return {cures ? phrase("%1 − the counterbore that makes the bolt long enough", wood)
                  : phrase("%1 − counterbore", wood),
            woodFigures(asked, way).minus(way.curingCounterbore.value_or(way.counterbore)).text(),
            commonPractice(), boltInputs()};
}

} // namespace

Rule ruleOfBolt(const Asked& asked) {
    using enum QuantityKind;
    const QuantityKind kind = asked.quantity.kind;
    const HardwarePlan& hardware = *asked.front().hardware;
    const WayPlan& way = hardware.ways[asked.quantity.index];
    if (kind == BoltLength)
        return lengthRule(asked, way);
    if (kind == Counterbore)
        return counterboreRule(asked, way);
    if (kind == WoodUnderHead)
        return underHeadRule(asked, way);
    if (kind == BoltLeastLength)
        return {text("grip + least engagement"),
                asked.figures().plus(way.grip).plus(hardware.form->leastEngagement).text(),
                hardware.form->source, boltInputs()};
    if (kind == BoltGreatestLength)
        return {text("grip + thread depth"),
                asked.figures().plus(way.grip).plus(hardware.form->threadDepth).text(),
                hardware.form->source, boltInputs()};
    return {phrase("%1 − counterbore", woodWords(asked, way.way)),
            woodFigures(asked, way).minus(way.counterbore).text(), commonPractice(), boltInputs()};
}

} // namespace frontwright::deriving
