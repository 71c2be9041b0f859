#pragma once

#include "core/findings/remedying.h"

namespace frontwright::remedying {

/// Clearance holes of that size for the front, for all fronts that move too much, for the whole
/// case; with washers where the heads bear on little round them. None where a head goes through.
void proposeHoles(const Search&, Length drill, Label);

} // namespace frontwright::remedying
