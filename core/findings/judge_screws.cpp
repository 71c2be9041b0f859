#include "core/findings/judging.h"
#include "core/findings/moving_fronts.h"

#include <algorithm>

namespace frontwright::judging {

namespace {

constexpr Length nothing{};

/// The hole with the least tip cover among those that have a front behind them.
const MountingHole* worstTip(const MountingPlan& mounting) {
    const MountingHole* worst = nullptr;
    for (const MountingHole& hole : mounting.holes)
        if (hole.thickness > nothing && (worst == nullptr || hole.tipCover < worst->tipCover))
            worst = &hole;
    return worst;
}

/// figures: screw, recess, wall, front behind the hole
void judgeTip(const Judged& judged) {
    const MountingPlan& mounting = judged.front.mounting;
    const MountingHole* worst = worstTip(mounting);
    if (worst == nullptr || worst->tipCover >= judged.project.limits.leastTipCover)
        return;
    const bool isThrough = worst->tipCover <= nothing;
    judged.tell(isThrough ? FindingCode::ScrewThroughShowFace : FindingCode::TipCoverThin,
                isThrough ? Severity::Ruins : Severity::OutsidePractice,
                {*mounting.length, mounting.recess, mounting.wall, worst->thickness});
    judged.found.back().where.mountingHole =
        static_cast<std::uint32_t>(worst - mounting.holes.data());
}

/// figures: screw, recess, wall, least penetration
void judgePenetration(const Judged& judged) {
    const MountingPlan& mounting = judged.front.mounting;
    const Length leastPenetration = judged.project.limits.leastPenetration;
    const Length penetration = *mounting.length + mounting.recess - mounting.wall;
    if (mounting.holes.empty() || penetration >= leastPenetration)
        return;
    judged.tell(FindingCode::PenetrationShort,
                penetration <= nothing ? Severity::WontWork : Severity::OutsidePractice,
                {*mounting.length, mounting.recess, mounting.wall, leastPenetration});
}

/// figures: least length, greatest length, nearest stocked below, nearest stocked above (0: none)
void tellNoScrewFits(const Judged& judged) {
    const MountingPlan& mounting = judged.front.mounting;
    const std::vector<Length>& stock = mounting.screw->lengths;
    const auto above = std::lower_bound(stock.begin(), stock.end(), mounting.leastLength);
    judged.tell(FindingCode::NoScrewFits, Severity::WontWork,
                {mounting.leastLength, mounting.greatestLength,
                 above == stock.begin() ? nothing : *std::prev(above),
                 above == stock.end() ? nothing : *above});
}

/// figures: wall, recess, head's height, least wall under the head
void judgeWallUnderHead(const Judged& judged) {
    const MountingPlan& mounting = judged.front.mounting;
    const Length leastWall = judged.project.limits.leastWallUnderHead;
    const Length left = mounting.wall - mounting.recess - mounting.screw->headHeight;
    if (left >= leastWall)
        return;
    judged.tell(FindingCode::WallThinUnderHead,
                left <= nothing ? Severity::WontWork : Severity::OutsidePractice,
                {mounting.wall, mounting.recess, mounting.screw->headHeight, leastWall});
}

} // namespace

Length rowsApart(const MountingPlan& mounting) {
    if (mounting.holes.empty())
        return nothing;
    Span rows{mounting.holes.front().at.y, mounting.holes.front().at.y};
    for (const MountingHole& hole : mounting.holes)
        rows = {least(rows.low, hole.at.y), greatest(rows.high, hole.at.y)};
    return rows.size();
}

bool movesUpright(const Stock& stock) {
    return !stock.species.empty() && stock.build == Build::Solid &&
           stock.grain == Grain::AlongLength;
}

void judgeScrewLength(const Judged& judged) {
    if (judged.front.mounting.length) {
        judgeTip(judged);
        judgePenetration(judged);
    } else {
        tellNoScrewFits(judged);
    }
    judgeWallUnderHead(judged);
}

/// figures: rows apart, front's height, least apart
void judgeScrewRows(const Judged& judged) {
    const Length height = judged.front.rect.height(), apart = rowsApart(judged.front.mounting);
    const Length leastApart = Length::fromNanometres(height.nanometres() / heightsPerRows);
    if (judged.front.mounting.holes.size() < 2 || height < tallFront || apart >= leastApart ||
        !movesUpright(chosenStock(judged.project, judged.front)))
        return;
    judged.tell(FindingCode::ScrewRowsNear, Severity::OutsidePractice, {apart, height, leastApart});
}

void judgeMovement(const Project& project, const Plan& plan, std::vector<Finding>& found) {
    if (plan.season)
        return;
    const std::vector<MovingFront> moving = movingFronts(project, plan);
    if (moving.empty())
        return;
    const MovingFront& worst = moving.front();
    // figures: rows apart, movement between them, play in the clearance hole, clearance hole
    found.push_back(
        {FindingCode::SlotForMovement,
         Severity::ToKnow,
         {},
         {worst.apart, worst.movement, worst.play, worst.front->mounting.clearanceHole}});
    found.back().where.opening = worst.front->opening;
}

} // namespace frontwright::judging
