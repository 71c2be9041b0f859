#pragma once

#include "core/drawings/elevation.h"
#include "core/drawings/sketch.h"

namespace frontwright {

// The elevation's parts, each drawn by one file. All in the case's frame.

/// Two lines side by side are both drawn only where they lie so far apart on paper; nearer they
/// would run into one (ISO 128 asks for 0.7 mm between wide ones).
inline constexpr double nearestParallel = 0.5;

/// What all of an elevation's parts are drawn from.
struct ElevationSubject {
    const Project& project;
    const Plan& plan;
    const ElevationOptions& options;
};

/// Joints between members, where no front hides them, and the case's outline.
void drawMembers(Sketch&, const Plan&);

/// What stands round the case.
void drawSurroundings(Sketch&, const Plan&);
/// The case with all of that, as far as it is drawn at that scale.
BoxMm reachOfSurroundings(const Plan&, double paperScale);
/// Rows of system holes as they are hidden in the panels, seen on edge.
void drawSystemHoles(Sketch&, const Project&, const Plan&);

/// A closed board's edge in its opening; behind the frame, dashed, its furring, runners and
/// keepers.
void drawBoard(Sketch&, const Plan&, const PlannedBoard&);

/// The opening's edges: dashed behind the front, continuous where the front leaves them to be seen.
void drawOpening(Sketch&, const Plan&, const FrontPlan&);

/// The filler strips between fronts on one box: washed in the wood's tone, since their long edges
/// are the fronts' own, and closed at their ends.
void drawFillers(Sketch&, const Plan&);

/// Openings without a front: their edges, their name and what they are.
void drawSpaces(Sketch&, const Plan&, const ElevationOptions&);
/// A board's name on its edge, where there is room.
void nameBoard(Sketch&, const SpacePlan&, const BoxMm& edge);
/// How a door opens: two lines from its free corners that meet at the hinges (common practice, no
/// source; dashed, to stand back behind what is cut and bored).
void drawSwing(Sketch&, const FrontPlan& door);
/// Small ones along the lines of a door's swing; none of another front.
std::vector<BoxMm> swingBoxes(const FrontPlan&);

/// Of the box behind a front.
void drawBoxOutline(Sketch&, const FrontPlan&);
void drawBottom(Sketch&, const FrontPlan&);
/// Where the front is flat and of full thickness.
void drawField(Sketch&, const FrontPlan&);
void drawAllowedRegion(Sketch&, const FrontPlan&);
void drawHoles(Sketch&, const FrontPlan&);

// What a label or a figure inside a front has to keep off, with some room round it.

/// Handles and, where holes are shown, what is bored for them.
std::vector<BoxMm> handleBoxes(const FrontPlan&, const ElevationOptions&);
/// Mounting screws with their crosses; none where holes are not shown.
std::vector<BoxMm> screwBoxes(const FrontPlan&, const ElevationOptions&);
/// Lines of the box and of the allowed region, where they are shown.
std::vector<BoxMm> lineBoxes(const FrontPlan&, const ElevationOptions&);
/// All of these.
std::vector<BoxMm> obstaclesOn(const FrontPlan&, const ElevationOptions&);

/// The front's name and, where there is room and its size is not dimensioned, its size.
void drawLabel(Sketch&, const ElevationSubject&, const FrontPlan&);

/// Width and height of the emphasised front, inside it where there is room; empty where it has
/// none, or where this front is not emphasised. Then they go into the rows outside the case.
std::vector<Mark> dimensionsInside(const Plan&, const FrontPlan&, const ElevationOptions&);

/// All dimensions of the elevation; some are left out where rows would outgrow the case.
struct CaseDimensions {
    std::vector<Mark> marks;
    std::size_t leftOut = 0;
};
CaseDimensions caseDimensions(const Plan&, const ElevationOptions&);

/// What is shown on this front: more where one of its parts is being placed.
ElevationOptions shownOn(const FrontPlan&, const ElevationOptions&);

/// Distances of the emphasised part, in rows beside its front; empty where there is none.
std::vector<Mark> partDimensions(const Plan&, const ElevationOptions&);

/// Where a point of the front lies in the case.
PointMm inCase(const FrontPlan&, FrontPoint);

} // namespace frontwright
