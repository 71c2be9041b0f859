#pragma once

#include "core/boards/board_faults.h"

namespace frontwright::boards {

struct Told {
    const BoardSpec& spec;
    const FittedBoard& fitted;
    const Limits& limits;
    LengthStyle style;
};

/// Precondition: the board has the fault.
BoardFinding worded(BoardFault, const Told&);

/// Of what a brad or a keeper's screw does.
BoardFinding wordedFastener(BoardFault, const Told&);

} // namespace frontwright::boards
