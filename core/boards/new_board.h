#pragma once

#include "core/boards/board.h"
#include "core/limits/limits.h"

namespace frontwright {

/// A board of usual sizes in whole inches' fractions or millimetres; common practice, no source.
/// Nothing that depends on its place is set.
BoardSpec newBoard(Unit);

/// The same for its place: 1/2 in (12 mm) of the depth stay free behind it, and brads and screws
/// are the longest, by 1/4 in (5 mm), that leave the least cover before their tips.
BoardSpec newBoard(Unit, const BoardPlace&, const Limits&);

/// Left and right: the longest brad, by 1/4 in (5 mm), that holds in both panels and stays in them,
/// else of each side its own; nullopt where a side has none.
std::optional<PerSide<Length>> bradsFor(const BoardSpec&, const BoardPlan&, const Limits&, Unit);
/// The same of the keeper strips' screws, of the stocked lengths.
std::optional<PerSide<Length>> keeperScrewsFor(const BoardSpec&, const BoardPlan&, const Limits&,
                                               const std::vector<Length>& stocked);
void useBrads(BoardSpec&, const PerSide<Length>&);
void useKeeperScrews(KeeperSpec&, const PerSide<Length>&);

} // namespace frontwright
