#pragma once

#include "core/plan/quantity_values.h"

// What the numbers of a front are read by; nullopt where the front has none of that kind or index.
namespace frontwright::front_values {

Value overlayAt(const FrontPlan& front, Side side);
Value toSurround(const FrontPlan& front, Side side);
Length thinnestEdge(const FrontPlan&);
Value ofField(const FrontPlan& front, Length (FrontRect::*size)() const);
Value ofHole(const FrontPlan& front, Index index, Length PointIn<WallFrame>::*axis);
Value ofScrew(const FrontPlan& front, Index index, Length MountingHole::*number);
Value ofHandleHole(const FrontPlan& front, Index index, Length PointIn<FrontFrame>::*axis);
Value ofWay(const FrontPlan& front, Index index, Length WayPlan::*number);
Value boltLength(const FrontPlan& front, Index index);
/// Only where it moves at all: most fronts do so in one direction only.
Value ofSeason(const FrontPlan& front, Index index, SeasonRange FrontSeason::*range);
Value ofSeason(const FrontPlan& front, Index index, PerSide<SeasonRange> FrontSeason::*ranges,
               Side side);
Value seasonOverlay(const FrontPlan& front, Index index, Side side);
Value fixedRow(const FrontPlan& front);
/// The fixed row needs no more than its clearance hole.
Value ofRow(const FrontPlan& front, Index index, Length (*number)(const SeasonRow&));
template<class Number>
Value ofHolding(const FrontPlan& front, Index index, Number HoleHolding::*number) {
    if (index >= front.holding->holes.size())
        return std::nullopt;
    return front.holding->holes[index].*number;
}

Value engagement(const FrontPlan& front, Index index);
Value handleCentres(const FrontPlan& front, Index);
template<class Read>
Value ofFitting(const FrontPlan& front, Index index, Read read) {
    if (!front.fittings || index >= front.fittings->size())
        return std::nullopt;
    return read((*front.fittings)[index]);
}

/// Of one that has a length of screw.
Value ofFittingScrew(const FrontPlan& front, Index index, Length FittingScrew::*number);
Value runnerSafety(const FrontPlan& front, Index);
template<class Part>
Value ofRunner(const FrontPlan& front, Part part) {
    return front.runner ? Value(part(*front.runner)) : std::nullopt;
}

Value runnerLength(const FrontPlan& front, Index);
/// Those at both sides are alike.
Value ofNotch(const FrontPlan& front, std::vector<WallRect> RunnerPlan::*parts,
              Length (WallRect::*size)() const);
Value whereBox(const FrontPlan& front, Measure measure);
/// Of a drawer; of several fronts on one box told at the first.
Value ofBox(const FrontPlan& front, Measure measure);

} // namespace frontwright::front_values
