#pragma once

#include "core/amounts/amounts.h"
#include "core/geometry/frames.h"

#include <optional>
#include <string>
#include <vector>

namespace frontwright {

// Depths of a pull-out board's parts count from the frame's face to the back. Closed, the board's
// front edge lies in that face.

/// What holds a board beside its opening, where the side panel stands back from the opening's edge.
enum class Furred : std::uint8_t {
    Yes, ///< furring on each side panel, up to the opening's edge
    No   ///< the board can swing out to the side panels
};

/// How the keeper strips are screwed on.
enum class KeeperFastening : std::uint8_t {
    Sideways, ///< through the strip into furring and side panel
    Down      ///< the strip lies on the furring and is screwed into its upper edge
};

/// A fastener of the case that a keeper strip must leave within reach.
struct FastenerToReach {
    Side side = Side::Left; ///< Left or Right
    WrittenLength depth;    ///< of its centre
    WrittenLength reach;    ///< diameter that stays free: of its head, or of the driver
    friend bool operator==(const FastenerToReach&, const FastenerToReach&) = default;
};

/// The strips over a board, which hold its back down when it is out. Sizes: common practice.
struct KeeperSpec {
    WrittenLength width = Length::inches(0, 48);    ///< how far it stands over, from the furring
    WrittenLength height = Length::inches(0, 48);   ///< upright
    WrittenLength allowance = Length::inches(0, 8); ///< round a fastener's reach, along the strip
    WrittenLength leastPiece = Length::inches(2);   ///< shorter pieces are left out
    WrittenLength screwFromEnd = Length::inches(1); ///< first screw from a piece's end
    WrittenLength screwSpacing = Length::inches(4); ///< at most, from screw to screw
    KeeperFastening fastening = KeeperFastening::Sideways;
    std::string screw;                             ///< id of a WoodScrew
    WrittenLength screwLength;                     ///< overall
    std::optional<WrittenLength> rightScrewLength; ///< none: as at the left
    WrittenLength screwRecess;                     ///< head's top below the strip's face
    std::vector<FastenerToReach> fasteners;        ///< in any order
    friend bool operator==(const KeeperSpec&, const KeeperSpec&) = default;
};

/// The load at a board's front edge that is counted on where the maker gives none: 50 lbf (222 N),
/// "pull on a drawer or door pull, once hanging", Architectural Woodwork Standards, 1st ed., 2009.
inline constexpr double edgeTestPoundsForce = 50;

/// A pull-out board as the maker builds it. Plays and allowance: common practice, no source.
struct BoardSpec {
    WrittenLength thickness = Length::inches(0, 48);
    WrittenLength depth;                               ///< front to back
    WrittenLength sidePanel = Length::inches(0, 48);   ///< behind a face frame: thickness of the
                                                       ///< panels that the board runs between
    WrittenLength sidePlay = Length::inches(0, 4);     ///< each side, in the opening
    WrittenLength playInHeight = Length::inches(0, 2); ///< between board and keeper strip
    WrittenLength workingAllowance = Length::inches(0, 2); ///< furring behind the opening's edge
    Furred furred = Furred::Yes;
    std::optional<WrittenLength> runnerRise; ///< runner's top above the opening's lower edge;
                                             ///< none: the board lies in the opening's middle
    WrittenLength runnerHeight = Length::inches(0, 48); ///< upright
    std::string runnerWood; ///< id of the runners' and keeper strips' species; empty: the fronts'
    std::optional<WrittenLength> pullOut; ///< how far it is wanted out; none: as far as is safe
    std::optional<WrittenLength> pullOffCentre; ///< where it is pulled; none: at a corner
    std::optional<Force> load;                  ///< at the front edge; none: the test's
    KeeperSpec keeper;
    WrittenLength bradLength;                     ///< through the furring into the side panel
    std::optional<WrittenLength> rightBradLength; ///< none: as at the left
    WrittenLength bradSet;                        ///< its head below the furring's face
    friend bool operator==(const BoardSpec&, const BoardSpec&) = default;
};

/// Beside a divider the furring is thinner than beside the case's side: each side may have its own.
inline WrittenLength bradAt(const BoardSpec& board, Side side) {
    return side == Side::Right ? board.rightBradLength.value_or(board.bradLength)
                               : board.bradLength;
}
inline WrittenLength screwAt(const KeeperSpec& keeper, Side side) {
    return side == Side::Right ? keeper.rightScrewLength.value_or(keeper.screwLength)
                               : keeper.screwLength;
}

} // namespace frontwright
