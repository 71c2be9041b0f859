#include "core/findings/judging.h"

#include <algorithm>

namespace frontwright::judging {

namespace {

constexpr Length nothing{};
constexpr Ratio one = Ratio::fromThousandths(1000);

std::optional<Ratio> ratioOf(const HoleHolding& hole) {
    if (!hole.ultimate || !hole.pull)
        return std::nullopt;
    return Ratio::of(hole.ultimate->inNewtons(), hole.pull->inNewtons());
}

/// Figures are not lengths: the plan's own are worded.
void judgePull(const Judged& judged) {
    const HoldingPlan& holding = *judged.front.holding;
    if (!holding.safety || !holding.designSafety || *holding.designSafety >= one)
        return;
    std::uint32_t worst = 0;
    Ratio leastRatio = Ratio::fromThousandths(Ratio::mostThousandths);
    for (std::uint32_t i = 0; i < holding.holes.size(); ++i)
        if (const auto ratio = ratioOf(holding.holes[i]); ratio && *ratio < leastRatio) {
            worst = i;
            leastRatio = *ratio;
        }
    judged.tell(FindingCode::HoldingWeak,
                *holding.safety < one ? Severity::WontWork : Severity::OutsidePractice, {});
    judged.found.back().where.mountingHole = worst;
}

/// The side to which the hole is nearest, along the grain or across it.
Side nearestSide(const Judged& judged, std::size_t hole, bool alongGrain) {
    const FrontPlan& front = judged.front;
    const WallPoint at = front.mounting.holes[hole].at;
    if (alongGrain == isEnd(Side::Left, front.holding->grain))
        return 2 * (at.x + front.box.wallOnFront.x) < front.rect.width() ? Side::Left : Side::Right;
    return 2 * (at.y + front.box.wallOnFront.y) < front.rect.height() ? Side::Bottom : Side::Top;
}

/// figures: distance, least distance, shank
void judgeEdges(const Judged& judged) {
    const HoldingPlan& holding = *judged.front.holding;
    const MountingPlan& mounting = judged.front.mounting;
    std::optional<Finding> worst;
    Length worstMissing;
    const auto consider = [&](std::size_t i, Length distance, Length leastDistance, bool along) {
        const Length missing = leastDistance - distance;
        if (missing <= worstMissing || mounting.holes[i].thickness <= nothing)
            return;
        worst = judged.at(FindingCode::ScrewNearEdge, Severity::OutsidePractice,
                          {distance, leastDistance, mounting.screw->shankDiameter});
        worst->where.mountingHole = static_cast<std::uint32_t>(i);
        worst->where.side = nearestSide(judged, i, along);
        worstMissing = missing;
    };
    for (std::size_t i = 0; i < holding.holes.size(); ++i) {
        consider(i, holding.holes[i].toEdge, holding.least.toEdge, false);
        consider(i, holding.holes[i].toEnd, holding.least.toEnd, true);
    }
    if (worst)
        judged.found.push_back(*worst);
}

/// figures: apart, least, shank
void judgeRows(const Judged& judged) {
    const HoldingPlan& holding = *judged.front.holding;
    const auto apartOf = [](const HoleHolding& hole) {
        return hole.toNext.value_or(Length::millimetres(1'000'000));
    };
    const auto worst = std::min_element(
        holding.holes.begin(), holding.holes.end(),
        [&](const HoleHolding& a, const HoleHolding& b) { return apartOf(a) < apartOf(b); });
    if (worst == holding.holes.end() || apartOf(*worst) >= holding.least.inRow)
        return;
    judged.tell(FindingCode::ScrewsCrowded, Severity::OutsidePractice,
                {*worst->toNext, holding.least.inRow, judged.front.mounting.screw->shankDiameter});
    judged.found.back().where.mountingHole =
        static_cast<std::uint32_t>(worst - holding.holes.begin());
}

/// figures: pilot hole, least, greatest, root
void judgePilot(const Judged& judged) {
    const MountingPlan& mounting = judged.front.mounting;
    const auto& rule = judged.front.holding->pilot;
    const Length pilot = mounting.pilotHole, root = rootOf(*mounting.screw);
    const Length leastPilot = rule && rule->isNeeded ? rule->least : nothing;
    const Length greatestPilot = rule ? rule->greatest : root;
    const Figures4 figures{pilot, leastPilot, greatestPilot, root};
    if (pilot > nothing && (pilot > greatestPilot || pilot < leastPilot))
        judged.tell(FindingCode::PilotHoleWrong,
                    pilot >= mounting.screw->shankDiameter ? Severity::WontWork
                                                           : Severity::OutsidePractice,
                    figures);
    if (pilot.isZero() && rule && rule->isNeeded)
        judged.tell(FindingCode::PilotHoleMissing, Severity::OutsidePractice, figures);
}

} // namespace

void judgeHolding(const Judged& judged) {
    judgePull(judged);
    if (judged.front.mounting.length) {
        judgeEdges(judged);
        judgeRows(judged);
    }
    judgePilot(judged);
    // figures: clearance hole, shank
    const MountingPlan& mounting = judged.front.mounting;
    if (mounting.clearanceHole < mounting.screw->shankDiameter)
        judged.tell(FindingCode::ClearanceHoleTight, Severity::OutsidePractice,
                    {mounting.clearanceHole, mounting.screw->shankDiameter});
    // figures: what the head bears on all round, least, head, clearance hole
    const Length bearing = headBearing(mounting), least = judged.project.limits.leastHeadBearing;
    if (bearing < least)
        judged.tell(FindingCode::HeadBearsLittle,
                    bearing <= nothing ? Severity::WontWork : Severity::OutsidePractice,
                    {bearing, least, mounting.screw->headDiameter, mounting.clearanceHole});
}

void judgeBoltHolding(const Judged& judged) {
    const HardwarePlan& hardware = *judged.front.hardware;
    const Length thread = hardware.bolt->majorDiameter;
    // figures: hole, bolt's diameter
    if (hardware.holeDiameter < thread)
        judged.tell(FindingCode::BoltHoleTight, Severity::WontWork,
                    {hardware.holeDiameter, thread});
    const WayPlan& way = hardware.chosenWay();
    const auto engagement = engagementOf(way, *hardware.form);
    // figures: engagement, bolt's diameter, bolt, grip
    if (way.verdict == BoltVerdict::Fits && engagement && *engagement < thread)
        judged.tell(FindingCode::EngagementThin, Severity::OutsidePractice,
                    {*engagement, thread, *way.length, way.grip});
}

void judgeRunnerLoad(const Judged& judged) {
    const DrawerLoad& load = judged.front.load;
    if (const auto total = load.onRunner(); total && load.rating && *total > *load.rating)
        judged.tell(FindingCode::RunnerOverloaded, Severity::OutsidePractice, {});
}

void judgeMixedFits(const Judged& judged) {
    const PerSide<Fit>& fit = judged.front.fit;
    const auto isInset = [&](Side side) { return fit[side] == Fit::Inset; };
    const auto count = std::count_if(allSides.begin(), allSides.end(), isInset);
    if (count == 0 || count == static_cast<std::ptrdiff_t>(allSides.size()))
        return;
    // figures: thickness, which the front would have to be rabbeted away
    judged.tell(FindingCode::FitsMixed, Severity::OutsidePractice, {judged.front.thickness});
}

} // namespace frontwright::judging
