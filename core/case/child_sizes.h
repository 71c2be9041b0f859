#pragma once

#include "core/case/layout.h"

#include <optional>
#include <span>

namespace frontwright {

/// Products of lengths, weights and counts; they outgrow 64 bits.
__extension__ typedef __int128 Wide;

constexpr bool isFlexible(const SizeRule& rule) {
    return !std::holds_alternative<FixedSize>(rule);
}

/// The child that takes what rounding leaves over: remainderChild where that is flexible, else the
/// last flexible one; none where all sizes are fixed.
std::optional<std::size_t> remainderTaker(const Split& split);

/// What the children of a split ask for. All in nanometres.
struct Demand {
    Wide taken = 0;       ///< members and fixed sizes
    Wide shareWeight = 0; ///< sum of the shares' weights
    std::int64_t shares = 0;
    std::int64_t places = 0; ///< of the graduated run
    /// No member is negative, every fixed size is more than 0, every weight is 1 … mostShareWeight.
    bool sound = true;

    [[nodiscard]] std::int64_t flexible() const { return shares + places; }
};
Demand demandOf(const Split& split);

/// Appends the children's sizes, see childSizes; false, with nothing appended, where there is no
/// room or the split is not sound (`whyNoRoom` tells).
bool appendSizes(const Split& split, Length total, Length grid, std::vector<Length>& sizes);

/// The sentence for a split whose sizes could not be computed.
Error whyNoRoom(const Split& split, Length total, Length grid, Phrase place);

/// The smallest total from which on every flexible child has at least its entry of `least` (an
/// empty span: a grid step). A total slightly below may do where the remainder helps.
Length leastTotal(const Split& split, std::span<const Length> least, Length grid);

/// The greatest total up to which no flexible child outgrows its entry of `most`; none where
/// nothing limits it.
std::optional<Length> mostTotal(const Split& split, std::span<const std::optional<Length>> most,
                                Length grid);

/// The unit that a grid is made for: inches where it is a whole number of 1/64 in.
Unit unitOfGrid(Length grid);

} // namespace frontwright
