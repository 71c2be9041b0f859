#include "core/findings/judging.h"
#include "core/findings/wording.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

/// "1 1/4 in screw, 1/2 in wall", with the recess where there is one.
std::string screwAndWall(const Told& told) {
    std::string text = told.say(0) + " screw, ";
    if (!told.figure(1).isZero())
        text += "set " + told.say(1) + " deep, ";
    return text + told.say(2) + " wall";
}

Length penetration(const Told& told) {
    return told.figure(0) + told.figure(1) - told.figure(2);
}

/// "tip cover = front − (screw + recess − wall) = …"
std::string tipReason(const Told& told) {
    const Length cover = told.figure(3) - penetration(told);
    return "tip cover = front behind the hole − (screw + recess − wall) = " + told.say(3) + " − (" +
           told.say(0) + " + " + told.say(1) + " − " + told.say(2) + ") = " + told.say(cover);
}

Source sourceOfTipCover(const Told& told) {
    return sourceOfLimit(told.project.limits.leastTipCover, Limits{}.leastTipCover);
}

} // namespace

// screw, recess, wall, front behind the hole
Words screwThroughShowFace(const Told& told) {
    const Length through = penetration(told) - told.figure(3);
    const std::string what =
        through > nothing ? "The screw comes " + told.say(through) + " through the show face: "
                          : std::string("The screw's tip is level with the show face: ");
    return {what + screwAndWall(told) + ", " + told.say(3) + " front behind the hole.",
            tipReason(told) + "; it must be more than 0", commonPractice()};
}

Words tipCoverThin(const Told& told) {
    const Length cover = told.figure(3) - penetration(told);
    const Length leastCover = told.project.limits.leastTipCover;
    return {"Only " + told.say(cover) + " of wood is left before the screw's tip, less than " +
                told.say(leastCover) + ": " + screwAndWall(told) + ", " + told.say(3) +
                " front behind the hole.",
            tipReason(told) + "; at least " + told.say(leastCover), sourceOfTipCover(told)};
}

// screw, recess, wall, least penetration
Words penetrationShort(const Told& told) {
    const Length depth = penetration(told);
    const std::string what = depth > nothing
                                 ? "The screw goes only " + told.say(depth) +
                                       " into the front, less than " + told.say(3) + ": "
                                 : std::string("The screw does not reach the front: ");
    return {what + screwAndWall(told) + ".",
            "penetration = screw + recess − wall = " + told.say(0) + " + " + told.say(1) + " − " +
                told.say(2) + " = " + told.say(depth) + "; at least " + told.say(3),
            sourceOfLimit(told.project.limits.leastPenetration, Limits{}.leastPenetration)};
}

namespace {

std::string nearestStocked(const Told& told) {
    const bool hasBelow = !told.figure(2).isZero(), hasAbove = !told.figure(3).isZero();
    if (hasBelow && hasAbove)
        return " The nearest are " + told.say(2) + " and " + told.say(3) + ".";
    if (hasBelow || hasAbove)
        return " The nearest is " + told.say(hasBelow ? 2 : 3) + ".";
    return {};
}

std::string windowReason(const Told& told) {
    const MountingPlan& mounting = told.front->mounting;
    const Limits& limits = told.project.limits;
    const std::string through = told.say(mounting.wall) + " − " + told.say(mounting.recess);
    const Length front =
        told.figure(1) - mounting.wall + mounting.recess + limits.leastTipCover.length;
    return "least = wall − recess + least penetration = " + through + " + " +
           told.say(limits.leastPenetration) + " = " + told.say(0) +
           "; greatest = wall − recess + front − least tip cover = " + through + " + " +
           told.say(front) + " − " + told.say(limits.leastTipCover) + " = " + told.say(1);
}

} // namespace

// least length, greatest length, nearest stocked below, nearest stocked above
Words noScrewFits(const Told& told) {
    const bool isPossible = told.figure(0) <= told.figure(1);
    const std::string sentence = isPossible
                                     ? "No stocked screw fits: it has to be from " + told.say(0) +
                                           " to " + told.say(1) + " long." + nearestStocked(told)
                                     : "No screw can fit: it has to be at least " + told.say(0) +
                                           " long to hold and at most " + told.say(1) +
                                           " not to come too near the "
                                           "show face.";
    return {sentence, windowReason(told), sourceOfTipCover(told)};
}

// wall, recess, head's height, least wall under the head
Words wallThinUnderHead(const Told& told) {
    const Length left = told.figure(0) - told.figure(1) - told.figure(2);
    const std::string what =
        left > nothing ? "Only " + told.say(left) +
                             " of wall is left under the screw's head, "
                             "less than " +
                             told.say(3) + ": "
                       : std::string("The recess leaves no wall under the screw's head: ");
    return {what + told.say(0) + " wall, " + told.say(1) + " recess, head " + told.say(2) +
                " high.",
            "wall under the head = wall − recess − head = " + told.say(0) + " − " + told.say(1) +
                " − " + told.say(2) + " = " + told.say(left) + "; at least " + told.say(3),
            sourceOfLimit(told.project.limits.leastWallUnderHead, Limits{}.leastWallUnderHead)};
}

// rows apart, movement between them, play in the clearance hole, clearance hole
Words slotForMovement(const Told& told) {
    const Length hole = told.figure(3) + told.figure(1) - told.figure(2);
    return {"A solid front moves: between screw rows " + told.say(0) + " apart by about " +
                told.sayAbout(1) + " from dry air to damp, and the clearance holes give only " +
                told.say(2) + "; drill one row " + told.say(hole) +
                " or make its holes slots, up and down.",
            "movement ≈ rows apart / " + std::to_string(judging::widthsPerMovement) + " = " +
                told.say(0) + " / " + std::to_string(judging::widthsPerMovement) + " = " +
                told.say(1) +
                " (1/8 in for each foot across the grain, grain running from left "
                "to right); play = clearance hole − shank = " +
                told.say(2),
            commonPractice()};
}

} // namespace frontwright::wording
