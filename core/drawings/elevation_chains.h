#pragma once

#include "core/drawings/dimension_rows.h"
#include "core/lengths/length.h"

namespace frontwright {

/// What runs across the page and what runs up it. Widths are dimensioned below the case, and above
/// it; heights at its left, and at its right.
enum class Axis : std::uint8_t { Widths, Heights };

/// Dimensions every opening and member of that axis along the near side (below, left) and the far
/// one. A chain is what a cut through the case meets. The near side gets the whole chain of what
/// lies nearest to it; what differs from that goes to the side it is nearer to, the far side's
/// first chain whole as well, all later ones without what has been dimensioned before.
void addChains(const Plan&, Axis, LengthStyle, DimensionRows& nearSide, DimensionRows& farSide);

} // namespace frontwright
