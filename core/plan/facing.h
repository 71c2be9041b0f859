#pragma once

#include "core/plan/plan.h"

#include <vector>

namespace frontwright {

/// Across its length.
inline Length widthOf(const MemberPlan& member) {
    return isUpright(member.kind) ? member.rect.width() : member.rect.height();
}
/// The part of a rectangle along a member.
inline Span alongMember(MemberKind kind, const CaseRect& rect) {
    return isUpright(kind) ? rect.upright() : rect.across();
}
/// With which side the front left of a stile, or below a rail, bounds on it.
constexpr Side sideOfLower(MemberKind kind) {
    return isUpright(kind) ? Side::Right : Side::Top;
}
constexpr Side sideOfUpper(MemberKind kind) {
    return isUpright(kind) ? Side::Left : Side::Bottom;
}

/// Two openings with a common stretch along the member between them.
struct Facing {
    std::uint32_t member; ///< index into Arrangement::members
    std::uint32_t lower;  ///< index into Arrangement::fronts: the lower or the left one
    std::uint32_t upper;  ///< the upper or the right one
};

/// All of them, by member, then along it. A sweep along each member's two sides: linear in the
/// number of openings.
std::vector<Facing> facingOpenings(const Layout&);

} // namespace frontwright
