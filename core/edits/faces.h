#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <optional>
#include <span>

namespace frontwright {

// Edits of what is seen of one opening: several fronts on one box, or the leaves of a pair of
// doors. Project in, Project out, as for all divisions.

/// Divides what is seen of an opening into `count` (>= 2) equal fronts, as if members of
/// `memberWidth` stood between; the opening behind stays one. All take its use and choices; the
/// first keeps its id and name. Error also where no front lies over the opening.
Result<Project> divideFace(const Project&, OpeningId, Direction, int count,
                           WrittenLength memberWidth);

/// What would have to stand between the two leaves of a pair of doors for them to meet with a gap
/// of 1/8 in (3 mm): their overlays and the gap, a little at least; none where they keep a gap of
/// their own. Common practice, no source.
std::optional<WrittenLength> betweenLeaves(const Project&, OpeningId);

/// Makes each opening's front a pair of doors: hung at the outer sides, meeting with the gap of
/// betweenLeaves; an outer member's width stands for the division where they keep a gap of their
/// own. Error: one is part of a divided face, or is not there.
Result<Project> makePairOfDoors(const Project&, std::span<const OpeningId>);

/// Divides what is seen of an opening, whole again before, like the bank of `like` over the same
/// stretch, so that the fronts line up: the bank's openings and rails, or where `like` lies above
/// or below the opening the columns and stiles. A bank over just the same stretch is followed with
/// its rules, so that both change alike. Error: no opening of the bank ends where this one does
/// (with how far off the nearest is), or it is not divided there.
Result<Project> divideFaceLike(const Project&, OpeningId, OpeningId like);

/// The same with the first bank beside the opening that it can follow: left, right, above, below.
/// Error: none; why the first one there does not do.
Result<Project> divideFaceLikeNeighbour(const Project&, OpeningId);

/// The face in which the opening lies has one front again; the first one's choices stay. Error: it
/// is not divided.
Result<Project> joinFace(const Project&, OpeningId);

/// Whether the opening is a part of a divided face.
bool isInFace(const Project&, OpeningId);

/// The opening whose choices decide the box: of a divided face the first one, else itself.
OpeningId decidesBox(const Project&, OpeningId);

} // namespace frontwright
