#include "core/fastening/thin_rim.h"

namespace frontwright {
namespace {

/// The loss falls from the edge to the field, so the border is found by halving.
Length rimWidth(const Profile& profile, Length greatestLoss) {
    Length tooNear; // loses too much, or is the edge
    Length enough = greatest(Length{}, profile.width);
    if (lossAt(profile, tooNear) <= greatestLoss)
        return {};
    while (enough - tooNear > Length::fromNanometres(1)) {
        const Length middle = Span{tooNear, enough}.middle();
        if (lossAt(profile, middle) <= greatestLoss)
            enough = middle;
        else
            tooNear = middle;
    }
    return enough;
}

} // namespace

FrontRect ThinRim::thickPart(FrontRect front) const {
    const FrontRect left{front.left + width.left, front.bottom + width.bottom,
                         front.right - width.right, front.top - width.top};
    if (fieldHolds == FieldHolds::No || left.isEmpty())
        return {front.right, front.top, front.left, front.bottom};
    return left;
}

ThinRim thinRim(const Profile& profile, Length thickness, Length leastThickness) {
    ThinRim rim;
    if (thickness < leastThickness) {
        rim.fieldHolds = FieldHolds::No;
        return rim;
    }
    const Length width = rimWidth(profile, thickness - leastThickness);
    for (Side side : allSides)
        if (profile.sides[side])
            rim.width[side] = width;
    return rim;
}

} // namespace frontwright
