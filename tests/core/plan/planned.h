#pragma once

#include "core/plan/plan.h"
#include "tests/core/plan/small_case.h"

#include <stdexcept>

namespace frontwright::testing {

/// A Project with its Plan, from the entries and its own. Stays where it is made, because the Plan
/// refers into it.
struct Planned {
    explicit Planned(Project from, Catalogue entries = smallCatalogue())
        : project(std::move(from)),
          catalogue(merged(entries, project.own)),
          plan(made(project, catalogue)) {}
    Planned(const Planned&) = delete;
    Planned& operator=(const Planned&) = delete;

    [[nodiscard]] const FrontPlan& front(std::size_t i) const { return plan.fronts.at(i); }
    [[nodiscard]] std::string labelOf(std::size_t i) const { return label(project, front(i)); }
    /// The member at a front's side.
    [[nodiscard]] const MemberPlan& beside(std::size_t i, Side side) const {
        return plan.members.at(front(i).neighbours[side].member);
    }

    const Project project;
    const Catalogue catalogue;
    const Plan plan;

private:
    static Plan made(const Project& project, const Catalogue& catalogue) {
        Result<Plan> result = makePlan(project, catalogue);
        if (!result.ok())
            throw std::runtime_error(result.error().sentence().english());
        return std::move(result).value();
    }
};

/// Two openings beside each other with a stile between them, each with its own fit on the side
/// that faces the other.
inline Project sideBySide(SideFit ofLeft, SideFit ofRight, Length stile) {
    FrontChoices left, right;
    left.fit.right = ofLeft;
    right.fit.left = ofRight;
    return projectWith(columns({share(opening(left)), share(opening(right))}, stile),
                       Length::inches(30), Length::inches(12));
}

} // namespace frontwright::testing
