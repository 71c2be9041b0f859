#include "core/drawings/rendering_parts.h"

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

// Our own choice, by eye.
constexpr double contrast = 0.5; // of slopes; less than nature's, so that the wash stays quiet
constexpr double darkest = 0.42;
constexpr double lightest = 1.3;
constexpr double leastBandOnPaper = 0.3;
constexpr int mostBands = 12;
constexpr double stepOnPaper = 0.22;
constexpr double stepRise = 4;

PointMm outwardOf(Side side) {
    switch (side) {
    case Side::Left:
        return {-1, 0};
    case Side::Right:
        return {1, 0};
    case Side::Bottom:
        return {0, -1};
    case Side::Top:
        break;
    }
    return {0, 1};
}

/// A stretch of the section with one slope, from the edge inwards.
struct Band {
    double from = 0;
    double rise = 0;
};

double lossMm(const Profile& profile, double distance) {
    return lossAt(profile, Length::nearestToMillimetres(distance)).inMillimetres();
}

bool isCurved(ProfileFamily family) {
    return family == ProfileFamily::Eased || family == ProfileFamily::Round ||
           family == ProfileFamily::Cove;
}

std::vector<Band> bandsOf(const Profile& profile, double paperScale) {
    const double width = profile.width.length.inMillimetres();
    const double fit = width * paperScale / leastBandOnPaper;
    const int count =
        isCurved(profile.family) ? std::clamp(static_cast<int>(fit), 1, mostBands) : 1;
    std::vector<Band> bands;
    const double step = width / count;
    for (int i = 0; i < count; ++i) {
        // lossAt is 0 from the field on: a step there is a band of its own.
        const double from = i * step, to = std::min((i + 1) * step, width * (1 - 1e-6));
        bands.push_back({from, (lossMm(profile, from) - lossMm(profile, to)) / step});
    }
    if (profile.family == ProfileFamily::Raised && profile.step.length > Length())
        bands.push_back({std::max(0.0, width - stepOnPaper / paperScale), stepRise});
    return bands;
}

/// The front's face at a distance from those edges that carry the profile.
BoxMm inside(const BoxMm& front, const PerSide<bool>& sides, double distance) {
    const double d = std::min(distance, front.sizes().minCoeff() / 2);
    return {front.min() + PointMm(sides.left ? d : 0, sides.bottom ? d : 0),
            front.max() - PointMm(sides.right ? d : 0, sides.top ? d : 0)};
}

} // namespace

double lightOnSlope(Side outward, double rise) {
    const Light light;
    const PointMm way = outwardOf(outward);
    const double length = std::hypot(1.0, rise);
    const double facing =
        (rise * (way.x() * light.x + way.y() * light.y) + light.z) / length / light.z;
    return std::clamp(1 + contrast * (facing - 1), darkest, lightest);
}

void drawProfileBands(Sketch& sketch, const BoxMm& front, const Profile& profile, const Tone& wood,
                      const Part& part) {
    if (profile.family == ProfileFamily::Square || profile.width.length <= Length())
        return;
    const auto field =
        cornersOf(inside(front, profile.sides, profile.width.length.inMillimetres()));
    constexpr std::array order{Side::Bottom, Side::Right, Side::Top, Side::Left};
    for (const Band& band : bandsOf(profile, sketch.paperScale())) {
        const auto outer = cornersOf(inside(front, profile.sides, band.from));
        // Each reaches to the field, so that no seam shows between it and the next.
        for (std::size_t i = 0; i < order.size(); ++i)
            if (const std::size_t next = (i + 1) % 4; profile.sides[order[i]])
                sketch.wash({outer[i], outer[next], field[next], field[i]},
                            lit(wood, lightOnSlope(order[i], band.rise)), part);
    }
}

} // namespace frontwright
