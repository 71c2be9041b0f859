#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <functional>
#include <span>

namespace frontwright {

// Every edit of the divisions: Project in, Project out. Ids of what stays are kept. The error says
// why it cannot be done and what would help. A result is always a case that can be laid out.

/// Splits an opening into `count` (>= 2) equal openings with members of `memberWidth` between.
/// Where the opening already stands in a split of that direction, its siblings take them in.
Result<Project> splitOpening(const Project&, OpeningId, Direction, int count,
                             WrittenLength memberWidth);

/// Takes a member away; what was on both sides becomes one opening (the first one's choices stay).
Result<Project> removeMember(const Project&, MemberId);

/// Joins openings that together fill one stretch of a split (neighbours across members).
Result<Project> joinOpenings(const Project&, std::span<const OpeningId>);

/// How far a drag may go and why it stops there.
struct DragOutcome {
    Project project;
    Length moved;            ///< along the drag: + is right or up
    std::string heldBecause; ///< empty where nothing held it
};
/// Moves a member by `delta` (+ right or up). Fixed sizes hold and travel along; the nearest
/// flexible opening on each side takes up the move; none falls under limits.leastOpening. Outer
/// members change the width of that frame member.
Result<DragOutcome> dragMember(const Project&, MemberId, Length delta);

/// Sets an opening's size along `direction` (Columns: width, Rows: height) to a fixed size; the
/// nearest flexible siblings give or take.
Result<Project> setOpeningSize(const Project&, OpeningId, Direction, WrittenLength);
Result<Project> setMemberWidth(const Project&, MemberId, WrittenLength);

enum class Hold : std::uint8_t { Locked, Flexible };
/// Locked: the opening's present size becomes fixed. Flexible: it becomes a share, same size now.
Result<Project> setHold(const Project&, OpeningId, Direction, Hold);
/// Fixed along `direction`?
Hold holdOf(const Project&, OpeningId, Direction);

/// The siblings among `openings` (all of the split where only one is given) get equal shares.
Result<Project> makeEqual(const Project&, std::span<const OpeningId>, Direction);
/// The split that holds the opening becomes a graduated run along `direction`.
Result<Project> graduate(const Project&, OpeningId, Direction, Graduation);
/// Ends a graduated run: its sizes stay and become shares.
Result<Project> endGraduation(const Project&, OpeningId, Direction);

Result<Project> setCaseSize(const Project&, WrittenLength width, WrittenLength height);

/// Replaces an opening's content by `change(opening)`; used for names and choices.
Result<Project> changeOpening(const Project&, OpeningId,
                              const std::function<Opening(const Opening&)>& change);

/// nullptr where there is none.
const Opening* findOpening(const Project&, OpeningId);

} // namespace frontwright
