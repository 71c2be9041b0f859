#pragma once

#include "core/drawings/drawing.h"

namespace frontwright {

enum class Shown : std::uint8_t { No, Yes };

struct ElevationOptions {
    LengthStyle style;
    double paperScale = 0.1; ///< paper mm per mm of case
    Shown dimensions = Shown::Yes;
    Shown holes = Shown::Yes; ///< mounting screws, handles' holes
    Shown boxes = Shown::No;  ///< box outline and bottom line behind the front
    Shown allowedRegion = Shown::No;
    std::optional<OpeningId> emphasised; ///< its own dimensions are added
};

/// The case from the front: members, openings (hidden), fronts with profile line, handles, holes,
/// labels, chain and overall dimensions in rows outside the case that never overlap. Origin at the
/// case's lower left corner.
Drawing elevation(const Project&, const Plan&, const ElevationOptions&);

/// One front only (all its layers), for a surface that repaints what changed: no dimensions.
Drawing frontElevation(const Project&, const Plan&, std::uint32_t front, const ElevationOptions&);

// The elevation's other two parts by themselves, so that a screen repaints only what changed:
// elevation() is the case, then every front, then the dimensions.

/// Outline, members and what lies round the fronts; no fronts, no dimensions.
Drawing caseElevation(const Project&, const Plan&, const ElevationOptions&);

/// Chain, overall and emphasised dimensions only, as DimensionMarks.
Drawing elevationDimensions(const Project&, const Plan&, const ElevationOptions&);

} // namespace frontwright
