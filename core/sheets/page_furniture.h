#pragma once

#include "core/sheets/page_layout.h"
#include "core/sheets/sheets.h"

namespace frontwright {

/// What of a tiling is printed: one flag per tile, in the tiling's order.
struct UsedTiles {
    const Tiling& tiling;
    std::vector<bool> isUsed;
    [[nodiscard]] const Tile* at(int column, int row) const; ///< nullptr outside
    [[nodiscard]] bool used(int column, int row) const;      ///< false outside
};

/// A tile on its page: `shift` leads from the part's frame to the page.
struct TileOnPage {
    const Template& part;
    const UsedTiles& tiles;
    const Tile& tile;
    PointMm shift;
    Language language = {}; ///< of its words
};

/// Check bars and words, which every page has; a legend where there is room for one.
void addStrips(Page&, const PageLayout&, const PageText&, const Language&);

/// Trim lines on the right and the lower edge, dashes where a neighbour's cut edge comes to lie,
/// register crosses that both neighbours carry, and the neighbours' names along the edges.
void addJoints(Page&, const TileOnPage&);

/// Width in mm that a map of so many columns takes; no more than widestMap.
double mapWidth(int columns);
inline constexpr double widestMap = 50;

/// The whole tiling small, with the used tiles' names; this page's own is framed twice.
void addTileMap(Page&, const BoxMm& area, const TileOnPage&);

/// Where register crosses lie along a joint, in the part's frame: the same for both neighbours.
/// `axis`: 0 for an upright joint, whose place `at` is an x.
std::array<double, 2> crossPlaces(const Template&, int axis, double at, double low, double high);

} // namespace frontwright
