#pragma once

#include "core/plan/arrangement.h"

namespace frontwright {

// What the fronts' overlays come to along the members. All read fits, overlays and rects.

/// Sets every front's neighbours, the spacers, and the reveals of the members between fronts.
void setNeighbours(Arrangement&);

/// Sets the stops, and the reveals of the members that fronts lie beside at one side only.
void setStops(Arrangement&);

} // namespace frontwright
