#include "core/lengths/format.h"
#include "core/plan/fillers.h"
#include "core/plan/quantity_parts.h"
#include "core/plan/quantity_values.h"

namespace frontwright {

Value valueOfFiller(const Filler& filler, QuantityKind kind) {
    if (kind == QuantityKind::FillerWidth)
        return filler.width;
    if (kind == QuantityKind::FillerLength)
        return filler.along.size();
    if (kind == QuantityKind::FillerThickness)
        return filler.thickness;
    if (kind == QuantityKind::FillerSpan)
        return filler.span > Length{} ? Value(filler.span) : std::nullopt;
    if (kind == QuantityKind::FillerBend)
        return filler.bend;
    return filler.leastThickness;
}

namespace deriving {

namespace {

/// "F 44.5 N, l 254.0 mm, E 10000 N/mm²": what a beam is worked out from is metric.
std::string beamFigures(const Asked& asked, const Filler& filler) {
    const auto mm = [&](Length length) { return asked.number(length.inMillimetres(), 1) + " mm"; };
    return "F " + asked.number(handPushPoundsForce * Force::newtonsPerPoundForce, 1) + " N, l " +
           mm(filler.span) + ", E " + asked.number(stiffnessNewtonsPerSquareMillimetre, 0) +
           " N/mm², w " + mm(filler.width);
}

std::vector<InputPlace> ofBeam() {
    return {InputPlace::Fit, InputPlace::Mounting, InputPlace::Limits};
}

Source beamSource() {
    return sourceNamed(
        SourceKind::FromMemory,
        text("beam on two supports with a load in its middle; stiffness of wood along the grain "
             "from the Wood Handbook, chapter 5, from memory; the hand's push is common practice"));
}

Rule thicknessRule(const Asked& asked, const Filler& filler) {
    return {text("thinner edge beside the gap − shadow"),
            asked.figures().plus(filler.edge).minus(asked.project.limits.fillerShadow).text(),
            sourceOfLimit(asked.project.limits.fillerShadow, Limits{}.fillerShadow),
            {InputPlace::Profile, InputPlace::Thickness, InputPlace::Limits}};
}

Rule bendRule(const Asked& asked, const Filler& filler) {
    const Length limit = asked.project.limits.fillerBend;
    const LengthStyle metric{Unit::Millimetre, 64, asked.style.mark};
    const std::string bend = shownFinely(*filler.bend, metric);
    std::string figures = beamFigures(asked, filler) + ", t " +
                          asked.number(filler.thickness.inMillimetres(), 1) + " mm: " + bend;
    if (asked.style.unit == Unit::Inch)
        figures += ", " + shownFinely(*filler.bend, asked.style);
    return {text("F l³ / (4 E w t³), the strip alone between the outermost screws beside the gap, "
                 "pushed in its middle"),
            phrase("%1; the limit is %2", figures, shownFinely(limit, asked.style)), beamSource(),
            ofBeam(), Ending::Complete};
}

Rule leastThicknessRule(const Asked& asked, const Filler& filler) {
    return {text("∛(F l³ / (4 E w b)), at which the strip bends by the limit b"),
            beamFigures(asked, filler) + ", b " +
                asked.number(asked.project.limits.fillerBend.length.inMillimetres(), 2) + " mm",
            beamSource(), ofBeam()};
}

} // namespace

Rule ruleOfFiller(const Asked& asked) {
    const Filler& filler = asked.plan.fillers[asked.quantity.item];
    const QuantityKind kind = asked.quantity.kind;
    if (kind == QuantityKind::FillerThickness)
        return thicknessRule(asked, filler);
    if (kind == QuantityKind::FillerBend)
        return bendRule(asked, filler);
    if (kind == QuantityKind::FillerLeastThickness)
        return leastThicknessRule(asked, filler);
    if (kind == QuantityKind::FillerWidth)
        return {text("the gap between the fronts"),
                asked.figures().plus(filler.width).text(),
                commonPractice(),
                {InputPlace::Fit, InputPlace::MemberWidth}};
    if (kind == QuantityKind::FillerLength)
        return {text("where the fronts face each other"),
                asked.figures().plus(filler.along.high).minus(filler.along.low).text(),
                commonPractice(),
                {InputPlace::Divisions, InputPlace::Fit}};
    return {text("between the outermost screws of the wider row beside the gap"),
            asked.figures().plus(filler.span).text(),
            commonPractice(),
            {InputPlace::Mounting}};
}

} // namespace deriving

} // namespace frontwright
