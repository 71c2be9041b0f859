#pragma once

#include "core/fastening/mounting.h"

namespace frontwright {

/// What a pattern of screws is put into. Distances from the wall's edges, seen from the front.
struct PatternPlace {
    Length width;  ///< of the wall
    Length height; ///< of the wall
    const WallRegion& allowed;
    Length grid;         ///< computed rows and columns are whole multiples of it from their edge
    Length leastBetween; ///< rows or columns nearer to each other become one
};

/// Points of the spec's pattern: lower row first, left to right; ByHand as placed. Typed distances
/// are kept, computed ones are as small as the allowed region lets them be, rounded up to the grid
/// and the same on both sides. Only computed columns move out of the way of what is taken out of
/// the region, towards the middle; one that finds no free place stays where it was, to be judged.
std::vector<WallPoint> placePattern(const MountingSpec&, const PatternPlace&);

/// On the grid near the middle of a span where that lies in it, else the middle itself.
Length middleOnGrid(Span, Length grid);

} // namespace frontwright
