#pragma once

#include "core/drawings/rendering.h"
#include "core/drawings/sketch.h"
#include "core/drawings/tones.h"

namespace frontwright {

// The rendering's parts, each drawn by one file.

/// Towards the light: from the upper left and from before the case (x, y, z out of the paper).
struct Light {
    double x = -0.45;
    double y = 0.62;
    double z = 0.643;
};

/// How far a shadow falls for each millimetre that a thing stands out; to the right and down.
inline constexpr double shadowPerMm = 0.36;

/// How light a slope is against the flat field (1). `outward` is the side it faces, `rise` its
/// slope: loss of thickness per mm towards the edge, 0 = flat.
double lightOnSlope(Side outward, double rise);

/// The edge profile's slopes round a front's face, opaque, as bands of even tone.
void drawProfileBands(Sketch&, const BoxMm& front, const Profile&, const Tone& wood, const Part&);

/// A handle in satin metal, with the shadow it throws on the front.
void drawHandleTones(Sketch&, const HardwareForm&, const PointMm& centre, const Part&);

/// A fitting in satin metal, its centre at `centre`; a lock as its key-hole, a label holder with
/// its card.
void drawFittingTones(Sketch&, const FittingPlan&, const PointMm& centre, const Part&);

/// A shadow that thins towards its border: `outline` moved by `reach` to the lower right.
void drawShadow(Sketch&, const std::vector<PointMm>& outline, double reach, double strength,
                const Part&);

} // namespace frontwright
