#include "core/fastening/pattern.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace frontwright {
namespace {

enum class Towards : std::uint8_t { Left, Right };

/// Up to three places along one axis, ascending.
struct Places {
    std::array<Length, 3> at{};
    std::size_t count = 0;

    void add(Length place) { at[count++] = place; }
    [[nodiscard]] std::span<const Length> all() const { return {at.data(), count}; }
};

Length upToGrid(Length distance, Length grid) {
    const std::int64_t step = grid.nanometres();
    const std::int64_t over = distance.nanometres() % step;
    if (over == 0)
        return distance;
    return Length::fromNanometres(distance.nanometres() - over + (over > 0 ? step : 0));
}

Places rowsOf(const MountingSpec& spec, const PatternPlace& place) {
    const WallRect& outer = place.allowed.outer;
    const Length lower =
        spec.fromBottom ? Length(*spec.fromBottom) : upToGrid(outer.bottom, place.grid);
    const Length upper =
        place.height -
        (spec.fromTop ? Length(*spec.fromTop) : upToGrid(place.height - outer.top, place.grid));
    const bool bothTyped = spec.fromBottom && spec.fromTop;
    Places rows;
    if (bothTyped ? lower != upper : upper - lower >= place.leastBetween) {
        rows.add(least(lower, upper));
        rows.add(greatest(lower, upper));
    } else if (spec.fromBottom) {
        rows.add(lower);
    } else if (spec.fromTop) {
        rows.add(upper);
    } else {
        rows.add(middleOnGrid(outer.upright(), place.grid));
    }
    return rows;
}

/// Left and right column, and the middle one where the pattern has it.
Places columnsOf(const MountingSpec& spec, const PatternPlace& place) {
    const WallRect& outer = place.allowed.outer;
    const Length fromSides =
        spec.fromSides ? Length(*spec.fromSides)
                       : upToGrid(greatest(outer.left, place.width - outer.right), place.grid);
    const Length left = least(fromSides, place.width - fromSides);
    const Length right = place.width - left;
    Places columns;
    if (spec.fromSides ? left == right : place.width - 2 * fromSides < place.leastBetween) {
        columns.add(spec.fromSides ? left : place.width.half());
        return columns;
    }
    columns.add(left);
    if (spec.pattern == ScrewPattern::Six)
        columns.add(place.width.half());
    columns.add(right);
    return columns;
}

/// Half of the stretch that a disc takes from the row at height y.
Length halfChord(const WallDisc& disc, Length y) {
    const double radius = disc.radius.inMillimetres();
    const double dy = (y - disc.centre.y).inMillimetres();
    return Length::nearestToMillimetres(std::sqrt(std::max(0.0, radius * radius - dy * dy)));
}

/// The stretch that what lies at the point takes from its row; none where the place is free.
std::optional<Span> takenAt(const WallRegion& allowed, WallPoint p) {
    for (const WallDisc& disc : allowed.withoutDiscs)
        if (isWithin(p, disc.centre, disc.radius)) {
            const Length half = halfChord(disc, p.y);
            return Span{disc.centre.x - half, disc.centre.x + half};
        }
    for (const WallRect& rect : allowed.withoutRects)
        if (rect.left < p.x && p.x < rect.right && rect.bottom < p.y && p.y < rect.top)
            return rect.across();
    return std::nullopt;
}

/// Next place on the grid, counted from the edge behind, that lies beyond the stretch.
Length beyond(Span taken, Towards towards, const PatternPlace& place) {
    if (towards == Towards::Right)
        return upToGrid(taken.high, place.grid);
    return place.width - upToGrid(place.width - taken.low, place.grid);
}

/// First free place from `start` on, not past `end`; nullopt where there is none.
std::optional<Length> freePlace(WallPoint start, Length end, Towards towards,
                                const PatternPlace& place) {
    WallPoint p = start;
    const Length step = towards == Towards::Right ? place.grid : -place.grid;
    while (const auto taken = takenAt(place.allowed, p)) {
        const Length next = beyond(*taken, towards, place);
        p.x = next == p.x ? p.x + step : next; // a border decided by the last nanometre
        if (towards == Towards::Right ? p.x > end : p.x < end)
            return std::nullopt;
    }
    return p.x;
}

Length nearestFree(WallPoint middle, Length left, Length right, const PatternPlace& place) {
    const auto toLeft = freePlace(middle, left, Towards::Left, place);
    const auto toRight = freePlace(middle, right, Towards::Right, place);
    if (toLeft && (!toRight || middle.x - *toLeft <= *toRight - middle.x))
        return *toLeft;
    return toRight.value_or(middle.x);
}

void addRow(std::vector<WallPoint>& points, Length y, const Places& columns,
            const MountingSpec& spec, const PatternPlace& place) {
    const Length middle = place.width.half();
    for (Length x : columns.all()) {
        if (x == middle)
            x = nearestFree({x, y}, columns.all().front(), columns.all().back(), place);
        else if (!spec.fromSides)
            x = freePlace({x, y}, middle, x < middle ? Towards::Right : Towards::Left, place)
                    .value_or(x);
        points.push_back({x, y});
    }
}

} // namespace

Length middleOnGrid(Span span, Length grid) {
    const Length middle = span.middle();
    const Length onGrid = upToGrid(middle - grid.half(), grid);
    return span.contains(onGrid) ? onGrid : middle;
}

std::vector<WallPoint> placePattern(const MountingSpec& spec, const PatternPlace& place) {
    if (spec.pattern == ScrewPattern::ByHand)
        return spec.placed;
    const Places rows = rowsOf(spec, place);
    const Places columns = columnsOf(spec, place);
    std::vector<WallPoint> points;
    points.reserve(rows.count * columns.count);
    for (Length y : rows.all())
        addRow(points, y, columns, spec, place);
    return points;
}

} // namespace frontwright
