#pragma once

#include "core/geometry/mm.h"
#include "core/plan/plan.h"

#include <vector>

namespace frontwright {

/// Where the fronts of a plan are drawn, in millimetres of the case's frame.
struct FrontPlaces {
    BoxMm outline;
    std::vector<BoxMm> fronts; ///< by Plan::fronts
    std::vector<BoxMm> spaces; ///< by Plan::spaces
    double reveals = 1;        ///< how many times as wide as planned every reveal is
};

FrontPlaces placesAsPlanned(const Plan&);

/// Every reveal `times` as wide, so that differences can be seen: what shows of a member beside an
/// overlay front, the gap round an inset one. Members beside inset fronts keep their width. Of a
/// run of fronts in which the reveals take most room every front keeps its size; elsewhere the
/// fronts of a run grow in proportion, so that all runs end together. Order and neighbours stay.
///
/// Each region is measured along both axes, from the middle of the member (an outer one: its outer
/// edge) at one side to that at the other; a region needs
///   opening            members of inset sides + times · reveals + front
///   split along        Σ of its children
///   split across       the greatest of its children
/// and what it gets beyond its need goes to its children in proportion to their fronts.
FrontPlaces placesExaggerated(const Project&, const Plan&, double times);

} // namespace frontwright
