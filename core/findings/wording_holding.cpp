#include "core/findings/wording.h"

#include "core/amounts/amounts.h"
#include "core/geometry/side_names.h"

namespace frontwright::wording {

namespace {

Source spacingSource() {
    return sourceNamed(SourceKind::FromMemory,
                       text("National Design Specification (NDS) commentary, least distances of "
                            "wood screws, from memory"));
}

Source leadHoleSource() {
    return sourceNamed(SourceKind::Published,
                       text("National Design Specification (NDS), lead holes for withdrawal by "
                            "ovendry specific gravity; the older rule of NDS and Wood Handbook by "
                            "hardwood and softwood; root diameters of NDS appendix L, from "
                            "memory"));
}

Source pullSource() {
    return sourceNamed(SourceKind::Published,
                       text("withdrawal: Wood Handbook, chapter 8 (ultimate), NDS (design value, "
                            "about a fifth); pull: Architectural Woodwork Standards 2009, 50 lbf"));
}

/// Drills and roots are told in thousandths of an inch, as their tables are.
std::string sayDrill(const Told& told, std::size_t i) {
    const Length length = told.figure(i);
    return told.style.unit == Unit::Inch ? told.number(length.inInches(), 3) + " in"
                                         : told.number(length.inMillimetres(), 2) + " mm";
}

std::string sayDiameters(const Told& told, Length distance, Length shank) {
    return told.number(distance.inMillimetres() / shank.inMillimetres(), 1);
}

} // namespace

// the plan's own
Words holdingWeak(const Told& told) {
    const HoldingPlan& holding = *told.front->holding;
    const HoleHolding& hole = holding.holes.at(*told.finding.where.mountingHole);
    const auto say = [&](const std::optional<Force>& force) {
        return shown(force.value_or(Force{}), told.style);
    };
    const bool isTornOut = told.finding.severity == Severity::WontWork;
    const std::string test = shown(Force::nearestToPoundsForce(pullTestPoundsForce), told.style);
    const std::string pull = say(hole.pull), most = say(hole.ultimate), design = say(hole.design);
    return {isTornOut
                ? phrase("The mounting screws would be drawn out when the handle is pulled with "
                         "%1: of that, %2 falls to this screw, which holds %3 at the most and %4 "
                         "to design with.",
                         test, pull, most, design)
                : phrase("The mounting screws hold less than they should for a pull of %1 at the "
                         "handle: of that, %2 falls to this screw, which holds %3 at the most and "
                         "%4 to design with.",
                         test, pull, most, design),
            phrase("safety = withdrawal / share of the pull = %1 / %2 = %3 ultimate, %4 / %2 = %5 "
                   "by design value; at least 1",
                   most, pull, withMark(shown(*holding.safety), told.style.mark), design,
                   withMark(shown(*holding.designSafety), told.style.mark)),
            pullSource()};
}

// distance, least distance, shank
Words screwNearEdge(const Told& told) {
    const std::string diameters = sayDiameters(told, told.figure(1), told.figure(2));
    const bool isLevel = told.front->holding->grain == Grain::AlongLength;
    Phrase sentence = isLevel ? told.bySide({text("The screw is %1 from the front's left end, less "
                                                  "than %2: it may split the front."),
                                             text("The screw is %1 from the front's right end, "
                                                  "less than %2: it may split the front."),
                                             text("The screw is %1 from the front's bottom edge, "
                                                  "less than %2: it may split the front."),
                                             text("The screw is %1 from the front's top edge, less "
                                                  "than %2: it may split the front.")},
                                            {told.say(0), told.say(1)})
                              : told.bySide({text("The screw is %1 from the front's left edge, "
                                                  "less than %2: it may split the front."),
                                             text("The screw is %1 from the front's right edge, "
                                                  "less than %2: it may split the front."),
                                             text("The screw is %1 from the front's bottom end, "
                                                  "less than %2: it may split the front."),
                                             text("The screw is %1 from the front's top end, less "
                                                  "than %2: it may split the front.")},
                                            {told.say(0), told.say(1)});
    return {sentence,
            isEnd(told.side(), told.front->holding->grain)
                ? phrase("least distance to the end, along the grain = %1 × the shank of %2 %3",
                         diameters, told.say(2), told.equals(1))
                : phrase("least distance to the edge, across the grain = %1 × the shank of %2 %3",
                         diameters, told.say(2), told.equals(1)),
            spacingSource()};
}

// apart, least, shank
Words screwsCrowded(const Told& told) {
    return {phrase("Two screws stand %1 apart in one row along the grain, less than %2: they may "
                   "split the front.",
                   told.say(0), told.sayLeast(1)),
            phrase("least spacing along the grain = %1 × the shank of %2 %3",
                   sayDiameters(told, told.figure(1), told.figure(2)), told.say(2), told.equals(1)),
            spacingSource()};
}

// pilot hole, least, greatest, root
Words pilotHoleMissing(const Told& told) {
    const double gravity = gravityOvendry(*told.front->wood->gravity);
    return {
        phrase("No pilot hole is drilled, and the wood (%1) is dense enough to need one of %2.",
               nameFromData(told.front->wood->name), told.say(told.front->holding->pilot->advised)),
        phrase("specific gravity, ovendry, %1 > 0.50; from %2 to %3 at a root of %4",
               told.number(gravity, 2), sayDrill(told, 1), sayDrill(told, 2), sayDrill(told, 3)),
        leadHoleSource()};
}

Words pilotHoleWrong(const Told& told) {
    const bool isLarge = told.figure(0) > told.figure(2);
    const std::string hole = sayDrill(told, 0), least = sayDrill(told, 1),
                      greatest = sayDrill(told, 2), root = sayDrill(told, 3);
    return {isLarge ? phrase("The pilot hole of %1 leaves the screw's thread too little to hold "
                             "in: at most %2.",
                             hole, greatest)
                    : phrase("The pilot hole of %1 is too small for wood so dense: at least %2, or "
                             "the screw may break or split it.",
                             hole, least),
            told.front->holding->pilot
                ? phrase("from %1 to %2 at a root of %3", least, greatest, root)
                : phrase("at most the root, %1", root),
            leadHoleSource()};
}

// clearance hole, shank
Words clearanceHoleTight(const Told& told) {
    return {phrase("The clearance hole of %1 is smaller than the screw's shank of %2: the thread "
                   "holds in the wall and does not draw the front up.",
                   told.say(0), told.say(1)),
            phrase("clearance hole %1; at least %2", told.say(0), told.say(1)),
            told.front->mounting.screw->source};
}

// what the head bears on all round, least, head, clearance hole
Words headBearsLittle(const Told& told) {
    const bool goesThrough = told.figure(0) <= Length{};
    return {goesThrough
                ? phrase("The screws' heads of %1 go through their clearance holes of %2 and hold "
                         "nothing: put a washer under each, or use screws with a washer head.",
                         told.say(2), told.say(3))
                : phrase("The screws' heads of %1 bear on only %2 of wood round their clearance "
                         "holes of %3, less than %4: put a washer under each, or use screws with "
                         "a washer head.",
                         told.say(2), told.say(0), told.say(3), told.say(1)),
            phrase("bearing all round = (head − clearance hole) / 2 = (%1 − %2) / 2 %3; at least "
                   "%4",
                   told.say(2), told.say(3), told.equals(0), told.say(1)),
            sourceOfLimit(told.project.limits.leastHeadBearing, Limits{}.leastHeadBearing)};
}

// hole, bolt's diameter
Words boltHoleTight(const Told& told) {
    return {phrase("The bolt's hole of %1 is smaller than its thread of %2: it does not go "
                   "through.",
                   told.say(0), told.say(1)),
            phrase("hole %1; at least %2 (ISO 273 and ASME B18.2.8 give more)", told.say(0),
                   told.say(1)),
            told.front->hardware->bolt->source};
}

// engagement, bolt's diameter, bolt, grip
Words engagementThin(const Told& told) {
    return {phrase("Only %1 of thread is in the handle, less than the bolt's diameter of %2: %3 "
                   "bolt, %4 of wood to go through.",
                   told.say(0), told.say(1), told.say(2), told.say(3)),
            phrase("engagement = bolt − grip %1 − %2 %3; at least one diameter", told.equals(2),
                   told.say(3), told.equals(0)),
            sourceNamed(SourceKind::FromMemory,
                        text("machine design practice, from memory: one diameter of thread in "
                             "steel, more in softer metal"))};
}

// the plan's own
Words runnerOverloaded(const Told& told) {
    const DrawerLoad& load = told.front->load;
    const auto say = [&](Mass mass) { return shown(mass, told.style); };
    return {phrase("The drawer loads its runners with %1, more than the %2 that they are rated "
                   "for.",
                   say(*load.onRunner()), say(*load.rating)),
            phrase("load = front + box + contents = %1 + %2 + %3 = %4; at most %5",
                   say(*load.front), say(*load.box), say(load.contents), say(*load.onRunner()),
                   say(*load.rating)),
            sourceNamed(SourceKind::CommonPractice,
                        text("rating as in the catalogue: check the runner's own sheet"))};
}

namespace {

/// "left, bottom"
Phrase sides(const FrontPlan& front, bool (*has)(Fit)) {
    Phrase list;
    for (const Side side : allSides)
        if (has(front.fit[side]))
            list = list.empty() ? Phrase(nameOf(side)) : phrase("%1, %2", list, nameOf(side));
    return list;
}

} // namespace

// thickness
Words fitsMixed(const Told& told) {
    return {phrase("The front lies in the opening (%1) and on the frame (%2) at once: with a flat "
                   "back it can do only one of them, unless it is rabbeted.",
                   sides(*told.front, [](Fit fit) { return fit == Fit::Inset; }),
                   sides(*told.front, [](Fit fit) { return fit != Fit::Inset; })),
            told.plan.construction == Construction::Frameless
                ? phrase("an inset side lies %1, the front's thickness, behind the panels' front "
                         "edges; an overlay side lies on them",
                         told.say(0))
                : phrase("an inset side lies %1, the front's thickness, behind the frame's face; "
                         "an overlay side lies on it",
                         told.say(0)),
            commonPractice()};
}

} // namespace frontwright::wording
