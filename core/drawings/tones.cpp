#include "core/drawings/tones.h"

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

std::uint8_t part(double value) {
    return static_cast<std::uint8_t>(std::lround(std::clamp(value, 0.0, 255.0)));
}

std::uint8_t part(std::uint8_t from, std::uint8_t to, double share) {
    return part(from + (to - from) * share);
}

} // namespace

Tone mixed(const Tone& from, const Tone& to, double share) {
    return {part(from.red, to.red, share), part(from.green, to.green, share),
            part(from.blue, to.blue, share), part(from.opacity, to.opacity, share)};
}

Tone lit(const Tone& tone, double light) {
    if (light <= 1)
        return mixed({0, 0, 0, tone.opacity}, tone, std::max(0.0, light));
    return mixed(tone, {255, 255, 255, tone.opacity}, std::min(1.0, light - 1));
}

Tone thin(const Tone& tone, double strength) {
    return {tone.red, tone.green, tone.blue, part(255 * strength)};
}

Tone toneOf(const WoodTone& wood) {
    return {part(wood.red), part(wood.green), part(wood.blue), 255};
}

double Chance::between(double low, double high) {
    m_state += 0x9e3779b97f4a7c15U;
    std::uint64_t z = m_state;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
    z ^= z >> 31U;
    constexpr double bits53 = 9007199254740992.0;
    return low + (high - low) * (static_cast<double>(z >> 11U) / bits53);
}

} // namespace frontwright
