#include "core/boards/fitted_board.h"

#include "core/holding/weight.h"

namespace frontwright {
namespace {

void fitSides(FittedBoard& fitted, const BoardSpec& spec, const Limits& limits) {
    for (const Side side : {Side::Left, Side::Right}) {
        fitted.strips[side] = keeperStrip(spec.keeper, fitted.board.strip, side);
        fitted.brads[side] = checkBrad(spec, fitted.board, side, limits);
        fitted.keeperScrews[side] = checkKeeperScrew(spec.keeper, fitted.board, side, limits);
    }
}

void fitWood(FittedBoard& fitted, const BoardMaterials& materials) {
    const Species* wood = materials.board;
    if (wood && materials.runner)
        fitted.isRunnerSofter = runnerIsSofter(*materials.runner, *wood);
    if (!wood)
        return;
    const BoardPlan& board = fitted.board;
    if (wood->gravity)
        fitted.weight =
            massOf(Volume::of(board.width, board.thickness, board.depth), *wood->gravity);
    if (materials.moisture)
        fitted.season = boardSeason(board, wood->figures, materials.stock,
                                    materials.moisture->fitted, materials.moisture->wettest);
}

Length wantedOf(const BoardSpec& spec, const FittedBoard& fitted) {
    const Length wanted = spec.pullOut ? Length(*spec.pullOut) : fitted.safe.pullOut;
    return greatest({}, least(wanted, fitted.board.depth));
}

} // namespace

FittedBoard fitBoard(const BoardSpec& spec, const BoardPlace& place,
                     const BoardMaterials& materials, const Limits& limits, Length step) {
    FittedBoard fitted;
    fitted.board = planBoard(spec, place);
    fitSides(fitted, spec, limits);
    fitted.hold = keeperHold(spec.keeper, fitted.board, materials.screw, materials.ground);
    fitWood(fitted, materials);
    fitted.load = spec.load.value_or(Force::nearestToPoundsForce(edgeTestPoundsForce));
    fitted.pullOffCentre = pullOffCentre(spec, fitted.board);
    const LoadedBoard loaded{fitted.board, fitted.strips, fitted.hold, fitted.load, fitted.weight};
    fitted.safe = safePullOut(loaded, fitted.pullOffCentre, step);
    const Length beyond = least(fitted.safe.pullOut + step, fitted.board.depth);
    fitted.safeOut = pulledOut(loaded, fitted.safe.pullOut);
    fitted.beyond = pulledOut(loaded, beyond);
    fitted.beyondSkew = skewOf(fitted.board, beyond);
    fitted.wanted = wantedOf(spec, fitted);
    fitted.closedSkew = skewOf(fitted.board, {});
    fitted.closedRunning = judgeRunning(fitted.board, fitted.closedSkew, fitted.pullOffCentre);
    fitted.skew = skewOf(fitted.board, fitted.wanted);
    fitted.running = judgeRunning(fitted.board, fitted.skew, fitted.pullOffCentre);
    fitted.out = pulledOut(loaded, fitted.wanted);
    return fitted;
}

} // namespace frontwright
