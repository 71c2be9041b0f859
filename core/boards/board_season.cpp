#include "core/boards/board_season.h"

namespace frontwright {
namespace {

/// What lies across the thickness of a board so cut.
Cut acrossThickness(Cut face) {
    switch (face) {
    case Cut::FlatSawn:
        return Cut::QuarterSawn;
    case Cut::QuarterSawn:
        return Cut::FlatSawn;
    case Cut::Rift:
        break;
    }
    return Cut::Rift;
}

} // namespace

std::optional<BoardSeason> boardSeason(const BoardPlan& board, const WoodFigures& figures,
                                       const Stock& stock, double from, double to) {
    const auto across = coefficientOf(figures, stock.cut);
    const auto upright = coefficientOf(figures, acrossThickness(stock.cut));
    if (stock.build == Build::Solid && (!across || !upright))
        return std::nullopt;
    BoardSeason season;
    if (stock.build == Build::Solid) {
        if (stock.grain == Grain::AlongHeight)
            season.widthChange = partOf(board.width, relativeChange(*across, from, to));
        season.thicknessChange = partOf(board.thickness, relativeChange(*upright, from, to));
    }
    season.leastSidePlay = season.widthChange - season.widthChange.half();
    season.leastPlayInHeight = season.thicknessChange;
    season.sidePlay = board.sidePlay - season.leastSidePlay;
    season.playInHeight = board.playInHeight - season.leastPlayInHeight;
    return season;
}

std::optional<bool> runnerIsSofter(const Species& runner, const Species& board) {
    if (!runner.gravity || !board.gravity)
        return std::nullopt;
    return gravityAt12Percent(*runner.gravity) < gravityAt12Percent(*board.gravity);
}

} // namespace frontwright
