#pragma once

#include "core/case/child_sizes.h"

#include <span>

namespace frontwright {

/// Gives the shares of a split such weights that its children come out at `sizes`: the sizes in
/// nanometres by their greatest common divisor. Weights that already do are left as they are, so
/// that what was equal stays equal. The remainder goes to a share whose size is off the grid, where
/// there is one. Precondition: sizes and members sum to `total`, fixed sizes are unchanged.
/// Where shares stand beside a graduated run, their part of the room is the rule's, not theirs: if
/// `sizes` asks for another part, the shares keep their proportions only.
void keepSizes(Split& split, std::span<const Length> sizes, Length total, Length grid);

/// As keepSizes, where the shares in `equals` shall also have one and the same weight; their sizes
/// in `sizes` then only count as a sum.
void keepSizesWithEquals(Split& split, std::span<const Length> sizes,
                         std::span<const std::size_t> equals, Length total, Length grid);

/// An error where the places of the split's graduated run would not keep `sizes` (but for
/// rounding): another number of shares beside a run leaves it another part of the room.
std::optional<Error> runChanges(const Split& split, std::span<const Length> sizes, Length total,
                                Length grid);

/// How large a region may become along a direction without an opening falling below
/// `leastOpening`, and without touching what is fixed in it.
struct SizeRange {
    Length least;
    std::optional<Length> most; ///< none: any size
    [[nodiscard]] bool isRigid() const { return most && *most <= least; }
};
SizeRange sizeRange(const Region& region, Direction direction, Length leastOpening, Length grid);

} // namespace frontwright
