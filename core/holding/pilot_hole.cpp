#include "core/holding/pilot_hole.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double leastPart = 0.70;
constexpr Length halfStep = Length::fromNanometres(Length::nanometresPer64th / 2);

Length ofRoot(Length root, double part) {
    return Length::nearestToMillimetres(root.inMillimetres() * part);
}

Length drillFor(Length wanted, Length atLeast, Unit steps) {
    const std::int64_t step =
        steps == Unit::Inch ? Length::nanometresPer64th : Length::nanometresPerMillimetre / 2;
    const std::int64_t below = (wanted.nanometres() + step / 4) / step;
    const std::int64_t count = below * step < atLeast.nanometres() ? below + 1 : below;
    return Length::fromNanometres(std::max<std::int64_t>(count, 1) * step);
}

} // namespace

Length rootOf(const WoodScrew& screw) {
    return screw.rootDiameter.value_or(
        Length::fromNanometres(screw.shankDiameter.nanometres() * 2 / 3));
}

double leadHolePart(double gravityOvendry) {
    if (gravityOvendry > 0.60)
        return 0.90;
    return gravityOvendry > 0.50 ? 0.70 : 0.0;
}

PilotRule pilotRule(const WoodScrew& screw, SpecificGravity gravity, WoodKind kind, Unit steps) {
    const double part = leadHolePart(gravityOvendry(gravity));
    PilotRule rule;
    rule.root = rootOf(screw);
    rule.isNeeded = part > 0;
    rule.least = ofRoot(rule.root, leastPart) - halfStep;
    rule.greatest = ofRoot(rule.root, std::max(part, olderLeadHolePart(kind))) + halfStep;
    rule.advised = drillFor(ofRoot(rule.root, std::max(part, leastPart)), rule.least, steps);
    return rule;
}

} // namespace frontwright
