#include "core/drawings/season_elevation.h"

#include "core/drawings/elevation.h"
#include "core/drawings/lettering.h"
#include "core/drawings/sketch.h"
#include "core/plan/moving.h"

#include <algorithm>

namespace frontwright {

namespace {

// On paper.
constexpr double lettersHeight = 2.5;
constexpr double smallLetters = 1.8;
constexpr double aboveWords = 3;
constexpr double margin = 2;

Phrase changeWords(int times) {
    return times == 1 ? Phrase(text("changes drawn as large as they are"))
                      : phrase("changes drawn %1 times as large", std::to_string(times));
}

} // namespace

Drawing seasonElevation(const Project& project, const Plan& plan,
                        const SeasonElevationOptions& wanted) {
    const Plan moved = movedPlan(project, plan, wanted.moisture, wanted.times);
    const double forWords = aboveWords + lettersHeight;
    ElevationOptions options;
    options.style = wanted.style;
    options.language = wanted.language;
    options.dimensions = Shown::No;
    options.holes = Shown::No;
    options.sizes = Shown::No;
    options.paperScale =
        std::min(std::max(1.0, wanted.width - 2 * margin) / plan.outline.width().inMillimetres(),
                 std::max(1.0, wanted.height - 2 * margin - forWords) /
                     plan.outline.height().inMillimetres());
    Sketch sketch(options.paperScale);
    sketch.add(elevation(project, moved, options));
    const std::string words = told(changeWords(wanted.times), wanted.language);
    const BoxMm drawn = extentOf(Drawing{sketch.marks(), {}, options.paperScale});
    const bool isWide = textWidth(words, lettersHeight) > wanted.width - 2 * margin;
    sketch.text(
        Layer::Note,
        {{plan.outline.centre().x.inMillimetres(), drawn.min().y() - sketch.forPaper(forWords)},
         words,
         isWide ? smallLetters : lettersHeight,
         Anchor::Middle,
         0},
        {std::nullopt, std::nullopt, "changes drawn"});
    return std::move(sketch).finished(margin);
}

} // namespace frontwright
