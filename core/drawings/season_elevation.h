#pragma once

#include "core/drawings/drawing.h"
#include "core/words/language.h"

namespace frontwright {

struct SeasonElevationOptions {
    LengthStyle style;
    Language language;   ///< of its words
    double width = 80;   ///< room on paper, mm; the words included
    double height = 100; ///< likewise
    double moisture = 0; ///< of the wood, per cent: at that time of the year
    int times = 10;      ///< how many times as large as it is the change is drawn
};

/// The elevation as the fronts are at that moisture, with names only: sizes that are drawn larger
/// than they are would be read as true ones. Below it stands how many times as large the changes
/// are drawn. Origin at the case's lower left corner. Precondition: the plan is the project's.
Drawing seasonElevation(const Project&, const Plan&, const SeasonElevationOptions&);

} // namespace frontwright
