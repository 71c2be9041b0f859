#include "core/drawings/dimension_marks.h"

#include "core/drawings/lettering.h"

#include <cmath>
#include <numbers>

namespace frontwright {

namespace {

/// Directions of a dimension: along it from → to, and to its left.
struct Directions {
    PointMm along{1, 0};
    PointMm left{0, 1};
    double length = 0;
};

Directions directionsOf(const DimensionMark& mark) {
    Directions d;
    const PointMm run = mark.to - mark.from;
    d.length = run.norm();
    if (d.length > 0)
        d.along = run / d.length;
    d.left = {-d.along.y(), d.along.x()};
    return d;
}

/// Text reads from below or from the right: directions in (−90°, 90°].
bool readsAlong(const Directions& d) {
    constexpr double upright = 1e-12;
    return d.along.x() > upright || (std::abs(d.along.x()) <= upright && d.along.y() > 0);
}

std::array<PointMm, 4> tickAt(const PointMm& p, const PointMm& reading, double paperScale) {
    const double half = dimension::tickLength / 2 / paperScale;
    const double halfWidth = dimension::tickWidth / 2 / paperScale;
    const PointMm up(-reading.y(), reading.x());
    const PointMm stroke = (reading + up) * std::numbers::sqrt2 / 2;
    const PointMm side(-stroke.y(), stroke.x());
    return {p - half * stroke - halfWidth * side, p + half * stroke - halfWidth * side,
            p + half * stroke + halfWidth * side, p - half * stroke + halfWidth * side};
}

std::vector<LineMark> extensionsOf(const DimensionMark& mark, const Directions& d,
                                   double paperScale) {
    const double away = std::abs(mark.offset);
    if (away <= dimension::gapAtObject)
        return {};
    const PointMm out = (mark.offset < 0 ? -1.0 : 1.0) / paperScale * d.left;
    const auto line = [&](const PointMm& p) -> LineMark {
        return {p + dimension::gapAtObject * out, p + (away + dimension::overrun) * out};
    };
    if (d.length == 0)
        return {line(mark.from)};
    return {line(mark.from), line(mark.to)};
}

} // namespace

bool fitsBetweenTicks(std::string_view text, double onPaper) {
    return textWidth(text, dimension::lettering) + dimension::spareBetweenTicks <= onPaper;
}

double reachBeyondTick(std::string_view text) {
    return dimension::textBeyondTick + textWidth(text, dimension::lettering);
}

DimensionFigure figureOf(const DimensionMark& mark, double paperScale) {
    const Directions d = directionsOf(mark);
    const PointMm shift = mark.offset / paperScale * d.left;
    const PointMm from = mark.from + shift, to = mark.to + shift;
    const PointMm reading = readsAlong(d) ? d.along : PointMm(-d.along);
    const PointMm above =
        PointMm(-reading.y(), reading.x()) * (dimension::textAboveLine / paperScale);

    DimensionFigure figure;
    figure.line = {from, to};
    figure.extensions = extensionsOf(mark, d, paperScale);
    figure.ticks = {tickAt(from, reading, paperScale), tickAt(to, reading, paperScale)};
    figure.text.text = mark.text;
    figure.text.height = dimension::lettering;
    figure.text.turned = std::atan2(reading.y(), reading.x()) * 180 / std::numbers::pi;
    if (fitsBetweenTicks(mark.text, d.length * paperScale)) {
        figure.text.anchor = Anchor::Middle;
        figure.text.at = (from + to) / 2 + above;
    } else {
        figure.line.to = to + reachBeyondTick(mark.text) / paperScale * d.along;
        figure.text.anchor = readsAlong(d) ? Anchor::Start : Anchor::End;
        figure.text.at = to + dimension::textBeyondTick / paperScale * d.along + above;
    }
    return figure;
}

} // namespace frontwright
