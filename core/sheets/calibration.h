#pragma once

#include "core/lengths/length.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace frontwright {

/// What is drawn for one millimetre on paper, across the page and up it; 1 where nothing is
/// corrected.
struct ScaleFactors {
    double across = 1;
    double up = 1;
    [[nodiscard]] bool areNone() const { return across == 1 && up == 1; }
    friend bool operator==(const ScaleFactors&, const ScaleFactors&) = default;
};

/// Within these a printer's mechanics are corrected; outside, something else went wrong.
/// Judgement: mechanics err by 0.2 to 2 %.
inline constexpr double leastFactor = 0.98;
inline constexpr double greatestFactor = 1.02;
/// A corrected print is proved where both lengths come out within this of what they should be: as
/// fine as a shop rule is read. Judgement.
inline constexpr Length provedWithin = Length::fromMicrometres(500);

/// What makes a print come out at the wrong size, in the order in which to look.
enum class ScaleCause : std::uint8_t {
    QueueOfOtherPaper,  ///< A4 pages on a queue set to Letter, scaled by default
    FittedToOtherPaper, ///< A4 page fitted to Letter
    ShrunkToPrintable,  ///< page shrunk to the printable area
    FittedToWidth,      ///< Letter page fitted to the width of A4
    Enlarged,           ///< enlarged to the other paper
    DotsMistaken,       ///< 72 and 96 dots per inch taken for one another
    UnitsMistaken,      ///< millimetres and centimetres, or metres, taken for one another
    InchesMistaken,     ///< the length was typed in the other unit
    PaperSlipped        ///< the two directions differ too much: paper slipped or turned
};

/// What a bar of 100 mm measures where that happened, in mm.
struct TellTale {
    ScaleCause cause;
    std::vector<double> sizes; ///< empty for PaperSlipped: no size is typical
};
/// Tried sizes and ratios of paper sizes (ISO 216 A4, Letter); the rest is arithmetic.
std::span<const TellTale> tellTales();

/// Two lengths along the page's width and its height.
struct LengthsOnPage {
    Length across;
    Length up;
    friend bool operator==(const LengthsOnPage&, const LengthsOnPage&) = default;
};

/// nominal / measured in both directions, to six decimals, so that it is stored as it is used.
/// Precondition: lengths above zero.
ScaleFactors factorsFor(const LengthsOnPage& nominal, const LengthsOnPage& measured);

/// Both within leastFactor … greatestFactor.
bool areAcceptable(const ScaleFactors&);

/// Which tell-tale size both directions are nearest to, within 1 %; paper slipped where they
/// differ by more than 2 %. Nothing where no row fits.
std::optional<ScaleCause> likeliestCause(const LengthsOnPage& nominal,
                                         const LengthsOnPage& measured);

/// Both within `provedWithin`.
bool isProved(const LengthsOnPage& nominal, const LengthsOnPage& measured);

} // namespace frontwright
