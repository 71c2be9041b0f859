#pragma once

#include "core/plan/plan.h"

namespace frontwright {

/// A closed board's front edge in its opening, in the frame's face; case frame. Empty where the
/// play leaves nothing of it.
inline CaseRect edgeOf(const PlannedBoard& board) {
    const BoardPlan& plan = board.fitted.board;
    const CaseRect& opening = board.place.opening;
    return {opening.left + plan.sidePlay, opening.bottom + plan.runnerTop,
            opening.right - plan.sidePlay, opening.bottom + plan.runnerTop + plan.thickness};
}

} // namespace frontwright
