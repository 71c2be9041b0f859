#include "core/findings/judging.h"
#include "core/plan/facing.h"
#include "core/plan/round_case.h"

#include <algorithm>

namespace frontwright::judging {

namespace {

constexpr Length nothing{};
/// Halving a nanometre is no difference that a maker sees.
constexpr Length sameStep = Length::fromNanometres(2);

FindingCode codeOf(SurroundKind kind) {
    switch (kind) {
    case SurroundKind::Wall:
        return FindingCode::FrontAtWall;
    case SurroundKind::NeighbouringCase:
        return FindingCode::FrontAtNeighbour;
    case SurroundKind::OpenSide:
    case SurroundKind::OverhangingTop:
    case SurroundKind::Moulding:
    case SurroundKind::Plinth:
    case SurroundKind::Legs:
        break;
    }
    return FindingCode::FrontAtTrim;
}

/// The whole number of pitches, 1 at least, that is nearest to the step.
Length nearestPitches(Length step, Length pitch) {
    const std::int64_t p = pitch.nanometres();
    const std::int64_t count = (step.nanometres() + p / 2) / p;
    return (count < 1 ? 1 : count) * pitch;
}

struct BankStep {
    std::uint32_t front = 0;
    Length off;
};

} // namespace

bool hasMember(const Judged& judged, Side side) {
    const MemberPlan& member = judged.plan.members[judged.front.neighbours[side].member];
    return isBuilt(member.kind) && widthOf(member) > nothing;
}

/// figures: from the front to what stands there, the gap chosen, from the front to the case's
/// edge, what stands there past that edge (negative where it covers the case)
void judgeSurroundings(const Judged& judged) {
    if (!judged.front.toSurround)
        return;
    for (const Side side : allSides) {
        const auto distance = (*judged.front.toSurround)[side];
        if (!distance)
            continue;
        const EdgeLimit& limit = *judged.plan.limits[side];
        if (*distance >= limit.gap)
            continue;
        judged.tell(codeOf(kindOf(judged.project.casework.surroundings[side])),
                    *distance <= nothing ? Severity::WontWork : Severity::OutsidePractice,
                    {*distance, limit.gap, insideCase(judged.outline, judged.front.rect, side),
                     limit.obstacle},
                    side);
    }
}

/// figures: step, pitch, nearest whole number of pitches. Told once for a bank, where it is
/// furthest off.
void judgeSteps(const Project& project, const Plan& plan, std::vector<BetweenFronts>& found) {
    if (plan.systemHoles.empty())
        return;
    const Length pitch = project.casework.systemHoles->pitch;
    std::vector<BankStep> worst;
    for (std::uint32_t i = 0; i < plan.fronts.size(); ++i) {
        const FrontPlan& front = plan.fronts[i];
        if (!front.step || *front.step <= nothing)
            continue;
        worst.resize(std::max<std::size_t>(worst.size(), front.bank + 1));
        const Length off = (*front.step - nearestPitches(*front.step, pitch)).magnitude();
        if (off > worst[front.bank].off)
            worst[front.bank] = {i, off};
    }
    for (const BankStep& bank : worst) {
        if (bank.off <= sameStep)
            continue;
        const FrontPlan& front = plan.fronts[bank.front];
        Finding finding{FindingCode::StepOffPitch,
                        Severity::OutsidePractice,
                        {},
                        {*front.step, pitch, nearestPitches(*front.step, pitch)}};
        finding.where.opening = front.opening;
        found.push_back({bank.front, finding});
    }
}

} // namespace frontwright::judging
