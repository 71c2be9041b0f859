#pragma once

#include "core/case/divisions.h"
#include "core/results/result.h"

namespace frontwright {

enum class MemberKind : std::uint8_t {
    OuterStile,
    OuterRail,
    Stile,   ///< between columns
    Rail,    ///< between rows
    NoStile, ///< not built: between columns of a divided face
    NoRail   ///< not built: between rows of a divided face
};
/// A stile's length runs upright, a rail's across.
constexpr bool isUpright(MemberKind kind) {
    return kind == MemberKind::OuterStile || kind == MemberKind::Stile ||
           kind == MemberKind::NoStile;
}
constexpr bool isOuter(MemberKind kind) {
    return kind == MemberKind::OuterStile || kind == MemberKind::OuterRail;
}
constexpr bool isBuilt(MemberKind kind) {
    return kind != MemberKind::NoStile && kind != MemberKind::NoRail;
}

struct PlacedOpening {
    OpeningId id;
    const Opening* opening = nullptr; ///< into the Case the layout was made from; never null
    CaseRect rect; ///< in a divided face: what the opening would be with members between
    PerSide<std::uint32_t> bounds; ///< index into Layout::members of the member at each side
    std::optional<std::uint32_t> face = std::nullopt; ///< index into Layout::faces
};

/// An opening of the case whose face is divided: its fronts have one drawer box, or are the leaves
/// of a pair of doors.
struct DividedFace {
    CaseRect rect;           ///< the opening behind them all
    std::uint32_t first = 0; ///< index into Layout::openings; the others follow it
    std::uint32_t count = 0; ///< >= 2
    friend bool operator==(const DividedFace&, const DividedFace&) = default;
};

struct PlacedMember {
    MemberId id;
    MemberKind kind = MemberKind::Rail;
    CaseRect rect;
};

/// Where every opening and member lies. Openings in reading order of the tree (depth first), the
/// four outer members first (leftStile, rightStile, bottomRail, topRail). Together they tile the
/// case exactly: no two overlap, nothing is left over. The outer stiles run the full height, the
/// outer rails stand between them.
struct Layout {
    std::vector<PlacedOpening> openings;
    std::vector<PlacedMember> members;
    std::vector<DividedFace> faces; ///< in the openings' order
};

/// Splits on the way from the case to an opening, at most.
inline constexpr int deepestDivisions = 64;
/// Openings in one case, at most.
inline constexpr std::size_t mostOpenings = 10'000;
/// Greatest weight of a share (a size in nanometres always is one).
inline constexpr std::int64_t mostShareWeight = 1'000'000'000'000'000;
/// Greatest ratio of a geometric run, 1000; the least is a millionth.
inline constexpr std::int64_t greatestRatioMillionths = 1'000'000'000;

/// Sizes of a split's children along its direction, in listed order; they and the members sum to
/// `total` exactly, and all but remainderChild's are whole multiples of `grid` (fixed sizes are as
/// the maker gave them). Error: how much room is missing.
///
///   room = total − members − fixed sizes, for n graduated places and s shares of weights w
///   share           = room · s/(n + s) · w/Σw
///   arithmetic k    = room/(n + s) + step · (k − (n − 1)/2)         k = 0 … n − 1
///   geometric k     = room · n/(n + s) · ratio^k / Σ ratio^j
/// each rounded down to the grid; what is left over goes to remainderChild, or to the last flexible
/// child where remainderChild has a fixed size. So a graduated place counts as much as an average
/// share, and how the shares divide their part among themselves does not move the run. A split of
/// fixed sizes only must add up to its total.
Result<std::vector<Length>> childSizes(const Split& split, Length total, Length grid);

/// What the frame encloses: where the divisions lie.
CaseRect insideFrame(const Case& casework);

/// Error: which split, and how much room is missing; or a divided face of openings for different
/// uses, or for one that has no front. Linear in the number of openings.
Result<Layout> layOut(const Case& casework);

/// The layout with only those openings over which a front lies; members stay.
Layout withFrontsOnly(Layout);

} // namespace frontwright
