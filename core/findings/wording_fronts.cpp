#include "core/findings/wording.h"

#include "core/plan/banks.h"
#include "core/plan/facing.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

Source sourceOfGap(const Told& told) {
    return sourceOfLimit(told.project.limits.leastGap, Limits{}.leastGap);
}

/// Inset: the gap alone.
Phrase gapReason(const Told& told) {
    const Whereabouts& where = told.finding.where;
    const MemberPlan* member = where.member ? told.plan.memberOf(*where.member) : nullptr;
    const FrontPlan* other = where.other ? told.plan.frontOf(*where.other) : nullptr;
    if (member == nullptr || other == nullptr || told.front == nullptr || !where.side)
        return phrase("gap %1", told.equals(0));
    return phrase("gap = member − overlay − overlay %1 − %2 − %3 %4", told.equals(widthOf(*member)),
                  told.say(told.front->overlay[*where.side]),
                  told.say(other->overlay[opposite(*where.side)]), told.equals(0));
}

Phrase tightBetween(const Told& told) {
    return told.figure(0) == nothing
               ? Phrase(text("The fronts touch: there is no gap between them."))
               : phrase("The gap between the fronts is only %1, less than %2.", told.say(0),
                        told.say(1));
}

Phrase tightInOpening(const Told& told) {
    constexpr PerSide<Text> tooLarge{
        text("The front is %1 too large for its opening at the left."),
        text("The front is %1 too large for its opening at the right."),
        text("The front is %1 too large for its opening at the bottom."),
        text("The front is %1 too large for its opening at the top.")};
    constexpr PerSide<Text> touching{text("The front touches its opening's left edge."),
                                     text("The front touches its opening's right edge."),
                                     text("The front touches its opening's bottom edge."),
                                     text("The front touches its opening's top edge.")};
    constexpr PerSide<Text> tight{text("The gap at the left is only %1, less than %2."),
                                  text("The gap at the right is only %1, less than %2."),
                                  text("The gap at the bottom is only %1, less than %2."),
                                  text("The gap at the top is only %1, less than %2.")};
    const Length gap = told.figure(0);
    if (gap < nothing)
        return told.bySide(tooLarge, {told.say(-gap)});
    return gap == nothing ? told.bySide(touching, {})
                          : told.bySide(tight, {told.say(0), told.say(1)});
}

} // namespace

// width and height of the common part
Words frontsCollide(const Told& told) {
    return {phrase("The fronts overlap on a part %1 wide and %2 high: they cannot both close.",
                   told.say(0), told.say(1)),
            phrase("common part of the two fronts %1 × %2; there must be none", told.equals(0),
                   told.say(1)),
            commonPractice()};
}

// gap, least gap
Words gapTight(const Told& told) {
    const bool isBetween = told.finding.where.other.has_value();
    return {isBetween ? tightBetween(told) : tightInOpening(told),
            phrase("%1; at least %2", gapReason(told), told.say(1)), sourceOfGap(told)};
}

// narrowest gap, widest gap, width of the member at the narrowest, at the widest
Words gapsUneven(const Told& told) {
    const Phrase difference = told.say(told.figure(1) - told.figure(0));
    const std::string bank = bankLetters(told.front->bank);
    return {told.figure(2) == told.figure(3)
                ? phrase("The gaps down bank %1 differ by %2: %3 here, %4 at the widest; their "
                         "rails are alike, so an overlay is not.",
                         bank, difference, told.say(0), told.say(1))
                : phrase("The gaps down bank %1 differ by %2: %3 here, %4 at the widest; the rail "
                         "is %5 at the one and %6 at the other.",
                         bank, difference, told.say(0), told.say(1), told.say(2), told.say(3)),
            phrase("difference = widest − narrowest gap %1 − %2 %3; here %4", told.equals(1),
                   told.say(0), told.equals(told.figure(1) - told.figure(0)), gapReason(told)),
            commonPractice()};
}

// how far past the case, overlay
Words frontOffCase(const Told& told) {
    return {told.bySide({text("The front reaches %1 past the case at the left."),
                         text("The front reaches %1 past the case at the right."),
                         text("The front reaches %1 past the case at the bottom."),
                         text("The front reaches %1 past the case at the top.")},
                        {told.say(0)}),
            phrase("past the case = overlay − from the opening to the case's edge %1 − %2 %3; it "
                   "should be 0 or less",
                   told.equals(1), told.say(told.figure(1) - told.figure(0)), told.equals(0)),
            commonPractice()};
}

// overlay
Words overlayMissing(const Told& told) {
    constexpr PerSide<Text> justReaching{
        text("The front only just reaches its opening's left edge and does not cover it."),
        text("The front only just reaches its opening's right edge and does not cover it."),
        text("The front only just reaches its opening's bottom edge and does not cover it."),
        text("The front only just reaches its opening's top edge and does not cover it.")};
    constexpr PerSide<Text> tooShort{
        text("The front ends %1 short of its opening's left edge, which it should cover."),
        text("The front ends %1 short of its opening's right edge, which it should cover."),
        text("The front ends %1 short of its opening's bottom edge, which it should cover."),
        text("The front ends %1 short of its opening's top edge, which it should cover.")};
    const Length overlay = told.figure(0);
    return {overlay == nothing ? told.bySide(justReaching, {})
                               : told.bySide(tooShort, {told.say(-overlay)}),
            phrase("overlay %1; an overlay front needs more than 0", told.equals(0)),
            commonPractice()};
}

// front's width, front's height, profile's width
Words fieldEmpty(const Told& told) {
    if (told.figure(0) <= nothing || told.figure(1) <= nothing)
        return {phrase("The front has no size: %1 × %2.", told.say(0), told.say(1)),
                phrase("front = opening + overlays (− gaps) %1 × %2", told.equals(0), told.say(1)),
                commonPractice()};
    return {phrase("The edge profiles meet: nothing flat is left of a front %1 × %2 with a profile "
                   "%3 wide.",
                   told.say(0), told.say(1), told.say(2)),
            phrase("field = front − profile at both sides: %1 − 2 × %2 %3 wide, %4 − 2 × %2 %5 "
                   "high, where all four carry it",
                   told.say(0), told.say(2), told.equals(told.figure(0) - 2 * told.figure(2)),
                   told.say(1), told.equals(told.figure(1) - 2 * told.figure(2))),
            commonPractice()};
}

// profile's depth, front's thickness
Words profileTooDeep(const Told& told) {
    return {phrase("The edge profile leaves no edge: it is %1 deep in a front %2 thick.",
                   told.say(0), told.say(1)),
            phrase("edge = thickness − profile's depth %1 − %2 %3; it must be more than 0",
                   told.equals(1), told.say(0), told.equals(told.figure(1) - told.figure(0))),
            commonPractice()};
}

} // namespace frontwright::wording
