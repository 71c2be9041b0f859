#include "core/edits/typed.h"

#include "core/edits/typed_setters.h"
#include "core/plan/kind_table.h"

namespace frontwright {

using namespace typing;

namespace {

/// What typing a number does: how the edit is called and made, or from what the number follows.
struct Typed {
    Text editName;
    Result<Project> (*set)(const Typing&);
    Text from;
};
constexpr Typed set(Text editName, Result<Project> (*setter)(const Typing&)) {
    return {editName, setter, {}};
}
constexpr Typed follows(Text from) {
    return {{}, nullptr, from};
}

constexpr Text season = text("the wood, the air and the sizes when cut");

using enum QuantityKind;
constexpr auto allTyped = std::to_array<ForKinds<QuantityKind, Typed>>({
    {CaseWidth, CaseWidth, set(text("Set case width"), setCaseWidth)},
    {CaseHeight, CaseHeight, set(text("Set case height"), setCaseHeight)},
    {TotalWidth, TotalHeight, follows(text("the case and what stands round it"))},
    {MoistureWhenCut, MoistureWettest, follows(text("the air"))},
    {CaseWeight, CaseStorage, follows(text("all drawers and the frame"))},
    {MemberWidth, MemberWidth, set(text("Set member width"), setMember)},
    {MemberLength, MemberLength, follows(text("the parts that it runs between"))},
    {MemberReveal, MemberReveal, follows(text("the member's width and the overlays"))},
    {SeasonReveal, SeasonReveal, follows(season)},
    {OpeningWidth, OpeningWidth, set(text("Set opening width"), setOpeningWidth)},
    {OpeningHeight, OpeningHeight, set(text("Set opening height"), setOpeningHeight)},
    {FrontWidth, FrontWidth, set(text("Set front width"), setFrontWidth)},
    {FrontHeight, FrontHeight, set(text("Set front height"), setFrontHeight)},
    {FrontThickness, FrontThickness, set(text("Set front thickness"), setFrontThickness)},
    {OverlayLeft, OverlayTop, set(text("Set overlay"), setOverlay)},
    {GapLeft, GapTop, set(text("Set gap"), setGap)},
    {ToSurroundLeft, ToSurroundTop, follows(text("the overlay and what stands round the case"))},
    {FrontStep, FrontStep, follows(text("the openings and the gaps"))},
    {SeasonWidth, SeasonGapTop, follows(season)},
    {EdgeThickness, FieldHeight, follows(text("the edge profile"))},
    {BoxWidth, BoxWidth, follows(text("the opening and the side clearance"))},
    {BoxHeight, BoxHeight, set(text("Set box height"), setBoxHeight)},
    {BoxDepth, BoxDepth, set(text("Set box depth"), setBoxDepth)},
    {BoxSetback, BoxSetback, follows(text("how the front fits and its thickness"))},
    {BottomTop, BottomTop, follows(text("the groove's height and the bottom"))},
    {SideClearance, SideClearance, set(text("Set side clearance"), setSideClearance)},
    {RunnerLength, RunnerLength, set(text("Set runner length"), setRunnerLength)},
    {RunnerSetback, ClearZoneHeight, follows(text("the kind of runners"))},
    {KickerHeight, KickerHeight, follows(text("the box's height and its clearances"))},
    {RunnerFurring, RunnerFurring, set(text("Set furring"), setFurring)},
    {BoxSwelling, BoxSwelling, follows(season)},
    {ScrewLength, ScrewLength, set(text("Set screw length"), setScrewLength)},
    {ScrewLeastLength, ScrewGreatestLength,
     follows(text("wall, front, recess and the least penetration and cover"))},
    {ScrewPenetration, ScrewTipCover, follows(text("screw, recess, wall and front"))},
    {HoleX, HoleX, set(text("Move screw hole"), setHoleX)},
    {HoleY, HoleY, set(text("Move screw hole"), setHoleY)},
    {LeastHoleHeight, LeastHoleHeight, follows(text("the bottom and the recess tool"))},
    {FixedRow, FixedRow, follows(text("where the screws are"))},
    {RowMovement, RowDrill, follows(season)},
    {ClearanceHole, ClearanceHole, set(text("Set clearance hole"), setClearanceHole)},
    {HeadBearing, HeadBearing, follows(text("the screw's head and the clearance hole"))},
    {PilotHole, PilotHole, set(text("Set pilot hole"), setPilotHole)},
    {ScrewThread, ScrewThread, follows(text("screw, recess and wall"))},
    {PullSafety, PullDesignSafety, follows(text("screws, wood and handle"))},
    {ScrewToEdge, ScrewToEnd, follows(text("where the hole lies on the box wall"))},
    {ScrewUltimate, ScrewPull, follows(text("screws, wood and handle"))},
    {HandleX, HandleX, set(text("Move handle"), setHandleX)},
    {HandleY, HandleY, set(text("Move handle"), setHandleY)},
    {BoltGrip, BoltGrip, follows(text("front, wall and counterbore"))},
    {BoltLeastLength, BoltGreatestLength, follows(text("the grip and the handle's thread"))},
    {BoltLength, BoltLength, set(text("Set bolt length"), setBoltLength)},
    {Counterbore, Counterbore, set(text("Set counterbore depth"), setCounterbore)},
    {WoodUnderHead, WoodUnderHead, follows(text("front, wall and counterbore"))},
    {BoltEngagement, BoltEngagement, follows(text("the bolt and the grip"))},
    {HandleCentres, HandleCentres, follows(text("the handle that was chosen"))},
    {FittingX, FittingX, set(text("Move fitting"), setFittingX)},
    {FittingY, FittingY, set(text("Move fitting"), setFittingY)},
    {FittingScrewLength, FittingScrewLength,
     set(text("Set the fitting's screws"), setFittingScrewLength)},
    {FittingPenetration, FittingTipCover, follows(text("the fitting's screws and the front"))},
    {MortiseWood, MortiseWood, follows(text("the fitting's mortise and the front"))},
    {FrontWeight, BoxWeight, follows(text("the wood and the sizes"))},
    {ContentsWeight, RunnerLoad, follows(text("the box and what it is for"))},
    {RunnerRating, RunnerRating, follows(text("the runner"))},
    {RunnerSafety, StorageVolume, follows(text("the box and what it is for"))},
    {SpacerWidth, SpacerWidth, set(text("Set gap"), setSpacer)},
    {FillerWidth, FillerLength, follows(text("the fronts beside the gap"))},
    {FillerThickness, FillerThickness, follows(text("the fronts' edges and the shadow"))},
    {FillerSpan, FillerLeastThickness, follows(text("the gap and the screws beside it"))},
    {StopFromFarEdge, StopFromFarEdge, set(text("Set overlay"), setStopFromFarEdge)},
    {StopFromOpening, StopFromOpening, set(text("Set overlay"), setStopFromOpening)},
    {SpaceWidth, SpaceWidth, set(text("Set opening width"), setSpaceWidth)},
    {SpaceHeight, SpaceHeight, set(text("Set opening height"), setSpaceHeight)},
});
static_assert(holdsEachOnce(allTyped, lastQuantityKind));

} // namespace

Result<Project> setQuantity(const Project& project, const Plan& plan, Quantity quantity,
                            WrittenLength typed) {
    const Typing asked{project, plan, quantity, typed};
    const Typed& known = valueFor(allTyped, quantity.kind);
    return known.set ? known.set(asked) : asked.follows(known.from);
}

Text typedEditName(QuantityKind kind) {
    return valueFor(allTyped, kind).editName;
}

} // namespace frontwright
