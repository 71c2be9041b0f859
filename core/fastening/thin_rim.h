#pragma once

#include "core/fronts/profile.h"

#include <cstdint>

namespace frontwright {

/// Whether a front is thick enough anywhere.
enum class FieldHolds : std::uint8_t { Yes, No };

/// The part of a front, along its edges, where the profile leaves too little wood. It depends on
/// profile and thickness only, not on the front's size: solve it once for many alike fronts.
struct ThinRim {
    PerSide<Length> width;                   ///< in from each edge, seen from the front
    FieldHolds fieldHolds = FieldHolds::Yes; ///< No: even the field is too thin, width is 0

    /// What is left of the front; empty where nothing is.
    [[nodiscard]] FrontRect thickPart(FrontRect front) const;
    friend bool operator==(const ThinRim&, const ThinRim&) = default;
};

/// The least distance from an edge, to the nanometre, from which on the local thickness is at least
/// `leastThickness`; 0 at edges that carry no profile or are thick enough themselves.
ThinRim thinRim(const Profile& profile, Length thickness, Length leastThickness);

} // namespace frontwright
