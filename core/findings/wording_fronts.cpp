#include "core/findings/wording.h"

#include "core/plan/banks.h"
#include "core/plan/facing.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

Source sourceOfGap(const Told& told) {
    return sourceOfLimit(told.project.limits.leastGap, Limits{}.leastGap);
}

/// "gap = member − overlay − overlay = 1 1/4 in − 1/2 in − 3/4 in = 0 in"; inset: the gap alone.
std::string gapReason(const Told& told) {
    const Whereabouts& where = told.finding.where;
    const MemberPlan* member = where.member ? told.plan.memberOf(*where.member) : nullptr;
    const FrontPlan* other = where.other ? told.plan.frontOf(*where.other) : nullptr;
    if (member == nullptr || other == nullptr || told.front == nullptr || !where.side)
        return "gap = " + told.say(0);
    return "gap = member − overlay − overlay = " + told.say(widthOf(*member)) + " − " +
           told.say(told.front->overlay[*where.side]) + " − " +
           told.say(other->overlay[opposite(*where.side)]) + " = " + told.say(0);
}

} // namespace

// width and height of the common part
Words frontsCollide(const Told& told) {
    return {"The fronts overlap on a part " + told.say(0) + " wide and " + told.say(1) +
                " high: they cannot both close.",
            "common part of the two fronts = " + told.say(0) + " × " + told.say(1) +
                "; there must be none",
            commonPractice()};
}

// gap, least gap
Words gapTight(const Told& told) {
    const Length gap = told.figure(0);
    const bool isBetween = told.finding.where.other.has_value();
    std::string what;
    if (gap < nothing)
        what = "The front is " + told.say(-gap) + " too large for its opening at the " +
               told.side() + ".";
    else if (gap == nothing)
        what = isBetween ? "The fronts touch: there is no gap between them."
                         : "The front touches its opening's " + told.side() + " edge.";
    else
        what = "The gap " +
               (isBetween ? std::string("between the fronts") : "at the " + told.side()) +
               " is only " + told.say(0) + ", less than " + told.say(1) + ".";
    return {what, gapReason(told) + "; at least " + told.say(1), sourceOfGap(told)};
}

// narrowest gap, widest gap, width of the member at the narrowest, at the widest
Words gapsUneven(const Told& told) {
    const Length difference = told.figure(1) - told.figure(0);
    const std::string bank = "bank " + bankLetters(told.front->bank);
    const std::string members =
        told.figure(2) == told.figure(3)
            ? "their rails are alike, so an overlay is not"
            : "the rail is " + told.say(2) + " at the one and " + told.say(3) + " at the other";
    return {"The gaps down " + bank + " differ by " + told.say(difference) + ": " + told.say(0) +
                " here, " + told.say(1) + " at the widest; " + members + ".",
            "difference = widest − narrowest gap = " + told.say(1) + " − " + told.say(0) + " = " +
                told.say(difference) + "; here " + gapReason(told),
            commonPractice()};
}

// how far past the case, overlay
Words frontOffCase(const Told& told) {
    const Length frame = told.figure(1) - told.figure(0);
    return {"The front reaches " + told.say(0) + " past the case at the " + told.side() + ".",
            "past the case = overlay − from the opening to the case's edge = " + told.say(1) +
                " − " + told.say(frame) + " = " + told.say(0) + "; it should be 0 or less",
            commonPractice()};
}

// overlay
Words overlayMissing(const Told& told) {
    const Length overlay = told.figure(0);
    const std::string edge = "opening's " + told.side() + " edge";
    return {overlay == nothing
                ? "The front only just reaches its " + edge + " and does not cover it."
                : "The front ends " + told.say(-overlay) + " short of its " + edge +
                      ", which it should cover.",
            "overlay = " + told.say(0) + "; an overlay front needs more than 0", commonPractice()};
}

// front's width, front's height, profile's width
Words fieldEmpty(const Told& told) {
    if (told.figure(0) <= nothing || told.figure(1) <= nothing)
        return {"The front has no size: " + told.say(0) + " × " + told.say(1) + ".",
                "front = opening + overlays (− gaps) = " + told.say(0) + " × " + told.say(1),
                commonPractice()};
    return {"The edge profiles meet: nothing flat is left of a front " + told.say(0) + " × " +
                told.say(1) + " with a profile " + told.say(2) + " wide.",
            "field = front − profile at both sides: " + told.say(0) + " − 2 × " + told.say(2) +
                " = " + told.say(told.figure(0) - 2 * told.figure(2)) + " wide, " + told.say(1) +
                " − 2 × " + told.say(2) + " = " + told.say(told.figure(1) - 2 * told.figure(2)) +
                " high, where all four carry it",
            commonPractice()};
}

// profile's depth, front's thickness
Words profileTooDeep(const Told& told) {
    return {"The edge profile leaves no edge: it is " + told.say(0) + " deep in a front " +
                told.say(1) + " thick.",
            "edge = thickness − profile's depth = " + told.say(1) + " − " + told.say(0) + " = " +
                told.say(told.figure(1) - told.figure(0)) + "; it must be more than 0",
            commonPractice()};
}

} // namespace frontwright::wording
