#pragma once

#include "core/hardware/hardware_spec.h"

#include <string_view>

namespace frontwright {

/// "through wall and front", "front only, counterbore", "front only, access hole"
std::string_view nameOf(MountingWay);

/// What is done before what, in one or two sentences; it follows from the way.
std::string_view orderOfWork(MountingWay);

} // namespace frontwright
