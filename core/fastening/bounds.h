#pragma once

#include "core/fastening/mounting.h"

namespace frontwright {

/// What keeps the centre of a mounting screw in, each by itself; in the wall's frame.
///
///      _______________________________  the wall's upper edge
///     |        - - - - - - - -  top    |
///     | sides.low         sides.high   |
///     |  - - - - - - - - - - - - -     |  forMargin, forTool: the higher counts
///     |  - - - - - - - - - - - - -     |  forHead: below it the head meets the panel
///     |===========bottom's top=========|
struct MountingBounds {
    Length forHead;   ///< bottom's top + head radius
    Length forMargin; ///< bottom's top + head radius + margin
    Length forTool;   ///< bottom's top + tool radius
    Span sides;       ///< side thickness + tool radius from either side
    Length top;       ///< the larger of tool radius and head radius + margin below the upper edge
    WallRect thick;   ///< where the front is thick enough; empty where it is nowhere
    std::optional<WallRect> own; ///< of one of several fronts: its part of the wall, away from its
                                 ///< edges where the wall goes on beyond

    [[nodiscard]] Length bottom() const { return greatest(forMargin, forTool); }
    /// All of them together; empty where nothing is left.
    [[nodiscard]] WallRect common() const;
};

/// Radius of what cuts the recess: never less than the head that goes into it.
Length toolRadius(const MountingSpec&, const WoodScrew&);

MountingBounds boundsOf(const MountingSpec&, const WoodScrew&, const Limits&, const MountingPlace&);

/// What must stay free of screws round the handle's holes, for the way that is chosen:
///   ThroughWall       radius of bolt hole or of the counterbore in the wall, whichever is there
///   FrontAccessHole   radius of the access hole, the same way
///   FrontCounterbore  radius of the counterbore; it lies in the front only, where no tool comes,
///                     so the screw's own radius counts instead of the tool's
/// each + the wood that must stay between holes + tool radius.
std::vector<WallDisc> discsRoundHardware(const MountingSpec&, const WoodScrew&, const Limits&,
                                         const MountingPlace&);

/// The runner's clear zones and the notches for it in the wall, each larger by the tool's radius.
std::vector<WallRect> rectsAtRunner(const MountingSpec&, const WoodScrew&, const MountingPlace&);

/// Takes out of the region what fittings cut out of the front, the screw's own radius and the wood
/// that must stay between holes round it. Discs follow those of the handle's holes.
void keepClearOfFittings(WallRegion&, const WoodScrew&, const Limits&, const MountingPlace&);

} // namespace frontwright
