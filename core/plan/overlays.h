#pragma once

#include "core/plan/arrangement.h"
#include "core/plan/facing.h"

#include <vector>

namespace frontwright {

/// Sets every front's fit and overlay.
void setOverlays(Arrangement&, const FrontFit& ofCase, const std::vector<Facing>&);

/// Sets every front's rect from its opening and its overlays.
void setRects(Arrangement&);

} // namespace frontwright
