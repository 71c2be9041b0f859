#pragma once

#include "core/boards/board.h"

#include <vector>

namespace frontwright {

/// One piece of a keeper strip with its screws; depths as of the board.
struct KeeperPiece {
    Span along;
    std::vector<Length> screws; ///< depths, front to back
    friend bool operator==(const KeeperPiece&, const KeeperPiece&) = default;
};

/// A keeper strip on one side, interrupted where fasteners stay within reach.
struct KeeperStrip {
    std::vector<KeeperPiece> pieces; ///< front to back
    std::vector<Span> interruptions; ///< front to back, apart from each other, within the strip
    std::vector<Span> leftOut;       ///< shorter than the least piece, front to back
    friend bool operator==(const KeeperStrip&, const KeeperStrip&) = default;
};

/// Free round each fastener of that side: its depth ± (reach / 2 + allowance), the odd nanometre
/// outwards on both ends. What is left of the strip between is a piece; interruptions that meet or
/// overlap are one.
KeeperStrip keeperStrip(const KeeperSpec&, Span strip, Side);

/// One screw in the middle of a piece of no more than 2 × from end; else from end to end
///   1 + (piece − 2 × from end) / spacing, rounded up
/// of them, equally spaced.
std::vector<Length> screwsAlong(Span piece, Length fromEnd, Length spacing);

} // namespace frontwright
