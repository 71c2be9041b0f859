#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <functional>
#include <span>

namespace frontwright {

// Every edit of the divisions: Project in, Project out. Ids of what stays are kept. The error says
// why it cannot be done and what would help. A result is always a case that can be laid out.
//
// "Keeps its size" is exact wherever at most one flexible size of a split is off the case's grid,
// which is all that an edit makes by itself; where an opening that was locked off the grid becomes
// flexible beside another such one, the two differ by less than a grid step.

/// Splits an opening into `count` (>= 2) equal openings with members of `memberWidth` between.
/// Where the opening already stands in a split of that direction, its siblings take them in; not so
/// beside a graduated run, which would change: there the opening is divided within its place. All
/// take the opening's choices; the first keeps its id and name. Siblings keep their sizes.
Result<Project> splitOpening(const Project&, OpeningId, Direction, int count,
                             WrittenLength memberWidth);

/// Takes a member away; what was on both sides becomes one opening (the first one's choices stay).
/// Siblings keep their sizes; a graduated run that loses a place ends, its sizes become shares.
/// Error where a run beside it would change.
Result<Project> removeMember(const Project&, MemberId);

/// Joins openings that together fill one stretch of a split (neighbours across members), as
/// removeMember does.
Result<Project> joinOpenings(const Project&, std::span<const OpeningId>);

/// How far a drag may go and why it stops there.
struct DragOutcome {
    Project project;
    Length moved;       ///< along the drag: + is right or up; whole steps of the case's grid
    Phrase heldBecause; ///< empty where nothing held it
};
/// Moves a member by `delta` (+ right or up), put on the grid first. Fixed sizes and graduated runs
/// hold and travel along; the nearest share on each side takes up the move; none falls under
/// limits.leastOpening, nor does an opening divided off inside one. All other sizes stay exactly as
/// they are. Outer members change the width of that frame member, to one grid step at least, and
/// the divisions divide what that leaves by their rules.
///
///   | 8 | 8 fixed | 8 |   right-hand member by −2   →   | 6 | 8 fixed | 10 |
Result<DragOutcome> dragMember(const Project&, MemberId, Length delta);

/// Sets an opening's size along `direction` (Columns: width, Rows: height) to a fixed size; the
/// nearest shares give or take, one after the other (of two equally near the later listed first),
/// down to limits.leastOpening. Beside a graduated run the run takes what is left by its rule; a
/// place of a run leaves it.
Result<Project> setOpeningSize(const Project&, OpeningId, Direction, WrittenLength);
/// Of any member, outer ones too; the divisions divide what that leaves by their rules.
Result<Project> setMemberWidth(const Project&, MemberId, WrittenLength);

enum class Hold : std::uint8_t { Locked, Flexible };
/// Locked: the opening's present size becomes fixed. Flexible: it becomes a share, same size now.
/// Error where a graduated run in the same split would change.
Result<Project> setHold(const Project&, OpeningId, Direction, Hold);
/// Fixed along `direction`? Flexible where the opening spans the case or there is none.
Hold holdOf(const Project&, OpeningId, Direction);

/// The siblings among `openings` (all unlocked ones of the split where only one is given)
/// get equal shares of what they now have together; the others keep their sizes.
Result<Project> makeEqual(const Project&, std::span<const OpeningId>, Direction);
/// The same so that the fronts over them are alike, to the case's grid, where they lie farther over
/// some members than over others: the outer panels of a frameless case.
Result<Project> makeFrontsEqual(const Project&, std::span<const OpeningId>, Direction);
/// The split that holds the opening becomes a graduated run along `direction`: all its children
/// but the locked ones.
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
