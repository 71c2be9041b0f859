#pragma once

#include "core/geometry/frames.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <variant>

namespace frontwright {

// What stands round a case and limits how far a front may reach. Lengths are measured in the
// elevation from the case's outer face at that side; `gap` is the least distance that is to stay
// between it and a front.

/// Nothing: a front may reach to the case's outer face.
struct OpenSide {
    friend bool operator==(const OpenSide&, const OpenSide&) = default;
};
/// A wall, or at the top a ceiling.
struct Wall {
    WrittenLength distance; ///< from the case's outer face
    WrittenLength gap;
    friend bool operator==(const Wall&, const Wall&) = default;
};
/// Another case with fronts of its own.
struct NeighbouringCase {
    WrittenLength distance;      ///< from outer face to outer face
    WrittenLength frontFromEdge; ///< its front stays so far inside its own outer face
    WrittenLength gap;           ///< from front to front
    friend bool operator==(const NeighbouringCase&, const NeighbouringCase&) = default;
};
/// Lies on the case. Over the front it limits the fronts where it reaches out before the case.
struct OverhangingTop {
    WrittenLength thickness;
    WrittenLength overFront; ///< before the case's face, fronts not counted
    WrittenLength overSides; ///< past each outer side
    WrittenLength lip;       ///< hangs down so far before the case: a moulding below the top
    WrittenLength gap;
    friend bool operator==(const OverhangingTop&, const OverhangingTop&) = default;
};
/// Lies before the case's face along its edge.
struct Moulding {
    WrittenLength height; ///< covers so much of the case, from its outer edge
    WrittenLength projection;
    WrittenLength gap;
    friend bool operator==(const Moulding&, const Moulding&) = default;
};
/// Under the case, from side to side.
struct Plinth {
    WrittenLength height;
    WrittenLength setback; ///< behind the case's face
    WrittenLength lip;     ///< rises so far before the case: a base moulding
    WrittenLength gap;
    friend bool operator==(const Plinth&, const Plinth&) = default;
};
/// Under the case, one at each corner.
struct Legs {
    WrittenLength height;
    WrittenLength width;   ///< of one, seen from the front
    WrittenLength setback; ///< inside the case's outer sides, and behind its face
    friend bool operator==(const Legs&, const Legs&) = default;
};

using Surround =
    std::variant<OpenSide, Wall, NeighbouringCase, OverhangingTop, Moulding, Plinth, Legs>;
struct Surroundings : PerSide<Surround> {
    friend bool operator==(const Surroundings&, const Surroundings&) = default;
};

/// In the order of the variant.
enum class SurroundKind : std::uint8_t {
    OpenSide,
    Wall,
    NeighbouringCase,
    OverhangingTop,
    Moulding,
    Plinth,
    Legs
};
inline constexpr std::size_t surroundKinds = std::variant_size_v<Surround>;
inline SurroundKind kindOf(const Surround& surround) {
    return static_cast<SurroundKind>(surround.index());
}
/// Of that kind, every length 0.
Surround surroundOf(SurroundKind);
/// With the lengths a maker would expect, in round inches or millimetres. Common practice, no
/// source.
Surround usualSurround(SurroundKind, Unit);
/// What can stand at a side: a top only above, a plinth and legs only below.
std::span<const SurroundKind> kindsAt(Side);
bool canStandAt(Side, SurroundKind);

/// The lengths of a surround, in the order in which they are asked for.
enum class SurroundMeasure : std::uint8_t {
    Distance,
    FrontFromEdge,
    Thickness,
    Height,
    Width,
    OverFront,
    OverSides,
    Projection,
    Setback,
    Lip,
    Gap
};
inline constexpr std::array allSurroundMeasures{
    SurroundMeasure::Distance,  SurroundMeasure::FrontFromEdge,
    SurroundMeasure::Thickness, SurroundMeasure::Height,
    SurroundMeasure::Width,     SurroundMeasure::OverFront,
    SurroundMeasure::OverSides, SurroundMeasure::Projection,
    SurroundMeasure::Setback,   SurroundMeasure::Lip,
    SurroundMeasure::Gap};
/// nullptr where that kind has no such length.
const WrittenLength* lengthOf(const Surround&, SurroundMeasure);
WrittenLength* lengthOf(Surround&, SurroundMeasure);

/// How far fronts may reach at a side of the case.
struct EdgeLimit {
    /// What they must not meet, outward from the case's outer face; negative where it covers the
    /// case: a moulding, a lip.
    Length obstacle;
    Length gap; ///< that is to stay before it
    friend bool operator==(const EdgeLimit&, const EdgeLimit&) = default;
};
/// None where nothing limits them: an open side, legs, a plinth or a top that stays behind.
std::optional<EdgeLimit> edgeLimit(const Surround&);

/// What the surroundings add to the case's outer size: a top's overhang and thickness, a plinth's
/// or the legs' height. Walls and neighbouring cases add nothing.
PerSide<Length> standingOut(const Surroundings&);

} // namespace frontwright
