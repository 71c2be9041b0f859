#include "core/edits/typed.h"

#include "core/edits/typed_setters.h"
#include "core/plan/kind_table.h"

namespace frontwright {

using namespace typing;

namespace {

/// What typing a number does: how the edit is called and made, or from what the number follows.
struct Typed {
    std::string_view editName;
    Result<Project> (*set)(const Typing&);
    std::string_view from;
};
constexpr Typed set(std::string_view editName, Result<Project> (*setter)(const Typing&)) {
    return {editName, setter, {}};
}
constexpr Typed follows(std::string_view from) {
    return {{}, nullptr, from};
}

constexpr std::string_view season = "the wood, the air and the sizes when cut";

using enum QuantityKind;
constexpr auto allTyped = std::to_array<ForKinds<QuantityKind, Typed>>({
    {CaseWidth, CaseWidth, set("Set case width", setCaseWidth)},
    {CaseHeight, CaseHeight, set("Set case height", setCaseHeight)},
    {MoistureWhenCut, MoistureWettest, follows("the air")},
    {CaseWeight, CaseStorage, follows("all drawers and the frame")},
    {MemberWidth, MemberWidth, set("Set member width", setMember)},
    {MemberLength, MemberLength, follows("the parts that it runs between")},
    {MemberReveal, MemberReveal, follows("the member's width and the overlays")},
    {SeasonReveal, SeasonReveal, follows(season)},
    {OpeningWidth, OpeningWidth, set("Set opening width", setOpeningWidth)},
    {OpeningHeight, OpeningHeight, set("Set opening height", setOpeningHeight)},
    {FrontWidth, FrontWidth, set("Set front width", setFrontWidth)},
    {FrontHeight, FrontHeight, set("Set front height", setFrontHeight)},
    {FrontThickness, FrontThickness, set("Set front thickness", setFrontThickness)},
    {OverlayLeft, OverlayTop, set("Set overlay", setOverlay)},
    {GapLeft, GapTop, set("Set gap", setGap)},
    {SeasonWidth, SeasonGapTop, follows(season)},
    {EdgeThickness, FieldHeight, follows("the edge profile")},
    {BoxWidth, BoxWidth, follows("the opening and the side clearance")},
    {BoxHeight, BoxHeight, set("Set box height", setBoxHeight)},
    {BoxDepth, BoxDepth, set("Set box depth", setBoxDepth)},
    {BoxSetback, BoxSetback, follows("how the front fits and its thickness")},
    {BottomTop, BottomTop, follows("the groove's height and the bottom")},
    {ScrewLength, ScrewLength, set("Set screw length", setScrewLength)},
    {ScrewLeastLength, ScrewGreatestLength,
     follows("wall, front, recess and the least penetration and cover")},
    {ScrewPenetration, ScrewTipCover, follows("screw, recess, wall and front")},
    {HoleX, HoleX, set("Move screw hole", setHoleX)},
    {HoleY, HoleY, set("Move screw hole", setHoleY)},
    {LeastHoleHeight, LeastHoleHeight, follows("the bottom and the recess tool")},
    {FixedRow, FixedRow, follows("where the screws are")},
    {RowMovement, RowDrill, follows(season)},
    {ClearanceHole, ClearanceHole, set("Set clearance hole", setClearanceHole)},
    {PilotHole, PilotHole, set("Set pilot hole", setPilotHole)},
    {ScrewThread, ScrewThread, follows("screw, recess and wall")},
    {PullSafety, PullDesignSafety, follows("screws, wood and handle")},
    {ScrewToEdge, ScrewToEnd, follows("where the hole lies on the box wall")},
    {ScrewUltimate, ScrewPull, follows("screws, wood and handle")},
    {HandleX, HandleX, set("Move handle", setHandleX)},
    {HandleY, HandleY, set("Move handle", setHandleY)},
    {BoltGrip, BoltGrip, follows("front, wall and counterbore")},
    {BoltLeastLength, BoltGreatestLength, follows("the grip and the handle's thread")},
    {BoltLength, BoltLength, set("Set bolt length", setBoltLength)},
    {Counterbore, Counterbore, set("Set counterbore depth", setCounterbore)},
    {WoodUnderHead, WoodUnderHead, follows("front, wall and counterbore")},
    {BoltEngagement, BoltEngagement, follows("the bolt and the grip")},
    {FrontWeight, BoxWeight, follows("the wood and the sizes")},
    {ContentsWeight, StorageVolume, follows("the box and what it is for")},
    {SpacerWidth, SpacerWidth, set("Set gap", setSpacer)},
    {StopFromFarEdge, StopFromFarEdge, set("Set overlay", setStopFromFarEdge)},
    {StopFromOpening, StopFromOpening, set("Set overlay", setStopFromOpening)},
});
static_assert(holdsEachOnce(allTyped, StopFromOpening));

} // namespace

Result<Project> setQuantity(const Project& project, const Plan& plan, Quantity quantity,
                            WrittenLength typed) {
    const Typing asked{project, plan, quantity, typed};
    const Typed& known = valueFor(allTyped, quantity.kind);
    return known.set ? known.set(asked) : asked.follows(known.from);
}

std::string_view typedEditName(QuantityKind kind) {
    return valueFor(allTyped, kind).editName;
}

} // namespace frontwright
