#pragma once

#include "core/drawings/drawing.h"
#include "core/wood/air.h"
#include "core/words/language.h"

#include <optional>

namespace frontwright {

struct SeasonChartOptions {
    LengthStyle style;
    Language language;  ///< of its words
    double width = 100; ///< of the plot, mm on paper
    double height = 50;
    AirState today; ///< where the point is; a meter's reading counts as air of 20 °C
};

/// The smallest gap of the case over the air's relative humidity, at today's temperature: the
/// curve, the least gap of the limits, the room's driest and wettest, and today's point. nullopt
/// where the case tells no air or has no gap. Full scale; origin at the plot's lower left corner.
std::optional<Drawing> seasonChart(const Project&, const Plan&, const SeasonChartOptions&);

} // namespace frontwright
