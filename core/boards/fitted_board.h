#pragma once

#include "core/boards/board_season.h"
#include "core/boards/layers.h"
#include "core/boards/pull_out.h"

#include <optional>

namespace frontwright {

/// Moisture that a board's wood has when it is fitted, and the greatest that it comes to; percent.
struct MoistureRise {
    double fitted = 0;
    double wettest = 0;
};

/// What a board, its case and its keeper strips are made of; each may be unknown (null).
struct BoardMaterials {
    const Species* board = nullptr;
    const Species* runner = nullptr; ///< and the keeper strips
    const Species* ground = nullptr; ///< furring and side panels, which the screws hold in
    const WoodScrew* screw = nullptr;
    Stock stock; ///< how the board's wood lies
    std::optional<MoistureRise> moisture;
};

/// All that follows for one pull-out board.
struct FittedBoard {
    BoardPlan board;
    PerSide<KeeperStrip> strips; ///< left and right
    KeeperHold hold;
    Force load;                 ///< at the front edge
    std::optional<Mass> weight; ///< the board's; none: its wood is not known
    Length pullOffCentre;       ///< where it is pulled
    SafePullOut safe;
    PulledOut safeOut; ///< at the safe pull-out
    PulledOut beyond;  ///< a step farther, at most at its depth
    Skew beyondSkew;   ///< likewise
    Length wanted;     ///< pull-out: the maker's, at most the depth; else the safe one
    Skew closedSkew;
    RunningJudgement closedRunning;
    Skew skew; ///< at the wanted pull-out, as what follows
    RunningJudgement running;
    PulledOut out;
    PerSide<std::optional<LayerCheck>> brads;        ///< left and right
    PerSide<std::optional<LayerCheck>> keeperScrews; ///< left and right
    std::optional<BoardSeason> season;
    std::optional<bool> isRunnerSofter;
};

/// `step`: of the safe pull-out, as 1/16 in or 1 mm; > 0.
FittedBoard fitBoard(const BoardSpec&, const BoardPlace&, const BoardMaterials&, const Limits&,
                     Length step);

} // namespace frontwright
