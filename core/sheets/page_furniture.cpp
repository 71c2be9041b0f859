#include "core/sheets/page_furniture.h"

#include "core/drawings/lettering.h"
#include "core/sheets/check_bars.h"
#include "core/sheets/clipping.h"
#include "core/sheets/legend.h"
#include "core/sheets/text_lines.h"

#include <cmath>

namespace frontwright {

namespace {

constexpr double crossReach = 4; ///< mm of a register cross to each side
constexpr double holeClear = 2;  ///< mm between a cross and a hole's circle
constexpr double lineClear = 2;  ///< mm between a cross's middle and another line: its diamond
constexpr double dash = 2;       ///< mm, and the gap between two
// From a tile's edge to the base line of a neighbour's name: text away from the edge, or between.
constexpr double baseNear = 1.6;
constexpr double baseFar = 1 + smallText;

/// One edge of a tile where a neighbour goes on.
struct Joint {
    const Tile& neighbour;
    int axis;    ///< 0: an upright joint, its place is an x
    double at;   ///< in the part's frame
    bool isCut;  ///< this tile is cut here and laid over its neighbour
    double edge; ///< of what this tile shows, beyond the joint
    double sign; ///< +1 to the right or up, −1 to the left or down
};

PointMm point(int axis, double across, double along) {
    return axis == 0 ? PointMm(across, along) : PointMm(along, across);
}

std::vector<Joint> jointsOf(const TileOnPage& place) {
    std::vector<Joint> joints;
    const Tile& tile = place.tile;
    const auto add = [&](int column, int row, int axis, bool isHigh, bool isCut) {
        if (!place.tiles.used(column, row))
            return;
        joints.push_back({*place.tiles.at(column, row), axis,
                          (isHigh ? tile.trimmed.max() : tile.trimmed.min())[axis], isCut,
                          (isHigh ? tile.area.max() : tile.area.min())[axis], isHigh ? 1.0 : -1.0});
    };
    add(tile.column + 1, tile.row, 0, true, true);
    add(tile.column - 1, tile.row, 0, false, false);
    add(tile.column, tile.row + 1, 1, false, true);
    add(tile.column, tile.row - 1, 1, true, false);
    return joints;
}

void line(Page& page, Layer layer, const PointMm& from, const PointMm& to) {
    page.drawing.marks.push_back({layer, LineMark{from, to}, {}});
}

void mark(Page& page, const char* kind, const std::string& part, const PointMm& at) {
    page.marks.push_back({kind, part, at.x(), at.y()});
}

void addTrimLine(Page& page, const TileOnPage& place, const Joint& joint) {
    const int along = 1 - joint.axis;
    const PointMm from = place.shift + point(joint.axis, joint.at, place.tile.area.min()[along]);
    const PointMm to = place.shift + point(joint.axis, joint.at, place.tile.area.max()[along]);
    line(page, Layer::Trim, from, to);
    const std::string name = place.part.title.english() + " / " + tileName(place.tile) + " to " +
                             tileName(joint.neighbour) + " / trim";
    mark(page, "trim", name + " / from", from);
    mark(page, "trim", name + " / to", to);
}

/// Dashes where the neighbour's cut edge comes to lie.
void addLaidEdge(Page& page, const TileOnPage& place, const Joint& joint) {
    const int along = 1 - joint.axis;
    const double low = place.tile.area.min()[along], high = place.tile.area.max()[along];
    for (double at = low; at < high; at += 2 * dash)
        line(page, Layer::Register, place.shift + point(joint.axis, joint.at, at),
             place.shift + point(joint.axis, joint.at, std::min(at + dash, high)));
}

void addCrosses(Page& page, const TileOnPage& place, const Joint& joint) {
    const int along = 1 - joint.axis;
    // Both neighbours name the joint from its first tile in reading order.
    const std::string a = tileName(place.tile), b = tileName(joint.neighbour);
    const std::string name = place.part.title.english() + " / joint " +
                             (joint.isCut ? a + "-" + b : b + "-" + a) + " / cross ";
    int number = 0;
    for (double at : crossPlaces(place.part, joint.axis, joint.at, place.tile.trimmed.min()[along],
                                 place.tile.trimmed.max()[along])) {
        const PointMm centre = place.shift + point(joint.axis, joint.at, at);
        for (Mark& stroke : registerMark(centre, crossReach))
            page.drawing.marks.push_back(std::move(stroke));
        mark(page, "register", name + std::to_string(++number), centre);
    }
}

void addNeighbourName(Page& page, const TileOnPage& place, const Joint& joint) {
    const int along = 1 - joint.axis;
    const double length = place.tile.area.sizes()[along];
    const std::string name = tileName(joint.neighbour);
    const auto say = [&](const Phrase& phrase) { return told(phrase, place.language); };
    std::string words = say(joint.isCut ? phrase("cut here, lay over tile %1", name)
                                        : phrase("lies under tile %1", name));
    if (textWidth(words, smallText) > length / 2 - 2 * crossReach)
        words = say(joint.isCut ? phrase("over tile %1", name) : phrase("under tile %1", name));
    const double middle = place.tile.area.center()[along];
    // Text reads from below or from the right: its upper side is up, or to the left.
    const double outward = joint.axis == 0 ? -joint.sign : joint.sign;
    const double away = outward > 0 ? baseNear : baseFar;
    const PointMm at = place.shift + point(joint.axis, joint.edge + joint.sign * away, middle);
    page.drawing.marks.push_back(
        {Layer::Note,
         TextMark{at, words, smallText, Anchor::Middle, joint.axis == 0 ? 90.0 : 0.0},
         {}});
}

/// A cross is read badly on a hole, or where another line runs through its middle.
bool isClear(const Template& part, const PointMm& cross) {
    const PointMm reach(lineClear, lineClear);
    const BoxMm middle(cross - reach, cross + reach);
    for (const Mark& mark : part.drawing.marks) {
        if (const auto* circle = std::get_if<CircleMark>(&mark.shape)) {
            if ((circle->centre - cross).norm() < circle->radius + crossReach + holeClear)
                return false;
        } else if (mark.layer != Layer::Waste && !clipped(mark, middle).empty()) {
            return false;
        }
    }
    return true;
}

} // namespace

const Tile* UsedTiles::at(int column, int row) const {
    if (column < 0 || row < 0 || column >= tiling.columns || row >= tiling.rows)
        return nullptr;
    return &tiling.tiles[static_cast<std::size_t>(row * tiling.columns + column)];
}
bool UsedTiles::used(int column, int row) const {
    return at(column, row) != nullptr &&
           isUsed[static_cast<std::size_t>(row * tiling.columns + column)];
}

std::array<double, 2> crossPlaces(const Template& part, int axis, double at, double low,
                                  double high) {
    constexpr std::array steps{0.0, 3.0, -3.0, 6.0, -6.0, 9.0, -9.0, 12.0, -12.0};
    const auto place = [&](double wanted) {
        for (double step : steps)
            if (isClear(part, point(axis, at, wanted + step)))
                return wanted + step;
        return wanted;
    };
    return {place(low + (high - low) / 4), place(high - (high - low) / 4)};
}

void addStrips(Page& page, const PageLayout& layout, const PageText& words,
               const Language& language) {
    const auto draw = [&](const BoxMm& strip, BarDirection direction, const char* where) {
        drawBars(page, strip, {direction, where, language}, layout.unit);
    };
    draw(layout.levelBars, BarDirection::Level, "across");
    draw(layout.uprightBars, BarDirection::Upright, "up");
    if (layout.farLevelBars)
        draw(*layout.farLevelBars, BarDirection::Level, "across, far end");
    if (layout.farUprightBars)
        draw(*layout.farUprightBars, BarDirection::Upright, "up, far end");
    for (TextMark& textLine : textLines(words, layout.text))
        page.drawing.marks.push_back({Layer::Note, std::move(textLine), {}});
    if (!layout.legend.isEmpty())
        addLegend(page, layout.legend, language);
}

void addJoints(Page& page, const TileOnPage& place) {
    for (const Joint& joint : jointsOf(place)) {
        if (joint.isCut)
            addTrimLine(page, place, joint);
        else
            addLaidEdge(page, place, joint);
        addCrosses(page, place, joint);
        addNeighbourName(page, place, joint);
    }
}

} // namespace frontwright
