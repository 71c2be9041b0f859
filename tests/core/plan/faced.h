#pragma once

#include "tests/core/plan/small_case.h"

namespace frontwright::testing {

/// The same openings as fronts over one opening: nothing is built between them.
inline Project faced(Project project) {
    Region region = *project.casework.divisions;
    std::get<Split>(region.content).divides = Divides::Face;
    project.casework.divisions = std::make_shared<const Region>(std::move(region));
    return project;
}

/// All openings with fronts without boxes, which overlap the frame by that on every side.
inline Project fixedFronts(Project project, Length overlay) {
    project.fronts.fit = FrontFit::all({Fit::Overlay, overlay});
    return withOpenings(std::move(project),
                        [](Opening& leaf, std::size_t) { leaf.use = OpeningUse::FixedFront; });
}

} // namespace frontwright::testing
