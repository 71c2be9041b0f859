#pragma once

#include "core/case/divisions.h"
#include "core/results/result.h"

namespace frontwright {

enum class MemberKind : std::uint8_t {
    OuterStile,
    OuterRail,
    Stile, ///< between columns
    Rail   ///< between rows
};

struct PlacedOpening {
    OpeningId id;
    const Opening* opening = nullptr; ///< into the Case the layout was made from; never null
    CaseRect rect;
    PerSide<std::uint32_t> bounds; ///< index into Layout::members of the member at each side
};

struct PlacedMember {
    MemberId id;
    MemberKind kind = MemberKind::Rail;
    CaseRect rect;
};

/// Where every opening and member lies. Openings in reading order of the tree (depth first), the
/// four outer members first (leftStile, rightStile, bottomRail, topRail). Together they tile the
/// case exactly: no two overlap, nothing is left over.
struct Layout {
    std::vector<PlacedOpening> openings;
    std::vector<PlacedMember> members;
};

/// Sizes of a split's children along its direction, in listed order; they and the members sum to
/// `total` exactly, and all but remainderChild's are whole multiples of `grid` (fixed sizes are as
/// the maker gave them). Error: how much room is missing.
Result<std::vector<Length>> childSizes(const Split& split, Length total, Length grid);

/// Error: which split, and how much room is missing.
Result<Layout> layOut(const Case& casework);

} // namespace frontwright
