#pragma once

#include "core/hardware/hardware_spec.h"
#include "core/words/phrase.h"

namespace frontwright {

/// "through wall and front", "front only, counterbore", "front only, access hole"
Text nameOf(MountingWay);

/// What is done before what, in one or two sentences; it follows from the way.
Text orderOfWork(MountingWay);

} // namespace frontwright
