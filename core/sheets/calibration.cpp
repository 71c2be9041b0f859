#include "core/sheets/calibration.h"

#include <array>
#include <cassert>
#include <cmath>

namespace frontwright {

namespace {

constexpr double nearEnough = 0.01;  ///< of a tell-tale size
constexpr double mostApart = 0.02;   ///< of each other; beyond, no printer's mechanics do that
constexpr double decimals = 1e6;     ///< of a factor
constexpr double perTellTale = 0.01; ///< sizes are told of 100 mm

double factor(Length nominal, Length measured) {
    assert(nominal > Length{} && measured > Length{});
    return std::round(nominal.inMillimetres() / measured.inMillimetres() * decimals) / decimals;
}

double ratio(Length nominal, Length measured) {
    return measured.inMillimetres() / nominal.inMillimetres();
}

bool isWithin(double factor) {
    return factor >= leastFactor && factor <= greatestFactor;
}

} // namespace

std::span<const TellTale> tellTales() {
    static const std::array<TellTale, 9> rows{{{ScaleCause::QueueOfOtherPaper, {89.8}},
                                               {ScaleCause::FittedToOtherPaper, {94.1}},
                                               {ScaleCause::ShrunkToPrintable, {96.0}},
                                               {ScaleCause::FittedToWidth, {97.3}},
                                               {ScaleCause::Enlarged, {102.8, 106.3}},
                                               {ScaleCause::DotsMistaken, {75, 133}},
                                               {ScaleCause::UnitsMistaken, {10, 1000}},
                                               {ScaleCause::InchesMistaken, {3.94, 2540}},
                                               {ScaleCause::PaperSlipped, {}}}};
    return rows;
}

ScaleFactors factorsFor(const LengthsOnPage& nominal, const LengthsOnPage& measured) {
    return {factor(nominal.across, measured.across), factor(nominal.up, measured.up)};
}

bool areAcceptable(const ScaleFactors& factors) {
    return isWithin(factors.across) && isWithin(factors.up);
}

std::optional<ScaleCause> likeliestCause(const LengthsOnPage& nominal,
                                         const LengthsOnPage& measured) {
    const double across = ratio(nominal.across, measured.across);
    const double up = ratio(nominal.up, measured.up);
    if (std::abs(across - up) > mostApart * std::max(across, up))
        return ScaleCause::PaperSlipped;
    std::optional<ScaleCause> likeliest;
    double nearest = nearEnough;
    for (const TellTale& row : tellTales())
        for (double size : row.sizes) {
            const double told = size * perTellTale;
            const double off = std::max(std::abs(across - told), std::abs(up - told)) / told;
            if (off <= nearest) {
                nearest = off;
                likeliest = row.cause;
            }
        }
    return likeliest;
}

bool isProved(const LengthsOnPage& nominal, const LengthsOnPage& measured) {
    return (nominal.across - measured.across).magnitude() <= provedWithin &&
           (nominal.up - measured.up).magnitude() <= provedWithin;
}

} // namespace frontwright
