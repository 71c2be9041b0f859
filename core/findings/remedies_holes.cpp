#include "core/findings/remedying.h"

#include "core/edits/choices.h"

namespace frontwright::remedying {

namespace {

double distanceSquared(WallPoint a, WallPoint b) {
    const double dx = (a.x - b.x).inMillimetres(), dy = (a.y - b.y).inMillimetres();
    return dx * dx + dy * dy;
}

/// Keeps the nearest of the points it is shown that lie in the region.
class Nearest {
public:
    Nearest(const WallRegion& region, WallPoint target) : m_region(region), m_target(target) {}

    void consider(WallPoint p) {
        if (m_region.contains(p) &&
            (!m_best || distanceSquared(p, m_target) < distanceSquared(*m_best, m_target)))
            m_best = p;
    }
    [[nodiscard]] const std::optional<WallPoint>& best() const { return m_best; }

private:
    const WallRegion& m_region;
    WallPoint m_target;
    std::optional<WallPoint> m_best;
};

Length clamped(Length v, Span span) {
    return greatest(span.low, least(v, span.high));
}

/// On every whole step of the grid from one border to the other, at most so many steps.
void considerGrid(const WallRegion& region, Length grid, Nearest& nearest) {
    constexpr std::int64_t mostSteps = 200;
    const auto stepFor = [&](Length size) {
        const std::int64_t steps = size.nanometres() / grid.nanometres() / mostSteps + 1;
        return grid * steps;
    };
    const WallRect& outer = region.outer;
    const Length dx = stepFor(outer.width()), dy = stepFor(outer.height());
    const auto firstOf = [](Length low, Length step) {
        const std::int64_t n = low.nanometres() / step.nanometres();
        return step * (low.nanometres() % step.nanometres() > 0 ? n + 1 : n);
    };
    for (Length y = firstOf(outer.bottom, dy); y <= outer.top; y += dy)
        for (Length x = firstOf(outer.left, dx); x <= outer.right; x += dx)
            nearest.consider({x, y});
}

MountingSpec withPlacedHoles(const Search& search, std::size_t& moved) {
    const MountingPlan& mounting = search.front.mounting;
    MountingSpec spec = chosenMounting(search.project, search.front);
    spec.pattern = ScrewPattern::ByHand;
    spec.placed.clear();
    for (const MountingHole& hole : mounting.holes) {
        const auto place = hole.allowed ? std::optional(hole.at)
                                        : nearestAllowed(mounting.allowed, hole.at, search.grid());
        moved += hole.allowed || !place ? 0 : 1;
        spec.placed.push_back(place.value_or(hole.at));
    }
    return spec;
}

void proposeNearestPlaces(const Search& search) {
    std::size_t moved = 0;
    const MountingSpec spec = withPlacedHoles(search, moved);
    if (moved == 0)
        return;
    const auto opening = search.front.opening;
    search.propose(
        moved == 1
            ? phrase("Move the screw hole of %1 to its nearest allowed place", search.name())
            : phrase("Move the screw holes of %1 to their nearest allowed places", search.name()),
        [opening, spec](const Project& project) { return setMounting(project, {opening}, spec); });
}

void proposeFreeRows(const Search& search, MountingSpec spec) {
    if (!spec.fromBottom && !spec.fromTop && !spec.fromSides)
        return;
    spec.fromBottom.reset();
    spec.fromTop.reset();
    spec.fromSides.reset();
    search.propose({phrase("Let the screw rows of %1 find their allowed places", search.name()),
                    text("Let the screw rows of the whole case find their allowed places")},
                   spec);
}

/// The row or column in question put just where it is allowed, the others left as they are.
void proposeRow(const Search& search, MountingSpec spec) {
    const WallRect& allowed = search.front.mounting.allowed.outer;
    const BoxPlan& box = search.front.box;
    const FindingCode code = search.finding.code;
    if (code == FindingCode::HoleInBottom || code == FindingCode::RecessToolBlocked) {
        spec.fromBottom = search.up(allowed.bottom);
        search.propose({phrase("Move the lower screw row of %1 up to %2", search.name(),
                               search.say(*spec.fromBottom)),
                        phrase("Move the lower screw row of the whole case up to %1",
                               search.say(*spec.fromBottom))},
                       spec);
    } else if (code == FindingCode::HoleAtTopEdge) {
        spec.fromTop = search.up(box.height - allowed.top);
        search.propose({phrase("Move the upper screw row of %1 down to %2 below the edge",
                               search.name(), search.say(*spec.fromTop)),
                        phrase("Move the upper screw row of the whole case down to %1 below the "
                               "edge",
                               search.say(*spec.fromTop))},
                       spec);
    } else if (code == FindingCode::HoleAtBoxSide) {
        spec.fromSides = search.up(greatest(allowed.left, box.width - allowed.right));
        search.propose({phrase("Move the screws of %1 in to %2 from the box's sides", search.name(),
                               search.say(*spec.fromSides)),
                        phrase("Move the screws of the whole case in to %1 from the box's sides",
                               search.say(*spec.fromSides))},
                       spec);
    }
}

/// The largest tool that still clears what the hole is beside.
void proposeSmallerTool(const Search& search, MountingSpec spec) {
    const BoxPlan& box = search.front.box;
    std::optional<Length> radius;
    for (const MountingHole& hole : search.front.mounting.holes) {
        Length clear = least(hole.at.x, box.width - hole.at.x) - box.sideThickness;
        if (search.finding.code == FindingCode::RecessToolBlocked)
            clear = hole.at.y - box.bottomTop;
        radius = radius ? least(*radius, clear) : clear;
    }
    if (!radius || search.down(2 * *radius) < search.front.mounting.screw->headDiameter)
        return;
    spec.toolDiameter = search.down(2 * *radius);
    search.propose({phrase("Cut the recesses of %1 with a tool of at most %2", search.name(),
                           search.say(spec.toolDiameter)),
                    phrase("Cut the recesses of the whole case with a tool of at most %1",
                           search.say(spec.toolDiameter))},
                   spec);
}

} // namespace

std::optional<WallPoint> nearestAllowed(const WallRegion& region, WallPoint p, Length grid) {
    if (region.outer.isEmpty())
        return std::nullopt;
    Nearest nearest(region, p);
    considerGrid(region, grid, nearest);
    if (!nearest.best()) {
        nearest.consider(
            {clamped(p.x, region.outer.across()), clamped(p.y, region.outer.upright())});
        nearest.consider(region.outer.centre());
    }
    return nearest.best();
}

void forScrewHole(const Search& search) {
    const MountingSpec spec = chosenMounting(search.project, search.front);
    if (spec.pattern != ScrewPattern::ByHand) {
        proposeRow(search, spec);
        proposeFreeRows(search, spec);
    }
    if (search.finding.code == FindingCode::RecessToolBlocked ||
        search.finding.code == FindingCode::HoleAtBoxSide)
        proposeSmallerTool(search, spec);
    proposeNearestPlaces(search);
}

} // namespace frontwright::remedying
