#pragma once

#include "core/plan/plan.h"

#include <optional>
#include <vector>

namespace frontwright {

/// Fronts (indices into Plan::fronts) whose openings touch a member: `before` left of or below it,
/// `after` right of or above it.
struct Beside {
    std::vector<std::uint32_t> before;
    std::vector<std::uint32_t> after;
};
Beside openingsBeside(const Plan&, MemberId);

/// Does dragging this member move it left and right (stiles) or up and down (rails)?
enum class DragAxis : std::uint8_t { LeftRight, UpDown };
DragAxis dragAxis(const MemberPlan&);

enum class SnapTo : std::uint8_t {
    Grid,       ///< a whole multiple of the grid from where it started
    EqualSizes, ///< both neighbours, or a neighbour and another opening, become equal
    Line        ///< in line with the edge of another member
};

struct Snapped {
    Length delta; ///< + right or up; exact, never a pixel's worth
    SnapTo to = SnapTo::Grid;
    std::optional<MemberId> line;     ///< Line: the member it lines up with
    std::optional<OpeningId> equalTo; ///< EqualSizes: an opening of that size
};

/// The nearest of what a dragged member may snap to within `tolerance` of `wanted`; equal sizes
/// win over lines, lines over the grid. Pure: the plan is the one from before the drag.
Snapped snapDrag(const Plan&, MemberId, Length wanted, Length tolerance, Length grid);

/// `length` to the nearest whole multiple of `grid` (> 0), halves away from zero.
Length onGrid(Length length, Length grid);

} // namespace frontwright
