#pragma once

#include "core/boards/board_spec.h"
#include "core/case/choices.h"
#include "core/case/opening_use.h"
#include "core/case/surroundings.h"
#include "core/case/system_holes.h"
#include "core/geometry/frames.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace frontwright {

/// Names an opening or a member for as long as the program holds the Project; survives edits.
/// Not written to documents: reading numbers them in the order in which they stand.
struct OpeningId {
    std::int32_t number = 0;
    friend auto operator<=>(OpeningId, OpeningId) = default;
};
struct MemberId {
    std::int32_t number = 0;
    friend auto operator<=>(MemberId, MemberId) = default;
};
/// The four outer members of a face frame have fixed ids.
inline constexpr MemberId leftStile{1}, rightStile{2}, bottomRail{3}, topRail{4};
inline constexpr std::int32_t firstFreeId = 5;

/// Columns stand side by side, listed left to right; rows lie one above the other, listed
/// **top to bottom**, as one reads an elevation.
enum class Direction : std::uint8_t { Columns, Rows };

struct FixedSize {
    WrittenLength size;
    friend bool operator==(const FixedSize&, const FixedSize&) = default;
};
/// A share of what the fixed sizes leave, in proportion to the other shares' weights.
struct Share {
    std::int64_t weight = 1; ///< > 0
    friend bool operator==(const Share&, const Share&) = default;
};
/// A place in the split's graduated run, in listed order.
struct GraduatedPlace {
    friend bool operator==(const GraduatedPlace&, const GraduatedPlace&) = default;
};
using SizeRule = std::variant<FixedSize, Share, GraduatedPlace>;

/// Each place is larger than the one listed before it by `step` (the bottom drawer deepest).
struct ArithmeticRun {
    WrittenLength step;
    friend bool operator==(const ArithmeticRun&, const ArithmeticRun&) = default;
};
/// Each place is `ratioMillionths`/1 000 000 times the one listed before it.
struct GeometricRun {
    std::int64_t ratioMillionths = 1'000'000; ///< > 0
    friend bool operator==(const GeometricRun&, const GeometricRun&) = default;
};
using Graduation = std::variant<ArithmeticRun, GeometricRun>;

/// Between two children of a split: a rail between rows, a stile or divider between columns. Where
/// the split divides only the face it is not built: what a member would be there.
struct Member {
    MemberId id;
    WrittenLength width; ///< across its length
    friend bool operator==(const Member&, const Member&) = default;
};

/// A leaf of the tree. Its `choices` override the case's.
struct Opening {
    OpeningId id;
    std::string name; ///< the maker's; empty = its bank and number are shown
    FrontChoices choices;
    OpeningUse use = OpeningUse::Drawer;
    HingeSide hinge = HingeSide::Left; ///< of a door
    Rare<BoardSpec> board;             ///< there exactly where the opening is for a board
    Unknowns unknowns;
    friend bool operator==(const Opening&, const Opening&) = default;
};

struct Region;
/// Regions never change; edits share what they leave alone.
using RegionPtr = std::shared_ptr<const Region>;

struct Child {
    SizeRule rule;
    RegionPtr region; ///< never null
    friend bool operator==(const Child&, const Child&);
};

/// Invariants: at least two children; one member fewer than children; remainderChild in range;
/// a graduation where a child has a GraduatedPlace.
struct Split {
    Direction direction = Direction::Rows;
    Divides divides = Divides::Case;
    std::vector<Child> children;
    std::vector<Member> members; ///< members[i] stands between children[i] and children[i + 1]
    std::optional<Graduation> graduation;
    std::size_t remainderChild = 0; ///< takes what is left over when sizes are put on the grid
    Unknowns unknowns;
    friend bool operator==(const Split&, const Split&) = default;
};

struct Region {
    std::variant<Opening, Split> content;
    friend bool operator==(const Region&, const Region&) = default;
};

enum class Construction : std::uint8_t {
    FaceFrame, ///< stiles and rails before the case
    Frameless  ///< the edges of the panels themselves: sides, bottom, top, dividers, shelves
};

/// The case as seen from the front: outer size, face frame or panels, divisions.
struct Case {
    WrittenLength width;
    WrittenLength height;
    /// Inside, from the frame's back to the case's back; frameless from the panels' front edges.
    WrittenLength depth;
    Construction construction = Construction::FaceFrame;
    /// Widths of the outer stiles (left, right) and rails; frameless the panels' thicknesses.
    PerSide<WrittenLength> frame;
    WrittenLength frameThickness; ///< kept where frameless, without a meaning: thicknessOfFrame
    WrittenLength grid;           ///< computed sizes are whole multiples of it: 1/16 in, 1 mm
    RegionPtr divisions;          ///< never null
    Surroundings surroundings;
    Rare<SystemHoles> systemHoles; ///< in the panels of a frameless case
    Unknowns unknowns;
    friend bool operator==(const Case&, const Case&);
};

/// How far the case's inside lies behind its face: nothing where there is no frame.
Length thicknessOfFrame(const Case&);
/// How deep the members are that are seen from the front: the frame's thickness, or frameless the
/// whole depth of the panels.
Length depthOfMembers(const Case&);

} // namespace frontwright
