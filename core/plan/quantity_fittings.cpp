#include "core/lengths/format.h"
#include "core/plan/chosen.h"
#include "core/plan/quantity_parts.h"

namespace frontwright::deriving {

namespace {

const Limits programLimits;

const FittingPlan& fittingOf(const Asked& asked) {
    return (*asked.front().fittings)[asked.quantity.index];
}
const FittingSpec& specOf(const Asked& asked) {
    return chosenHardware(asked.project, asked.front()).fittings[fittingOf(asked).spec];
}

std::vector<InputPlace> placeInputs() {
    return {InputPlace::Hardware, InputPlace::Fit};
}

Rule centresRule(const Asked& asked) {
    const HardwareForm& form = *asked.front().hardware->form;
    const auto spacing = holeSpacing(form);
    if (!spacing || !spacing->isPattern)
        return {text("first hole to last, from centre to centre"),
                asked.figures().plus(asked.value).text(),
                form.source,
                {InputPlace::Catalogue, InputPlace::Hardware}};
    const std::string own = withMark(exact(asked.value, spacing->unit), asked.style.mark);
    return {spacing->unit == Unit::Inch
                ? text("first hole to last: an inch pattern, whole sixteenths")
                : text("first hole to last: a metric pattern, whole millimetres"),
            asked.style.unit == spacing->unit ? own : own + " = " + shown(asked.value, asked.style),
            form.source,
            {InputPlace::Catalogue, InputPlace::Hardware},
            Ending::Complete};
}

Rule acrossRule(const Asked& asked) {
    const FittingSpec& spec = specOf(asked);
    const Length width = asked.front().rect.width();
    const bool isRight = isSame(width - spec.fromSide, asked.value);
    if (spec.across == FittingAcross::Middle)
        return {text("half the front's width"), asked.figures().plusPart(width, 1, 2).text(),
                commonPractice(), placeInputs()};
    if (spec.across != FittingAcross::FromLeft && isRight)
        return {text("front's width − the given distance from its right edge"),
                asked.figures().plus(width).minus(spec.fromSide).text(), makersDecision(),
                placeInputs()};
    return {text("the given distance from the front's left edge"),
            asked.figures().plus(asked.value).text(), makersDecision(), placeInputs()};
}

Rule upRule(const Asked& asked) {
    const FittingSpec& spec = specOf(asked);
    const FittingForm& form = *fittingOf(asked).form;
    const Length height = asked.front().rect.height();
    if (form.belowTop)
        return {text("front's height − the fitting's own distance below its top edge"),
                asked.figures().plus(height).minus(*form.belowTop).text(), form.source,
                placeInputs()};
    switch (spec.upright) {
    case FittingUpright::Middle:
        break;
    case FittingUpright::FromTop:
        return {text("front's height − the given distance from its top"),
                asked.figures().plus(height).minus(spec.fromEdge).text(), makersDecision(),
                placeInputs()};
    case FittingUpright::FromBottom:
        return {text("the given distance from the front's lower edge"),
                asked.figures().plus(asked.value).text(), makersDecision(), placeInputs()};
    }
    return {text("half the front's height"), asked.figures().plusPart(height, 1, 2).text(),
            commonPractice(), placeInputs()};
}

Rule lengthRule(const Asked& asked) {
    const FittingPlan& fitting = fittingOf(asked);
    if (specOf(asked).screwLength)
        return asGiven(asked, InputPlace::Hardware);
    return {
        text("longest stocked length from plate + least penetration to plate + wood − least "
             "tip cover"),
        asked.figures().plus(fitting.leastLength).text() + " ≤ " +
            asked.figures().plus(asked.value).text() + " ≤ " +
            asked.figures().plus(fitting.greatestLength).text(),
        fitting.screw->source,
        {InputPlace::Hardware, InputPlace::Catalogue, InputPlace::Thickness, InputPlace::Limits},
        Ending::Complete};
}

Rule penetrationRule(const Asked& asked) {
    const FittingPlan& fitting = fittingOf(asked);
    return {text("screw − the fitting's plate"),
            asked.figures().plus(*fitting.screwLength).minus(fitting.form->plate).text(),
            commonPractice(),
            {InputPlace::Hardware, InputPlace::Catalogue}};
}

Rule tipCoverRule(const Asked& asked) {
    const FittingScrew& worst = *fittingOf(asked).worstScrew();
    return {text("wood before the screw − penetration"),
            asked.figures().plus(worst.wood).minus(worst.penetration).text(),
            commonPractice(),
            {InputPlace::Thickness, InputPlace::Profile, InputPlace::Hardware}};
}

Rule mortiseRule(const Asked& asked) {
    const FittingPlan& fitting = fittingOf(asked);
    const std::vector<InputPlace> inputs{InputPlace::Thickness, InputPlace::Profile,
                                         InputPlace::Catalogue};
    for (const MortisePlan& mortise : fitting.mortises)
        if (mortise.woodLeft == asked.value && mortise.cut.from != FrontFace::TopEdge)
            return {text("front behind the mortise − its depth"),
                    asked.figures()
                        .plus(asked.value + mortise.cut.depth)
                        .minus(mortise.cut.depth)
                        .text(),
                    fitting.form->source, inputs};
    return {text("wood beside the mortise in the top edge, to the nearer face"),
            asked.figures().plus(asked.value).text(), fitting.form->source, inputs};
}

} // namespace

Rule ruleOfFitting(const Asked& asked) {
    using enum QuantityKind;
    const QuantityKind kind = asked.quantity.kind;
    if (kind == HandleCentres)
        return centresRule(asked);
    if (kind == FittingX)
        return acrossRule(asked);
    if (kind == FittingY)
        return upRule(asked);
    if (kind == FittingScrewLength)
        return lengthRule(asked);
    if (kind == FittingPenetration)
        return penetrationRule(asked);
    return kind == FittingTipCover ? tipCoverRule(asked) : mortiseRule(asked);
}

} // namespace frontwright::deriving
