#pragma once

#include <array>
#include <cstdint>

namespace frontwright {

/// What an opening of the case is for.
enum class OpeningUse : std::uint8_t {
    Drawer,     ///< a box on runners, with a front screwed on
    FixedFront, ///< a front without a box, screwed on through the members round the opening
    Door,       ///< sized like a front; hinges are not computed
    OpenSpace,  ///< stays open
    Board       ///< a pull-out board; closed, its edge lies in the frame's face
};
inline constexpr std::array<OpeningUse, 5> allOpeningUses{
    OpeningUse::Drawer, OpeningUse::FixedFront, OpeningUse::Door, OpeningUse::OpenSpace,
    OpeningUse::Board};

/// Whether a front lies over the opening.
constexpr bool hasFront(OpeningUse use) {
    return use != OpeningUse::OpenSpace && use != OpeningUse::Board;
}

/// The side on which a door hangs, seen from the front.
enum class HingeSide : std::uint8_t { Left, Right };

/// What a split divides.
enum class Divides : std::uint8_t {
    Case, ///< members stand between its parts
    Face  ///< only what is seen: several fronts over one opening, on one drawer box, or the leaves
          ///< of a pair of doors. They are sized as if members stood between them.
};

} // namespace frontwright
