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

} // namespace

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
