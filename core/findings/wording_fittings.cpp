#include "core/findings/wording.h"

#include "core/lengths/format.h"

namespace frontwright::wording {

namespace {

constexpr Length nothing{};

const FittingPlan* fittingOf(const Told& told, std::optional<std::uint32_t> index) {
    if (!index || !told.front->fittings || *index >= told.front->fittings->size())
        return nullptr;
    return &(*told.front->fittings)[*index];
}

Phrase nameOf(const Told& told) {
    const FittingPlan* fitting = fittingOf(told, told.finding.where.fitting);
    return fitting ? nameFromData(fitting->form->name) : Phrase(text("fitting"));
}

Source sourceOfForm(const Told& told) {
    const FittingPlan* fitting = fittingOf(told, told.finding.where.fitting);
    return fitting ? fitting->form->source : commonPractice();
}

bool facesTheShow(const Told& told) {
    const FittingPlan* fitting = fittingOf(told, told.finding.where.fitting);
    return fitting && fitting->form->bearsOn == FrontFace::Back;
}

Length penetration(const Told& told) {
    return told.figure(0) - told.figure(1);
}

Phrase tipReason(const Told& told) {
    return phrase("wood left = wood before the screw − (screw − plate) %1 − (%2 − %3) %4",
                  told.equals(2), told.say(0), told.say(1),
                  told.equals(told.figure(2) - penetration(told)));
}

/// Spacing in the unit of its own pattern.
Phrase spacingOf(const Told& told, Length distance) {
    constexpr std::int64_t sixteenth = 4 * Length::nanometresPer64th;
    const bool isInch = distance.nanometres() % sixteenth == 0;
    return withMark(exact(distance, isInch ? Unit::Inch : Unit::Millimetre), told.style.mark);
}

} // namespace

// how far past, fitting's size that way, field's size that way
Words fittingOffField(const Told& told) {
    return {told.bySide({text("The plate (%4) reaches %1 past the field onto the left edge profile "
                              "and would rock: plate %2, field %3 that way."),
                         text("The plate (%4) reaches %1 past the field onto the right edge "
                              "profile and would rock: plate %2, field %3 that way."),
                         text("The plate (%4) reaches %1 past the field onto the bottom edge "
                              "profile and would rock: plate %2, field %3 that way."),
                         text("The plate (%4) reaches %1 past the field onto the top edge profile "
                              "and would rock: plate %2, field %3 that way.")},
                        {told.say(0), told.say(1), told.say(2), nameOf(told)}),
            phrase("past the field = plate / 2 − centre to its edge %1 / 2 − %2 %3; it must be 0 "
                   "or less",
                   told.equals(1), told.say(told.figure(1).half() - told.figure(0)),
                   told.equals(0)),
            commonPractice()};
}

// how far past, fitting's size that way, front's size that way
Words fittingOffFront(const Told& told) {
    return {told.bySide({text("The fitting (%4) reaches %1 past the front's left edge: %2 wide in "
                              "a front of %3."),
                         text("The fitting (%4) reaches %1 past the front's right edge: %2 wide "
                              "in a front of %3."),
                         text("The fitting (%4) reaches %1 past the front's bottom edge: %2 high "
                              "in a front of %3."),
                         text("The fitting (%4) reaches %1 past the front's top edge: %2 high in "
                              "a front of %3.")},
                        {told.say(0), told.say(1), told.say(2), nameOf(told)}),
            phrase("plate, holes and mortises must lie on the front; they reach %1 past it",
                   told.say(0)),
            commonPractice()};
}

// screw, plate, wood before it, nothing
Words fittingScrewThrough(const Told& told) {
    const Length through = penetration(told) - told.figure(2);
    const Phrase beyond = told.say(through), screw = told.say(0), plate = told.say(1),
                 wood = told.say(2);
    if (through <= nothing)
        return {phrase("The fitting's screw (%4) ends level with the face beyond: %1 screw, %2 "
                       "plate, %3 of wood before it.",
                       screw, plate, wood, nameOf(told)),
                phrase("%1; it must be more than 0", tipReason(told)), commonPractice()};
    return {facesTheShow(told)
                ? phrase("The fitting's screw (%5) comes %1 through the show face: %2 screw, %3 "
                         "plate, %4 of wood before it.",
                         beyond, screw, plate, wood, nameOf(told))
                : phrase("The fitting's screw (%5) comes %1 out of the front's back and holds it "
                         "off its box: %2 screw, %3 plate, %4 of wood before it.",
                         beyond, screw, plate, wood, nameOf(told)),
            phrase("%1; it must be more than 0", tipReason(told)), commonPractice()};
}

// screw, plate, wood before it, least tip cover
Words fittingScrewThin(const Told& told) {
    return {phrase("Only %1 of wood is left before the fitting's screw (%5), less than %2: %3 "
                   "screw, %4 of wood.",
                   told.say(told.figure(2) - penetration(told)), told.say(3), told.say(0),
                   told.say(2), nameOf(told)),
            phrase("%1; at least %2", tipReason(told), told.say(3)),
            sourceOfLimit(told.project.limits.leastTipCover, Limits{}.leastTipCover)};
}

// screw, plate, wood before it, least penetration
Words fittingScrewShort(const Told& told) {
    const Length depth = penetration(told);
    return {depth > nothing
                ? phrase("The fitting's screw (%4) goes only %1 into the front, less than %2: %3 "
                         "screw.",
                         told.say(depth), told.say(3), told.say(0), nameOf(told))
                : phrase("The fitting's screw (%2) does not reach the front: %1 screw.",
                         told.say(0), nameOf(told)),
            phrase("penetration = screw − plate %1 − %2 %3; at least %4", told.equals(0),
                   told.say(1), told.equals(depth), told.say(3)),
            sourceOfLimit(told.project.limits.leastPenetration, Limits{}.leastPenetration)};
}

// least length, greatest length, plate, wood before the worst screw
Words noFittingScrewFits(const Told& told) {
    return {phrase("No stocked screw fits the fitting (%3): it has to be from %1 to %2 long.",
                   told.sayLeast(0), told.sayMost(1), nameOf(told)),
            phrase("least = plate + least penetration %1 + %2 %3; greatest = plate + wood − least "
                   "tip cover %1 + %4 − %5 %6",
                   told.equals(2), told.say(told.figure(0) - told.figure(2)), told.equals(0),
                   told.say(3), told.say(told.figure(2) + told.figure(3) - told.figure(1)),
                   told.equals(1)),
            sourceOfLimit(told.project.limits.leastPenetration, Limits{}.leastPenetration)};
}

// depth (in the top edge: 0), wood before it was cut, wood left, least wood
Words mortiseTooDeep(const Told& told) {
    if (told.figure(0).isZero())
        return {told.figure(2) > nothing
                    ? phrase("The mortise in the top edge (%3) leaves only %1 of wood beside it, "
                             "less than %2.",
                             told.say(2), told.say(3), nameOf(told))
                    : phrase("The mortise in the top edge (%2) breaks out of the face by %1.",
                             told.say(-told.figure(2)), nameOf(told)),
                phrase("wood beside it, to the nearer face %1; at least %2", told.equals(2),
                       told.say(3)),
                sourceOfForm(told)};
    return {told.figure(2) > nothing
                ? phrase("The mortise (%5) leaves only %1 of wood behind it, less than %2: %3 "
                         "deep in %4 of wood.",
                         told.say(2), told.say(3), told.say(0), told.say(1), nameOf(told))
                : phrase("The mortise (%3) goes right through: %1 deep in %2 of wood.", told.say(0),
                         told.say(1), nameOf(told)),
            phrase("wood left = front there − depth of the mortise %1 − %2 %3; at least %4",
                   told.equals(1), told.say(0), told.equals(2), told.say(3)),
            sourceOfLimit(told.project.limits.leastTipCover, Limits{}.leastTipCover)};
}

// common part's width and height
Words fittingsCollide(const Told& told) {
    const FittingPlan* other = fittingOf(told, told.finding.where.otherFitting);
    return {other ? phrase("Two fittings (%3 and %4) are in each other's way: %1 wide and %2 high.",
                           told.say(0), told.say(1), nameOf(told), nameFromData(other->form->name))
                  : phrase("The fitting (%3) and the front's handle are in each other's way: %1 "
                           "wide and %2 high.",
                           told.say(0), told.say(1), nameOf(told)),
            phrase("what they have in common, %1 × %2, must be nothing", told.say(0), told.say(1)),
            commonPractice()};
}

// from the screw's centre to what is cut, its radius, wood that must stay between
Words holeAtFitting(const Told& told) {
    const Length wood = told.figure(0) - told.figure(1);
    return {wood < nothing
                ? phrase("The mounting screw runs %1 into what is cut for the fitting (%2).",
                         told.say(-wood), nameOf(told))
                : phrase("Only %1 of wood is left between the mounting screw and what is cut for "
                         "the fitting (%3), less than %2.",
                         told.say(wood), told.say(2), nameOf(told)),
            phrase("wood between = centre to the cut − screw's radius %1 − %2 %3; at least %4",
                   told.equals(0), told.say(1), told.equals(wood), told.say(2)),
            sourceOfLimit(told.project.limits.holeToHole, Limits{}.holeToHole)};
}

// here, there, how far apart they are
Words centresMixed(const Told& told) {
    const FrontPlan* other =
        told.finding.where.other ? told.plan.frontOf(*told.finding.where.other) : nullptr;
    const std::string otherName = other ? label(told.project, *other) : std::string();
    return {phrase("The handles of %1 are bored at %2, those of %3 at %4: %5 apart, so that one "
                   "jig or template does not serve both.",
                   label(told.project, *told.front), spacingOf(told, told.figure(0)), otherName,
                   spacingOf(told, told.figure(1)), told.say(2)),
            phrase("inch and metric patterns that an eye takes for one another: %1 − %2 = %3; "
                   "from more than 0 to 2 mm is told",
                   spacingOf(told, greatest(told.figure(0), told.figure(1))),
                   spacingOf(told, least(told.figure(0), told.figure(1))), told.say(2)),
            commonPractice()};
}

} // namespace frontwright::wording
