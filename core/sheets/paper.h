#pragma once

#include "core/lengths/length.h"
#include "core/results/result.h"

#include <span>
#include <string>
#include <string_view>

namespace frontwright {

/// A sheet or a roll, upright. A roll's height is not fixed: it follows the part.
struct Paper {
    std::string name; ///< "A4", "Letter", "Roll 610 mm"; the same in every language
    Length width;
    Length height; ///< 0 for a roll
    [[nodiscard]] bool isRoll() const { return height.isZero(); }
    friend bool operator==(const Paper&, const Paper&) = default;
};

/// As it is told: a roll by its word and its width.
Phrase nameOf(const Paper&);

/// ISO 216 A0 … A5; Letter, Legal, Tabloid; ASME Y14.1 A … E under the names "ANSI A" … "ANSI E";
/// architects' "ARCH A" … "ARCH E" (sizes from memory).
std::span<const Paper> knownPapers();

/// By name, upper or lower case; "roll 610 mm" makes a roll of that width, "300 x 400 mm" a sheet
/// of that size. Error lists the names.
Result<Paper> paperNamed(std::string_view name);

/// A roll of that width. Error: no width.
Result<Paper> rollOf(Length width);
/// A sheet of that size, upright; one of the known papers where it is within 0.5 mm of it.
/// Error: no size.
Result<Paper> sheetOf(Length one, Length other);

enum class Orientation : std::uint8_t { Portrait, Landscape };

} // namespace frontwright
