#include "core/findings/judging.h"
#include "core/findings/moving_fronts.h"
#include "core/findings/wording.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

/// With the recess where there is one.
Phrase screwAndWall(const Told& told) {
    if (told.front != nullptr && told.front->use == OpeningUse::FixedFront)
        return told.figure(1).isZero() ? phrase("%1 screw, %2 frame", told.say(0), told.say(2))
                                       : phrase("%1 screw, set %2 deep, %3 frame", told.say(0),
                                                told.say(1), told.say(2));
    return told.figure(1).isZero()
               ? phrase("%1 screw, %2 wall", told.say(0), told.say(2))
               : phrase("%1 screw, set %2 deep, %3 wall", told.say(0), told.say(1), told.say(2));
}

Length penetration(const Told& told) {
    return told.figure(0) + told.figure(1) - told.figure(2);
}

Phrase tipReason(const Told& told) {
    const Length cover = told.figure(3) - penetration(told);
    return phrase("tip cover = front behind the hole − (screw + recess − wall) %1 − (%2 + %3 − "
                  "%4) %5",
                  told.equals(3), told.say(0), told.say(1), told.say(2), told.equals(cover));
}

Source sourceOfTipCover(const Told& told) {
    return sourceOfLimit(told.project.limits.leastTipCover, Limits{}.leastTipCover);
}

} // namespace

// screw, recess, wall, front behind the hole
Words screwThroughShowFace(const Told& told) {
    const Length through = penetration(told) - told.figure(3);
    return {through > nothing
                ? phrase("The screw comes %1 through the show face: %2, %3 front behind the hole.",
                         told.say(through), screwAndWall(told), told.say(3))
                : phrase("The screw's tip is level with the show face: %1, %2 front behind the "
                         "hole.",
                         screwAndWall(told), told.say(3)),
            phrase("%1; it must be more than 0", tipReason(told)), commonPractice()};
}

Words tipCoverThin(const Told& told) {
    const Length cover = told.figure(3) - penetration(told);
    const Length leastCover = told.project.limits.leastTipCover;
    return {phrase("Only %1 of wood is left before the screw's tip, less than %2: %3, %4 front "
                   "behind the hole.",
                   told.say(cover), told.say(leastCover), screwAndWall(told), told.say(3)),
            phrase("%1; at least %2", tipReason(told), told.say(leastCover)),
            sourceOfTipCover(told)};
}

// screw, recess, wall, least penetration
Words penetrationShort(const Told& told) {
    const Length depth = penetration(told);
    return {depth > nothing ? phrase("The screw goes only %1 into the front, less than %2: %3.",
                                     told.say(depth), told.say(3), screwAndWall(told))
                            : phrase("The screw does not reach the front: %1.", screwAndWall(told)),
            phrase("penetration = screw + recess − wall %1 + %2 − %3 %4; at least %5",
                   told.equals(0), told.say(1), told.say(2), told.equals(depth), told.say(3)),
            sourceOfLimit(told.project.limits.leastPenetration, Limits{}.leastPenetration)};
}

namespace {

Phrase noStockedScrewFits(const Told& told) {
    const bool hasBelow = !told.figure(2).isZero(), hasAbove = !told.figure(3).isZero();
    const Phrase shortest = told.say(0), longest = told.say(1);
    if (hasBelow && hasAbove)
        return phrase("No stocked screw fits: it has to be from %1 to %2 long. The nearest are %3 "
                      "and %4.",
                      shortest, longest, told.say(2), told.say(3));
    if (hasBelow || hasAbove)
        return phrase("No stocked screw fits: it has to be from %1 to %2 long. The nearest is %3.",
                      shortest, longest, told.say(hasBelow ? 2 : 3));
    return phrase("No stocked screw fits: it has to be from %1 to %2 long.", shortest, longest);
}

Phrase windowReason(const Told& told) {
    const MountingPlan& mounting = told.front->mounting;
    const Limits& limits = told.project.limits;
    const Length front =
        told.figure(1) - mounting.wall + mounting.recess + limits.leastTipCover.length;
    return phrase("least = wall − recess + least penetration %1 − %2 + %3 %4; greatest = wall − "
                  "recess + front − least tip cover %1 − %2 + %5 − %6 %7",
                  told.equals(mounting.wall), told.say(mounting.recess),
                  told.say(limits.leastPenetration), told.equals(0), told.say(front),
                  told.say(limits.leastTipCover), told.equals(1));
}

} // namespace

