#pragma once

#include "core/plan/quantity.h"
#include "tests/core/plan/frameless_case.h"

namespace frontwright::testing {

inline bool isRoundCase(QuantityKind kind) {
    using enum QuantityKind;
    return kind == TotalWidth || kind == TotalHeight ||
           (ToSurroundLeft <= kind && kind <= FrontStep);
}

/// With something at every side that limits the fronts, and rows of holes.
inline Project roundedWith(Project project) {
    project.casework.construction = Construction::Frameless;
    project.casework.systemHoles = usualSystemHoles(project.casework.frame.bottom);
    Surroundings& round = project.casework.surroundings;
    round.left = Wall{mm(2), mm(3)};
    round.right = NeighbouringCase{{}, tenths(15), mm(3)};
    round.top = OverhangingTop{mm(30), mm(25), mm(10), mm(8), mm(3)};
    round.bottom = Plinth{mm(100), mm(50), mm(5), mm(3)};
    return project;
}

} // namespace frontwright::testing
