#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

#include <span>

namespace frontwright {

/// Gives openings a use; what they decide for a front stays, to be there again. Openings of a
/// divided face take it together. Error: one is not there; an open space or a board under a divided
/// face.
Result<Project> setUse(const Project&, std::span<const OpeningId>, OpeningUse);

/// On which side doors hang; openings for other things are left as they are.
Result<Project> setHinge(const Project&, std::span<const OpeningId>, HingeSide);

} // namespace frontwright
