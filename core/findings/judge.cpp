#include "core/findings/judging.h"
#include "core/plan/own_part.h"

#include <algorithm>

namespace frontwright {

using namespace judging;

namespace {

void judgeOne(const Judged& judged) {
    judgeFront(judged);
    judgeSurroundings(judged);
    judgeSeason(judged);
    judgeMixedFits(judged);
    if (judged.front.hasBox() && isFirstOnBox(judged.front)) {
        judgeBox(judged);
        if (hasWall(judged.front))
            judgeRunner(judged);
    }
    if (judged.front.use == OpeningUse::FixedFront)
        judgeFixedFront(judged);
    if (hasWall(judged.front)) {
        judgeScrewLength(judged);
        judgeHolding(judged);
        judgeScrewRows(judged);
        judgeRunnerLoad(judged);
        judgeSharedWall(judged);
        if (hasBottomInWall(judged.front) && hasRoomOnSharedWall(judged))
            judgeScrewHoles(judged);
    }
    if (judged.front.fittings)
        judgeFittings(judged);
    if (judged.front.hardware) {
        judgeBolt(judged);
        judgeBoltHolding(judged);
        judgeHandles(judged);
        if (hasWall(judged.front) && hasBottomInWall(judged.front))
            judgeHandleHolesInWall(judged);
    }
}

std::vector<BetweenFronts> betweenFronts(const Project& project, const Plan& plan) {
    std::vector<BetweenFronts> found;
    judgeCollisions(plan, found);
    judgeGaps(project, plan, found);
    judgeSteps(project, plan, found);
    judgeFillers(project, plan, found);
    judgeSeasonGaps(project, plan, found);
    judgeCentres(plan, found);
    std::sort(found.begin(), found.end(), [](const BetweenFronts& a, const BetweenFronts& b) {
        if (a.front != b.front)
            return a.front < b.front;
        if (a.finding.code != b.finding.code)
            return a.finding.code < b.finding.code;
        if (a.finding.where.other != b.finding.where.other)
            return a.finding.where.other < b.finding.where.other;
        return a.finding.where.member < b.finding.where.member;
    });
    return found;
}

/// Gravest first; within one severity the order stays.
std::vector<Finding> byGravity(const std::vector<Finding>& found) {
    std::vector<Finding> ordered;
    ordered.reserve(found.size());
    for (const Severity severity :
         {Severity::Ruins, Severity::WontWork, Severity::OutsidePractice, Severity::ToKnow})
        for (const Finding& finding : found)
            if (finding.severity == severity)
                ordered.push_back(finding);
    return ordered;
}

} // namespace

std::vector<Finding> judge(const Project& project, const Plan& plan) {
    const std::vector<BetweenFronts> between = betweenFronts(project, plan);
    std::vector<Finding> found;
    auto next = between.begin();
    for (std::uint32_t i = 0; i < plan.fronts.size(); ++i) {
        judgeOne({project, plan.outline, plan.fronts[i], found, plan});
        for (; next != between.end() && next->front == i; ++next)
            found.push_back(next->finding);
    }
    judgeBoards(plan, found);
    judgeMovement(project, plan, found);
    judgeAir(project, plan, found);
    judgeHeight(plan, found);
    return byGravity(found);
}

} // namespace frontwright
