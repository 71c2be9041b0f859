#include "core/plan/screw_rows.h"

#include "core/wood/movement.h"

#include <algorithm>

namespace frontwright {

namespace {

/// Distinct, ascending.
std::vector<Length> rowsOf(const MountingPlan& mounting, bool isUpright) {
    std::vector<Length> rows;
    for (const MountingHole& hole : mounting.holes)
        rows.push_back(isUpright ? hole.at.y : hole.at.x);
    std::sort(rows.begin(), rows.end());
    rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
    return rows;
}

std::uint32_t nearestTo(Length middle, const std::vector<Length>& rows) {
    std::uint32_t nearest = 0;
    for (std::uint32_t i = 1; i < rows.size(); ++i)
        if ((rows[i] - middle).magnitude() < (rows[nearest] - middle).magnitude())
            nearest = i;
    return nearest;
}

} // namespace

Length nextDrill(Length hole, Unit unit) {
    const std::int64_t step =
        (unit == Unit::Inch ? Length::fromSixtyFourths(1) : Length::fromMicrometres(100))
            .nanometres();
    return Length::fromNanometres((hole.nanometres() + step - 1) / step * step);
}

void addRows(FrontSeason& season, const FrontPlan& front, Grain grain, Unit unit) {
    const bool isUpright = grain == Grain::AlongLength;
    const MountingPlan& mounting = front.mounting;
    const std::vector<Length> rows = rowsOf(mounting, isUpright);
    const Length size = isUpright ? front.rect.height() : front.rect.width();
    season.held = size.half();
    if (front.use == OpeningUse::Door && !isUpright) // by its hinges
        season.held = front.hinge == HingeSide::Left ? Length{} : size;
    if (rows.empty())
        return;
    const WallPoint origin = toWall(front.box, FrontPoint{});
    const Length edge = isUpright ? origin.y : origin.x; // the front's, in the wall's frame
    season.fixedRow = isUpright ? 0 : nearestTo(edge + size.half(), rows);
    const Length fixed = rows[season.fixedRow];
    season.held = fixed - edge;
    for (const Length at : rows) {
        SeasonRow row{
            at, partOf(at - fixed, season.driest), partOf(at - fixed, season.wettest), {}, {}};
        row.hole = mounting.screw->shankDiameter +
                   2 * greatest(row.driest.magnitude(), row.wettest.magnitude());
        row.drill =
            row.hole <= mounting.clearanceHole ? mounting.clearanceHole : nextDrill(row.hole, unit);
        season.rows.push_back(row);
    }
}

std::uint32_t rowOfLargestHole(const FrontSeason& season) {
    const auto worst = std::ranges::max_element(season.rows, {}, &SeasonRow::hole);
    return static_cast<std::uint32_t>(worst - season.rows.begin());
}

} // namespace frontwright
