#pragma once

#include "core/catalogue/catalogue.h"
#include "core/drawings/drawing.h"

#include <cstdint>

namespace frontwright {

/// `share` of the way from one tone to another, 0 … 1, part by part; opacity too.
Tone mixed(const Tone& from, const Tone& to, double share);

/// A tone in more or less light: 1 leaves it, 0 is black, 2 is white; in between straight.
Tone lit(const Tone& tone, double light);

/// The tone, laid on with that strength, 0 … 1.
Tone thin(const Tone& tone, double strength);

/// The wood's own colour; a middling brown where the catalogue has no tone of it.
Tone toneOf(const WoodTone&);
/// Of a species that the catalogue has no tone of, or no species. Our own choice.
inline constexpr WoodTone middlingBrown{196, 156, 110, 20};

/// Numbers by chance that are the same with every compiler (SplitMix64, public domain; constants
/// from memory), so that the same seed always draws the same wood.
class Chance {
public:
    explicit Chance(std::uint64_t seed) : m_state(seed) {}
    /// low <= result < high.
    double between(double low, double high);

private:
    std::uint64_t m_state;
};

} // namespace frontwright
