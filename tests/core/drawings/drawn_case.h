#pragma once

#include "core/drawings/elevation.h"
#include "core/drawings/section.h"
#include "tests/core/drawings/drawn.h"
#include "tests/core/plan/small_case.h"

#include <memory>

namespace frontwright::testing {

/// A Project with the Plan that points into it and into the small catalogue. Stays where it is
/// made, so that the Plan's pointers hold.
struct DrawnCase {
    explicit DrawnCase(Project made) : project(std::move(made)), plan(planOf(project, catalogue)) {}
    DrawnCase(const DrawnCase&) = delete;
    DrawnCase& operator=(const DrawnCase&) = delete;

    static Plan planOf(const Project& project, const Catalogue& catalogue) {
        Result<Plan> result = makePlan(project, catalogue);
        assert(result.ok());
        return std::move(result).value();
    }
    [[nodiscard]] ElevationOptions at(double paperScale) const {
        ElevationOptions options;
        options.style = project.style;
        options.paperScale = paperScale;
        return options;
    }
    [[nodiscard]] Drawing elevation(double paperScale = 0.1) const {
        return frontwright::elevation(project, plan, at(paperScale));
    }
    [[nodiscard]] Drawing section(std::uint32_t front = 0, std::uint32_t hole = 0) const {
        return frontSection(project, plan, front, {project.style, 0.5, hole});
    }

    Project project;
    Catalogue catalogue = smallCatalogue();
    Plan plan;
};

} // namespace frontwright::testing
