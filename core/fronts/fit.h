#pragma once

#include "core/geometry/frames.h"

namespace frontwright {

/// How one side of a front meets what is beside it.
enum class Fit : std::uint8_t {
    Overlay, ///< covers `amount` of the member
    Gap,     ///< leaves `amount` to the facing front, or to the member's far edge where none is
    Inset    ///< lies in the opening, `amount` inside its edge
};

struct SideFit {
    Fit fit = Fit::Overlay;
    WrittenLength amount;
    friend bool operator==(const SideFit&, const SideFit&) = default;
};
using FrontFit = PerSide<SideFit>;

} // namespace frontwright
