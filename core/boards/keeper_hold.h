#pragma once

#include "core/boards/keeper_pieces.h"
#include "core/catalogue/catalogue.h"

#include <optional>

namespace frontwright {

/// What one screw of a keeper strip holds, and what lifting the strip does to it.
struct KeeperHold {
    bool holdsBoard = false; ///< the strip lies over the board and has something to be screwed to
    /// In furring and side panel together, at most what there is of them (Sideways); in the
    /// furring's edge (Down):  screw + recess − strip's width, or − its height.
    Length penetration;
    /// Of a lift V on a screw's part of the strip, the screw is pulled with this many times V. The
    /// board lifts the strip in the middle of where it lies over it, (width + gap) / 2 from the
    /// furring. Statics of a stiff strip, common practice.
    ///   Sideways: it turns about its upper edge, half its height above the screw:
    ///             ((width + gap) / 2) / (height / 2)
    ///   Down:     it turns about the side panel, half the furring from the screw:
    ///             (furring + (width + gap) / 2) / (furring / 2)
    Ratio prying;
    Length furring;         ///< Down: the thinner one, that the screws stand in the middle of
    Length leastFurring;    ///< Down: 2 × a screw's least distance to an edge; 0: screw not known
    bool isSheared = false; ///< Sideways: V also bears across the shank
    std::optional<Force> withdrawal; ///< design value, NDS; none: wood or screw not known
    std::optional<Force> lateral;    ///< design value; none: also where not sheared
    friend bool operator==(const KeeperHold&, const KeeperHold&) = default;
};
KeeperHold keeperHold(const KeeperSpec&, const BoardPlan&, const WoodScrew*, const Species*);

/// T / W + V / Z, T what pulls the screw, V what lifts it: a linear sum, on the safe side. More
/// than 1 is too much. None where W or Z is not known.
std::optional<Ratio> useOf(const KeeperHold&, Force lift);

/// The most loaded screw's part of a lift at that depth, by the statics of a stiff strip on equal
/// screws (common practice): 1 / n + (y − m)(yᵢ − m) / Σ (yᵢ − m)², m their mean depth. 1 of one
/// screw. Precondition: there is a screw.
double greatestPart(const KeeperPiece&, Length at);

} // namespace frontwright
