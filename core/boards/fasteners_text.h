#pragma once

#include "core/boards/board_spec.h"
#include "core/results/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace frontwright {

// The fasteners that a board's keeper strips leave within reach, in one line: the side, the depth
// of the centre behind the frame's face, and the diameter that stays free.
//   "L 4 in : 1 in; R 6 1/2 in : 1 in"

std::string written(const std::vector<FastenerToReach>&, Unit);
/// Bare numbers are of that unit; "L" and "R" may be small. Empty: none. Error: what was expected.
Result<std::vector<FastenerToReach>> parseFasteners(std::string_view typed, Unit);

} // namespace frontwright
