#include "core/sheets/arrangement.h"
#include "core/sheets/correction.h"
#include "core/sheets/page_content.h"
#include "core/sheets/page_furniture.h"

#include <cmath>
#include <numeric>

namespace frontwright {

namespace {

/// A page's number in its job.
struct Numbered {
    std::size_t number = 1;
    std::size_t count = 1;
};

/// Whole micrometres, so that places on the page are plain numbers.
PointMm shiftOf(const Tile& tile, const PageLayout& layout) {
    const PointMm exact = layout.drawing.center() - tile.area.center();
    return {std::floor(exact.x() * 1000) / 1000, std::floor(exact.y() * 1000) / 1000};
}

std::size_t pagesOf(const std::vector<Arranged>& all) {
    return std::accumulate(
        all.begin(), all.end(), std::size_t{0},
        [](std::size_t sum, const Arranged& one) { return sum + one.pageCount(); });
}

Page pageOf(const Project& project, const SheetOptions& options, const Arranged& arranged,
            const TileOnPage& place, Numbered at) {
    const bool isOneOfMany = arranged.tiling.tiles.size() > 1;
    PageLayout layout = arranged.layout;
    if (at.number > 1)
        layout.legend.setEmpty();
    Page page;
    page.width = layout.size.x();
    page.height = layout.size.y();
    page.tile = isOneOfMany ? tileName(place.tile) : "";
    page.label =
        pageLabel(place.part, page.tile, std::to_string(at.number), std::to_string(at.count));
    page.drawing.extent = {PointMm(0, 0), layout.size};
    addContent(page, place);
    if (isOneOfMany) {
        addJoints(page, place);
        addTileMap(page, layout.map, place);
    }
    addStrips(page, layout,
              pageWords(project, place.part, options, arranged.orientation, page.label),
              options.language);
    correct(page, factorsOf(options, arranged.orientation));
    return page;
}

} // namespace

Result<std::vector<Page>> pages(const Project& project, const Plan&,
                                std::span<const Template> parts, const SheetOptions& options) {
    const Result<std::vector<Arranged>> all = arranged(project, parts, options);
    if (!all.ok())
        return all.error();
    const std::size_t count = pagesOf(all.value());
    std::vector<Page> result;
    result.reserve(count);
    for (std::size_t index = 0; index < all.value().size(); ++index) {
        const Arranged& one = all.value()[index];
        const UsedTiles used{one.tiling, one.isUsed};
        for (std::size_t i = 0; i < one.tiling.tiles.size(); ++i) {
            if (!one.isUsed[i])
                continue;
            const Tile& tile = one.tiling.tiles[i];
            result.push_back(
                pageOf(project, options, one,
                       {*one.part, used, tile, shiftOf(tile, one.layout), options.language},
                       {result.size() + 1, count}));
            result.back().place = {index, tile.column, tile.row, one.tiling.columns,
                                   one.tiling.rows};
        }
    }
    return result;
}

Result<std::size_t> pageCount(const Project& project, std::span<const Template> parts,
                              const SheetOptions& options) {
    const Result<std::vector<Arranged>> all = arranged(project, parts, options);
    if (!all.ok())
        return all.error();
    return pagesOf(all.value());
}

} // namespace frontwright
