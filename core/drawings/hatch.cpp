#include "core/drawings/hatch.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace frontwright {

namespace {

struct Stretch {
    double low = 0;
    double high = 0;
};

/// Axes of one hatch: `along` its lines, `across` from line to line.
struct Axes {
    PointMm along;
    PointMm across;
    explicit Axes(double degrees) {
        const double angle = degrees * std::numbers::pi / 180;
        along = {std::cos(angle), std::sin(angle)};
        across = {-along.y(), along.x()};
    }
};

/// Where the line at distance `at` across runs inside a closed outline; ascending.
std::vector<Stretch> inside(const std::vector<PointMm>& outline, const Axes& axes, double at) {
    std::vector<double> crossings;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const PointMm& p = outline[i];
        const PointMm& q = outline[(i + 1) % outline.size()];
        const double a = p.dot(axes.across), b = q.dot(axes.across);
        if ((a < at) == (b < at))
            continue;
        const double share = (at - a) / (b - a);
        crossings.push_back((p + share * (q - p)).dot(axes.along));
    }
    std::sort(crossings.begin(), crossings.end());
    std::vector<Stretch> stretches;
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
        stretches.push_back({crossings[i], crossings[i + 1]});
    return stretches;
}

std::vector<Stretch> less(const std::vector<Stretch>& stretches, const Stretch& gap) {
    std::vector<Stretch> rest;
    for (const Stretch& s : stretches) {
        if (gap.high <= s.low || s.high <= gap.low) {
            rest.push_back(s);
            continue;
        }
        if (s.low < gap.low)
            rest.push_back({s.low, gap.low});
        if (gap.high < s.high)
            rest.push_back({gap.high, s.high});
    }
    return rest;
}

} // namespace

std::vector<LineMark> hatchLines(const HatchMark& hatch, double paperScale) {
    constexpr double closest = 0.01, longestRun = 100'000, shortest = 1e-9;
    const double step = hatch.spacing / paperScale;
    if (hatch.outline.size() < 3 || !(hatch.spacing >= closest) || !std::isfinite(step))
        return {};
    const Axes axes(hatch.angle);
    Stretch reach{hatch.outline[0].dot(axes.across), hatch.outline[0].dot(axes.across)};
    for (const PointMm& p : hatch.outline) {
        reach.low = std::min(reach.low, p.dot(axes.across));
        reach.high = std::max(reach.high, p.dot(axes.across));
    }
    std::vector<LineMark> lines;
    if (!((reach.high - reach.low) / step < longestRun))
        return lines;
    for (double k = std::ceil(reach.low / step); k * step <= reach.high; k += 1) {
        const double at = k * step;
        std::vector<Stretch> stretches = inside(hatch.outline, axes, at);
        for (const auto& free : hatch.without)
            for (const Stretch& gap : inside(free, axes, at))
                stretches = less(stretches, gap);
        for (const Stretch& s : stretches)
            if (s.high - s.low > shortest)
                lines.push_back({at * axes.across + s.low * axes.along,
                                 at * axes.across + s.high * axes.along});
    }
    return lines;
}

} // namespace frontwright
