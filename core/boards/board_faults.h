#pragma once

#include "core/boards/fitted_board.h"
#include "core/results/source.h"
#include "core/words/phrase.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace frontwright {

/// How grave it is: as a finding's severity.
enum class BoardGravity : std::uint8_t { RuinsPart, WillNotWork, AgainstPractice, ToKnow };

enum class BoardFault : std::uint8_t {
    BradBlowsOut,
    KeeperScrewBlowsOut,
    DoesNotPass,  ///< under the top rail
    DoesNotGoIn,  ///< deeper than the case
    KeeperMisses, ///< does not lie over the board, or has nothing to lie on
    Jams,         ///< closed, or before it is out
    TooFarOut,    ///< farther than is safe, for another reason than that it jams
    SticksAside,  ///< side play is too small for the season
    SticksInHeight,
    BradTooShort,
    KeeperScrewTooShort,
    BradTipNear,
    KeeperScrewTipNear,
    RunsHard,     ///< closed
    NearJam,      ///< pulled out, it is guided over hardly more than at which it jams
    FurringThin,  ///< thinner than a screw down into its edge needs
    BearsNothing, ///< keeper screws too shallow in the wood to be counted on across their shank
    NoFurring,    ///< swings out to the side panels
    PieceLeftOut, ///< between two fasteners there is no room for a piece of the keeper strip
    SofterRunner
};
inline constexpr std::size_t boardFaultCount = 20;

/// What is to be heeded about a board.
struct BoardFinding {
    BoardFault fault = BoardFault::Jams;
    BoardGravity gravity = BoardGravity::WillNotWork;
    Phrase sentence; ///< one plain sentence with the numbers in it
    Phrase reason;   ///< the formula with its figures filled in
    Phrase remedy;   ///< what to do
    Source source;
};

/// Gravest first, each fault once.
std::vector<BoardFault> faultsOf(const BoardSpec&, const FittedBoard&);
/// The words of one of them, of both sides the worse one; nullopt where the board does not have it.
std::optional<BoardFinding> tell(BoardFault, const BoardSpec&, const FittedBoard&, const Limits&,
                                 LengthStyle);

BoardGravity gravityOf(BoardFault);
/// Stable name for files: "board_jams".
std::string_view key(BoardFault);

} // namespace frontwright
