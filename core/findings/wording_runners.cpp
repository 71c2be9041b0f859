#include "core/findings/wording.h"

namespace frontwright::wording {

namespace {

/// nullptr where the plan that is told of has none.
const RunnerKind* kindOf(const Told& told) {
    return told.front->runner ? told.front->runner->kind : nullptr;
}
/// The runner's own entry says what it needs.
Source sourceOfKind(const Told& told) {
    const RunnerKind* kind = kindOf(told);
    return kind ? kind->source : commonPractice();
}
Phrase nameOfKind(const Told& told) {
    const RunnerKind* kind = kindOf(told);
    return kind ? nameFromData(kind->name) : Phrase(text("runner"));
}

} // namespace

// length, room in the case, box's depth
Words runnerTooLong(const Told& told) {
    const bool inCase = told.figure(0) > told.figure(1);
    const Length over = told.figure(0) - (inCase ? told.figure(1) : told.figure(2));
    return {inCase ? phrase("The runner is %1 too long for the case: %2, and %3 is left behind its "
                            "front end.",
                            told.say(over), told.say(0), told.say(1))
                   : phrase("The runner is %1 longer than the box: %2, and the box is %3 deep.",
                            told.say(over), told.say(0), told.say(2)),
            phrase("room = frame + case inside − runner's setback %1; the box is %2 deep; the "
                   "runner must be no longer than either",
                   told.equals(1), told.say(2)),
            sourceOfKind(told)};
}

// shortest stocked, room in the case, box's depth
Words noRunnerFits(const Told& told) {
    return {phrase("No stocked length of this runner fits (%1): the shortest is %2, the case "
                   "leaves %3, and the box is %4 deep.",
                   nameOfKind(told), told.say(0), told.say(1), told.say(2)),
            phrase("room = frame + case inside − runner's setback %1; the box is %2 deep; the "
                   "runner must be no longer than either",
                   told.equals(1), told.say(2)),
            sourceOfKind(told)};
}

// box's depth, runner's length
Words boxOffRunner(const Told& told) {
    const Length off = told.figure(0) - told.figure(1);
    return {off > Length{}
                ? phrase("The box is %1 deeper than its runners are long: their hooks do not reach "
                         "its back. The box is %2 deep, the runners are %3 long.",
                         told.say(off), told.say(0), told.say(1))
                : phrase("The box is %1 shorter than its runners are long: its back does not reach "
                         "their hooks. The box is %2 deep, the runners are %3 long.",
                         told.say(-off), told.say(0), told.say(1)),
            phrase("box depth = runner length %1; the box is %2", told.equals(1), told.say(0)),
            sourceOfKind(told)};
}

// box's height, runner's top, its lower edge
Words boxLowForRunner(const Told& told) {
    return {phrase("The box is %1 too low for the runner at its side: it is %2 high, and the "
                   "runner's top lies %3 above its lower edge.",
                   told.say(told.figure(1) - told.figure(0)), told.say(0), told.say(1)),
            phrase("runner's top = its lower edge + its height %1 + %2 %3; the box is %4 high",
                   told.equals(2), told.say(told.figure(1) - told.figure(2)), told.equals(1),
                   told.say(0)),
            sourceOfKind(told)};
}

// inside width, needed
Words boxNarrowForRunner(const Told& told) {
    return {phrase("The box is %1 too narrow for what runs under it: %2 between its sides, and %3 "
                   "is needed.",
                   told.say(told.figure(1) - told.figure(0)), told.say(0), told.say(1)),
            phrase("needed between the sides: what the runners take under the bottom %1; the box "
                   "has %2",
                   told.equals(1), told.say(0)),
            sourceOfKind(told)};
}

// bottom's underside, least height, runner's top
Words bottomOnRunner(const Told& told) {
    const bool isRunner = told.figure(0) < told.figure(2);
    return {isRunner
                ? phrase("The bottom lies %1 too low for the runner under it: its underside is at "
                         "%2, the runner's top at %3 above the box's lower edge.",
                         told.say(told.figure(1) - told.figure(0)), told.say(0), told.say(2))
                : phrase("The notch for the runner would cut %1 into the bottom's groove: the "
                         "groove is %2 above the box's lower edge, the notch %3 high.",
                         told.say(told.figure(1) - told.figure(0)), told.say(0), told.say(1)),
            phrase("least height of the groove = the higher of runner's top and notch %1; the "
                   "groove is at %2",
                   told.equals(1), told.say(0)),
            sourceOfKind(told)};
}

// how far below the box it reaches, clearance below
Words runnerOutOfOpening(const Told& told) {
    return {phrase("The runner reaches %1 below the opening: it takes %2 below the box, and the "
                   "clearance there is %3.",
                   told.say(told.figure(0) - told.figure(1)), told.say(0), told.say(1)),
            phrase("least clearance below = what the runner takes below the box %1; there is %2",
                   told.equals(0), told.say(1)),
            sourceOfKind(told)};
}

namespace {

Phrase neededReason(const Told& told) {
    const RunnerKind* kind = kindOf(told);
    if (!kind || !kind->forSides)
        return phrase("side clearance that the runner asks for %1, up to %2 more; there is %3",
                      told.equals(1), told.say(2), told.say(0));
    return phrase("needed = the runner's side clearance + sides that it is for − sides %1 + %2 − "
                  "%3 %4, up to %5 more; there is %6",
                  told.equals(kind->sideClearance), told.say(*kind->forSides), told.say(3),
                  told.equals(1), told.say(2), told.say(0));
}

} // namespace

// clearance, needed, tolerance, sides' thickness
Words sideClearanceOff(const Told& told) {
    const Length off = told.figure(0) - told.figure(1);
    return {off < Length{}
                ? phrase("The box has %1 too little clearance at each side for its runners: %2, "
                         "and %3 is needed.",
                         told.say(-off), told.say(0), told.say(1))
                : phrase("The box has %1 too much clearance at each side for its runners: %2, and "
                         "%3 is needed.",
                         told.say(off), told.say(0), told.say(1)),
            neededReason(told), sourceOfKind(told)};
}

// what the box gains, clearance above, box's height
Words boxSticks(const Told& told) {
    return {phrase("The box sticks in damp air: it grows %1 higher, and the play above it is %2.",
                   told.say(0), told.say(1)),
            phrase("growth = box height × the sides' change from when they are cut to the wettest "
                   "air, flat-sawn; of %1 that is %2; the play above is %3",
                   told.say(2), told.say(0), told.say(1)),
            sourceNamed(SourceKind::Published,
                        text("Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13: "
                             "change = size × coefficient × change of moisture"))};
}

} // namespace frontwright::wording
