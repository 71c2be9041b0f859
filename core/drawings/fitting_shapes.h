#pragma once

#include "core/drawings/sketch.h"

namespace frontwright {

// Fittings held by screws, drawn by kind as what they are. `origin` is the front's lower left
// corner in the drawing.

/// Seen from the front: a label holder is a frame round its card, a ring hangs on its plate, a lock
/// shows its key-hole, a pull in the top edge its edge.
void drawFitting(Sketch&, const FittingPlan&, const PointMm& origin, const Part&);

/// What is bored and let in for it, seen from the front: the screws' pilot holes, other holes,
/// mortises of show face and back.
void drawFittingCuts(Sketch&, const FittingPlan&, const PointMm& origin, const Part&);

/// The form as a handle of the same kind and size is drawn, where there is one.
std::optional<HardwareForm> likeHandle(const FittingForm&);

/// The key-hole that a lock's bores make, from the lowest bore up; empty where it has none.
std::vector<PointMm> keyHoleOf(const FittingPlan&, const PointMm& origin);

/// All of a fitting on the elevation, where texts keep clear of it.
BoxMm boxOf(const FittingPlan&, const PointMm& origin);

} // namespace frontwright
