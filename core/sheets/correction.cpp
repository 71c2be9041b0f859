#include "core/sheets/correction.h"

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

constexpr int tenThousand = 10'000;

void scalePlaces(Mark& mark, const PointMm& by) {
    const auto scale = [&](PointMm& p) { p = p.cwiseProduct(by); };
    if (auto* line = std::get_if<LineMark>(&mark.shape)) {
        scale(line->from);
        scale(line->to);
    } else if (auto* path = std::get_if<PathMark>(&mark.shape)) {
        std::for_each(path->points.begin(), path->points.end(), scale);
    } else if (auto* circle = std::get_if<CircleMark>(&mark.shape)) {
        scale(circle->centre);
    } else if (auto* hatch = std::get_if<HatchMark>(&mark.shape)) {
        std::for_each(hatch->outline.begin(), hatch->outline.end(), scale);
    } else if (auto* text = std::get_if<TextMark>(&mark.shape)) {
        scale(text->at);
    }
}

Length shrunk(Length length, double factor) {
    if (factor <= 1)
        return length;
    return Length::nearestToMillimetres(length.inMillimetres() / factor);
}

} // namespace

ScaleFactors factorsOf(const SheetOptions& options, Orientation orientation) {
    return options.calibration.at(orientation == Orientation::Portrait ? 0 : 1);
}

std::string factorText(double factor, DecimalMark mark) {
    const auto parts = std::lround(factor * tenThousand);
    return withMark(std::to_string(parts / tenThousand) + "." +
                        std::to_string(tenThousand + parts % tenThousand).substr(1),
                    mark);
}

Paper beforeCorrection(const Paper& paper, Orientation orientation, const ScaleFactors& factors) {
    const bool isUpright = orientation == Orientation::Portrait;
    Paper result = paper;
    result.width = shrunk(paper.width, isUpright ? factors.across : factors.up);
    result.height = shrunk(paper.height, isUpright ? factors.up : factors.across);
    return result;
}

void correct(Page& page, const ScaleFactors& factors) {
    if (factors.areNone())
        return;
    for (Mark& mark : page.drawing.marks)
        scalePlaces(mark, {factors.across, factors.up});
    for (PageMark& mark : page.marks) {
        mark.x *= factors.across;
        mark.y *= factors.up;
    }
    page.width *= std::max(1.0, factors.across);
    page.height *= std::max(1.0, factors.up);
    page.drawing.extent = {PointMm(0, 0), PointMm(page.width, page.height)};
}

} // namespace frontwright
