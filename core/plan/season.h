#pragma once

#include "core/geometry/frames.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace frontwright {

/// Of one length, between the room's driest and wettest air.
struct SeasonRange {
    Length least;
    Length greatest;
    friend bool operator==(const SeasonRange&, const SeasonRange&) = default;
};

/// Mounting screws that go along together as the front moves: those of one height where the grain
/// runs along the front's length, of one distance from the side where it runs upright.
struct SeasonRow {
    Length at; ///< that height or distance, wall frame
    Length
        driest; ///< how far the screws have gone from their holes' middles: up or right, else < 0
    Length wettest; ///< likewise
    Length hole;    ///< least clearance hole: shank + 2 × the greater of the two
    Length drill;   ///< the clearance hole in force, where less the next size up from `hole`
    friend bool operator==(const SeasonRow&, const SeasonRow&) = default;
};

/// How one front moves. It is held by the screws of one row, and moves away from that on both
/// sides; a door by its hinges, or in height in its middle. The box wall is taken not to move.
struct FrontSeason {
    bool isKnown = false;   ///< the wood's figures are; else it is taken not to move
    double coefficient = 0; ///< across the grain, per 1 % of moisture
    double driest = 0;      ///< change of its size across the grain, as a part of it
    double wettest = 0;
    Length held;                 ///< the fixed row, across the grain, front frame
    std::uint32_t fixedRow = 0;  ///< index into rows
    std::vector<SeasonRow> rows; ///< ascending; empty where there are no screws
    SeasonRange width;
    SeasonRange height;
    PerSide<SeasonRange> overlay; ///< negative for inset
    PerSide<SeasonRange> gap;     ///< as Neighbour::gap
    friend bool operator==(const FrontSeason&, const FrontSeason&) = default;
};

/// The wood's moisture, in per cent of its ovendry weight.
struct SeasonMoisture {
    double whenCut = 0;
    double driest = 0;
    double wettest = 0;
    friend bool operator==(const SeasonMoisture&, const SeasonMoisture&) = default;
};

} // namespace frontwright
