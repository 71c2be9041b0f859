#pragma once

#include <cstdint>
#include <string>

namespace frontwright {

/// What a decimal number is written with.
enum class DecimalMark : std::uint8_t { Point, Comma };

/// A number that was written with a point, and its unit.
std::string withMark(std::string number, DecimalMark mark);

} // namespace frontwright
