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
    const std::string where = "hole " + told.say(0) + " above the box's lower edge, bottom's top " +
                              told.say(1) + ", radius of the head " + told.say(2) + ".";
    const std::string what = clear < nothing
                                 ? "The screw hole goes " + told.say(-clear) + " into the bottom: "
                                 : "The screw hole stays only " + told.say(clear) +
                                       " clear of the bottom, less than " + told.say(3) + ": ";
    const Length needed = told.figure(1) + told.figure(2) + told.figure(3);
    return {what + where,
            "least height = bottom's top + head's radius + margin = " + told.say(1) + " + " +
                told.say(2) + " + " + told.say(3) + " = " + told.say(needed) + "; the hole is at " +
                told.say(0),
            sourceOfMargin(told)};
}

// hole's height, bottom's top, tool's radius, least height
Words recessToolBlocked(const Told& told) {
    const Length touching = told.figure(1) + told.figure(2) - told.figure(0);
    return {"The hole clears the bottom, but the tool for its recess meets it by " +
                told.say(touching) + ": hole " + told.say(0) +
                " above the box's lower edge, bottom's top " + told.say(1) +
                ", radius of the tool " + told.say(2) + ".",
            "least height = bottom's top + tool's radius = " + told.say(1) + " + " + told.say(2) +
                " = " + told.say(told.figure(1) + told.figure(2)) + "; the hole is at " +
                told.say(0),
            commonPractice()};
}

// from that side of the box, its thickness, tool's radius
Words holeAtBoxSide(const Told& told) {
    const Length needed = told.figure(1) + told.figure(2);
    return {"The tool for the screw's recess meets the box's " + told.side() + " side by " +
                told.say(needed - told.figure(0)) + ": hole " + told.say(0) + " from it, side " +
                told.say(1) + " thick, radius of the tool " + told.say(2) + ".",
            "least distance = side + tool's radius = " + told.say(1) + " + " + told.say(2) + " = " +
                told.say(needed) + "; the hole is at " + told.say(0),
            commonPractice()};
}

// below the wall's top edge, least distance from it, head's radius
Words holeAtTopEdge(const Told& told) {
    const Length left = told.figure(0) - told.figure(2);
    const std::string what =
        left < nothing
            ? "The screw's head breaks out of the wall's top edge by " + told.say(-left) + ": "
            : "The screw hole is too near the wall's top edge: ";
    return {what + "its centre is " + told.say(0) + " below it; " + told.say(1) + " is needed.",
            "least distance = the larger of tool's radius and head's radius + margin = " +
                told.say(1) + "; the hole is at " + told.say(0),
            sourceOfMargin(told)};
}

// between the centres, least distance between them, wood that must stay between holes
Words holeAtHardware(const Told& told) {
    const std::string handle =
        told.finding.where.handleHole
            ? "handle hole " + std::to_string(*told.finding.where.handleHole + 1)
            : std::string("a handle hole");
    const Length wood = told.figure(0) - told.figure(1) + told.figure(2);
    const std::string what =
        wood < nothing
            ? "The screw hole runs " + told.say(-wood) + " into what is drilled for " + handle
            : "Only " + told.say(wood) +
                  " of wood is left between the screw hole and what is "
                  "drilled for " +
                  handle + ", less than " + told.say(2);
    return {what + ": " + told.say(0) + " from centre to centre.",
            "least distance = both radii + wood between = " +
                told.say(told.figure(1) - told.figure(2)) + " + " + told.say(2) + " = " +
                told.say(1) + "; the holes are " + told.say(0) + " apart",
            sourceOfLimit(told.project.limits.holeToHole, Limits{}.holeToHole)};
}

// front behind the hole (0: none), least thickness
Words holeOffFront(const Told& told) {
    const bool isOff = told.figure(0) <= nothing;
    const Limits& limits = told.project.limits;
    return {isOff ? "There is no front behind the screw hole: the box wall reaches past it there."
                  : "The front is only " + told.say(0) +
                        " thick behind the screw hole; a screw "
                        "needs " +
                        told.say(1) + " there.",
            "least thickness = least penetration + least tip cover = " +
                told.say(limits.leastPenetration) + " + " + told.say(limits.leastTipCover) + " = " +
                told.say(limits.leastPenetration.length + limits.leastTipCover.length) +
                "; behind the hole it is " + told.say(0),
            sourceOfLimit(limits.leastPenetration, Limits{}.leastPenetration)};
}

// hole's place across and up the wall
Words holeAtRunner(const Told& told) {
    return {"A part of the runner is in the way of the screw hole at " + told.say(0) +
                " across and " + told.say(1) + " up the box wall.",
            "the hole, at " + told.say(0) + " and " + told.say(1) +
                " from the wall's lower left corner, lies under the runner",
            commonPractice()};
}

} // namespace frontwright::wording
