#include "core/edits/typed.h"

#include "core/edits/choices.h"
#include "core/edits/divisions.h"

namespace frontwright {

namespace {

/// Everything that one typed number needs.
struct Typing {
    const Project& project;
    const Plan& plan;
    Quantity quantity;
    WrittenLength value;

    [[nodiscard]] const FrontPlan& front() const { return plan.fronts[quantity.item]; }
    [[nodiscard]] EditTarget target() const { return {front().opening}; }
    [[nodiscard]] Error follows(std::string from) const {
        return {std::string(nameOf(quantity.kind)), "follows from " + std::move(from),
                "change that instead"};
    }
};

/// The front's own spec where it has one, else the case's.
template<class T>
T specOf(const Typing& typing, Rare<T> FrontChoices::*own, T FrontDefaults::*common) {
    const auto& choice = typing.front().choices->*own;
    return choice ? *choice : typing.project.fronts.*common;
}

Result<Project> setOpening(const Typing& t, Direction direction) {
    return setOpeningSize(t.project, t.front().opening, direction, t.value);
}

/// A front's size is set through its opening; what was written stays written only where it is what
/// the document will hold.
Result<Project> setFrontSize(const Typing& t, Direction direction) {
    const PerSide<Length>& o = t.front().overlay;
    const Length overlays = direction == Direction::Columns ? o.left + o.right : o.bottom + o.top;
    const Length opening = t.value.length - overlays;
    return setOpeningSize(t.project, t.front().opening, direction,
                          WrittenLength(opening, t.value.notation));
}

Result<Project> setOverlay(const Typing& t, Side side) {
    const SideFit fit = t.value.length < Length()
                            ? SideFit{Fit::Inset, {-t.value.length, t.value.notation}}
                            : SideFit{Fit::Overlay, t.value};
    return setFrontFit(t.project, t.target(), side, fit);
}

Result<Project> setGap(const Typing& t, Side side) {
    const Fit fit = t.front().fit[side] == Fit::Inset ? Fit::Inset : Fit::Gap;
    const auto own = setFrontFit(t.project, t.target(), side, {fit, t.value});
    const auto facing = t.front().neighbours[side].front;
    if (!own.ok() || fit == Fit::Inset || !facing)
        return own;
    // Of two that ask for a gap the greater counts, so a smaller one has to be asked of both.
    const FrontPlan& other = t.plan.fronts[*facing];
    if (other.fit[opposite(side)] != Fit::Gap)
        return own;
    return setFrontFit(own.value(), {other.opening}, opposite(side), {Fit::Gap, t.value});
}

template<class Change>
Result<Project> changeBox(const Typing& t, Change change) {
    BoxSpec box = specOf(t, &FrontChoices::box, &FrontDefaults::box);
    change(box);
    return setBox(t.project, t.target(), box);
}

template<class Change>
Result<Project> changeHardware(const Typing& t, Change change) {
    HardwareSpec hardware = specOf(t, &FrontChoices::hardware, &FrontDefaults::hardware);
    change(hardware);
    return setHardware(t.project, t.target(), hardware);
}

template<class Change>
Result<Project> changeMounting(const Typing& t, Change change) {
    MountingSpec mounting = specOf(t, &FrontChoices::mounting, &FrontDefaults::mounting);
    change(mounting);
    return setMounting(t.project, t.target(), mounting);
}

enum class Coordinate : std::uint8_t { X, Y };

/// One hole is moved; the whole pattern becomes one placed by hand.
Result<Project> setHole(const Typing& t, Coordinate coordinate) {
    MountingSpec mounting = specOf(t, &FrontChoices::mounting, &FrontDefaults::mounting);
    mounting.pattern = ScrewPattern::ByHand;
    mounting.placed.clear();
    for (const MountingHole& hole : t.front().mounting.holes)
        mounting.placed.push_back(hole.at);
    WallPoint& at = mounting.placed.at(t.quantity.index);
    (coordinate == Coordinate::X ? at.x : at.y) = t.value;
    return setMounting(t.project, t.target(), mounting);
}

/// Moves the one handle so that the hole comes to lie there.
Result<Project> setHandle(const Typing& t, Coordinate coordinate) {
    const auto& hardware = *t.front().hardware;
    if (hardware.handles.size() != 1)
        return t.follows("the rule that places two handles on this front");
    const FrontPoint hole = hardware.holes.at(t.quantity.index);
    FrontPoint centre = hardware.handles.front().centre;
    if (coordinate == Coordinate::X)
        centre.x += t.value.length - hole.x;
    else
        centre.y += t.value.length - hole.y;
    return changeHardware(t, [&](HardwareSpec& spec) { spec.placedAt = centre; });
}

Result<Project> setSpacer(const Typing& t) {
    const Spacer& spacer = t.plan.spacers[t.quantity.item];
    const MemberPlan& member = t.plan.members[spacer.member];
    const bool between = member.kind == MemberKind::Rail || member.kind == MemberKind::OuterRail;
    const FrontPlan& lower = t.plan.fronts[spacer.lower];
    const FrontPlan& upper = t.plan.fronts[spacer.upper];
    const auto first = setFrontFit(t.project, {lower.opening}, between ? Side::Top : Side::Right,
                                   {Fit::Gap, t.value});
    if (!first.ok())
        return first;
    return setFrontFit(first.value(), {upper.opening}, between ? Side::Bottom : Side::Left,
                       {Fit::Gap, t.value});
}

Result<Project> setBoltLength(const Typing& t) {
    return changeHardware(t, [&](HardwareSpec& spec) { spec.boltLength = t.value; });
}

Result<Project> setCounterbore(const Typing& t) {
    return changeHardware(t, [&](HardwareSpec& spec) { spec.counterbore = t.value; });
}

Result<Project> setStop(const Typing& t, Length overlay) {
    const Stop& stop = t.plan.stops[t.quantity.item];
    return setFrontFit(t.project, {t.plan.fronts[stop.front].opening}, stop.side,
                       {Fit::Overlay, WrittenLength(overlay, t.value.notation)});
}

Result<Project> setStopFromFarEdge(const Typing& t) {
    const Stop& stop = t.plan.stops[t.quantity.item];
    const MemberPlan& member =
        t.plan.members[t.plan.fronts[stop.front].neighbours[stop.side].member];
    const Length width = isLeftOrRight(stop.side) ? member.rect.width() : member.rect.height();
    return setStop(t, width - t.value.length);
}

} // namespace

Result<Project> setQuantity(const Project& project, const Plan& plan, Quantity quantity,
                            WrittenLength typed) {
    const Typing t{project, plan, quantity, typed};
    switch (quantity.kind) {
    case QuantityKind::CaseWidth:
        return setCaseSize(project, typed, project.casework.height);
    case QuantityKind::CaseHeight:
        return setCaseSize(project, project.casework.width, typed);
    case QuantityKind::MoistureWhenCut:
    case QuantityKind::MoistureDriest:
    case QuantityKind::MoistureWettest:
        return t.follows("the air");
    case QuantityKind::SeasonReveal:
    case QuantityKind::SeasonWidth:
    case QuantityKind::SeasonHeight:
    case QuantityKind::SeasonOverlayLeft:
    case QuantityKind::SeasonOverlayRight:
    case QuantityKind::SeasonOverlayBottom:
    case QuantityKind::SeasonOverlayTop:
    case QuantityKind::SeasonGapLeft:
    case QuantityKind::SeasonGapRight:
    case QuantityKind::SeasonGapBottom:
    case QuantityKind::SeasonGapTop:
    case QuantityKind::RowMovement:
    case QuantityKind::RowHole:
    case QuantityKind::RowDrill:
        return t.follows("the wood, the air and the sizes when cut");
    case QuantityKind::FixedRow:
        return t.follows("where the screws are");
    case QuantityKind::CaseWeight:
    case QuantityKind::CaseContents:
    case QuantityKind::CaseStorage:
        return t.follows("all drawers and the frame");
    case QuantityKind::MemberWidth:
        return setMemberWidth(project, plan.members[quantity.item].id, typed);
    case QuantityKind::MemberLength:
        return t.follows("the parts that it runs between");
    case QuantityKind::MemberReveal:
        return t.follows("the member's width and the overlays");
    case QuantityKind::OpeningWidth:
        return setOpening(t, Direction::Columns);
    case QuantityKind::OpeningHeight:
        return setOpening(t, Direction::Rows);
    case QuantityKind::FrontWidth:
        return setFrontSize(t, Direction::Columns);
    case QuantityKind::FrontHeight:
        return setFrontSize(t, Direction::Rows);
    case QuantityKind::FrontThickness:
        return setThickness(project, t.target(), typed);
    case QuantityKind::OverlayLeft:
        return setOverlay(t, Side::Left);
    case QuantityKind::OverlayRight:
        return setOverlay(t, Side::Right);
    case QuantityKind::OverlayBottom:
        return setOverlay(t, Side::Bottom);
    case QuantityKind::OverlayTop:
        return setOverlay(t, Side::Top);
    case QuantityKind::GapLeft:
        return setGap(t, Side::Left);
    case QuantityKind::GapRight:
        return setGap(t, Side::Right);
    case QuantityKind::GapBottom:
        return setGap(t, Side::Bottom);
    case QuantityKind::GapTop:
        return setGap(t, Side::Top);
    case QuantityKind::EdgeThickness:
    case QuantityKind::FieldWidth:
    case QuantityKind::FieldHeight:
        return t.follows("the edge profile");
    case QuantityKind::BoxWidth:
        return t.follows("the opening and the side clearance");
    case QuantityKind::BoxHeight:
        return changeBox(t, [&](BoxSpec& box) { box.height = typed; });
    case QuantityKind::BoxDepth:
        return changeBox(t, [&](BoxSpec& box) { box.depth = typed; });
    case QuantityKind::BoxSetback:
        return t.follows("how the front fits and its thickness");
    case QuantityKind::BottomTop:
        return t.follows("the groove's height and the bottom");
    case QuantityKind::ScrewLength:
        return changeMounting(t, [&](MountingSpec& spec) { spec.length = typed; });
    case QuantityKind::ScrewLeastLength:
    case QuantityKind::ScrewGreatestLength:
        return t.follows("wall, front, recess and the least penetration and cover");
    case QuantityKind::ScrewPenetration:
    case QuantityKind::ScrewTipCover:
        return t.follows("screw, recess, wall and front");
    case QuantityKind::HoleX:
        return setHole(t, Coordinate::X);
    case QuantityKind::HoleY:
        return setHole(t, Coordinate::Y);
    case QuantityKind::LeastHoleHeight:
        return t.follows("the bottom and the recess tool");
    case QuantityKind::ClearanceHole:
        return changeMounting(t, [&](MountingSpec& spec) { spec.clearanceHole = typed; });
    case QuantityKind::PilotHole:
        return changeMounting(t, [&](MountingSpec& spec) { spec.pilotHole = typed; });
    case QuantityKind::ScrewThread:
        return t.follows("screw, recess and wall");
    case QuantityKind::ScrewToEdge:
    case QuantityKind::ScrewToEnd:
        return t.follows("where the hole lies on the box wall");
    case QuantityKind::PullSafety:
    case QuantityKind::PullDesignSafety:
    case QuantityKind::ScrewUltimate:
    case QuantityKind::ScrewDesign:
    case QuantityKind::ScrewPull:
        return t.follows("screws, wood and handle");
    case QuantityKind::HandleX:
        return setHandle(t, Coordinate::X);
    case QuantityKind::HandleY:
        return setHandle(t, Coordinate::Y);
    case QuantityKind::BoltGrip:
        return t.follows("front, wall and counterbore");
    case QuantityKind::BoltLeastLength:
    case QuantityKind::BoltGreatestLength:
        return t.follows("the grip and the handle's thread");
    case QuantityKind::BoltLength:
        return setBoltLength(t);
    case QuantityKind::Counterbore:
        return setCounterbore(t);
    case QuantityKind::WoodUnderHead:
        return t.follows("front, wall and counterbore");
    case QuantityKind::BoltEngagement:
        return t.follows("the bolt and the grip");
    case QuantityKind::FrontWeight:
    case QuantityKind::BoxWeight:
        return t.follows("the wood and the sizes");
    case QuantityKind::ContentsWeight:
    case QuantityKind::RunnerLoad:
    case QuantityKind::RunnerSafety:
    case QuantityKind::StorageVolume:
        return t.follows("the box and what it is for");
    case QuantityKind::SpacerWidth:
        return setSpacer(t);
    case QuantityKind::StopFromFarEdge:
        return setStopFromFarEdge(t);
    case QuantityKind::StopFromOpening:
        break;
    }
    return setStop(t, typed);
}

} // namespace frontwright
