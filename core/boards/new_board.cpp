#include "core/boards/new_board.h"

#include "core/boards/layers.h"

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

/// The window of both sides: the thicker furring's least, the thinner one's greatest.
std::optional<Length> longestFor(const PerSide<std::optional<LayerCheck>>& checks,
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
    return both ? longestInWindow(*both, stocked) : std::nullopt;
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
    board.keeper.screw = "wood-screw-8";
    return board;
}

BoardSpec newBoard(Unit unit, const BoardPlace& place, const Limits& limits) {
    BoardSpec board = newBoard(unit);
    const Length inside = place.frameThickness + place.caseDepth;
    const Length free = unit == Unit::Inch ? Length::inches(0, 32) : Length::millimetres(12);
    board.depth = greatest(inside - free, inside.half());
    const BoardPlan planned = planBoard(board, place);
    board.bradLength = bradFor(board, planned, limits, unit).value_or(4 * stepOf(unit));
    board.keeper.screwLength =
        keeperScrewFor(board, planned, limits, everyLength(unit)).value_or(6 * stepOf(unit));
    return board;
}

std::optional<Length> bradFor(const BoardSpec& spec, const BoardPlan& board, const Limits& limits,
                              Unit unit) {
    PerSide<std::optional<LayerCheck>> checks;
    for (const Side side : {Side::Left, Side::Right})
        checks[side] = checkBrad(spec, board, side, limits);
    return longestFor(checks, everyLength(unit));
}

std::optional<Length> keeperScrewFor(const BoardSpec& spec, const BoardPlan& board,
                                     const Limits& limits, const std::vector<Length>& stocked) {
    PerSide<std::optional<LayerCheck>> checks;
    for (const Side side : {Side::Left, Side::Right})
        checks[side] = checkKeeperScrew(spec.keeper, board, side, limits);
    return longestFor(checks, stocked);
}

} // namespace frontwright
