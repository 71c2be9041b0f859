#pragma once

#include "core/plan/plan.h"

namespace frontwright {

/// "Left stile"; without a face frame "Left side panel".
Text nameOfOuter(Construction, Side);
/// "Stile", "Rail"; without a face frame "Divider", "Shelf".
Text nameOfKind(Construction, MemberKind);
/// "Left stile", "Rail 3": by its place among the plan's members.
Phrase nameOfMember(const Plan&, std::uint32_t member);

/// "behind the frame's face"; without a face frame "behind the case's front edge".
Text behindFace(Construction);

/// The side of the case at which an outer member stands; nullopt for one between openings.
std::optional<Side> outerSide(MemberId);

} // namespace frontwright
