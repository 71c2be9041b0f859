#include "core/sheets/page_furniture.h"

#include "core/drawings/lettering.h"
#include "core/drawings/sketch.h"
#include "core/sheets/text_lines.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double widestCell = 10;   ///< mm
constexpr double narrowestMap = 18; ///< mm, for its heading
constexpr double highestCell = 6;   ///< mm
constexpr double nameRoom = 5;      ///< mm of height that a name in a cell needs
constexpr double frameInset = 0.7;  ///< mm of the second frame round this page's cell

/// Cells as large as the area lets them, in its upper right corner.
class Map {
public:
    Map(const BoxMm& area, const Tiling& tiling, const Language& language)
        : m_area(area),
          m_tiling(tiling),
          m_language(language) {
        m_cell.x() = std::min(widestCell, area.sizes().x() / tiling.columns);
        m_cell.y() = std::min(highestCell, (area.sizes().y() - headingRoom()) / tiling.rows);
    }
    [[nodiscard]] BoxMm cell(const Tile& tile) const {
        const PointMm corner(m_area.max().x() - m_tiling.columns * m_cell.x(),
                             m_area.max().y() - headingRoom());
        const PointMm upperLeft =
            corner + PointMm(tile.column * m_cell.x(), -tile.row * m_cell.y());
        return {upperLeft - PointMm(0, m_cell.y()), upperLeft + PointMm(m_cell.x(), 0)};
    }
    [[nodiscard]] bool hasRoomFor(const std::string& name) const {
        return m_cell.y() >= nameRoom && textWidth(name, smallText) < m_cell.x() - 2.5 * frameInset;
    }
    [[nodiscard]] TextMark heading() const {
        return {{m_area.max().x(), m_area.max().y() - ascent * smallText},
                headingText(),
                smallText,
                Anchor::End,
                0};
    }

private:
    static double headingRoom() { return linePitch(smallText); }
    /// Cells too small for names are told by their corners.
    [[nodiscard]] std::string headingText() const {
        const std::string last = tileName(m_tiling.tiles.back());
        if (hasRoomFor(last))
            return told(text("tile map"), m_language);
        for (const Phrase& words : {phrase("tile map: A1 to %1", last), phrase("A1 to %1", last)})
            if (const std::string heading = told(words, m_language);
                textWidth(heading, smallText) < m_area.sizes().x())
                return heading;
        return told(phrase("to %1", last), m_language);
    }

    BoxMm m_area;
    const Tiling& m_tiling;
    const Language& m_language;
    PointMm m_cell;
};

void frame(Page& page, const BoxMm& box) {
    page.drawing.marks.push_back(
        {Layer::Note, PathMark{cornersOf(box), PathMark::End::Closed}, {}});
}

BoxMm inset(const BoxMm& box, double by) {
    return {box.min() + PointMm(by, by), box.max() - PointMm(by, by)};
}

} // namespace

double mapWidth(int columns) {
    return std::clamp(columns * widestCell, narrowestMap, widestMap);
}

void addTileMap(Page& page, const BoxMm& area, const TileOnPage& place) {
    const Map map(area, place.tiles.tiling, place.language);
    page.drawing.marks.push_back({Layer::Note, map.heading(), {}});
    for (const Tile& tile : place.tiles.tiling.tiles) {
        const BoxMm cell = map.cell(tile);
        if (!place.tiles.used(tile.column, tile.row)) {
            // Skipped: struck through, its name kept for nobody else.
            page.drawing.marks.push_back({Layer::Note, LineMark{cell.min(), cell.max()}, {}});
            continue;
        }
        frame(page, cell);
        if (&tile == &place.tile)
            frame(page, inset(cell, std::min(frameInset, cell.sizes().minCoeff() / 4)));
        if (map.hasRoomFor(tileName(tile)))
            page.drawing.marks.push_back({Layer::Note,
                                          TextMark{cell.center() - PointMm(0, smallText / 2),
                                                   tileName(tile), smallText, Anchor::Middle, 0},
                                          {}});
    }
}

} // namespace frontwright
