#pragma once

#include "core/project/project.h"
#include "core/results/result.h"

namespace frontwright {

/// Error: no such opening, an opening that is not for a board, a thickness, a depth or a spacing
/// that is not more than 0, a negative length, or a fastener that is at no side panel.
Result<Project> setBoard(const Project&, OpeningId, const BoardSpec&);

} // namespace frontwright
