#pragma once

#include "core/drawings/elevation.h"
#include "core/drawings/sketch.h"

namespace frontwright {

// The elevation's parts, each drawn by one file. All in the case's frame.

/// What all of an elevation's parts are drawn from.
struct ElevationSubject {
    const Project& project;
    const Plan& plan;
    const ElevationOptions& options;
};

/// Joints between members, where no front hides them, and the case's outline.
void drawMembers(Sketch&, const Plan&);

/// The opening's edges: dashed behind the front, continuous where the front leaves them to be seen.
void drawOpening(Sketch&, const FrontPlan&);

/// Outline and bottom of the box behind a front.
void drawBox(Sketch&, const FrontPlan&);
void drawAllowedRegion(Sketch&, const FrontPlan&);
void drawHoles(Sketch&, const FrontPlan&);

/// What a label or a figure inside a front has to keep off: handles and holes, with some room.
std::vector<BoxMm> obstaclesOn(const FrontPlan&, const ElevationOptions&);

/// The front's name and, where there is room and its size is not dimensioned, its size.
void drawLabel(Sketch&, const ElevationSubject&, const FrontPlan&);

/// Width and height of the emphasised front, inside it where there is room; empty where it has
/// none, or where this front is not emphasised. Then they go into the rows outside the case.
std::vector<Mark> dimensionsInside(const Plan&, const FrontPlan&, const ElevationOptions&);

/// Where a point of the front lies in the case.
PointMm inCase(const FrontPlan&, FrontPoint);

} // namespace frontwright
