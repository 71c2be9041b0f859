#include "core/findings/wording.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

Source sourceOfForm(const Told& told) {
    return told.front->hardware ? told.front->hardware->form->source : commonPractice();
}

Source sourceOfWood(const Told& told) {
    return sourceOfLimit(told.project.limits.leastWoodUnderHead, Limits{}.leastWoodUnderHead);
}

/// "past the field = base / 2 − centre to its edge = 1 in / 2 − 3/8 in = 1/8 in", from how far and
/// the whole size of what reaches over.
std::string pastReason(const Told& told, const std::string& edge, const std::string& what) {
    const Length toEdge = told.figure(1).half() - told.figure(0);
    return "past the " + edge + " = " + what + " / 2 − centre to it = " + told.say(1) + " / 2 − " +
           told.say(toEdge) + " = " + told.say(0) + "; it must be 0 or less";
}

} // namespace

// bolt, grip, least engagement, short by
Words boltTooShort(const Told& told) {
    return {"The bolt is " + told.say(3) + " too short: " + told.say(0) + " bolt, " + told.say(1) +
                " of wood to go through, at least " + told.say(2) + " to hold in the handle.",
            "least length = grip + least engagement = " + told.say(1) + " + " + told.say(2) +
                " = " + told.say(told.figure(1) + told.figure(2)) + "; the bolt is " + told.say(0),
            sourceOfForm(told)};
}

// bolt, grip, thread depth, too much
Words boltBottomsOut(const Told& told) {
    return {"The bolt bottoms out, " + told.say(3) + " too long: " + told.say(0) + " bolt, " +
                told.say(1) + " of wood to go through, thread " + told.say(2) +
                " deep; a shorter bolt or " + told.say(3) + " of washers under its head cures it.",
            "greatest length = grip + thread depth = " + told.say(1) + " + " + told.say(2) + " = " +
                told.say(told.figure(1) + told.figure(2)) + "; the bolt is " + told.say(0),
            sourceOfForm(told)};
}

// least length, greatest length, grip
Words noBoltFits(const Told& told) {
    const Length grip = told.figure(2);
    return {"No stocked bolt fits: it has to be from " + told.say(0) + " to " + told.say(1) +
                " long.",
            "least = grip + least engagement = " + told.say(grip) + " + " +
                told.say(told.figure(0) - grip) + " = " + told.say(0) +
                "; greatest = grip + thread depth = " + told.say(grip) + " + " +
                told.say(told.figure(1) - grip) + " = " + told.say(1),
            sourceOfForm(told)};
}

// counterbore, wood that it goes into, wood left under the head, least wood there
Words counterboreTooDeep(const Told& told) {
    const std::string what = told.figure(2) > nothing
                                 ? "The counterbore leaves only " + told.say(2) +
                                       " of wood under the bolt's head, less than " + told.say(3) +
                                       ": "
                                 : std::string("The counterbore goes right through: ");
    return {what + told.say(0) + " deep in " + told.say(1) + " of wood.",
            "wood under the head = wood − counterbore = " + told.say(1) + " − " + told.say(0) +
                " = " + told.say(2) + "; at least " + told.say(3),
            sourceOfWood(told)};
}

// how far off the field, base's size that way, field's size that way
Words backplateOffField(const Told& told) {
    return {"The handle's base reaches " + told.say(0) + " past the field onto the " + told.side() +
                " edge profile and would rock: base " + told.say(1) + ", field " + told.say(2) +
                " that way.",
            pastReason(told, "field's " + told.side() + " edge", "base"), commonPractice()};
}

// how far past the edge, base's size that way, front's size that way
Words handleOffFront(const Told& told) {
    const bool isSpoilt = told.finding.severity == Severity::Ruins;
    return {
        (isSpoilt ? "A handle hole lies off the front; the base reaches " : "The handle reaches ") +
            told.say(0) + " past the front's " + told.side() + " edge" + ": base " + told.say(1) +
            ", front " + told.say(2) + " that way.",
        pastReason(told, "front's " + told.side() + " edge", "base"), commonPractice()};
}

// how far it reaches in or out, hole's diameter
Words accessHoleOffWall(const Told& told) {
    const bool isBottom = told.finding.where.side == Side::Bottom;
    const bool isTop = told.finding.where.side == Side::Top;
    const std::string what = isBottom ? "the bottom"
                             : isTop  ? "the wall's top edge"
                                      : "the box's " + told.side() + " side";
    return {"The " + told.say(1) + " hole through the box wall for the handle's bolt runs " +
                told.say(0) + (isTop ? " past " : " into ") + what + ".",
            pastReason(told, "free part of the wall", "hole"), commonPractice()};
}

// how much the bases overlap, from centre to centre
Words handlesCollide(const Told& told) {
    return {"The front's two handles overlap by " + told.say(0) + ": their centres are only " +
                told.say(1) + " apart.",
            "least distance of centres = width of a handle's base = " +
                told.say(told.figure(0) + told.figure(1)) + "; they are " + told.say(1) + " apart",
            commonPractice()};
}

} // namespace frontwright::wording
