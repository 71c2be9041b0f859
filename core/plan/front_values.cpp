#include "core/plan/front_values.h"

#include "core/plan/own_part.h"
#include "core/plan/quantity_parts.h"

namespace frontwright::front_values {

Value overlayAt(const FrontPlan& front, Side side) {
    return front.fit[side] == Fit::Inset ? std::nullopt : Value(front.overlay[side]);
}

Value toSurround(const FrontPlan& front, Side side) {
    return front.toSurround ? Value((*front.toSurround)[side]) : std::nullopt;
}

Length thinnestEdge(const FrontPlan& front) {
    Length thinnest = front.thickness;
    for (const Side side : allSides)
        thinnest = least(thinnest, edgeThickness(*front.profile, front.thickness, side));
    return thinnest;
}

Value ofField(const FrontPlan& front, Length (FrontRect::*size)() const) {
    return front.field.isEmpty() ? std::nullopt : Value((front.field.*size)());
}

Value ofHole(const FrontPlan& front, Index index, Length PointIn<WallFrame>::*axis) {
    if (index >= front.mounting.holes.size())
        return std::nullopt;
    return front.mounting.holes[index].at.*axis;
}

Value ofScrew(const FrontPlan& front, Index index, Length MountingHole::*number) {
    if (!front.mounting.length || index >= front.mounting.holes.size())
        return std::nullopt;
    return front.mounting.holes[index].*number;
}

Value ofHandleHole(const FrontPlan& front, Index index, Length PointIn<FrontFrame>::*axis) {
    if (!front.hardware || index >= front.hardware->holes.size())
        return std::nullopt;
    return front.hardware->holes[index].*axis;
}

Value ofWay(const FrontPlan& front, Index index, Length WayPlan::*number) {
    if (!front.hardware || index >= front.hardware->ways.size())
        return std::nullopt;
    return front.hardware->ways[index].*number;
}

Value boltLength(const FrontPlan& front, Index index) {
    if (!front.hardware || index >= front.hardware->ways.size())
        return std::nullopt;
    return front.hardware->ways[index].length;
}

Value ofSeason(const FrontPlan& front, Index index, SeasonRange FrontSeason::*range) {
    if (!front.season)
        return std::nullopt;
    const SeasonRange& found = *front.season.*range;
    return found.least == found.greatest ? std::nullopt : ofRange(found, index);
}

Value ofSeason(const FrontPlan& front, Index index, PerSide<SeasonRange> FrontSeason::*ranges,
               Side side) {
    if (!front.season)
        return std::nullopt;
    const SeasonRange& found = (*front.season.*ranges)[side];
    return found.least == found.greatest ? std::nullopt : ofRange(found, index);
}

Value seasonOverlay(const FrontPlan& front, Index index, Side side) {
    return front.fit[side] == Fit::Inset ? std::nullopt
                                         : ofSeason(front, index, &FrontSeason::overlay, side);
}

namespace {

/// Of a front that moves.
const SeasonRow* rowOf(const FrontPlan& front, Index index) {
    if (!front.season || index >= front.season->rows.size() || front.season->coefficient == 0)
        return nullptr;
    return &front.season->rows[index];
}

} // namespace

Value fixedRow(const FrontPlan& front) {
    const SeasonRow* row = front.season ? rowOf(front, front.season->fixedRow) : nullptr;
    return row == nullptr ? std::nullopt : Value(row->at);
}

Value ofRow(const FrontPlan& front, Index index, Length (*number)(const SeasonRow&)) {
    const SeasonRow* row = rowOf(front, index);
    return row == nullptr || index == front.season->fixedRow ? std::nullopt : Value(number(*row));
}

Value engagement(const FrontPlan& front, Index index) {
    if (!front.hardware || index >= front.hardware->ways.size())
        return std::nullopt;
    return engagementOf(front.hardware->ways[index], *front.hardware->form);
}

Value handleCentres(const FrontPlan& front, Index) {
    const auto spacing =
        front.hardware ? holeSpacing(*front.hardware->form) : std::optional<HoleSpacing>();
    return spacing ? Value(spacing->distance) : std::nullopt;
}

Value ofFittingScrew(const FrontPlan& front, Index index, Length FittingScrew::*number) {
    return ofFitting(front, index, [number](const FittingPlan& fitting) -> Value {
        const FittingScrew* worst = fitting.worstScrew();
        return worst != nullptr && fitting.screwLength ? Value(worst->*number) : std::nullopt;
    });
}

Value runnerSafety(const FrontPlan& front, Index) {
    const auto load = front.load.onRunner();
    if (!load || !front.load.rating)
        return std::nullopt;
    return Ratio::of(front.load.rating->inKilograms(), load->inKilograms());
}

Value runnerLength(const FrontPlan& front, Index) {
    return front.runner ? Value(front.runner->reach.length) : std::nullopt;
}

Value ofNotch(const FrontPlan& front, std::vector<WallRect> RunnerPlan::*parts,
              Length (WallRect::*size)() const) {
    if (!front.runner || ((*front.runner).*parts).empty())
        return std::nullopt;
    return (((*front.runner).*parts).front().*size)();
}

Value whereBox(const FrontPlan& front, Measure measure) {
    return front.hasBox() ? Value(measure) : std::nullopt;
}

Value ofBox(const FrontPlan& front, Measure measure) {
    return front.hasBox() && isFirstOnBox(front) ? Value(measure) : std::nullopt;
}

} // namespace frontwright::front_values
