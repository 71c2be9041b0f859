#include "core/findings/wording.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

Source sourceOfMargin(const Told& told) {
    return sourceOfLimit(told.project.limits.screwMargin, Limits{}.screwMargin);
}

} // namespace

// hole's height, bottom's top, head's radius, margin
Words holeInBottom(const Told& told) {
    const Length clear = told.figure(0) - told.figure(2) - told.figure(1);
    const Length needed = told.figure(1) + told.figure(2) + told.figure(3);
    return {clear < nothing
                ? phrase("The screw hole goes %1 into the bottom: hole %2 above the box's lower "
                         "edge, bottom's top %3, radius of the head %4.",
                         told.say(-clear), told.say(0), told.say(1), told.say(2))
                : phrase("The screw hole stays only %1 clear of the bottom, less than %2: hole %3 "
                         "above the box's lower edge, bottom's top %4, radius of the head %5.",
                         told.say(clear), told.say(3), told.say(0), told.say(1), told.say(2)),
            phrase("least height = bottom's top + head's radius + margin %1 + %2 + %3 %4; the "
                   "hole is at %5",
                   told.equals(1), told.say(2), told.say(3), told.equals(needed), told.say(0)),
            sourceOfMargin(told)};
}

// hole's height, bottom's top, tool's radius, least height
Words recessToolBlocked(const Told& told) {
    const Length touching = told.figure(1) + told.figure(2) - told.figure(0);
    return {phrase("The hole clears the bottom, but the tool for its recess meets it by %1: hole "
                   "%2 above the box's lower edge, bottom's top %3, radius of the tool %4.",
                   told.say(touching), told.say(0), told.say(1), told.say(2)),
            phrase("least height = bottom's top + tool's radius %1 + %2 %3; the hole is at %4",
                   told.equals(1), told.say(2), told.equals(told.figure(1) + told.figure(2)),
                   told.say(0)),
            commonPractice()};
}

// from that side of the box, its thickness, tool's radius
Words holeAtBoxSide(const Told& told) {
    const Length needed = told.figure(1) + told.figure(2);
    const Phrase touching = told.say(needed - told.figure(0));
    return {told.side() == Side::Left
                ? phrase("The tool for the screw's recess meets the box's left side by %1: hole %2 "
                         "from it, side %3 thick, radius of the tool %4.",
                         touching, told.say(0), told.say(1), told.say(2))
                : phrase("The tool for the screw's recess meets the box's right side by %1: hole "
                         "%2 from it, side %3 thick, radius of the tool %4.",
                         touching, told.say(0), told.say(1), told.say(2)),
            phrase("least distance = side + tool's radius %1 + %2 %3; the hole is at %4",
                   told.equals(1), told.say(2), told.equals(needed), told.say(0)),
            commonPractice()};
}

// below the wall's top edge, least distance from it, head's radius
Words holeAtTopEdge(const Told& told) {
    const Length left = told.figure(0) - told.figure(2);
    return {left < nothing
                ? phrase("The screw's head breaks out of the wall's top edge by %1: its centre is "
                         "%2 below it; %3 is needed.",
                         told.say(-left), told.say(0), told.say(1))
                : phrase("The screw hole is too near the wall's top edge: its centre is %1 below "
                         "it; %2 is needed.",
                         told.say(0), told.say(1)),
            phrase("least distance = the larger of tool's radius and head's radius + margin %1; "
                   "the hole is at %2",
                   told.equals(1), told.say(0)),
            sourceOfMargin(told)};
}

namespace {

Phrase meetsHandleHole(const Told& told, Length wood) {
    const auto& handleHole = told.finding.where.handleHole;
    const std::string number = handleHole ? std::to_string(*handleHole + 1) : std::string();
    const Phrase apart = told.say(0);
    if (wood < nothing)
        return handleHole ? phrase("The screw hole runs %1 into what is drilled for handle hole "
                                   "%2: %3 from centre to centre.",
                                   told.say(-wood), number, apart)
                          : phrase("The screw hole runs %1 into what is drilled for a handle "
                                   "hole: %2 from centre to centre.",
                                   told.say(-wood), apart);
    return handleHole ? phrase("Only %1 of wood is left between the screw hole and what is "
                               "drilled for handle hole %2, less than %3: %4 from centre to "
                               "centre.",
                               told.say(wood), number, told.say(2), apart)
                      : phrase("Only %1 of wood is left between the screw hole and what is "
                               "drilled for a handle hole, less than %2: %3 from centre to "
                               "centre.",
                               told.say(wood), told.say(2), apart);
}

} // namespace

// between the centres, least distance between them, wood that must stay between holes
Words holeAtHardware(const Told& told) {
    return {meetsHandleHole(told, told.figure(0) - told.figure(1) + told.figure(2)),
            phrase("least distance = both radii + wood between %1 + %2 %3; the holes are %4 apart",
                   told.equals(told.figure(1) - told.figure(2)), told.say(2), told.equals(1),
                   told.say(0)),
            sourceOfLimit(told.project.limits.holeToHole, Limits{}.holeToHole)};
}

// front behind the hole (0: none), least thickness
Words holeOffFront(const Told& told) {
    const bool isOff = told.figure(0) <= nothing;
    const Limits& limits = told.project.limits;
    return {isOff ? Phrase(text("There is no front behind the screw hole: the box wall reaches "
                                "past it there."))
                  : phrase("The front is only %1 thick behind the screw hole; a screw needs %2 "
                           "there.",
                           told.say(0), told.say(1)),
            phrase("least thickness = least penetration + least tip cover %1 + %2 %3; behind the "
                   "hole it is %4",
                   told.equals(limits.leastPenetration), told.say(limits.leastTipCover),
                   told.equals(limits.leastPenetration.length + limits.leastTipCover.length),
                   told.say(0)),
            sourceOfLimit(limits.leastPenetration, Limits{}.leastPenetration)};
}

// hole from the corner or the middle, above the lower edge; how far the zone with the tool reaches
// that way, and up
Words holeAtRunner(const Told& told) {
    const bool isPaired = told.finding.where.side.has_value();
    return {isPaired ? phrase("The screw hole lies in the runner's clear zone in the wall's lower "
                              "corner: %1 from the box's side and %2 up; the zone with the tool's "
                              "radius reaches %3 inwards and %4 up.",
                              told.say(0), told.say(1), told.say(2), told.say(3))
                     : phrase("The screw hole lies in the runner's clear zone in the middle of the "
                              "wall: %1 from the middle and %2 up; the zone with the tool's radius "
                              "reaches %3 to each side and %4 up.",
                              told.say(0), told.say(1), told.say(2), told.say(3)),
            phrase("a hole must be %1 or more away that way, or %2 or more up; it is at %3 and %4",
                   told.say(2), told.say(3), told.say(0), told.say(1)),
            told.front->runner ? told.front->runner->kind->source : commonPractice()};
}

} // namespace frontwright::wording
