#include "core/fastening/screw_length.h"

#include "core/catalogue/stocked.h"

#include <algorithm>

namespace frontwright {
namespace {

/// Holes off the front carry nothing; where no other is left, the front's own thickness counts.
Length thinnestPlace(const std::vector<MountingHole>& holes, Length frontThickness) {
    Length result = frontThickness;
    for (const MountingHole& hole : holes)
        if (hole.thickness > Length{})
            result = least(result, hole.thickness);
    return result;
}

} // namespace

Length thicknessBehind(const MountingPlace& place, WallPoint at) {
    const FrontStock& front = place.front;
    const FrontPoint p = toFront(place.box, at);
    if (front.front.contains(p) && front.field.contains(p))
        return front.thickness;
    return localThickness(*front.profile, front.front, front.thickness, p);
}

void chooseLength(MountingPlan& plan, const MountingSpec& spec, const Limits& limits,
                  Length frontThickness) {
    const Length throughWall = plan.wall - plan.recess;
    plan.leastLength = throughWall + limits.leastPenetration;
    plan.greatestLength =
        throughWall + thinnestPlace(plan.holes, frontThickness) - limits.leastTipCover;
    if (spec.length)
        plan.length = *spec.length;
    else
        plan.length = longestStocked(plan.screw->lengths, {plan.leastLength, plan.greatestLength});
    for (MountingHole& hole : plan.holes) {
        hole.penetration = plan.length ? *plan.length - throughWall : Length{};
        hole.tipCover = hole.thickness - hole.penetration;
    }
}

} // namespace frontwright
