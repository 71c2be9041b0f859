#pragma once

#include "core/hardware/bolts.h"
#include "core/words/phrase.h"

namespace frontwright {

/// "through wall and front", "front only, counterbore", "front only, access hole"
Text nameOf(MountingWay);

/// "through wall and front", "in the front only, head in a counterbore", "in the front only": with
/// the depth that is in force.
Text howHeld(const WayPlan&);

/// What is done before what, in one or two sentences; it follows from the way.
Text orderOfWork(MountingWay);
/// The same for a way with its depth: without a counterbore there is none to cut.
Text orderOfWork(const WayPlan&);

} // namespace frontwright
