#pragma once

#include "core/fastening/mounting.h"

namespace frontwright {

/// Local thickness of the front behind a point of what it lies on; 0 off the front.
Length thicknessBehind(const MountingPlace&, WallPoint);

/// Sets the window of lengths, the length, and how deep each hole's screw goes. Precondition: wall,
/// recess, screw and holes are set.
void chooseLength(MountingPlan&, const MountingSpec&, const Limits&, Length frontThickness);

} // namespace frontwright
