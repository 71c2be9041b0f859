#include "core/findings/wording.h"
#include "core/plan/banks.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

/// The distance, how it came about.
Phrase reason(const Told& told) {
    if (told.figure(3) < nothing)
        return phrase("distance = to the case's edge − what covers it %1 − %2 %3; at least %4",
                      told.equals(2), told.say(-told.figure(3)), told.equals(0), told.say(1));
    return phrase("distance = to the case's edge + beyond it %1 + %2 %3; at least %4",
                  told.equals(2), told.say(3), told.equals(0), told.say(1));
}

Phrase reaching(const Told& told, Text touching, Text into, Text near) {
    if (told.figure(0) == nothing)
        return touching;
    if (told.figure(0) < nothing)
        return Phrase(into, {told.say(-told.figure(0))});
    return Phrase(near, {told.say(0), told.say(1)});
}

} // namespace

// to what stands there, the gap chosen, to the case's edge, what stands there past that edge
Words frontAtWall(const Told& told) {
    return {reaching(told, text("The front touches the wall: it scrapes on every pull."),
                     text("The front reaches %1 into the wall."),
                     text("The front stays only %1 from the wall; %2 are wanted, for no wall is "
                          "straight.")),
            reason(told), commonPractice()};
}

// likewise
Words frontAtNeighbour(const Told& told) {
    return {reaching(told, text("The front touches the neighbouring case's front."),
                     text("The front reaches %1 over the neighbouring case's front."),
                     text("The gap to the neighbouring case's front is %1; %2 are chosen.")),
            reason(told), commonPractice()};
}

// likewise
Words frontAtTrim(const Told& told) {
    const Surround& surround = told.project.casework.surroundings[told.side()];
    if (std::holds_alternative<OverhangingTop>(surround))
        return {reaching(told, text("The front touches the overhanging top."),
                         text("The front reaches %1 up behind the overhanging top's lip."),
                         text("The front ends only %1 below the overhanging top; %2 are wanted.")),
                reason(told), commonPractice()};
    if (std::holds_alternative<Plinth>(surround))
        return {reaching(told, text("The front touches the moulding on the plinth."),
                         text("The front reaches %1 into the moulding on the plinth."),
                         text("The front ends only %1 above the plinth's moulding; %2 are "
                              "wanted.")),
                reason(told), commonPractice()};
    return {reaching(told, text("The front touches the moulding."),
                     text("The front reaches %1 into the moulding."),
                     text("The front stays only %1 from the moulding; %2 are wanted.")),
            reason(told), commonPractice()};
}

// step, pitch, nearest whole number of pitches
Words stepOffPitch(const Told& told) {
    const Length off = told.figure(0) - told.figure(2);
    return {phrase("The fronts of bank %1 do not step by the system holes' pitch: %2 to the next, "
                   "%3 off.",
                   bankLetters(told.front->bank), told.say(0), told.say(off.magnitude())),
            phrase("step = front + gap above it %1; nearest is %2, a whole number of %3: then the "
                   "runners behind all fronts take the same holes",
                   told.equals(0), told.say(2), told.say(1)),
            commonPractice()};
}

} // namespace frontwright::wording