// least length, greatest length, nearest stocked below, nearest stocked above
Words noScrewFits(const Told& told) {
    const bool isPossible = told.figure(0) <= told.figure(1);
    return {isPossible ? noStockedScrewFits(told)
                       : phrase("No screw can fit: it has to be at least %1 long to hold and at "
                                "most %2 not to come too near the show face.",
                                told.sayLeast(0), told.sayMost(1)),
            windowReason(told), sourceOfTipCover(told)};
}

// wall, recess, head's height, least wall under the head
Words wallThinUnderHead(const Told& told) {
    const Length left = told.figure(0) - told.figure(1) - told.figure(2);
    return {left > nothing
                ? phrase("Only %1 of wall is left under the screw's head, less than %2: %3 wall, "
                         "%4 recess, head %5 high.",
                         told.say(left), told.say(3), told.say(0), told.say(1), told.say(2))
                : phrase("The recess leaves no wall under the screw's head: %1 wall, %2 recess, "
                         "head %3 high.",
                         told.say(0), told.say(1), told.say(2)),
            phrase("wall under the head = wall − recess − head %1 − %2 − %3 %4; at least %5",
                   told.equals(0), told.say(1), told.say(2), told.equals(left), told.say(3)),
            sourceOfLimit(told.project.limits.leastWallUnderHead, Limits{}.leastWallUnderHead)};
}

namespace {

/// As many as a maker reads.
constexpr std::size_t mostNamed = 12;

} // namespace

Phrase withTheOthers(const Told& told, Phrase sentence) {
    std::vector<Phrase> others;
    for (const MovingFront& moving : movingFronts(told.project, told.plan))
        if (moving.front != told.front)
            others.emplace_back(label(told.project, *moving.front));
    if (others.empty())
        return sentence;
    if (others.size() <= mostNamed)
        return joined(std::move(sentence), phrase("It is the same with %1.", listed(others)));
    const std::string more = std::to_string(others.size() - mostNamed);
    others.resize(mostNamed);
    return joined(std::move(sentence),
                  phrase("It is the same with %1, and with %2 more.", listed(others), more));
}

// rows apart, movement between them, play in the clearance hole, clearance hole
Words slotForMovement(const Told& told) {
    const Length hole = told.figure(3) + told.figure(1) - told.figure(2);
    return {
        withTheOthers(
            told,
            phrase("A solid front moves: between screw rows %1 apart by about %2 from dry air to "
                   "damp, and the clearance holes give only %3; drill one row %4 or make its holes "
                   "slots, up and down.",
                   told.say(0), told.sayAbout(1), told.say(2), told.say(hole, Rounding::Up))),
        phrase("movement ≈ rows apart / %1 %2 / %1 %3 (1/8 in for each foot across the grain, "
               "grain running from left to right); play = clearance hole − shank %4",
               std::to_string(judging::widthsPerMovement), told.equals(0), told.equals(1),
               told.equals(2)),
        commonPractice()};
}

// rows apart, front's height, least apart
Words screwRowsNear(const Told& told) {
    const Phrase sentence =
        told.figure(0) > nothing
            ? phrase("The front is %1 high, and its rows of screws stand only %2 apart, less than "
                     "%3: solid wood can cup and tilt on them.",
                     told.say(1), told.say(0), told.sayLeast(2))
            : phrase("The front is %1 high, and one row of screws holds it: solid wood can cup and "
                     "tilt on it. Two rows should stand %2 apart.",
                     told.say(1), told.sayLeast(2));
    return {sentence,
            phrase("least distance of the rows = height / %1 %2; told of solid fronts from %3 high "
                   "whose grain runs from left to right",
                   std::to_string(judging::heightsPerRows), told.equals(2),
                   told.say(judging::tallFront)),
            commonPractice()};
}

} // namespace frontwright::wording
