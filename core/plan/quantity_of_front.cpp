#include "core/plan/front_values.h"

#include <algorithm>
#include <array>

namespace frontwright {

namespace {

using namespace front_values;

struct Reader {
    QuantityKind kind;
    Value (*read)(const FrontPlan&, Index);
};

/// In the order of the enumerators, from the first of a front on.
constexpr auto frontReaders = std::to_array<Reader>({
    {QuantityKind::OpeningWidth,
     [](const FrontPlan& f, Index) -> Value { return f.openingRect.width(); }},
    {QuantityKind::OpeningHeight,
     [](const FrontPlan& f, Index) -> Value { return f.openingRect.height(); }},
    {QuantityKind::FrontWidth, [](const FrontPlan& f, Index) -> Value { return f.rect.width(); }},
    {QuantityKind::FrontHeight, [](const FrontPlan& f, Index) -> Value { return f.rect.height(); }},
    {QuantityKind::FrontThickness, [](const FrontPlan& f, Index) -> Value { return f.thickness; }},
    {QuantityKind::OverlayLeft, [](const FrontPlan& f, Index) { return overlayAt(f, Side::Left); }},
    {QuantityKind::OverlayRight,
     [](const FrontPlan& f, Index) { return overlayAt(f, Side::Right); }},
    {QuantityKind::OverlayBottom,
     [](const FrontPlan& f, Index) { return overlayAt(f, Side::Bottom); }},
    {QuantityKind::OverlayTop, [](const FrontPlan& f, Index) { return overlayAt(f, Side::Top); }},
    {QuantityKind::GapLeft,
     [](const FrontPlan& f, Index) -> Value { return f.neighbours.left.gap; }},
    {QuantityKind::GapRight,
     [](const FrontPlan& f, Index) -> Value { return f.neighbours.right.gap; }},
    {QuantityKind::GapBottom,
     [](const FrontPlan& f, Index) -> Value { return f.neighbours.bottom.gap; }},
    {QuantityKind::GapTop, [](const FrontPlan& f, Index) -> Value { return f.neighbours.top.gap; }},
    {QuantityKind::ToSurroundLeft,
     [](const FrontPlan& f, Index) { return toSurround(f, Side::Left); }},
    {QuantityKind::ToSurroundRight,
     [](const FrontPlan& f, Index) { return toSurround(f, Side::Right); }},
    {QuantityKind::ToSurroundBottom,
     [](const FrontPlan& f, Index) { return toSurround(f, Side::Bottom); }},
    {QuantityKind::ToSurroundTop,
     [](const FrontPlan& f, Index) { return toSurround(f, Side::Top); }},
    {QuantityKind::FrontStep, [](const FrontPlan& f, Index) -> Value { return f.step; }},
    {QuantityKind::SeasonWidth,
     [](const FrontPlan& f, Index i) { return ofSeason(f, i, &FrontSeason::width); }},
    {QuantityKind::SeasonHeight,
     [](const FrontPlan& f, Index i) { return ofSeason(f, i, &FrontSeason::height); }},
    {QuantityKind::SeasonOverlayLeft,
     [](const FrontPlan& f, Index i) { return seasonOverlay(f, i, Side::Left); }},
    {QuantityKind::SeasonOverlayRight,
     [](const FrontPlan& f, Index i) { return seasonOverlay(f, i, Side::Right); }},
    {QuantityKind::SeasonOverlayBottom,
     [](const FrontPlan& f, Index i) { return seasonOverlay(f, i, Side::Bottom); }},
    {QuantityKind::SeasonOverlayTop,
     [](const FrontPlan& f, Index i) { return seasonOverlay(f, i, Side::Top); }},
    {QuantityKind::SeasonGapLeft,
     [](const FrontPlan& f, Index i) { return ofSeason(f, i, &FrontSeason::gap, Side::Left); }},
    {QuantityKind::SeasonGapRight,
     [](const FrontPlan& f, Index i) { return ofSeason(f, i, &FrontSeason::gap, Side::Right); }},
    {QuantityKind::SeasonGapBottom,
     [](const FrontPlan& f, Index i) { return ofSeason(f, i, &FrontSeason::gap, Side::Bottom); }},
    {QuantityKind::SeasonGapTop,
     [](const FrontPlan& f, Index i) { return ofSeason(f, i, &FrontSeason::gap, Side::Top); }},
    {QuantityKind::EdgeThickness,
     [](const FrontPlan& f, Index) -> Value { return thinnestEdge(f); }},
    {QuantityKind::FieldWidth,
     [](const FrontPlan& f, Index) { return ofField(f, &FrontRect::width); }},
    {QuantityKind::FieldHeight,
     [](const FrontPlan& f, Index) { return ofField(f, &FrontRect::height); }},
    {QuantityKind::BoxWidth, [](const FrontPlan& f, Index) { return whereBox(f, f.box.width); }},
    {QuantityKind::BoxHeight, [](const FrontPlan& f, Index) { return whereBox(f, f.box.height); }},
    {QuantityKind::BoxDepth, [](const FrontPlan& f, Index) { return whereBox(f, f.box.depth); }},
    {QuantityKind::BoxSetback, [](const FrontPlan& f, Index) { return whereBox(f, f.box.setback); }},
    {QuantityKind::BottomTop, [](const FrontPlan& f, Index) { return whereBox(f, f.box.bottomTop); }},
    {QuantityKind::SideClearance,
     [](const FrontPlan& f, Index) { return whereBox(f, f.box.sideClearance); }},
    {QuantityKind::RunnerLength, runnerLength},
    {QuantityKind::RunnerSetback,
     [](const FrontPlan& f, Index) {
         return ofRunner(f, [](const RunnerPlan& runner) { return runner.reach.setback; });
     }},
    {QuantityKind::RunnerTop,
     [](const FrontPlan& f, Index) {
         return ofRunner(f, [](const RunnerPlan& runner) { return runner.top; });
     }},
    {QuantityKind::BackNotchWidth,
     [](const FrontPlan& f, Index) { return ofNotch(f, &RunnerPlan::backNotches, &WallRect::width); }},
    {QuantityKind::BackNotchHeight,
     [](const FrontPlan& f, Index) { return ofNotch(f, &RunnerPlan::backNotches, &WallRect::height); }},
    {QuantityKind::WallNotchWidth,
     [](const FrontPlan& f, Index) { return ofNotch(f, &RunnerPlan::wallNotches, &WallRect::width); }},
    {QuantityKind::WallNotchHeight,
     [](const FrontPlan& f, Index) { return ofNotch(f, &RunnerPlan::wallNotches, &WallRect::height); }},
    {QuantityKind::ClearZoneWidth,
     [](const FrontPlan& f, Index) { return ofNotch(f, &RunnerPlan::clearZones, &WallRect::width); }},
    {QuantityKind::ClearZoneHeight,
     [](const FrontPlan& f, Index) { return ofNotch(f, &RunnerPlan::clearZones, &WallRect::height); }},
    {QuantityKind::KickerHeight,
     [](const FrontPlan& f, Index) {
         return ofRunner(f, [](const RunnerPlan& runner) { return runner.kickerHeight; });
     }},
    {QuantityKind::RunnerFurring,
     [](const FrontPlan& f, Index) {
         return ofRunner(f, [](const RunnerPlan& runner) { return runner.furring; });
     }},
    {QuantityKind::BoxSwelling, [](const FrontPlan& f, Index) -> Value { return f.boxSwelling; }},
    {QuantityKind::ScrewLength,
     [](const FrontPlan& f, Index) -> Value { return f.mounting.length; }},
    {QuantityKind::ScrewLeastLength,
     [](const FrontPlan& f, Index) -> Value { return f.mounting.leastLength; }},
    {QuantityKind::ScrewGreatestLength,
     [](const FrontPlan& f, Index) -> Value { return f.mounting.greatestLength; }},
    {QuantityKind::ScrewPenetration,
     [](const FrontPlan& f, Index i) { return ofScrew(f, i, &MountingHole::penetration); }},
    {QuantityKind::ScrewTipCover,
     [](const FrontPlan& f, Index i) { return ofScrew(f, i, &MountingHole::tipCover); }},
    {QuantityKind::HoleX, [](const FrontPlan& f, Index i) { return ofHole(f, i, &WallPoint::x); }},
    {QuantityKind::HoleY, [](const FrontPlan& f, Index i) { return ofHole(f, i, &WallPoint::y); }},
    {QuantityKind::LeastHoleHeight,
     [](const FrontPlan& f, Index) { return whereBox(f, f.mounting.leastHeight); }},
    {QuantityKind::FixedRow, [](const FrontPlan& f, Index) { return fixedRow(f); }},
    {QuantityKind::RowMovement,
     [](const FrontPlan& f, Index i) {
         return ofRow(f, i, [](const SeasonRow& row) {
             return greatest(row.driest.magnitude(), row.wettest.magnitude());
         });
     }},
    {QuantityKind::RowHole,
     [](const FrontPlan& f, Index i) {
         return ofRow(f, i, [](const SeasonRow& row) { return row.hole; });
     }},
    {QuantityKind::RowDrill,
     [](const FrontPlan& f, Index i) {
         return ofRow(f, i, [](const SeasonRow& row) { return row.drill; });
     }},
    {QuantityKind::ClearanceHole,
     [](const FrontPlan& f, Index) -> Value { return f.mounting.clearanceHole; }},
    {QuantityKind::HeadBearing,
     [](const FrontPlan& f, Index) -> Value { return headBearing(f.mounting); }},
    {QuantityKind::PilotHole,
     [](const FrontPlan& f, Index) -> Value { return f.mounting.pilotHole; }},
    {QuantityKind::ScrewThread,
     [](const FrontPlan& f,
        Index) -> Value { return f.mounting.length ? Value(f.holding->thread) : std::nullopt; }},
    {QuantityKind::PullSafety, [](const FrontPlan& f, Index) -> Value { return f.holding->safety; }},
    {QuantityKind::PullDesignSafety,
     [](const FrontPlan& f, Index) -> Value { return f.holding->designSafety; }},
    {QuantityKind::ScrewToEdge,
     [](const FrontPlan& f, Index i) { return ofHolding(f, i, &HoleHolding::toEdge); }},
    {QuantityKind::ScrewToEnd,
     [](const FrontPlan& f, Index i) { return ofHolding(f, i, &HoleHolding::toEnd); }},
    {QuantityKind::ScrewUltimate,
     [](const FrontPlan& f, Index i) { return ofHolding(f, i, &HoleHolding::ultimate); }},
    {QuantityKind::ScrewDesign,
     [](const FrontPlan& f, Index i) { return ofHolding(f, i, &HoleHolding::design); }},
    {QuantityKind::ScrewPull,
     [](const FrontPlan& f, Index i) { return ofHolding(f, i, &HoleHolding::pull); }},
    {QuantityKind::HandleX,
     [](const FrontPlan& f, Index i) { return ofHandleHole(f, i, &FrontPoint::x); }},
    {QuantityKind::HandleY,
     [](const FrontPlan& f, Index i) { return ofHandleHole(f, i, &FrontPoint::y); }},
    {QuantityKind::BoltGrip,
     [](const FrontPlan& f, Index i) { return ofWay(f, i, &WayPlan::grip); }},
    {QuantityKind::BoltLeastLength,
     [](const FrontPlan& f, Index i) { return ofWay(f, i, &WayPlan::leastLength); }},
    {QuantityKind::BoltGreatestLength,
     [](const FrontPlan& f, Index i) { return ofWay(f, i, &WayPlan::greatestLength); }},
    {QuantityKind::BoltLength, boltLength},
    {QuantityKind::Counterbore,
     [](const FrontPlan& f, Index i) { return ofWay(f, i, &WayPlan::counterbore); }},
    {QuantityKind::WoodUnderHead,
     [](const FrontPlan& f, Index i) { return ofWay(f, i, &WayPlan::leftUnderHead); }},
    {QuantityKind::BoltEngagement, engagement},
    {QuantityKind::HandleCentres, handleCentres},
    {QuantityKind::FittingX,
     [](const FrontPlan& f, Index i) {
         return ofFitting(f, i, [](const FittingPlan& p) -> Value { return p.centre.x; });
     }},
    {QuantityKind::FittingY,
     [](const FrontPlan& f, Index i) {
         return ofFitting(f, i, [](const FittingPlan& p) -> Value { return p.centre.y; });
     }},
    {QuantityKind::FittingScrewLength,
     [](const FrontPlan& f, Index i) {
         return ofFitting(f, i, [](const FittingPlan& p) -> Value { return p.screwLength; });
     }},
    {QuantityKind::FittingPenetration,
     [](const FrontPlan& f, Index i) { return ofFittingScrew(f, i, &FittingScrew::penetration); }},
    {QuantityKind::FittingTipCover,
     [](const FrontPlan& f, Index i) { return ofFittingScrew(f, i, &FittingScrew::tipCover); }},
    {QuantityKind::MortiseWood,
     [](const FrontPlan& f, Index i) {
         return ofFitting(f, i, [](const FittingPlan& p) -> Value { return p.leastWoodLeft(); });
     }},
    {QuantityKind::FrontWeight, [](const FrontPlan& f, Index) -> Value { return f.load.front; }},
    {QuantityKind::BoxWeight, [](const FrontPlan& f, Index) -> Value { return f.load.box; }},
    {QuantityKind::ContentsWeight, [](const FrontPlan& f, Index) { return ofBox(f, f.load.contents); }},
    {QuantityKind::RunnerLoad,
     [](const FrontPlan& f, Index) -> Value { return f.load.onRunner(); }},
    {QuantityKind::RunnerRating, [](const FrontPlan& f, Index) -> Value { return f.load.rating; }},
    {QuantityKind::RunnerSafety, runnerSafety},
    {QuantityKind::StorageVolume,
     [](const FrontPlan& f, Index) { return ofBox(f, f.load.storage); }},
});

constexpr auto firstOfFront = static_cast<std::size_t>(QuantityKind::OpeningWidth);
constexpr bool isInOrder() {
    for (std::size_t i = 0; i < frontReaders.size(); ++i)
        if (static_cast<std::size_t>(frontReaders[i].kind) != firstOfFront + i)
            return false;
    return true;
}
static_assert(isInOrder());
static_assert(frontReaders.back().kind == QuantityKind::StorageVolume);

/// Every index that the kind may have in this front: they are tried up to this.
Index mostIndices(const FrontPlan& front) {
    const std::size_t most =
        std::max<std::size_t>({allMountingWays.size(), front.mounting.holes.size(),
                               front.hardware ? front.hardware->holes.size() : 0,
                               front.fittings ? front.fittings->size() : 0});
    return static_cast<Index>(most);
}

} // namespace

Value valueOfFront(const FrontPlan& front, QuantityKind kind, Index index) {
    return frontReaders[static_cast<std::size_t>(kind) - firstOfFront].read(front, index);
}

std::vector<Quantity> quantitiesOfFront(const Plan& plan, std::uint32_t front) {
    std::vector<Quantity> found;
    if (front >= plan.fronts.size())
        return found;
    const Index most = mostIndices(plan.fronts[front]);
    for (const Reader& reader : frontReaders)
        for (Index index = 0; index < (countedBy(reader.kind) == CountedBy::Nothing ? 1 : most);
             ++index)
            if (reader.read(plan.fronts[front], index))
                found.push_back({reader.kind, front, index});
    return found;
}

} // namespace frontwright
