#include "core/hardware/bolts.h"

#include <algorithm>

namespace frontwright {
namespace {

/// Nearest nanometre, halves up; 0 where `parts` is not positive.
Length partOf(Length whole, std::int64_t part, std::int64_t parts) {
    if (parts <= 0)
        return {};
    const std::int64_t product = whole.nanometres() * part;
    const std::int64_t shifted = product + parts / 2;
    return Length::fromNanometres(shifted / parts - (shifted % parts < 0 ? 1 : 0));
}

/// The field where there is one, else the whole front.
FrontRect flatPart(const FrontStock& stock) {
    return stock.field.isEmpty() ? stock.front : stock.field;
}

Length heightOfCentre(const HardwareSpec& spec, const FrontStock& stock) {
    const Span upright = stock.front.upright();
    switch (spec.placing) {
    case Placing::CentredOnFront:
        break;
    case Placing::CentredInField:
        return flatPart(stock).upright().middle();
    case Placing::FromTop:
        return upright.high - spec.distance;
    case Placing::OpticalCentre:
        return upright.middle() + partOf(upright.size(), 1, spec.opticalPart);
    }
    return upright.middle();
}

Length middleAcross(const HardwareSpec& spec, const FrontStock& stock) {
    return spec.placing == Placing::CentredInField ? flatPart(stock).across().middle()
                                                   : stock.front.across().middle();
}

bool carriesTwo(const HardwareSpec& spec, const FrontStock& stock) {
    return spec.twoPast && stock.front.width() > *spec.twoPast;
}

bool carriesThree(const HardwareSpec& spec, const FrontStock& stock) {
    return spec.threePast && stock.front.width() > *spec.threePast;
}

} // namespace

std::vector<FrontPoint> handleCentres(const HardwareSpec& spec, const FrontStock& stock) {
    if (spec.placedAt)
        return {*spec.placedAt};
    const Length y = heightOfCentre(spec, stock);
    const bool three = carriesThree(spec, stock);
    if (!three && !carriesTwo(spec, stock))
        return {{middleAcross(spec, stock), y}};
    const std::int64_t percent = std::min(spec.twoAtPercent, 100 - spec.twoAtPercent);
    const Length fromSide = partOf(stock.front.width(), percent, 100);
    const FrontPoint left{stock.front.left + fromSide, y}, right{stock.front.right - fromSide, y};
    if (three)
        return {left, {stock.front.across().middle(), y}, right};
    return {left, right};
}

} // namespace frontwright
