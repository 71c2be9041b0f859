#pragma once

#include "core/drawings/dimension_rows.h"
#include "core/edits/placed_part.h"
#include "core/words/language.h"

namespace frontwright {

enum class Shown : std::uint8_t { No, Yes };

struct ElevationOptions {
    LengthStyle style;
    Language language;       ///< of its words
    double paperScale = 0.1; ///< paper mm per mm of case
    Shown dimensions = Shown::Yes;
    /// On each side of the case, before the overall one: what finds no place in them is left out.
    std::size_t dimensionRows = DimensionRows::defaultMostRows;
    Shown sizes = Shown::Yes;  ///< each front's own, beside its name
    Shown holes = Shown::Yes;  ///< mounting screws, handles' holes
    Shown boxes = Shown::No;   ///< box outline behind the front
    Shown bottoms = Shown::No; ///< the bottom panel behind the front
    Shown fields = Shown::No;  ///< outline of the flat, full-thickness part
    Shown allowedRegion = Shown::No;
    Shown systemHoles = Shown::No;       ///< hidden in the panels
    std::optional<OpeningId> emphasised; ///< its own dimensions are added
    /// A hole or handle whose distances are dimensioned instead of its front's size, with what
    /// they are measured from: box, bottom and, for a mounting hole, the allowed region. Case
    /// dimensions that would meet these are left out.
    std::optional<PlacedPart> emphasisedPart;
    /// Labels of the other fronts stay out of it; see partReach.
    std::optional<CaseRect> keepFree = std::nullopt;
    friend bool operator==(const ElevationOptions&, const ElevationOptions&) = default;
};

/// The case from the front: members, openings (hidden), fronts with profile line, handles, holes,
/// labels, chain and overall dimensions in rows outside the case that never overlap. Origin at the
/// case's lower left corner.
Drawing elevation(const Project&, const Plan&, const ElevationOptions&);

/// What the distances of the emphasised part take up; nullopt where there are none.
std::optional<CaseRect> partReach(const Plan&, const ElevationOptions&);

// The elevation's parts by themselves, so that a screen repaints only what changed: elevation() is
// the case, then every front, then the dimensions. Of these only the dimensions are measured.

/// One front only (all its layers): no dimensions.
Drawing frontElevation(const Project&, const Plan&, std::uint32_t front, const ElevationOptions&);

/// Outline, members and what lies round the fronts; no fronts, no dimensions.
Drawing caseElevation(const Project&, const Plan&, const ElevationOptions&);

/// Chain, overall and emphasised dimensions only, as DimensionMarks.
Drawing elevationDimensions(const Project&, const Plan&, const ElevationOptions&);

} // namespace frontwright
