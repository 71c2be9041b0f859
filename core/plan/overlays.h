#pragma once

#include "core/plan/arrangement.h"

namespace frontwright {

/// Sets every front's fit and overlay.
void setOverlays(Arrangement&, const FrontFit& ofCase);

/// Sets every front's rect from its opening and its overlays.
void setRects(Arrangement&);

} // namespace frontwright
