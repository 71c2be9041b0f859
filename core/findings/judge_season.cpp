#include "core/findings/judging.h"
#include "core/findings/moving_fronts.h"
#include "core/plan/facing.h"
#include "core/wood/movement.h"

#include <algorithm>

namespace frontwright::judging {

namespace {

constexpr Length nothing{};

/// figures: gap when cut, least over the season, least gap
void judgeInset(const Judged& judged, Side side) {
    const FrontPlan& front = judged.front;
    const Length gap = front.neighbours[side].gap, season = front.season->gap[side].least;
    const Length leastGap = judged.project.limits.leastGap;
    if (!hasMember(judged, side) || front.fit[side] != Fit::Inset || gap <= nothing ||
        season >= gap)
        return;
    if (season <= nothing)
        judged.tell(FindingCode::InsetBinds, Severity::WontWork, {gap, season, leastGap}, side);
    else if (season < leastGap && gap >= leastGap)
        judged.tell(FindingCode::GapTightens, Severity::OutsidePractice, {gap, season, leastGap},
                    side);
}

/// figures: overlay when cut, least over the season
void judgeOverlay(const Judged& judged, Side side) {
    const FrontPlan& front = judged.front;
    const Length season = front.season->overlay[side].least;
    if (hasMember(judged, side) && front.fit[side] != Fit::Inset && front.overlay[side] > nothing &&
        season <= nothing)
        judged.tell(FindingCode::OverlayLost, Severity::WontWork, {front.overlay[side], season},
                    side);
}

/// figures: gap when cut, least over the season, least gap
void judgeSpacer(const Project& project, const Plan& plan, const Spacer& spacer,
                 std::vector<BetweenFronts>& found) {
    const Length leastGap = project.limits.leastGap, season = spacer.season->least;
    if (spacer.width <= nothing || season >= spacer.width)
        return;
    const Figures4 figures{spacer.width, season, leastGap};
    if (season <= nothing)
        found.push_back({firstOf(spacer), atSpacer(plan, spacer, FindingCode::GapCloses,
                                                   Severity::WontWork, figures)});
    else if (season < leastGap && spacer.width >= leastGap)
        found.push_back({firstOf(spacer), atSpacer(plan, spacer, FindingCode::GapTightens,
                                                   Severity::OutsidePractice, figures)});
}

/// A bank's narrowest and widest gap at one time of the year.
struct Unevenness {
    const Spacer* narrowest = nullptr;
    Length narrow;
    Length wide;
    void take(const Spacer& spacer, Length gap) {
        if (narrowest == nullptr || gap < narrow) {
            narrow = gap;
            wide = narrowest == nullptr ? gap : wide;
            narrowest = &spacer;
        }
        wide = greatest(wide, gap);
    }
    [[nodiscard]] Length difference() const { return wide - narrow; }
};

/// Fronts are all largest, and gaps all least, in the wettest air.
struct BankSeason {
    Unevenness whenCut, driest, wettest;
};

/// figures: narrowest gap, widest gap at the time when they differ most, their difference when cut,
/// difference that an eye sees
void judgeBank(const Project& project, const Plan& plan, const BankSeason& bank,
               std::vector<BetweenFronts>& found) {
    const Length seen = project.limits.unevenGaps;
    const Unevenness& worst =
        bank.driest.difference() > bank.wettest.difference() ? bank.driest : bank.wettest;
    if (worst.narrowest == nullptr || bank.whenCut.difference() > seen ||
        worst.difference() <= seen)
        return;
    found.push_back(
        {firstOf(*worst.narrowest),
         atSpacer(plan, *worst.narrowest, FindingCode::GapsGoUneven, Severity::OutsidePractice,
                  {worst.narrow, worst.wide, bank.whenCut.difference(), seen})});
}

/// figures: movement at the screws, shank, clearance hole, drill that suffices
void judgeRows(const Project& project, const Plan& plan, std::vector<Finding>& found) {
    const std::vector<MovingFront> moving = movingFronts(project, plan);
    if (moving.empty())
        return;
    const MovingFront& worst = moving.front();
    const MountingPlan& mounting = worst.front->mounting;
    found.push_back(
        {FindingCode::ClearanceSmall,
         Severity::OutsidePractice,
         {},
         {worst.movement, mounting.screw->shankDiameter, mounting.clearanceHole, worst.drill}});
    found.back().where.opening = worst.front->opening;
}

bool moves(const FrontPlan& front) {
    return front.season->coefficient > 0;
}
bool isUnknown(const FrontPlan& front) {
    return !front.season->isKnown;
}

} // namespace

void judgeSeason(const Judged& judged) {
    if (!judged.front.season)
        return;
    for (const Side side : allSides) {
        judgeOverlay(judged, side);
        judgeInset(judged, side);
    }
}

void judgeSeasonGaps(const Project& project, const Plan& plan, std::vector<BetweenFronts>& found) {
    if (!plan.season)
        return;
    std::vector<BankSeason> banks;
    for (const Spacer& spacer : plan.spacers) {
        judgeSpacer(project, plan, spacer, found);
        const std::uint32_t bank = plan.fronts[spacer.lower].bank;
        if (isUpright(plan.members[spacer.member].kind) || plan.fronts[spacer.upper].bank != bank)
            continue;
        if (bank >= banks.size())
            banks.resize(bank + 1);
        banks[bank].whenCut.take(spacer, spacer.width);
        banks[bank].driest.take(spacer, spacer.season->greatest);
        banks[bank].wettest.take(spacer, spacer.season->least);
    }
    for (const BankSeason& bank : banks)
        judgeBank(project, plan, bank, found);
}

void judgeAir(const Project& project, const Plan& plan, std::vector<Finding>& found) {
    if (!plan.season)
        return;
    judgeRows(project, plan, found);
    const SeasonMoisture& m = *plan.season;
    const bool isBeyond =
        isBeyondCoefficient(m.whenCut, m.driest) || isBeyondCoefficient(m.whenCut, m.wettest);
    // No figures: moistures are no lengths; the plan tells them.
    if (isBeyond && std::any_of(plan.fronts.begin(), plan.fronts.end(), moves))
        found.push_back({FindingCode::MoistureBeyondRange, Severity::ToKnow, {}, {}});
    const auto unknown = std::find_if(plan.fronts.begin(), plan.fronts.end(), isUnknown);
    if (unknown == plan.fronts.end())
        return;
    found.push_back({FindingCode::WoodUnknown, Severity::ToKnow, {}, {}});
    found.back().where.opening = unknown->opening;
}

} // namespace frontwright::judging
