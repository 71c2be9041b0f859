#include "core/edits/member_width.h"

#include "core/plan/facing.h"

#include <algorithm>

namespace frontwright {

WrittenLength usualMemberWidth(const Project& project, const Plan& plan, Direction direction) {
    const bool areRows = direction == Direction::Rows;
    const MemberKind kind = areRows ? MemberKind::Rail : MemberKind::Stile;
    const auto like = std::ranges::find(plan.members, kind, &MemberPlan::kind);
    if (like != plan.members.end())
        return widthOf(*like);
    if (areRows && plan.construction == Construction::Frameless)
        return {};
    const auto other = std::ranges::find_if(plan.members, [](const MemberPlan& member) {
        return member.id.number >= firstFreeId && isBuilt(member.kind);
    });
    if (other != plan.members.end())
        return widthOf(*other);
    const PerSide<WrittenLength>& frame = project.casework.frame;
    return areRows ? frame.bottom : frame.left;
}

} // namespace frontwright
