#include "core/boards/new_board.h"

#include "core/boards/layers.h"
#include "core/catalogue/stocked.h"

namespace frontwright {
namespace {

BoardSpec millimetreBoard() {
    const auto mm = Length::millimetres;
    BoardSpec board;
    board.thickness = mm(19);
    board.sidePanel = mm(19);
    board.sidePlay = Length::fromMicrometres(1500);
    board.playInHeight = mm(1);
    board.workingAllowance = mm(1);
    board.runnerHeight = mm(20);
    board.bradSet = mm(1);
    KeeperSpec& keeper = board.keeper;
    keeper.width = mm(20);
    keeper.height = mm(20);
    keeper.allowance = mm(3);
    keeper.leastPiece = mm(50);
    keeper.screwFromEnd = mm(25);
    keeper.screwSpacing = mm(100);
    keeper.screwRecess = mm(3);
    return board;
}

Length stepOf(Unit unit) {
    return unit == Unit::Inch ? Length::inches(0, 16) : Length::millimetres(5);
}

/// Whole steps up to 6 in.
std::vector<Length> everyLength(Unit unit) {
    std::vector<Length> lengths;
    for (Length length = stepOf(unit); length <= Length::inches(6); length += stepOf(unit))
        lengths.push_back(length);
    return lengths;
}

/// One length for both sides where one fits both, else each side its own longest.
std::optional<PerSide<Length>> longestFor(const PerSide<std::optional<LayerCheck>>& checks,
                                          const std::vector<Length>& stocked) {
    std::optional<LayerCheck> both;
    for (const Side side : {Side::Left, Side::Right}) {
        if (!checks[side])
            continue;
        if (!both)
            both = checks[side];
        both->leastLength = greatest(both->leastLength, checks[side]->leastLength);
        both->greatestLength = least(both->greatestLength, checks[side]->greatestLength);
    }
    if (!both)
        return std::nullopt;
    if (const auto one = longestStocked(stocked, both->window()))
        return PerSide<Length>::all(*one);
    if (!checks.left || !checks.right)
        return std::nullopt;
    const auto left = longestStocked(stocked, checks.left->window());
    const auto right = longestStocked(stocked, checks.right->window());
    if (!left || !right)
        return std::nullopt;
    PerSide<Length> lengths;
    lengths.left = *left;
    lengths.right = *right;
    return lengths;
}

} // namespace

BoardSpec newBoard(Unit unit) {
    BoardSpec board;
    switch (unit) {
    case Unit::Inch:
        board.bradSet = Length::inches(0, 2);
        board.keeper.screwRecess = Length::inches(0, 8);
        break;
    case Unit::Millimetre:
        board = millimetreBoard();
        break;
    }
    board.keeper.screw = unit == Unit::Inch ? "wood-screw-8" : "wood-screw-4mm";
    return board;
}

BoardSpec newBoard(Unit unit, const BoardPlace& place, const Limits& limits) {
    BoardSpec board = newBoard(unit);
    const Length inside = place.frameThickness + place.caseDepth;
    const Length free = unit == Unit::Inch ? Length::inches(0, 32) : Length::millimetres(12);
    board.depth = greatest(inside - free, inside.half());
    const BoardPlan planned = planBoard(board, place);
    if (const auto brads = bradsFor(board, planned, limits, unit))
        useBrads(board, *brads);
    else
        board.bradLength = 4 * stepOf(unit);
    if (const auto screws = keeperScrewsFor(board, planned, limits, everyLength(unit)))
        useKeeperScrews(board.keeper, *screws);
    else
        board.keeper.screwLength = 6 * stepOf(unit);
    return board;
}

std::optional<PerSide<Length>> bradsFor(const BoardSpec& spec, const BoardPlan& board,
                                        const Limits& limits, Unit unit) {
    PerSide<std::optional<LayerCheck>> checks;
    for (const Side side : {Side::Left, Side::Right})
        checks[side] = checkBrad(spec, board, side, limits);
    return longestFor(checks, everyLength(unit));
}

std::optional<PerSide<Length>> keeperScrewsFor(const BoardSpec& spec, const BoardPlan& board,
                                               const Limits& limits,
                                               const std::vector<Length>& stocked) {
    PerSide<std::optional<LayerCheck>> checks;
    for (const Side side : {Side::Left, Side::Right})
        checks[side] = checkKeeperScrew(spec.keeper, board, side, limits);
    return longestFor(checks, stocked);
}

void useBrads(BoardSpec& spec, const PerSide<Length>& lengths) {
    spec.bradLength = lengths.left;
    spec.rightBradLength.reset();
    if (lengths.right != lengths.left)
        spec.rightBradLength = lengths.right;
}

void useKeeperScrews(KeeperSpec& spec, const PerSide<Length>& lengths) {
    spec.screwLength = lengths.left;
    spec.rightScrewLength.reset();
    if (lengths.right != lengths.left)
        spec.rightScrewLength = lengths.right;
}

} // namespace frontwright
