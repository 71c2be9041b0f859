#pragma once

#include "core/plan/plan.h"

#include <span>

namespace frontwright {

// Edits that draw a whole bank again elsewhere, or turn it round.

/// The divisions of the bank in which the opening stands: the innermost rows. A value of its own,
/// which later edits of the project do not change. Error: it stands in no bank.
Result<RegionPtr> bankDivisions(const Project&, OpeningId);

/// Divides each of the openings like `divisions`, with their rules, names and choices; where all
/// openings of a bank are named, that bank is replaced as a whole. Ids are new. Names of presets
/// that are not there any more are dropped, the values stay. Error also where there is no room.
Result<Project> pasteDivisions(const Project&, const RegionPtr& divisions,
                               std::span<const OpeningId> to);

/// The bank in which the opening stands becomes `count` (>= 2) equal ones side by side in its
/// place, with stiles of `memberWidth` between; siblings keep their sizes, as in splitOpening.
Result<Project> repeatBank(const Project&, OpeningId, int count, WrittenLength memberWidth);

// Left and right exchanged; done twice, all is as it was. Ids travel along. Profiles that lie on
// some sides only are turned; so are holes and handles placed by hand on one front, by its own
// width, and fittings placed from one side. What is placed by hand for the whole case, or in a
// preset, stays.
//
// Error: a geometric run of columns whose ratio has no reciprocal in whole millionths.

/// The whole case, with its frame, fits and profile presets. The plan is the project's.
Result<Project> mirrorCase(const Project&, const Plan&);
/// The smallest part with columns in it that holds all the openings.
Result<Project> mirrorRegion(const Project&, const Plan&, std::span<const OpeningId>);

/// One side of a symmetrical part like the other: of the smallest part with columns that holds all
/// the openings, the columns of their half are mirrored onto the other half, with members, rules
/// and choices, without names. A middle column stays as it is. Ids of what is replaced are new.
/// Where openings of both halves are named, the left half is the pattern. Error: there are no
/// columns, or no room.
Result<Project> mirrorOnto(const Project&, const Plan&, std::span<const OpeningId>);

} // namespace frontwright
