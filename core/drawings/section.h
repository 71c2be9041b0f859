#pragma once

#include "core/drawings/drawing.h"

namespace frontwright {

/// Title and notes below the section; left out where they are said beside it.
enum class SectionNotes : std::uint8_t { Below, LeftOut };

/// Upright section through the selected hole, seen from the left: the front's show face to the
/// left, the box to the right, y = height above the front's lower edge, x = 0 at the front's back
/// (front at −thickness … 0, wall behind it). Front with its profile, wall, bottom panel, member
/// above and below, mounting screw with recess and tip cover, bolt with counterbore or access
/// hole, handle; real dimensions.
///
///     show face | front | wall |  inside of the box →
///           −t  …      0 …     w
struct SectionOptions {
    LengthStyle style;
    double paperScale = 0.5;
    std::uint32_t mountingHole = 0; ///< which screw is shown, with its whole row
    SectionNotes notes = SectionNotes::Below;
};
Drawing frontSection(const Project&, const Plan&, std::uint32_t front, const SectionOptions&);

} // namespace frontwright
