#include "core/findings/judging.h"
#include "core/plan/facing.h"

#include <algorithm>

namespace frontwright::judging {

namespace {

constexpr Length nothing{};
/// Halving a nanometre is no difference that a maker sees.
constexpr Length sameGap = Length::fromNanometres(2);

struct BankGaps {
    const Spacer* narrowest = nullptr;
    const Spacer* widest = nullptr;
};

/// Narrowest and widest spacer of each bank, between its own fronts only.
std::vector<BankGaps> gapsOfBanks(const Plan& plan) {
    std::uint32_t banks = 0;
    for (const FrontPlan& front : plan.fronts)
        banks = std::max(banks, front.bank + 1);
    std::vector<BankGaps> gaps(banks);
    for (const Spacer& spacer : plan.spacers) {
        const FrontPlan& lower = plan.fronts[spacer.lower];
        if (isUpright(plan.members[spacer.member].kind) ||
            lower.bank != plan.fronts[spacer.upper].bank)
            continue;
        BankGaps& bank = gaps[lower.bank];
        if (bank.narrowest == nullptr || spacer.width < bank.narrowest->width)
            bank.narrowest = &spacer;
        if (bank.widest == nullptr || spacer.width > bank.widest->width)
            bank.widest = &spacer;
    }
    return gaps;
}

/// figures: gap, least gap. Fronts that overlap are told as a collision.
void judgeGap(const Project& project, const Plan& plan, const Spacer& spacer,
              std::vector<BetweenFronts>& found) {
    const Length leastGap = project.limits.leastGap;
    if (spacer.width < nothing || spacer.width >= leastGap)
        return;
    const Severity severity =
        spacer.width == nothing ? Severity::WontWork : Severity::OutsidePractice;
    found.push_back({firstOf(spacer), atSpacer(plan, spacer, FindingCode::GapTight, severity,
                                               {spacer.width, leastGap})});
}

/// figures: narrowest gap, widest gap, width of the member at the narrowest, at the widest. Where
/// the members differ the maker may want it so; where they do not, a fit is off.
void judgeBank(const Plan& plan, const BankGaps& bank, std::vector<BetweenFronts>& found) {
    if (bank.narrowest == nullptr || bank.widest->width - bank.narrowest->width <= sameGap)
        return;
    const Length narrow = widthOf(plan.members[bank.narrowest->member]);
    const Length wide = widthOf(plan.members[bank.widest->member]);
    const Severity severity = narrow == wide ? Severity::OutsidePractice : Severity::ToKnow;
    found.push_back({firstOf(*bank.narrowest),
                     atSpacer(plan, *bank.narrowest, FindingCode::GapsUneven, severity,
                              {bank.narrowest->width, bank.widest->width, narrow, wide})});
}

} // namespace

std::uint32_t firstOf(const Spacer& spacer) {
    return std::min(spacer.lower, spacer.upper);
}

Finding atSpacer(const Plan& plan, const Spacer& spacer, FindingCode code, Severity severity,
                 const Figures4& figures) {
    const MemberPlan& member = plan.members[spacer.member];
    const bool lowerFirst = spacer.lower < spacer.upper;
    Finding finding{code, severity, {}, figures};
    finding.where.opening = plan.fronts[firstOf(spacer)].opening;
    finding.where.other = plan.fronts[lowerFirst ? spacer.upper : spacer.lower].opening;
    finding.where.member = member.id;
    finding.where.side = lowerFirst ? sideOfLower(member.kind) : sideOfUpper(member.kind);
    return finding;
}

void judgeCollisions(const Plan& plan, std::vector<BetweenFronts>& found) {
    // figures: width and height of the common part
    for (const Collision& collision : plan.collisions) {
        Finding finding{FindingCode::FrontsCollide,
                        Severity::WontWork,
                        {},
                        {collision.common.width(), collision.common.height()}};
        finding.where.opening = plan.fronts[collision.first].opening;
        finding.where.other = plan.fronts[collision.second].opening;
        found.push_back({collision.first, finding});
    }
}

void judgeGaps(const Project& project, const Plan& plan, std::vector<BetweenFronts>& found) {
    for (const Spacer& spacer : plan.spacers)
        judgeGap(project, plan, spacer, found);
    for (const BankGaps& bank : gapsOfBanks(plan))
        judgeBank(plan, bank, found);
}

} // namespace frontwright::judging
