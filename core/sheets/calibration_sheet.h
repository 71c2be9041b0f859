#pragma once

#include "core/sheets/sheets.h"

namespace frontwright {

struct CalibrationRequest {
    Paper paper; ///< a roll is cut at 300 mm
    Orientation orientation = Orientation::Portrait;
    Length margin = Length::millimetres(10);
    Unit unit = Unit::Millimetre; ///< of the bars to be measured
    ScaleFactors factors;         ///< none for the first print; those to be proved for the second
    std::string printer;
    Language language = {};
};

/// A page with one long bar each way, as long as the page allows in whole centimetres or inches.
struct CalibrationSheet {
    Page page;
    LengthsOnPage nominal; ///< of bar A across the page and bar B up the page
};

/// Error: the paper is too small, or the margin.
Result<CalibrationSheet> calibrationSheet(const CalibrationRequest&);

} // namespace frontwright
