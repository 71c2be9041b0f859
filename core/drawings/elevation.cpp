#include "core/drawings/elevation.h"

#include "core/drawings/drawing_note.h"
#include "core/drawings/elevation_parts.h"

namespace frontwright {

namespace {

constexpr double margin = 5; // of paper, round the whole drawing

} // namespace

Drawing caseElevation(const Project& project, const Plan& plan, const ElevationOptions& options) {
    Sketch sketch(options.paperScale);
    drawSurroundings(sketch, plan);
    drawMembers(sketch, plan);
    if (options.systemHoles == Shown::Yes)
        drawSystemHoles(sketch, project, plan);
    drawSpaces(sketch, plan, options);
    drawFillers(sketch, plan);
    for (const PlannedBoard& board : plan.boards)
        drawBoard(sketch, plan, board);
    return std::move(sketch).unmeasured();
}

Drawing elevation(const Project& project, const Plan& plan, const ElevationOptions& options) {
    Sketch sketch(options.paperScale);
    sketch.add(caseElevation(project, plan, options));
    for (std::uint32_t i = 0; i < plan.fronts.size(); ++i)
        sketch.add(frontElevation(project, plan, i, options));
    if (options.dimensions == Shown::Yes) {
        const CaseDimensions dimensions = caseDimensions(plan, options);
        for (const Mark& mark : dimensions.marks)
            sketch.add(mark);
        DrawingNote note{nameFromData(project.title), {}};
        if (dimensions.leftOut > 0)
            note.lines.emplace_back(text("Not all dimensions fit at this scale"));
        drawNote(sketch, note, options.style, options.language);
    }
    return std::move(sketch).finished(margin);
}

} // namespace frontwright
