#include "core/sheets/page_furniture.h"
#include "tests/core/sheets/laid_sheets.h"

#include <gtest/gtest.h>

#include <map>

namespace frontwright {
namespace {

using testing::laid;
using testing::marksOfKind;
using testing::onPaper;
using testing::says;
using testing::Shop;
using testing::shopWith;

/// A front of 24 1/2 in × 14 1/2 in: several rows and columns of A4.
std::unique_ptr<Shop> largeFront() {
    Project project = testing::oneOpening(Length::inches(24), Length::inches(14));
    project.fronts.hardware.form = "pull-96";
    return shopWith(std::move(project));
}
/// The pages of the front by the names of their tiles.
std::map<std::string, Page> tilesOfFront(const Shop& shop, const SheetOptions& options) {
    std::map<std::string, Page> tiles;
    for (const Page& page : laid(shop, options))
        if (page.label.english().rfind("Front", 0) == 0)
            tiles.emplace(page.tile, page);
    return tiles;
}
/// Register crosses by name.
std::map<std::string, PointMm> crosses(const Page& page) {
    std::map<std::string, PointMm> all;
    for (const PageMark& mark : marksOfKind(page, "register"))
        all.emplace(mark.part, PointMm(mark.x, mark.y));
    return all;
}
/// By how much the second page has to be moved so that crosses of that name coincide.
PointMm shiftBetween(const Page& first, const Page& second) {
    const auto onFirst = crosses(first), onSecond = crosses(second);
    for (const auto& [name, at] : onFirst)
        if (onSecond.count(name) == 1)
            return at - onSecond.at(name);
    throw std::runtime_error("no common cross");
}
std::vector<SheetOptions> joinings() {
    return {onPaper("A4"), onPaper("A4", Orientation::Landscape, {}),
            onPaper("Letter", Orientation::Portrait, Length::millimetres(15)),
            onPaper("A5", Orientation::Landscape, Length::millimetres(10))};
}

TEST(RegisterCrosses, CoincideWhenTilesAreLaidTogether) {
    const auto shop = largeFront();
    for (const SheetOptions& options : joinings()) {
        const auto tiles = tilesOfFront(*shop, options);
        std::map<std::string, std::vector<PointMm>> apart;
        int pairs = 0;
        for (const auto& [name, first] : tiles)
            for (const auto& [other, second] : tiles) {
                if (name >= other)
                    continue;
                std::vector<PointMm> shifts;
                const auto a = crosses(first), b = crosses(second);
                for (const auto& [cross, at] : a)
                    if (b.count(cross) == 1)
                        shifts.push_back(at - b.at(cross));
                if (shifts.empty())
                    continue;
                ++pairs;
                ASSERT_EQ(shifts.size(), 2U) << name << " and " << other;
                EXPECT_LT((shifts[0] - shifts[1]).norm(), 1e-9) << name << " and " << other;
            }
        EXPECT_GE(pairs, 4);
    }
}

// Round four tiles that meet in a corner: to the right, down, to the left, up.
TEST(RegisterCrosses, LeadBackToTheStartRoundACorner) {
    const auto shop = largeFront();
    int corners = 0;
    for (const SheetOptions& options : joinings()) {
        const auto t = tilesOfFront(*shop, options);
        for (char row = 'A'; row < 'H'; ++row)
            for (int column = 1; column < 9; ++column) {
                const auto name = [&](int right, int down) {
                    return std::string(1, static_cast<char>(row + down)) +
                           std::to_string(column + right);
                };
                const std::array around{name(0, 0), name(1, 0), name(1, 1), name(0, 1)};
                if (std::any_of(around.begin(), around.end(),
                                [&](const std::string& one) { return t.count(one) == 0; }))
                    continue;
                ++corners;
                PointMm sum(0, 0);
                for (std::size_t i = 0; i < around.size(); ++i)
                    sum += shiftBetween(t.at(around[i]), t.at(around[(i + 1) % around.size()]));
                EXPECT_LT(sum.norm(), 1e-9) << around[0];
            }
    }
    EXPECT_GE(corners, 4);
}

TEST(RegisterCrosses, BelongToNoMoreThanTwoTiles) {
    const auto shop = largeFront();
    std::map<std::string, int> carried;
    for (const auto& [name, page] : tilesOfFront(*shop, onPaper("A4")))
        for (const auto& [cross, at] : crosses(page))
            ++carried[cross];
    EXPECT_FALSE(carried.empty());
    for (const auto& [cross, times] : carried)
        EXPECT_EQ(times, 2) << cross;
}

TEST(RegisterCrosses, KeepOffHolesAndLines) {
    const auto shop = largeFront();
    const Template& part = testing::titled(*shop, "Front A1");
    const PointMm hole = testing::circleOf(part, "hole 1")->centre;
    const double span = 40;
    for (double at : crossPlaces(part, 0, hole.x(), hole.y() - span / 4, hole.y() + span * 3 / 4))
        EXPECT_GT(std::abs(at - hole.y()), 6);
}

TEST(TrimLines, AreSolidOnTheRightAndTheLowerEdgeOnly) {
    const auto shop = largeFront();
    const auto tiles = tilesOfFront(*shop, onPaper("A4"));
    EXPECT_EQ(marksOfKind(tiles.at("A1"), "trim").size(), 4U); // two lines, two ends each
    for (const auto& [name, page] : tiles)
        for (const PageMark& mark : marksOfKind(page, "trim"))
            EXPECT_NE(mark.part.find(" / " + name + " to "), std::string::npos) << mark.part;
    for (const auto& [name, page] : tiles)
        EXPECT_LE(marksOfKind(page, "trim").size(), 4U) << name;
}

// A tile's trim line runs through the crosses of its joint.
TEST(TrimLines, RunThroughTheCrosses) {
    const auto shop = largeFront();
    const Page page = tilesOfFront(*shop, onPaper("A4")).at("A1");
    double trim = -1;
    for (const PageMark& mark : marksOfKind(page, "trim"))
        if (mark.part == "Front A1 / A1 to A2 / trim / from")
            trim = mark.x;
    EXPECT_NEAR(crosses(page).at("Front A1 / joint A1-A2 / cross 1").x(), trim, 1e-9);
    EXPECT_NEAR(crosses(page).at("Front A1 / joint A1-A2 / cross 2").x(), trim, 1e-9);
}

TEST(Neighbours, AreNamedAlongTheEdges) {
    const auto shop = largeFront();
    const auto tiles = tilesOfFront(*shop, onPaper("A4"));
    EXPECT_TRUE(says(tiles.at("A1"), "over tile A2"));
    EXPECT_TRUE(says(tiles.at("A1"), "over tile B1"));
    EXPECT_TRUE(says(tiles.at("A2"), "under tile A1"));
    EXPECT_TRUE(says(tiles.at("B1"), "under tile A1"));
    EXPECT_FALSE(says(tiles.at("A1"), "under"));
}

TEST(TileMap, NamesTheUsedTilesOnTheFirstPage) {
    const auto shop = largeFront();
    const auto tiles = tilesOfFront(*shop, onPaper("A4"));
    EXPECT_TRUE(says(tiles.at("A1"), "tile map"));
    for (const auto& [name, page] : tiles) {
        const auto texts = testing::textsOn(tiles.at("A1"));
        EXPECT_EQ(std::count(texts.begin(), texts.end(), name), 1) << name;
    }
}

// Text of 2.5 mm has its descenders' room too: inside the second frame of this page's own cell.
TEST(TileMap, FramesThisPagesCellTwiceRoundItsName) {
    const Template part;
    const Tiling tiling{3,
                        2,
                        {{0, 0, {}, {}},
                         {1, 0, {}, {}},
                         {2, 0, {}, {}},
                         {0, 1, {}, {}},
                         {1, 1, {}, {}},
                         {2, 1, {}, {}}}};
    const UsedTiles used{tiling, {true, true, true, true, true, false}};
    Page page;
    addTileMap(page, BoxMm(PointMm(10, 10), PointMm(60, 30)),
               {part, used, tiling.tiles[4], PointMm(0, 0)});
    std::vector<BoxMm> frames;
    BoxMm name;
    for (const Mark& mark : page.drawing.marks) {
        if (std::holds_alternative<PathMark>(mark.shape))
            frames.push_back(testing::coveredBy(mark));
        const auto* text = std::get_if<TextMark>(&mark.shape);
        if (text != nullptr && text->text == "B2")
            name = testing::coveredBy(mark);
    }
    EXPECT_EQ(frames.size(), 6U); // five used tiles, one of them twice
    EXPECT_EQ(std::count_if(frames.begin(), frames.end(),
                            [&](const BoxMm& frame) { return frame.contains(name); }),
              2);
    EXPECT_FALSE(says(page, "B3"));
}

TEST(TileMap, OfManyTilesStaysInItsRoom) {
    const Template part;
    Tiling tiling{40, 30, {}};
    for (int row = 0; row < 30; ++row)
        for (int column = 0; column < 40; ++column)
            tiling.tiles.push_back({column, row, {}, {}});
    const UsedTiles used{tiling, std::vector<bool>(1200, true)};
    const BoxMm area(PointMm(10, 10), PointMm(10 + widestMap, 30));
    Page page;
    addTileMap(page, area, {part, used, tiling.tiles[7], PointMm(0, 0)});
    for (const Mark& mark : page.drawing.marks)
        EXPECT_TRUE(area.contains(testing::coveredBy(mark)));
    EXPECT_TRUE(says(page, "A1 to AD40"));
}

TEST(UsedTiles, BeyondTheEdgeThereIsNone) {
    const Tiling tiling{2, 1, {{0, 0, {}, {}}, {1, 0, {}, {}}}};
    const UsedTiles used{tiling, {true, false}};
    EXPECT_TRUE(used.used(0, 0));
    EXPECT_FALSE(used.used(1, 0));
    EXPECT_FALSE(used.used(2, 0));
    EXPECT_FALSE(used.used(0, -1));
    EXPECT_EQ(used.at(0, 1), nullptr);
}

// The overall dimensions run along the lower and the left edge.
TEST(OverallCheck, CrossesTheJointsWithItsValueOnEveryTile) {
    const auto shop = largeFront();
    const auto tiles = tilesOfFront(*shop, onPaper("A4"));
    const char lowest = tiles.rbegin()->first[0];
    for (const auto& [name, page] : tiles)
        if (name[0] == lowest || name.substr(1) == "1") {
            EXPECT_TRUE(says(page, "overall check: ")) << name;
        }
    EXPECT_TRUE(says(tiles.at(std::string(1, lowest) + "2"), "overall check: 24 1/2 in"));
    EXPECT_TRUE(says(tiles.at("A1"), "overall check: 14 1/2 in"));
}

} // namespace
} // namespace frontwright
