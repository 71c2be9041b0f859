#pragma once

#include "core/boards/board_spec.h"

namespace frontwright {

/// Where a board runs.
struct BoardPlace {
    CaseRect opening;
    Length leftPanel;      ///< x of the left side panel's inner face, in the elevation
    Length rightPanel;     ///< of the right one's
    Length panelThickness; ///< of each
    Length frameThickness; ///< runner and keeper strips begin behind it
    Length caseDepth;      ///< inside, from the frame's back to the case's back
};

/// A board in its opening: sizes and heights. Heights are above the opening's lower edge.
struct BoardPlan {
    Length width;     ///< opening − 2 × side play
    Length thickness; ///< as given
    Length depth;     ///< as given
    Length sidePlay;  ///< each side, in the opening
    /// From the opening's edge to the side panel, less the working allowance; 0 or less: none fits,
    /// the panel itself guides. 0 where the board is not furred.
    PerSide<Length> furring;
    /// Between the board and what guides it inside the case, with the board in the middle:
    ///   side play + distance from opening's edge to side panel − furring
    /// (with furring that is side play + working allowance).
    PerSide<Length> insideGap;
    Length runnerTop;        ///< as given, or half of (opening − thickness)
    Length runnerUnderside;  ///< runner's top − its height; negative: behind the lower rail
    Length keeperUnderside;  ///< runner's top + thickness + play in height
    Length playInHeight;     ///< as given
    Length underTopRail;     ///< opening − runner's top − thickness; negative: does not pass
    Length keeperBehindRail; ///< keeper's underside − opening's height; negative: strip is seen
    Length runnerBlock;      ///< setup block on the lower rail: the runner's top is level with it
    Length keeperBlock;      ///< setup block on the runner: thickness + play in height
    Length keeperGrip; ///< how far the strips lie over the board: keeper's width − inside gap,
                       ///< the lesser of both sides; 0 or less: they hold nothing
    Span strip;        ///< depths between which keeper strips and runners run: from the
                       ///< frame's back to the case's back
    Length panelThickness; ///< of each side panel
    Length behind;         ///< strip's end − depth: left behind the closed board; negative: it
                           ///< does not go in
    friend bool operator==(const BoardPlan&, const BoardPlan&) = default;
};

/// Sizes are negative where there is no room.
BoardPlan planBoard(const BoardSpec&, const BoardPlace&);

} // namespace frontwright
