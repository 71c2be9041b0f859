#include "core/plan/kind_table.h"
#include "core/plan/quantity.h"

namespace frontwright {

namespace {

using enum QuantityKind;
constexpr auto subjects = std::to_array<ForKinds<QuantityKind, Subject>>({
    {CaseWidth, CaseHeight, Subject::Case},
    {MoistureWhenCut, MoistureWettest, Subject::Moisture},
    {CaseWeight, CaseStorage, Subject::Weight},
    {MemberWidth, MemberReveal, Subject::Member},
    {SeasonReveal, SeasonReveal, Subject::Season},
    {OpeningWidth, OpeningHeight, Subject::Opening},
    {FrontWidth, FrontThickness, Subject::Front},
    {OverlayLeft, OverlayTop, Subject::Overlays},
    {GapLeft, GapTop, Subject::Gaps},
    {SeasonWidth, SeasonGapTop, Subject::Season},
    {EdgeThickness, FieldHeight, Subject::Front},
    {BoxWidth, BottomTop, Subject::Box},
    {ScrewLength, LeastHoleHeight, Subject::Screws},
    {FixedRow, RowDrill, Subject::Season},
    {ClearanceHole, PilotHole, Subject::Screws},
    {ScrewThread, ScrewPull, Subject::Holding},
    {HandleX, BoltEngagement, Subject::Handle},
    {HandleCentres, MortiseWood, Subject::Handle},
    {FrontWeight, StorageVolume, Subject::Weight},
    {SpacerWidth, StopFromOpening, Subject::Blocks},
});
static_assert(holdsEachOnce(subjects, StopFromOpening));

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
    case Subject::Screws:
        return text("Mounting screws");
    case Subject::Holding:
        return text("What the screws hold");
    case Subject::Handle:
        return text("Handles and fittings");
    case Subject::Weight:
        return text("Weight");
    case Subject::Blocks:
        break;
    }
    return text("Spacers and stops");
}

} // namespace frontwright
