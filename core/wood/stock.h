#pragma once

#include <cstdint>
#include <string>

namespace frontwright {

/// How the board was sawn: what lies across its face.
enum class Cut : std::uint8_t {
    FlatSawn,   ///< the growth rings, so that it moves tangentially
    Rift,       ///< rings at about 45°
    QuarterSawn ///< the rays, so that it moves radially
};

/// Which way the grain runs in a front, as it hangs.
enum class Grain : std::uint8_t {
    AlongLength, ///< from left to right: the front's height moves
    AlongHeight  ///< upright: the front's width moves
};

enum class Build : std::uint8_t {
    Solid,
    Stable ///< plywood, veneered board: taken not to move
};

/// The wood that a front is cut from.
struct Stock {
    std::string species; ///< id of a Species; empty: none is told
    Cut cut = Cut::FlatSawn;
    Grain grain = Grain::AlongLength;
    Build build = Build::Solid;
    friend bool operator==(const Stock&, const Stock&) = default;
};

} // namespace frontwright
