#include "core/findings/wording.h"

#include "core/geometry/side_names.h"

namespace frontwright::wording {

namespace {

Source spacingSource() {
    return {SourceKind::FromMemory,
            "National Design Specification (NDS) commentary, least distances of wood screws, from "
            "memory"};
}

Source leadHoleSource() {
    return {SourceKind::Published,
            "National Design Specification (NDS), lead holes for withdrawal by ovendry specific "
            "gravity; the older rule of NDS and Wood Handbook by hardwood and softwood; root "
            "diameters of NDS appendix L, from memory"};
}

/// Drills and roots are told in thousandths of an inch, as their tables are.
std::string sayDrill(const Told& told, std::size_t i) {
    const Length length = told.figure(i);
    return told.style.unit == Unit::Inch ? decimal(length.inInches(), 3) + " in"
                                         : decimal(length.inMillimetres(), 2) + " mm";
}

std::string diameters(Length distance, Length shank) {
    return decimal(distance.inMillimetres() / shank.inMillimetres(), 1) + " × the shank of ";
}

} // namespace

// the plan's own
Words holdingWeak(const Told& told) {
    const HoldingPlan& holding = told.front->holding;
    const HoleHolding& hole = holding.holes.at(*told.finding.where.mountingHole);
    const auto say = [&](const std::optional<Force>& force) {
        return shown(force.value_or(Force{}), told.style);
    };
    const bool isTornOut = told.finding.severity == Severity::WontWork;
    const std::string pull = shown(Force::nearestToPoundsForce(pullTestPoundsForce), told.style);
    return {(isTornOut ? "The mounting screws would be drawn out when the handle is pulled with " +
                             pull + ": "
                       : "The mounting screws hold less than they should for a pull of " + pull +
                             " at the handle: ") +
                "of that, " + say(hole.pull) + " falls to this screw, which holds " +
                say(hole.ultimate) + " at the most and " + say(hole.design) + " to design with.",
            "safety = withdrawal / share of the pull = " + say(hole.ultimate) + " / " +
                say(hole.pull) + " = " + shown(*holding.safety) + " ultimate, " + say(hole.design) +
                " / " + say(hole.pull) + " = " + shown(*holding.designSafety) +
                " by design value; at least 1",
            {SourceKind::Published,
             "withdrawal: Wood Handbook, chapter 8 (ultimate), NDS (design value, about a fifth); "
             "pull: Architectural Woodwork Standards 2009, 50 lbf"}};
}

// distance, least distance, shank
Words screwNearEdge(const Told& told) {
    const bool isEnd = isLeftOrRight(*told.finding.where.side);
    const std::string what = isEnd ? "end" : "edge";
    return {"The screw is " + told.say(0) + " from the front's " + told.side() + " " + what +
                ", less than " + told.say(1) + ": it may split the front.",
            "least distance to the " + what + (isEnd ? ", along the grain" : ", across the grain") +
                " = " + diameters(told.figure(1), told.figure(2)) + told.say(2) + " = " +
                told.say(1),
            spacingSource()};
}

// apart, least, shank
Words screwsCrowded(const Told& told) {
    return {"Two screws stand " + told.say(0) + " apart in one row along the grain, less than " +
                told.say(1) + ": they may split the front.",
            "least spacing along the grain = " + diameters(told.figure(1), told.figure(2)) +
                told.say(2) + " = " + told.say(1),
            spacingSource()};
}

// pilot hole, least, greatest, root
Words pilotHoleMissing(const Told& told) {
    const double gravity = gravityOvendry(*told.plan.wood->gravity);
    return {"No pilot hole is drilled, and the wood (" + told.plan.wood->name +
                ") is dense enough to need one of " + told.say(told.front->holding.pilot->advised) +
                ".",
            "specific gravity, ovendry, " + decimal(gravity, 2) + " > 0.50; from " +
                sayDrill(told, 1) + " to " + sayDrill(told, 2) + " at a root of " +
                sayDrill(told, 3),
            leadHoleSource()};
}

Words pilotHoleWrong(const Told& told) {
    const bool isLarge = told.figure(0) > told.figure(2);
    const std::string reason = told.front->holding.pilot
                                   ? "from " + sayDrill(told, 1) + " to " + sayDrill(told, 2) +
                                         " at a root of " + sayDrill(told, 3)
                                   : "at most the root, " + sayDrill(told, 3);
    return {"The pilot hole of " + sayDrill(told, 0) +
                (isLarge ? " leaves the screw's thread too little to hold in: at most " +
                               sayDrill(told, 2) + "."
                         : " is too small for wood so dense: at least " + sayDrill(told, 1) +
                               ", or the screw may break or split it."),
            reason, leadHoleSource()};
}

// clearance hole, shank
Words clearanceHoleTight(const Told& told) {
    return {"The clearance hole of " + told.say(0) + " is smaller than the screw's shank of " +
                told.say(1) + ": the thread holds in the wall and does not draw the front up.",
            "clearance hole " + told.say(0) + "; at least " + told.say(1),
            told.front->mounting.screw->source};
}

// hole, bolt's diameter
Words boltHoleTight(const Told& told) {
    return {"The bolt's hole of " + told.say(0) + " is smaller than its thread of " + told.say(1) +
                ": it does not go through.",
            "hole " + told.say(0) + "; at least " + told.say(1) +
                " (ISO 273 and ASME B18.2.8 give more)",
            told.front->hardware->bolt->source};
}

// engagement, bolt's diameter, bolt, grip
Words engagementThin(const Told& told) {
    return {"Only " + told.say(0) +
                " of thread is in the handle, less than the bolt's diameter of " + told.say(1) +
                ": " + told.say(2) + " bolt, " + told.say(3) + " of wood to go through.",
            "engagement = bolt − grip = " + told.say(2) + " − " + told.say(3) + " = " +
                told.say(0) + "; at least one diameter",
            {SourceKind::FromMemory, "machine design practice, from memory: one diameter of thread "
                                     "in steel, more in softer metal"}};
}

// the plan's own
Words runnerOverloaded(const Told& told) {
    const DrawerLoad& load = told.front->load;
    const auto say = [&](Mass mass) { return shown(mass, told.style); };
    return {
        "The drawer loads its runners with " + say(*load.onRunner()) + ", more than the " +
            say(*load.rating) + " that they are rated for.",
        "load = front + box + contents = " + say(*load.front) + " + " + say(*load.box) + " + " +
            say(load.contents) + " = " + say(*load.onRunner()) + "; at most " + say(*load.rating),
        {SourceKind::CommonPractice, "rating as in the catalogue: check the runner's own sheet"}};
}

// thickness
Words fitsMixed(const Told& told) {
    std::string inset, overlay;
    for (const Side side : allSides) {
        std::string& list = told.front->fit[side] == Fit::Inset ? inset : overlay;
        list += (list.empty() ? "" : ", ") + std::string(nameOf(side));
    }
    return {"The front lies in the opening (" + inset + ") and on the frame (" + overlay +
                ") at once: with a flat back it can do only one of them, unless it is rabbeted.",
            "an inset side lies " + told.say(0) +
                ", the front's thickness, behind the frame's face; an overlay side lies on it",
            commonPractice()};
}

} // namespace frontwright::wording
