#pragma once

#include "core/plan/plan.h"

#include <optional>
#include <vector>

namespace frontwright {

/// Reveals that an eye compares with each other.
enum class RevealKind : std::uint8_t {
    BetweenFronts, ///< what shows of a member between two fronts
    AtCaseEdge,    ///< what shows of an outer member
    RoundInset     ///< the gap round an inset front
};
inline constexpr std::array<RevealKind, 3> allRevealKinds{
    RevealKind::BetweenFronts, RevealKind::AtCaseEdge, RevealKind::RoundInset};

struct RevealAt {
    std::uint32_t front = 0;            ///< index into Plan::fronts
    Side side = Side::Left;             ///< of that front
    std::optional<std::uint32_t> other; ///< the facing front, between fronts
    Length width;
};

/// All of one kind: how many, the smallest and the largest, with the first place of each in the
/// plan's order. They are even where both are the same.
struct RevealRange {
    RevealKind kind = RevealKind::BetweenFronts;
    std::size_t count = 0;
    RevealAt smallest;
    RevealAt largest;
    [[nodiscard]] bool isEven() const { return smallest.width == largest.width; }
    [[nodiscard]] Length difference() const { return largest.width - smallest.width; }
};

/// One for each kind that the case has, in the kinds' order. Between fronts: as the spacers.
std::vector<RevealRange> revealRanges(const Plan&);

} // namespace frontwright
