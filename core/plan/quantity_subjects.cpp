#include "core/plan/kind_table.h"
#include "core/plan/quantity.h"

namespace frontwright {

namespace {

using enum QuantityKind;
constexpr auto subjects = std::to_array<ForKinds<QuantityKind, Subject>>({
    {CaseWidth, TotalHeight, Subject::Case},
    {MoistureWhenCut, MoistureWettest, Subject::Moisture},
    {CaseWeight, CaseStorage, Subject::Weight},
    {MemberWidth, MemberReveal, Subject::Member},
    {SeasonReveal, SeasonReveal, Subject::Season},
    {OpeningWidth, OpeningHeight, Subject::Opening},
    {FrontWidth, FrontThickness, Subject::Front},
    {OverlayLeft, OverlayTop, Subject::Overlays},
    {GapLeft, FrontStep, Subject::Gaps},
    {SeasonWidth, SeasonGapTop, Subject::Season},
    {EdgeThickness, FieldHeight, Subject::Front},
    {BoxWidth, BottomTop, Subject::Box},
    {SideClearance, RunnerFurring, Subject::Runners},
    {BoxSwelling, BoxSwelling, Subject::Season},
    {ScrewLength, LeastHoleHeight, Subject::Screws},
    {FixedRow, RowDrill, Subject::Season},
    {ClearanceHole, PilotHole, Subject::Screws},
    {ScrewThread, ScrewPull, Subject::Holding},
    {HandleX, HandleCentres, Subject::Handle},
    {FittingX, MortiseWood, Subject::Fittings},
    {FrontWeight, StorageVolume, Subject::Weight},
    {SpacerWidth, StopFromOpening, Subject::Blocks},
    {SpaceWidth, SpaceHeight, Subject::Opening},
});
static_assert(holdsEachOnce(subjects, lastQuantityKind));

constexpr auto parts = std::to_array<ForKinds<QuantityKind, PlanPart>>({
    {CaseWidth, CaseStorage, PlanPart::Case},
    {MemberWidth, SeasonReveal, PlanPart::Member},
    {OpeningWidth, StorageVolume, PlanPart::Front},
    {SpacerWidth, SpacerWidth, PlanPart::Spacer},
    {FillerWidth, FillerLeastThickness, PlanPart::Filler},
    {StopFromFarEdge, StopFromOpening, PlanPart::Stop},
    {SpaceWidth, SpaceHeight, PlanPart::Space},
});
static_assert(holdsEachOnce(parts, lastQuantityKind));

/// The first of each four.
constexpr auto ofFourSides =
    std::to_array({OverlayLeft, GapLeft, ToSurroundLeft, SeasonOverlayLeft, SeasonGapLeft});

} // namespace

PlanPart partOf(QuantityKind kind) {
    return valueFor(parts, kind);
}

const FrontPlan* frontOf(const Plan& plan, Quantity quantity) {
    const std::size_t item = quantity.item;
    std::size_t front = plan.fronts.size();
    switch (partOf(quantity.kind)) {
    case PlanPart::Front:
        front = item;
        break;
    case PlanPart::Spacer:
        if (item < plan.spacers.size())
            front = plan.spacers[item].lower;
        break;
    case PlanPart::Filler:
        if (item < plan.fillers.size())
            front = plan.fillers[item].lower;
        break;
    case PlanPart::Stop:
        if (item < plan.stops.size())
            front = plan.stops[item].front;
        break;
    case PlanPart::Case:
    case PlanPart::Member:
    case PlanPart::Space:
        break;
    }
    return front < plan.fronts.size() ? &plan.fronts[front] : nullptr;
}

std::optional<Side> sideOf(QuantityKind kind) {
    for (const QuantityKind left : ofFourSides)
        if (kind >= left && kind <= atSide(left, Side::Top))
            return sideOf(left, kind);
    return std::nullopt;
}

Subject subjectOf(QuantityKind kind) {
    return valueFor(subjects, kind);
}

Text nameOf(Subject subject) {
    switch (subject) {
    case Subject::Case:
        return text("Case");
    case Subject::Moisture:
        return text("Moisture of the wood");
    case Subject::Member:
        return text("Member");
    case Subject::Opening:
        return text("Opening");
    case Subject::Front:
        return text("Front");
    case Subject::Overlays:
        return text("Overlays");
    case Subject::Gaps:
        return text("Gaps");
    case Subject::Season:
        return text("Over the season");
    case Subject::Box:
        return text("Drawer box");
    case Subject::Runners:
        return text("Runners");
    case Subject::Fittings:
        return text("Fittings");
    case Subject::Screws:
        return text("Mounting screws");
    case Subject::Holding:
        return text("What the screws hold");
    case Subject::Handle:
        return text("Handle");
    case Subject::Weight:
        return text("Weight");
    case Subject::Blocks:
        return text("Spacers, filler strips and stops");
    case Subject::Board:
        break;
    }
    return text("Pull-out board");
}

} // namespace frontwright
