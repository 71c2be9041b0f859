#pragma once

#include "core/drawings/sketch.h"

namespace frontwright {

// Handles are generic: only their footprint, their holes and how far they stand out are known, so
// they are drawn by kind within these.

/// A handle seen from the front, its centre at `centre` in the drawing. A knob is a disc with its
/// turned rim; a pull is a bar over the feet at its holes; a cup pull is a half-round shell, open
/// below; a ring hangs from a boss on its backplate.
void drawHandle(Sketch&, const HardwareForm&, const PointMm& centre, const Part&);

/// The same seen from the left, standing out from a show face at x = `face` towards −x, its centre
/// at that height. Nothing where it does not stand out.
void drawHandleFromSide(Sketch&, const HardwareForm&, double face, double centreHeight,
                        const Part&);

/// The same seen from above, standing out of a face at x = `face` towards −x; its centre at `along`
/// the face, which runs along y. A pull is its bar on the feet at its holes.
void drawHandleFromAbove(Sketch&, const HardwareForm&, double face, double along, const Part&);

} // namespace frontwright
