#include "core/findings/wording.h"
#include "core/plan/fillers.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

Source screwDistanceSource() {
    return sourceNamed(SourceKind::FromMemory,
                       text("NDS commentary, edge and end distances of wood screws, from memory"));
}

} // namespace

// wall and front together, what screws need of it
Words frontMissesWall(const Told& told) {
    const bool isUpright = told.side() == Side::Bottom;
    const Phrase sentence =
        told.figure(0) <= nothing
            ? phrase("The box's wall does not reach behind the front: no screw can hold it.")
        : isUpright
            ? phrase("The screws miss the wall: it lies behind %1 of the front's height, and they "
                     "need more than %2.",
                     told.say(0), told.sayLeast(1))
            : phrase("The screws miss the wall: it lies behind %1 of the front's width, and they "
                     "need more than %2.",
                     told.say(0), told.sayLeast(1));
    return {sentence,
            phrase("needed = what bottom, sides, top edge, tool and the front's own edges keep "
                   "free %1; there is %2",
                   told.equals(1), told.say(0)),
            screwDistanceSource()};
}

// overlay, least overlay
Words fixedFrontNoRoom(const Told& told) {
    const Phrase sentence =
        told.figure(0) > nothing
            ? phrase("Nowhere does the fixed front overlap the frame enough for a screw: %1 at "
                     "the most, and %2 is needed.",
                     told.say(0), told.sayLeast(1))
            : phrase("The fixed front does not overlap the frame: there is nothing to screw "
                     "through. It would need %1.",
                     told.sayLeast(1));
    return {sentence,
            phrase("least overlay = what the tool and the head need of the member + least distance "
                   "of a screw from the front's edge %1",
                   told.equals(1)),
            screwDistanceSource()};
}

Words fixedFrontNoFrame(const Told&) {
    return {text("The fixed front has no face frame to be screwed on through: a frameless case has "
                 "only the edges of its panels there."),
            text("screws go through a member from behind; through a panel's edge none can. Fasten "
                 "blocks or a rail behind the front"),
            commonPractice()};
}

// across and up the front
Words holeOffMember(const Told& told) {
    return {phrase("The screw hole at %1 across and %2 up the front misses the members behind it, "
                   "or comes too near to an edge.",
                   told.say(0), told.say(1)),
            text("a screw of a fixed front goes through a member, its head and tool away from the "
                 "member's edges, into wood away from the front's edges"),
            commonPractice()};
}

// thinner edge, shadow
Words fillerNoThickness(const Told& told) {
    return {phrase("No filler strip fits in the gap: the edges beside it are %1 thick, and it "
                   "should lie %2 back.",
                   told.say(0), told.say(1)),
            phrase("thickness = thinner edge − shadow %1 − %2 %3; it must be more than 0",
                   told.equals(0), told.say(1), told.equals(told.figure(0) - told.figure(1))),
            sourceOfLimit(told.project.limits.fillerShadow, Limits{}.fillerShadow)};
}

// bend, greatest bend, thickness, least thickness
Words fillerBends(const Told& told) {
    const Filler* filler =
        fillerOf(told.plan, *told.finding.where.opening, *told.finding.where.member);
    const Length span = filler ? filler->span : nothing, width = filler ? filler->width : nothing;
    return {phrase("The filler strip bends by about %1 when a hand pushes on it, more than %2: it "
                   "is %3 thick and should be at least %4.",
                   told.sayAbout(0), told.say(1), told.say(2), told.sayLeast(3)),
            phrase("bend = F l³ / (4 E w t³) with F = %1 N, l = %2 between the screws beside it, "
                   "E = 10 000 N/mm², w = %3, t = %4; the wall behind it is not counted",
                   told.number(handPushPoundsForce * Force::newtonsPerPoundForce, 1),
                   told.say(span), told.say(width), told.say(2)),
            sourceNamed(SourceKind::FromMemory,
                        text("beam on two supports with a load in its middle; stiffness of wood "
                             "along the grain from the Wood Handbook, chapter 5, from memory; the "
                             "hand's push is common practice"))};
}

} // namespace frontwright::wording
