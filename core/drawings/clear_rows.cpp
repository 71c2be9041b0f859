#include "core/drawings/clear_rows.h"

#include "core/drawings/dimension_marks.h"
#include "core/drawings/lettering.h"

#include <algorithm>

namespace frontwright {

namespace {

/// Dimension lines and texts, without the extension lines.
std::vector<BoxMm> figuresOf(const std::vector<Mark>& marks, double scale) {
    std::vector<BoxMm> boxes;
    for (const Mark& mark : marks)
        if (const auto* dimension = std::get_if<DimensionMark>(&mark.shape)) {
            const DimensionFigure figure = figureOf(*dimension, scale);
            boxes.push_back(textBox(figure.text, scale));
            boxes.push_back(BoxMm(figure.line.from).extend(figure.line.to));
        }
    return boxes;
}

bool meet(const std::vector<Mark>& some, const std::vector<Mark>& others, double scale) {
    const std::vector<BoxMm> ones = figuresOf(some, scale), twos = figuresOf(others, scale);
    const PointMm free(1 / scale, 1 / scale); // a millimetre on paper
    return std::any_of(ones.begin(), ones.end(), [&](const BoxMm& one) {
        const BoxMm around(one.min() - free, one.max() + free);
        return std::any_of(twos.begin(), twos.end(),
                           [&](const BoxMm& two) { return around.intersects(two); });
    });
}

} // namespace

std::vector<Mark> laidClear(const RowsPlace& place, const std::vector<Mark>& others,
                            const std::function<void(DimensionRows&)>& lay) {
    const auto laid = [&](double beyond) {
        DimensionRows rows(place.side, place.edge, place.paperScale,
                           DimensionRows::defaultFirstRow + beyond);
        lay(rows);
        return rows.marks();
    };
    std::vector<Mark> marks = laid(0);
    if (place.reach > 0 && meet(marks, others, place.paperScale))
        marks = laid(place.reach);
    return marks;
}

double reachPast(std::initializer_list<const DimensionRows*> all, double edgeOnPaper,
                 int outwards) {
    double reach = 0;
    for (const DimensionRows* rows : all)
        if (!rows->isEmpty())
            reach = std::max(reach, outwards < 0 ? edgeOnPaper - rows->lowest()
                                                 : rows->highest() - edgeOnPaper);
    return reach;
}

} // namespace frontwright
