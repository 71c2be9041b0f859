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

/// From how far and the whole size of what reaches over an edge.
std::vector<Phrase> pastReason(const Told& told) {
    return {told.equals(1), told.say(told.figure(1).half() - told.figure(0)), told.equals(0)};
}

} // namespace

// bolt, grip, least engagement, short by
Words boltTooShort(const Told& told) {
    return {phrase("The bolt is %1 too short: %2 bolt, %3 of wood to go through, at least %4 to "
                   "hold in the handle.",
                   told.say(3), told.say(0), told.say(1), told.say(2)),
            phrase("least length = grip + least engagement %1 + %2 %3; the bolt is %4",
                   told.equals(1), told.say(2), told.equals(told.figure(1) + told.figure(2)),
                   told.say(0)),
            sourceOfForm(told)};
}

// bolt, grip, thread depth, too much
Words boltBottomsOut(const Told& told) {
    return {phrase("The bolt bottoms out, %1 too long: %2 bolt, %3 of wood to go through, thread "
                   "%4 deep; a shorter bolt or %1 of washers under its head cures it.",
                   told.say(3), told.say(0), told.say(1), told.say(2)),
            phrase("greatest length = grip + thread depth %1 + %2 %3; the bolt is %4",
                   told.equals(1), told.say(2), told.equals(told.figure(1) + told.figure(2)),
                   told.say(0)),
            sourceOfForm(told)};
}

// least length, greatest length, grip
Words noBoltFits(const Told& told) {
    const Length grip = told.figure(2);
    return {phrase("No stocked bolt fits: it has to be from %1 to %2 long.", told.sayLeast(0),
                   told.sayMost(1)),
            phrase("least = grip + least engagement %1 + %2 %3; greatest = grip + thread depth %1 "
                   "+ %4 %5",
                   told.equals(grip), told.say(told.figure(0) - grip), told.equals(0),
                   told.say(told.figure(1) - grip), told.equals(1)),
            sourceOfForm(told)};
}

// counterbore, wood that it goes into, wood left under the head, least wood there
Words counterboreTooDeep(const Told& told) {
    return {told.figure(2) > nothing
                ? phrase("The counterbore leaves only %1 of wood under the bolt's head, less than "
                         "%2: %3 deep in %4 of wood.",
                         told.say(2), told.say(3), told.say(0), told.say(1))
                : phrase("The counterbore goes right through: %1 deep in %2 of wood.", told.say(0),
                         told.say(1)),
            phrase("wood under the head = wood − counterbore %1 − %2 %3; at least %4",
                   told.equals(1), told.say(0), told.equals(2), told.say(3)),
            sourceOfWood(told)};
}

// how far off the field, base's size that way, field's size that way
Words backplateOffField(const Told& told) {
    return {told.bySide({text("The handle's base reaches %1 past the field onto the left edge "
                              "profile and would rock: base %2, field %3 that way."),
                         text("The handle's base reaches %1 past the field onto the right edge "
                              "profile and would rock: base %2, field %3 that way."),
                         text("The handle's base reaches %1 past the field onto the bottom edge "
                              "profile and would rock: base %2, field %3 that way."),
                         text("The handle's base reaches %1 past the field onto the top edge "
                              "profile and would rock: base %2, field %3 that way.")},
                        {told.say(0), told.say(1), told.say(2)}),
            told.bySide({text("past the field's left edge = base / 2 − centre to it %1 / 2 − %2 "
                              "%3; it must be 0 or less"),
                         text("past the field's right edge = base / 2 − centre to it %1 / 2 − %2 "
                              "%3; it must be 0 or less"),
                         text("past the field's bottom edge = base / 2 − centre to it %1 / 2 − %2 "
                              "%3; it must be 0 or less"),
                         text("past the field's top edge = base / 2 − centre to it %1 / 2 − %2 "
                              "%3; it must be 0 or less")},
                        pastReason(told)),
            commonPractice()};
}

namespace {

/// With the hole that lies off the front too, or the base alone.
Phrase offFront(const Told& told) {
    constexpr PerSide<Text> withHole{
        text("A handle hole lies off the front; the base reaches %1 past the front's left edge: "
             "base %2, front %3 that way."),
        text("A handle hole lies off the front; the base reaches %1 past the front's right edge: "
             "base %2, front %3 that way."),
        text("A handle hole lies off the front; the base reaches %1 past the front's bottom edge: "
             "base %2, front %3 that way."),
        text("A handle hole lies off the front; the base reaches %1 past the front's top edge: "
             "base %2, front %3 that way.")};
    constexpr PerSide<Text> baseAlone{
        text("The handle reaches %1 past the front's left edge: base %2, front %3 that way."),
        text("The handle reaches %1 past the front's right edge: base %2, front %3 that way."),
        text("The handle reaches %1 past the front's bottom edge: base %2, front %3 that way."),
        text("The handle reaches %1 past the front's top edge: base %2, front %3 that way.")};
    const bool isSpoilt = told.finding.severity == Severity::Ruins;
    return told.bySide(isSpoilt ? withHole : baseAlone, {told.say(0), told.say(1), told.say(2)});
}

} // namespace

// how far past the edge, base's size that way, front's size that way
Words handleOffFront(const Told& told) {
    return {offFront(told),
            told.bySide({text("past the front's left edge = base / 2 − centre to it %1 / 2 − %2 "
                              "%3; it must be 0 or less"),
                         text("past the front's right edge = base / 2 − centre to it %1 / 2 − %2 "
                              "%3; it must be 0 or less"),
                         text("past the front's bottom edge = base / 2 − centre to it %1 / 2 − %2 "
                              "%3; it must be 0 or less"),
                         text("past the front's top edge = base / 2 − centre to it %1 / 2 − %2 "
                              "%3; it must be 0 or less")},
                        pastReason(told)),
            commonPractice()};
}

// how far it reaches in or out, hole's diameter
Words accessHoleOffWall(const Told& told) {
    return {told.bySide({text("The %2 hole through the box wall for the handle's bolt runs %1 into "
                              "the box's left side."),
                         text("The %2 hole through the box wall for the handle's bolt runs %1 into "
                              "the box's right side."),
                         text("The %2 hole through the box wall for the handle's bolt runs %1 into "
                              "the bottom."),
                         text("The %2 hole through the box wall for the handle's bolt runs %1 past "
                              "the wall's top edge.")},
                        {told.say(0), told.say(1)}),
            Phrase(text("past the free part of the wall = hole / 2 − centre to it %1 / 2 − %2 %3; "
                        "it must be 0 or less"),
                   pastReason(told)),
            commonPractice()};
}

// how much the bases overlap, from centre to centre
Words handlesCollide(const Told& told) {
    return {phrase("The front's two handles overlap by %1: their centres are only %2 apart.",
                   told.say(0), told.say(1)),
            phrase("least distance of centres = width of a handle's base %1; they are %2 apart",
                   told.equals(told.figure(0) + told.figure(1)), told.say(1)),
            commonPractice()};
}

} // namespace frontwright::wording
