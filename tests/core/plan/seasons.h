#pragma once

#include "core/plan/quantity.h"
#include "core/project/project.h"

// A project's stock and the air it lives in, in a few words.
namespace frontwright::testing {

/// By a moisture meter, in per cent.
inline Air meters(int whenCut, int driest, int wettest) {
    return {AirState::meter(Percent::whole(whenCut)), AirState::meter(Percent::whole(driest)),
            AirState::meter(Percent::whole(wettest))};
}

/// Flat-sawn oak of the small catalogue, 0.0025 per 1 % of moisture.
inline void oakInAir(Project& project, int whenCut, int driest, int wettest) {
    project.fronts.stock = {"oak", Cut::FlatSawn, Grain::AlongLength, Build::Solid};
    project.air = meters(whenCut, driest, wettest);
}

/// Kinds of numbers that there are only where there is air.
inline bool isOfSeason(QuantityKind kind) {
    using enum QuantityKind;
    return (kind >= MoistureWhenCut && kind <= MoistureWettest) || kind == SeasonReveal ||
           (kind >= SeasonWidth && kind <= SeasonGapTop) || (kind >= FixedRow && kind <= RowDrill);
}

} // namespace frontwright::testing
