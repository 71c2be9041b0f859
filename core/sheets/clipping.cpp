#include "core/sheets/clipping.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace frontwright {

namespace {

constexpr double tolerance = 1e-9; ///< mm; below this a piece of line is nothing
constexpr double sagitta = 0.0005; ///< mm between a circle and the chords that stand for it

/// The stretch of parameters 0 … 1 of a line.
struct Stretch {
    double from = 0;
    double to = 1;
};

/// Liang and Barsky, one border: keeps where start + t × rate >= border.
void keepAbove(Stretch& stretch, double start, double rate, double border) {
    if (rate == 0) {
        if (start < border)
            stretch.to = -1;
        return;
    }
    const double t = (border - start) / rate;
    if (rate > 0)
        stretch.from = std::max(stretch.from, t);
    else
        stretch.to = std::min(stretch.to, t);
}

bool isSame(const PointMm& a, const PointMm& b) {
    return (a - b).norm() <= tolerance;
}

void append(std::vector<PathMark>& pieces, const LineMark& line) {
    if (pieces.empty() || !isSame(pieces.back().points.back(), line.from))
        pieces.push_back({{line.from}, PathMark::End::Open});
    pieces.back().points.push_back(line.to);
}

/// A closed path is broken at its first point only where that point was cut off.
void joinEnds(std::vector<PathMark>& pieces) {
    if (pieces.size() < 2 || !isSame(pieces.back().points.back(), pieces.front().points.front()))
        return;
    auto& last = pieces.back().points;
    const auto& first = pieces.front().points;
    last.insert(last.end(), first.begin() + 1, first.end());
    pieces.front() = std::move(pieces.back());
    pieces.pop_back();
}

/// Angles at which a circle crosses the lines of the area's borders.
std::vector<double> crossings(const CircleMark& circle, const BoxMm& area) {
    std::vector<double> angles;
    const auto add = [&](double angle) {
        angles.push_back(std::fmod(angle + 2 * std::numbers::pi, 2 * std::numbers::pi));
    };
    for (double x : {area.min().x(), area.max().x()}) {
        const double c = (x - circle.centre.x()) / circle.radius;
        if (std::abs(c) < 1) {
            add(std::acos(c));
            add(-std::acos(c));
        }
    }
    for (double y : {area.min().y(), area.max().y()}) {
        const double s = (y - circle.centre.y()) / circle.radius;
        if (std::abs(s) < 1) {
            add(std::asin(s));
            add(std::numbers::pi - std::asin(s));
        }
    }
    std::sort(angles.begin(), angles.end());
    return angles;
}

PointMm onCircle(const CircleMark& circle, double angle) {
    return circle.centre + circle.radius * PointMm(std::cos(angle), std::sin(angle));
}

PathMark chords(const CircleMark& circle, double from, double to) {
    const double step = 2 * std::acos(std::max(0.0, 1 - sagitta / circle.radius));
    const int count = std::max(1, static_cast<int>(std::ceil((to - from) / step)));
    PathMark path{{}, PathMark::End::Open};
    for (int i = 0; i <= count; ++i)
        path.points.push_back(onCircle(circle, from + (to - from) * i / count));
    return path;
}

/// Sutherland and Hodgman, one border: keeps where sign × p[axis] >= sign × border.
std::vector<PointMm> keepSide(const std::vector<PointMm>& outline, int axis, double border,
                              double sign) {
    std::vector<PointMm> kept;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const PointMm& p = outline[i];
        const PointMm& q = outline[(i + 1) % outline.size()];
        const double dp = sign * (p[axis] - border);
        const double dq = sign * (q[axis] - border);
        if (dp >= 0)
            kept.push_back(p);
        if ((dp > 0 && dq < 0) || (dp < 0 && dq > 0))
            kept.push_back(p + (q - p) * (dp / (dp - dq)));
    }
    return kept;
}

} // namespace

std::optional<LineMark> clipped(const LineMark& line, const BoxMm& area) {
    Stretch stretch;
    const PointMm rate = line.to - line.from;
    for (int axis : {0, 1}) {
        keepAbove(stretch, line.from[axis], rate[axis], area.min()[axis]);
        keepAbove(stretch, -line.from[axis], -rate[axis], -area.max()[axis]);
    }
    if ((stretch.to - stretch.from) * rate.norm() <= tolerance)
        return std::nullopt;
    // Ends that are not cut stay as they were, to the last bit.
    return LineMark{stretch.from > 0 ? line.from + stretch.from * rate : line.from,
                    stretch.to < 1 ? line.from + stretch.to * rate : line.to};
}

std::vector<PathMark> clipped(const PathMark& path, const BoxMm& area) {
    if (std::all_of(path.points.begin(), path.points.end(),
                    [&](const PointMm& p) { return area.contains(p); }))
        return {path};
    std::vector<PathMark> pieces;
    const bool isClosed = path.end == PathMark::End::Closed;
    const std::size_t lines = path.points.size() - (isClosed ? 0 : 1);
    for (std::size_t i = 0; i < lines; ++i)
        if (const auto piece =
                clipped(LineMark{path.points[i], path.points[(i + 1) % path.points.size()]}, area))
            append(pieces, *piece);
    if (isClosed)
        joinEnds(pieces);
    return pieces;
}

std::vector<PathMark> arcs(const CircleMark& circle, const BoxMm& area) {
    std::vector<PathMark> result;
    const std::vector<double> angles = crossings(circle, area);
    for (std::size_t i = 0; i < angles.size(); ++i) {
        const double from = angles[i];
        const double to = i + 1 < angles.size() ? angles[i + 1] : angles[0] + 2 * std::numbers::pi;
        if ((to - from) * circle.radius > tolerance &&
            area.contains(onCircle(circle, (from + to) / 2)))
            result.push_back(chords(circle, from, to));
    }
    return result;
}

std::vector<PointMm> clippedOutline(const std::vector<PointMm>& outline, const BoxMm& area) {
    std::vector<PointMm> kept = outline;
    for (int axis : {0, 1}) {
        kept = keepSide(kept, axis, area.min()[axis], 1);
        kept = keepSide(kept, axis, area.max()[axis], -1);
    }
    if (kept.size() < 3)
        kept.clear();
    return kept;
}

bool isInside(const CircleMark& circle, const BoxMm& area) {
    const PointMm r(circle.radius, circle.radius);
    return area.contains(PointMm(circle.centre - r)) && area.contains(PointMm(circle.centre + r));
}

std::vector<Mark> clipped(const Mark& mark, const BoxMm& area) {
    std::vector<Mark> result;
    const auto add = [&](auto shape) {
        result.push_back({mark.layer, std::move(shape), mark.part});
    };
    if (const auto* line = std::get_if<LineMark>(&mark.shape)) {
        if (const auto piece = clipped(*line, area))
            add(*piece);
    } else if (const auto* path = std::get_if<PathMark>(&mark.shape)) {
        for (PathMark& piece : clipped(*path, area))
            add(std::move(piece));
    } else if (const auto* circle = std::get_if<CircleMark>(&mark.shape)) {
        if (isInside(*circle, area))
            add(*circle);
        else
            for (PathMark& arc : arcs(*circle, area))
                add(std::move(arc));
    } else if (const auto* hatch = std::get_if<HatchMark>(&mark.shape)) {
        auto outline = clippedOutline(hatch->outline, area);
        if (!outline.empty())
            add(HatchMark{std::move(outline), hatch->spacing, hatch->angle, hatch->without});
    }
    return result;
}

} // namespace frontwright
