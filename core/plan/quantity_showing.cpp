#include "core/catalogue/drills.h"
#include "core/lengths/format.h"
#include "core/plan/kind_table.h"
#include "core/plan/quantity.h"

namespace frontwright {

namespace {

using enum QuantityKind;
constexpr auto showings = std::to_array<ForKinds<QuantityKind, Showing>>({
    {CaseWidth, RunnerTop, Showing::Nearest},
    {BackNotchWidth, ClearZoneHeight, Showing::Least},
    {KickerHeight, RunnerFurring, Showing::Nearest},
    {BoxSwelling, BoxSwelling, Showing::Fine},
    {ScrewLength, ScrewLength, Showing::Nearest},
    {ScrewLeastLength, ScrewLeastLength, Showing::Least},
    {ScrewGreatestLength, ScrewGreatestLength, Showing::Most},
    {ScrewPenetration, HoleY, Showing::Nearest},
    {LeastHoleHeight, LeastHoleHeight, Showing::Least},
    {FixedRow, FixedRow, Showing::Nearest},
    {RowMovement, RowMovement, Showing::Fine},
    {RowHole, RowHole, Showing::Least},
    {RowDrill, ClearanceHole, Showing::Drill},
    {HeadBearing, HeadBearing, Showing::Nearest},
    {PilotHole, PilotHole, Showing::Drill},
    {ScrewThread, BoltGrip, Showing::Nearest},
    {BoltLeastLength, BoltLeastLength, Showing::Least},
    {BoltGreatestLength, BoltGreatestLength, Showing::Most},
    {BoltLength, FillerLength, Showing::Nearest},
    {FillerThickness, FillerThickness, Showing::Most},
    {FillerSpan, FillerSpan, Showing::Nearest},
    {FillerBend, FillerBend, Showing::Fine},
    {FillerLeastThickness, FillerLeastThickness, Showing::Least},
    {StopFromFarEdge, SpaceHeight, Showing::Nearest},
});
static_assert(holdsEachOnce(showings, lastQuantityKind));

} // namespace

Showing showingOf(QuantityKind kind) {
    return valueFor(showings, kind);
}

std::string shown(QuantityKind kind, const Measure& measure, LengthStyle style) {
    if (!measure.isLength())
        return shown(measure, style);
    const Length length = measure.length();
    switch (showingOf(kind)) {
    case Showing::Nearest:
        break;
    case Showing::Least:
        return shown(length, style, Rounding::Up);
    case Showing::Most:
        return shown(length, style, Rounding::Down);
    case Showing::Drill:
        return shownDrill(length, style);
    case Showing::Fine:
        return shownFinely(length, style);
    }
    return shown(length, style);
}

} // namespace frontwright
