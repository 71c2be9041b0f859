#pragma once

#include "core/plan/facing.h"

#include <vector>

namespace frontwright {

/// Sets every front's fit and overlay by the rules told at makePlan. `layout` is what it was
/// arranged from.
void setOverlays(Arrangement&, const Layout& layout, const FrontFit& ofCase,
                 const std::vector<Facing>&);

/// Sets every front's rect from its opening and its overlays.
void setRects(Arrangement&);

} // namespace frontwright
