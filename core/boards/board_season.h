#pragma once

#include "core/boards/board.h"
#include "core/catalogue/catalogue.h"
#include "core/wood/movement.h"
#include "core/wood/stock.h"

#include <optional>

namespace frontwright {

/// A board's plays when its wood has come from one moisture to another.
struct BoardSeason {
    Length widthChange; ///< across the grain; 0 where the grain runs from side to side
    Length thicknessChange;
    Length sidePlay;      ///< each side: side play − half the width's change
    Length playInHeight;  ///< play − the thickness's change
    Length leastSidePlay; ///< what the width's change takes on each side
    Length leastPlayInHeight;
    [[nodiscard]] bool sticks() const { return sidePlay < Length{} || playInHeight < Length{}; }
    friend bool operator==(const BoardSeason&, const BoardSeason&) = default;
};

/// By relativeChange (Wood Handbook, chapter 13), moistures in percent. Across the thickness of a
/// flat-sawn board it is radial, of a quarter-sawn one tangential. The grain of a stock that runs
/// along a front's height runs from front to back here, so that the width moves; the case is taken
/// not to move (common practice: grain along its opening). nullopt where the wood's figures are not
/// known.
std::optional<BoardSeason> boardSeason(const BoardPlan&, const WoodFigures&, const Stock&,
                                       double from, double to);

/// What slides on hard wood wants wood at least as hard (common practice, no source), told by
/// specific gravity at 12 %: the softer one is worn hollow. nullopt where one is not known.
std::optional<bool> runnerIsSofter(const Species& runner, const Species& board);

} // namespace frontwright
