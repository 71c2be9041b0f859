#pragma once

#include "core/drawings/sketch.h"
#include "core/drawings/tones.h"
#include "core/wood/stock.h"

namespace frontwright {

/// The wood of one visible part.
struct WoodPart {
    WoodTone tone;
    Cut cut = Cut::FlatSawn;
    Grain grain = Grain::AlongLength;
    std::uint64_t seed = 0; ///< the same seed draws the same figure
};

/// The part's own tone: boards of one wood differ a little.
Tone boardTone(const WoodPart&);

/// Growth rings on a board's face: where the face cuts rings round a pith that lies behind it and
/// runs not quite along it. With h(x) the face's distance from the pith's line at x along the
/// grain, ring R shows at y = y0 ± √(R² − h(x)²). Quarter-sawn: nearly straight lines. Lines that
/// would lie too near each other on paper are left out.
void drawFigure(Sketch&, const BoxMm& board, const WoodPart&, const Part&);

} // namespace frontwright
