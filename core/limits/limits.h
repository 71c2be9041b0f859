#pragma once

#include "core/lengths/length.h"

namespace frontwright {

/// Every threshold by which findings are judged, in one place. The defaults are common practice
/// without a published source unless a line says otherwise; the maker can change each.
struct Limits {
    WrittenLength leastPenetration = Length::inches(0, 24);   ///< 3/8 in of screw in the front
    WrittenLength leastTipCover = Length::inches(0, 8);       ///< 1/8 in of wood before the tip
    WrittenLength screwMargin = Length::inches(0, 8);         ///< 1/8 in between head and panel
    WrittenLength leastWallUnderHead = Length::inches(0, 12); ///< 3/16 in of wall under the head
    WrittenLength leastWoodUnderHead = Length::inches(0, 16); ///< 1/4 in under a bolt's head
    WrittenLength headAllowance = Length::inches(0, 4);       ///< 1/16 in round a bolt's head
    WrittenLength leastGap = Length::inches(0, 4);            ///< 1/16 in between fronts
    WrittenLength leastOpening = Length::millimetres(60);     ///< smallest useful opening
    WrittenLength holeToHole = Length::inches(0, 16);         ///< 1/4 in of wood between holes
    WrittenLength unevenGaps = Length::inches(0, 2);       ///< 1/32 in: gaps of one bank look alike
    WrittenLength leastHeadBearing = Length::inches(0, 2); ///< 1/32 in of wood round a screw's hole
                                                           ///< under its head
    friend bool operator==(const Limits&, const Limits&) = default;
};

} // namespace frontwright
