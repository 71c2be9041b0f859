#include "core/fronts/profile.h"

#include <cmath>
#include <optional>

namespace frontwright {
namespace {

constexpr Length nothing{};

double asDouble(Length length) {
    return static_cast<double>(length.nanometres());
}
Length nearest(double nanometres) {
    return Length::fromNanometres(std::llround(nanometres));
}

/// How much of a quarter circle's radius is left at `part` (0 … 1) of the way along it.
double quarterCircle(double part) {
    return std::sqrt(1.0 - part * part);
}

/// How far p lies in from each side; negative beyond it.
PerSide<Length> distancesFromSides(FrontRect front, FrontPoint p) {
    return {p.x - front.left, front.right - p.x, p.y - front.bottom, front.top - p.y};
}

/// Every family loses most at the edge and less further in, so where edges meet in a mitre the
/// nearest edge that carries the profile decides.
std::optional<Length> nearestProfiled(const Profile& profile, const PerSide<Length>& distances) {
    std::optional<Length> result;
    for (Side side : allSides)
        if (profile.sides[side] && (!result || distances[side] < *result))
            result = distances[side];
    return result;
}

Length without(Length thickness, Length loss) {
    return greatest(nothing, thickness - loss);
}

} // namespace

Length lossAt(const Profile& profile, Length distance) {
    const Length width = profile.width, depth = profile.depth;
    if (distance < nothing || distance >= width)
        return nothing;
    const double outward = asDouble(distance) / asDouble(width); // 0 at the edge, 1 at the field
    const double inward = asDouble(width - distance) / asDouble(width);
    switch (profile.family) {
    case ProfileFamily::Square:
        break;
    case ProfileFamily::Eased:
    case ProfileFamily::Round:
        return nearest(asDouble(depth) * (1.0 - quarterCircle(inward)));
    case ProfileFamily::Chamfer:
        return nearest(asDouble(depth) * inward);
    case ProfileFamily::Raised:
        return profile.step + nearest(asDouble(depth - profile.step) * inward);
    case ProfileFamily::Cove:
        return nearest(asDouble(depth) * quarterCircle(outward));
    }
    return nothing;
}

Length localThickness(const Profile& profile, FrontRect front, Length thickness, FrontPoint p) {
    return leastThickness(profile, front, thickness, FrontDisc{p, nothing});
}

Length leastThickness(const Profile& profile, FrontRect front, Length thickness, FrontDisc disc) {
    PerSide<Length> distances = distancesFromSides(front, disc.centre);
    for (Side side : allSides) {
        distances[side] -= disc.radius;
        if (distances[side] < nothing)
            return nothing;
    }
    const auto distance = nearestProfiled(profile, distances);
    return distance ? without(thickness, lossAt(profile, *distance)) : thickness;
}

Length edgeThickness(const Profile& profile, Length thickness, Side side) {
    return profile.sides[side] ? without(thickness, lossAt(profile, nothing)) : thickness;
}

FrontRect field(const Profile& profile, FrontRect front) {
    if (profile.family == ProfileFamily::Square)
        return front;
    const auto lost = [&](Side side) {
        return profile.sides[side] ? greatest(nothing, profile.width) : nothing;
    };
    return {front.left + lost(Side::Left), front.bottom + lost(Side::Bottom),
            front.right - lost(Side::Right), front.top - lost(Side::Top)};
}

} // namespace frontwright
