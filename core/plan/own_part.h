#pragma once

#include "core/plan/plan.h"

namespace frontwright {

/// Whether the box is told at this front: of several on one box it is at the first.
inline bool isFirstOnBox(const FrontPlan& front) {
    return front.choices == front.boxChoices;
}

/// What the front's box runs in: of several on one box, the opening behind them all.
inline const CaseRect& openingBehind(const Plan& plan, const FrontPlan& front) {
    return front.face ? plan.faces[*front.face].rect : front.openingRect;
}

/// What a screw keeps from each edge of the front so as not to split it: the least distance to an
/// edge or an end for screws in wood (see screwDistances). Precondition: mounting.screw is set.
PerSide<Length> fromFrontEdges(const Project&, const FrontPlan&);

/// What one of several fronts has of the wall; none where the wall is the front's alone. Screws
/// keep away from its edges where the wall goes on beyond them: the tool that sets a screw cuts the
/// wall only, so that what counts is the front's wood that a screw might split. Precondition: as
/// above, and the box is set.
std::optional<OwnPart> ownPartOf(const Project&, const FrontPlan&);

} // namespace frontwright
