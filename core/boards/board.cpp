#include "core/boards/board.h"

namespace frontwright {
namespace {

/// From the opening's edges to the side panels.
PerSide<Length> setBacks(const BoardPlace& place) {
    PerSide<Length> back;
    back.left = place.opening.left - place.leftPanel;
    back.right = place.rightPanel - place.opening.right;
    return back;
}

void planSides(BoardPlan& board, const BoardSpec& spec, const BoardPlace& place) {
    const PerSide<Length> back = setBacks(place);
    for (const Side side : {Side::Left, Side::Right}) {
        const Length fits = back[side] - spec.workingAllowance.length;
        board.furring[side] = spec.furred == Furred::Yes ? fits : Length{};
        board.insideGap[side] = board.sidePlay + back[side] - greatest({}, board.furring[side]);
    }
    board.keeperGrip =
        spec.keeper.width.length - greatest(board.insideGap.left, board.insideGap.right);
}

void planHeights(BoardPlan& board, const BoardSpec& spec, Length opening) {
    board.playInHeight = spec.playInHeight;
    board.runnerTop =
        spec.runnerRise ? Length(*spec.runnerRise) : (opening - board.thickness).half();
    board.runnerUnderside = board.runnerTop - spec.runnerHeight.length;
    board.keeperBlock = board.thickness + board.playInHeight;
    board.keeperUnderside = board.runnerTop + board.keeperBlock;
    board.underTopRail = opening - board.runnerTop - board.thickness;
    board.keeperBehindRail = board.keeperUnderside - opening;
    board.runnerBlock = board.runnerTop;
}

} // namespace

BoardPlan planBoard(const BoardSpec& spec, const BoardPlace& place) {
    BoardPlan board;
    board.sidePlay = spec.sidePlay;
    board.width = place.opening.width() - 2 * board.sidePlay;
    board.thickness = spec.thickness;
    board.depth = spec.depth;
    planSides(board, spec, place);
    planHeights(board, spec, place.opening.height());
    board.panelThickness = place.panelThickness;
    board.strip = {place.frameThickness, place.frameThickness + place.caseDepth};
    board.behind = board.strip.high - board.depth;
    return board;
}

} // namespace frontwright
