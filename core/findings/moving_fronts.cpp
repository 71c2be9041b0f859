#include "core/findings/moving_fronts.h"

#include "core/findings/judging.h"
#include "core/plan/screw_rows.h"

#include <algorithm>

namespace frontwright {
namespace {

Length playIn(const MountingPlan& mounting) {
    return mounting.clearanceHole - mounting.screw->shankDiameter;
}

/// Of the row that asks for the largest hole.
std::optional<MovingFront> overTheSeason(const FrontPlan& front) {
    const MountingPlan& mounting = front.mounting;
    if (!front.season || front.season->rows.empty())
        return std::nullopt;
    const SeasonRow& row = front.season->rows[rowOfLargestHole(*front.season)];
    return MovingFront{&front,
                       {},
                       greatest(row.driest.magnitude(), row.wettest.magnitude()),
                       playIn(mounting),
                       row.hole - mounting.clearanceHole,
                       row.drill};
}

std::optional<MovingFront> byThumb(const Project& project, const FrontPlan& front) {
    if (!judging::movesUpright(chosenStock(project, front)))
        return std::nullopt;
    const MountingPlan& mounting = front.mounting;
    const Length apart = judging::rowsApart(mounting);
    const Length movement = Length::fromNanometres(apart.nanometres() / judging::widthsPerMovement);
    const Length play = playIn(mounting), lacks = movement - play;
    return MovingFront{&front,   apart,
                       movement, play,
                       lacks,    nextDrill(mounting.clearanceHole + lacks, project.style.unit)};
}

} // namespace

std::vector<MovingFront> movingFronts(const Project& project, const Plan& plan) {
    std::vector<MovingFront> moving;
    for (const FrontPlan& front : plan.fronts) {
        if (front.mounting.holes.empty()) // a door: nothing holds it that it moves against
            continue;
        const auto found = plan.season ? overTheSeason(front) : byThumb(project, front);
        if (found && found->lacks > Length{})
            moving.push_back(*found);
    }
    std::ranges::stable_sort(moving, std::ranges::greater{}, &MovingFront::lacks);
    return moving;
}

} // namespace frontwright
