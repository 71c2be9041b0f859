#pragma once

#include "core/drawings/drawing.h"
#include "core/words/language.h"

namespace frontwright {

/// Title and notes below the section; left out where they are said beside it.
/// Of a level section: those in which there is nothing to see.
enum class LongStretches : std::uint8_t { Drawn, LeftOut };
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
    /// The level section only: laid through that hole of the handle instead of through a screw.
    std::optional<std::uint32_t> handleHole = std::nullopt;
    LongStretches longStretches = LongStretches::Drawn;
    Language language = {}; ///< of its words
};
Drawing frontSection(const Project&, const Plan&, std::uint32_t front, const SectionOptions&);

/// Level section at the height of the selected hole, seen from above: the show face below, the box
/// above it, x = distance from the front's left edge, y = 0 at the front's back. Front with its
/// profiled ends, wall and box sides, the members beside it with the side clearance, the row of
/// screws at that height, the handle with its bolts (where no screw is in their way: the section is
/// stepped there), access holes and the driver's reach through them.
///
///       | side            side |     inside of the box
///       |____________wall______|     0 … w
///     [________front_____________]   −t … 0, show face below
Drawing levelSection(const Project&, const Plan&, std::uint32_t front, const SectionOptions&);

} // namespace frontwright
