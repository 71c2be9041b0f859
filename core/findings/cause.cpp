#include "core/findings/cause.h"

#include "core/plan/kind_table.h"
#include "core/plan/screw_rows.h"

#include <algorithm>

namespace frontwright {

namespace {

/// The number that a finding judges: none, one kind, or of four sides the one that is meant.
struct Number {
    enum class Of : std::uint8_t { Nothing, OneKind, Side, EdgeOrEnd, AlongGrain } of = Of::Nothing;
    QuantityKind kind = QuantityKind::CaseHeight;

    [[nodiscard]] std::optional<QuantityKind> at(Side side, Grain grain) const {
        switch (of) {
        case Of::Nothing:
            return std::nullopt;
        case Of::OneKind:
            return kind;
        case Of::Side:
            return atSide(kind, side);
        case Of::EdgeOrEnd:
            return isEnd(side, grain) ? QuantityKind::ScrewToEnd : QuantityKind::ScrewToEdge;
        case Of::AlongGrain:
            break;
        }
        return isEnd(frontwright::Side::Left, grain) ? QuantityKind::HoleX : QuantityKind::HoleY;
    }
};
constexpr Number none{};
constexpr Number alongOrAcross{Number::Of::EdgeOrEnd, QuantityKind::ScrewToEdge};
constexpr Number inRow{Number::Of::AlongGrain, QuantityKind::HoleX};
constexpr Number just(QuantityKind kind) {
    return {Number::Of::OneKind, kind};
}
constexpr Number beside(QuantityKind left) {
    return {Number::Of::Side, left};
}

struct Cause {
    Number number;
    InputPlace place;
};

using enum FindingCode;
using enum QuantityKind;
constexpr auto causes = std::to_array<ForKinds<FindingCode, Cause>>({
    {ScrewThroughShowFace, TipCoverThin, {just(ScrewTipCover), InputPlace::Mounting}},
    {PenetrationShort, PenetrationShort, {just(ScrewPenetration), InputPlace::Mounting}},
    {NoScrewFits, NoScrewFits, {just(ScrewLeastLength), InputPlace::Mounting}},
    {HoleInBottom, RecessToolBlocked, {just(LeastHoleHeight), InputPlace::Mounting}},
    {HoleAtBoxSide, HoleAtBoxSide, {just(HoleX), InputPlace::Mounting}},
    {HoleAtTopEdge, HoleAtHardware, {just(HoleY), InputPlace::Mounting}},
    {HoleOffFront, HoleOffFront, {just(HoleX), InputPlace::Mounting}},
    {HoleAtRunner, HoleAtRunner, {just(HoleY), InputPlace::Mounting}},
    {WallThinUnderHead, WallThinUnderHead, {none, InputPlace::Mounting}},
    {FrontMissesWall, FrontMissesWall, {just(HoleY), InputPlace::Divisions}},
    {FixedFrontNoRoom, FixedFrontNoRoom, {beside(OverlayLeft), InputPlace::Fit}},
    {FixedFrontNoFrame, FixedFrontNoFrame, {none, InputPlace::CaseSize}},
    {HoleOffMember, HoleOffMember, {just(HoleX), InputPlace::Mounting}},
    {SlotForMovement, SlotForMovement, {none, InputPlace::Stock}},
    {BoltTooShort, BoltTooShort, {just(BoltLeastLength), InputPlace::Hardware}},
    {BoltBottomsOut, BoltBottomsOut, {just(BoltGreatestLength), InputPlace::Hardware}},
    {NoBoltFits, NoBoltFits, {just(BoltLeastLength), InputPlace::Hardware}},
    {CounterboreTooDeep, CounterboreTooDeep, {just(WoodUnderHead), InputPlace::Hardware}},
    {BackplateOffField, BackplateOffField, {just(FieldHeight), InputPlace::Hardware}},
    {HandleOffFront, HandleOffFront, {just(HandleX), InputPlace::Hardware}},
    {AccessHoleOffWall, AccessHoleOffWall, {just(HandleY), InputPlace::Hardware}},
    {HandlesCollide, HandlesCollide, {just(HandleX), InputPlace::Hardware}},
    {FrontsCollide, GapsUneven, {beside(GapLeft), InputPlace::Fit}},
    {FrontOffCase, OverlayMissing, {beside(OverlayLeft), InputPlace::Fit}},
    {FrontAtWall, FrontAtTrim, {beside(ToSurroundLeft), InputPlace::Surroundings}},
    {StepOffPitch, StepOffPitch, {just(FrontStep), InputPlace::SystemHoles}},
    {FillerNoThickness, FillerNoThickness, {just(EdgeThickness), InputPlace::Limits}},
    {FillerBends, FillerBends, {none, InputPlace::Limits}},
    {GapCloses, InsetBinds, {beside(SeasonGapLeft), InputPlace::Fit}},
    {OverlayLost, OverlayLost, {beside(SeasonOverlayLeft), InputPlace::Fit}},
    {GapsGoUneven, GapsGoUneven, {beside(SeasonGapLeft), InputPlace::Fit}},
    {ClearanceSmall, ClearanceSmall, {just(RowHole), InputPlace::Mounting}},
    {MoistureBeyondRange, MoistureBeyondRange, {none, InputPlace::Air}},
    {WoodUnknown, WoodUnknown, {none, InputPlace::Stock}},
    {FieldEmpty, FieldEmpty, {just(FieldHeight), InputPlace::Profile}},
    {ProfileTooDeep, ProfileTooDeep, {just(EdgeThickness), InputPlace::Profile}},
    {BoxNoRoom, BoxNoRoom, {just(BoxWidth), InputPlace::Box}},
    {BoxTooTall, BoxTooTall, {just(BoxHeight), InputPlace::Box}},
    {BoxTooDeep, BoxTooDeep, {just(BoxDepth), InputPlace::Box}},
    {BottomOutOfWall, BottomOutOfWall, {just(BottomTop), InputPlace::Box}},
    {AnchorCase, AnchorCase, {just(CaseHeight), InputPlace::CaseSize}},
    {HoldingWeak, HoldingWeak, {just(PullDesignSafety), InputPlace::Mounting}},
    {ScrewNearEdge, ScrewNearEdge, {alongOrAcross, InputPlace::Mounting}},
    {ScrewsCrowded, ScrewsCrowded, {inRow, InputPlace::Mounting}},
    {ScrewRowsNear, ScrewRowsNear, {just(HoleY), InputPlace::Mounting}},
    {PilotHoleMissing, PilotHoleWrong, {just(PilotHole), InputPlace::Mounting}},
    {ClearanceHoleTight, ClearanceHoleTight, {just(ClearanceHole), InputPlace::Mounting}},
    {HeadBearsLittle, HeadBearsLittle, {just(HeadBearing), InputPlace::Mounting}},
    {BoltHoleTight, BoltHoleTight, {none, InputPlace::Hardware}},
    {EngagementThin, EngagementThin, {just(BoltEngagement), InputPlace::Hardware}},
    {RunnerOverloaded, RunnerOverloaded, {just(RunnerLoad), InputPlace::Runner}},
    {RunnerTooLong, RunnerTooLong, {just(RunnerLength), InputPlace::Box}},
    {NoRunnerFits, NoRunnerFits, {just(BoxDepth), InputPlace::Runner}},
    {BoxOffRunner, BoxOffRunner, {just(BoxDepth), InputPlace::Box}},
    {BoxLowForRunner, BoxLowForRunner, {just(BoxHeight), InputPlace::Runner}},
    {BoxNarrowForRunner, BoxNarrowForRunner, {just(BoxWidth), InputPlace::Runner}},
    {BottomOnRunner, RunnerOutOfOpening, {just(RunnerTop), InputPlace::Box}},
    {SideClearanceOff, SideClearanceOff, {just(SideClearance), InputPlace::Box}},
    {BoxSticks, BoxSticks, {just(QuantityKind::BoxSwelling), InputPlace::Box}},
    {FitsMixed, FitsMixed, {just(BoxSetback), InputPlace::Fit}},
    {FittingOffField, FittingOffFront, {just(FittingY), InputPlace::Hardware}},
    {FittingScrewThrough, FittingScrewThin, {just(FittingTipCover), InputPlace::Hardware}},
    {FittingScrewShort, FittingScrewShort, {just(FittingPenetration), InputPlace::Hardware}},
    {NoFittingScrewFits, NoFittingScrewFits, {just(FrontThickness), InputPlace::Hardware}},
    {MortiseTooDeep, MortiseTooDeep, {just(MortiseWood), InputPlace::Hardware}},
    {FittingsCollide, FittingsCollide, {just(FittingX), InputPlace::Hardware}},
    {HoleAtFitting, HoleAtFitting, {just(HoleY), InputPlace::Mounting}},
    {CentresMixed, CentresMixed, {just(HandleCentres), InputPlace::Hardware}},
    {OfBoard, OfBoard, {none, InputPlace::Board}},
});
static_assert(holdsEachOnce(causes, lastFindingCode));

/// Which of a front's holes or ways the kind is told for.
std::uint32_t indexOf(QuantityKind kind, const Whereabouts& where, const FrontPlan& front) {
    switch (countedBy(kind)) {
    case CountedBy::ScrewHole:
        return where.mountingHole.value_or(0);
    case CountedBy::HandleHole:
        return where.handleHole.value_or(0);
    case CountedBy::Fitting:
        return where.fitting.value_or(0);
    case CountedBy::ScrewRow:
        return front.season ? rowOfLargestHole(*front.season) : 0;
    case CountedBy::Way:
        return front.hardware ? static_cast<std::uint32_t>(front.hardware->chosen) : 0;
    case CountedBy::Nothing:
    case CountedBy::Extreme:
        break;
    }
    return 0;
}

} // namespace

std::optional<Quantity> numberOf(const Finding& finding, const Plan& plan) {
    const FrontPlan* front = finding.where.opening ? plan.frontOf(*finding.where.opening) : nullptr;
    const auto kind = valueFor(causes, finding.code)
                          .number.at(finding.where.side.value_or(Side::Bottom),
                                     front ? front->holding->grain : Grain::AlongLength);
    if (!kind || (finding.where.opening && !front))
        return std::nullopt;
    Quantity quantity{*kind, 0, 0};
    if (front) {
        quantity.item = static_cast<std::uint32_t>(front - plan.fronts.data());
        quantity.index = indexOf(*kind, finding.where, *front);
    } else if (*kind != QuantityKind::CaseHeight) {
        return std::nullopt;
    }
    return measureOf(plan, quantity) ? std::optional(quantity) : std::nullopt;
}

InputPlace causeOf(FindingCode code) {
    return valueFor(causes, code).place;
}

} // namespace frontwright
