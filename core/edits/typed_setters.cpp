#include "core/edits/typed_setters.h"

#include "core/edits/divisions.h"
#include "core/edits/placed_part.h"
#include "core/plan/chosen.h"

namespace frontwright::typing {

namespace {

/// A front's size is set through its opening; what was written stays written only where it is what
/// the document will hold.
Result<Project> setFrontSize(const Typing& t, Direction direction) {
    const PerSide<Length>& o = t.front().overlay;
    const Length overlays = direction == Direction::Columns ? o.left + o.right : o.bottom + o.top;
    const Length opening = t.value.length - overlays;
    return setOpeningSize(t.project, t.front().opening, direction,
                          WrittenLength(opening, t.value.notation));
}

template<class Change>
Result<Project> changeBox(const Typing& t, Change change) {
    BoxSpec box = chosenBox(t.project, t.front());
    change(box);
    return setBox(t.project, t.target(), box);
}

template<class Change>
Result<Project> changeHardware(const Typing& t, Change change) {
    HardwareSpec hardware = chosenHardware(t.project, t.front());
    change(hardware);
    return setHardware(t.project, t.target(), hardware);
}

template<class Change>
Result<Project> changeMounting(const Typing& t, Change change) {
    MountingSpec mounting = chosenMounting(t.project, t.front());
    change(mounting);
    return setMounting(t.project, t.target(), mounting);
}

/// Refused where the part can't come to lie just there.
Result<Project> moved(const Typing& t, PlacedPart::Kind kind, std::uint32_t part, CasePoint by) {
    auto move = movePart(t.project, t.plan, {kind, t.front().opening, part}, by);
    if (!move.ok())
        return move.error();
    if (!move.value().heldBecause.empty())
        return t.follows(
            phrase("the rule that places two handles on this front: %1", move.value().heldBecause));
    return std::move(move).value().project;
}

Result<Project> movedHole(const Typing& t, Length CasePoint::*moving, Length from) {
    CasePoint by;
    by.*moving = t.value.length - from;
    return moved(t, PlacedPart::Kind::MountingHole, t.quantity.index, by);
}

/// The handle moves so that this hole of it comes to lie there.
Result<Project> movedHandle(const Typing& t, Length CasePoint::*moving, Length from) {
    CasePoint by;
    by.*moving = t.value.length - from;
    return moved(t, PlacedPart::Kind::Handle, handleOfHole(*t.front().hardware, t.quantity.index),
                 by);
}

Result<Project> setStop(const Typing& t, Length overlay) {
    const Stop& stop = t.plan.stops[t.quantity.item];
    return setFrontFit(t.project, {t.plan.fronts[stop.front].opening}, stop.side,
                       {Fit::Overlay, WrittenLength(overlay, t.value.notation)});
}

} // namespace

Result<Project> setCaseWidth(const Typing& t) {
    return setCaseSize(t.project, t.value, t.project.casework.height);
}
Result<Project> setCaseHeight(const Typing& t) {
    return setCaseSize(t.project, t.project.casework.width, t.value);
}

Result<Project> setMember(const Typing& t) {
    return setMemberWidth(t.project, t.plan.members[t.quantity.item].id, t.value);
}

Result<Project> setOpeningWidth(const Typing& t) {
    return setOpeningSize(t.project, t.front().opening, Direction::Columns, t.value);
}
Result<Project> setOpeningHeight(const Typing& t) {
    return setOpeningSize(t.project, t.front().opening, Direction::Rows, t.value);
}

Result<Project> setFrontWidth(const Typing& t) {
    return setFrontSize(t, Direction::Columns);
}
Result<Project> setFrontHeight(const Typing& t) {
    return setFrontSize(t, Direction::Rows);
}
Result<Project> setFrontThickness(const Typing& t) {
    return setThickness(t.project, t.target(), t.value);
}

Result<Project> setOverlay(const Typing& t) {
    const SideFit fit = t.value.length < Length()
                            ? SideFit{Fit::Inset, {-t.value.length, t.value.notation}}
                            : SideFit{Fit::Overlay, t.value};
    return setFrontFit(t.project, t.target(), sideOf(QuantityKind::OverlayLeft, t.quantity.kind),
                       fit);
}

Result<Project> setGap(const Typing& t) {
    const Side side = sideOf(QuantityKind::GapLeft, t.quantity.kind);
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

Result<Project> setBoxHeight(const Typing& t) {
    return changeBox(t, [&](BoxSpec& box) { box.height = t.value; });
}
Result<Project> setBoxDepth(const Typing& t) {
    return changeBox(t, [&](BoxSpec& box) {
        box.depth = t.value;
        box.depthRule = BoxDepthRule::AsGiven;
    });
}
Result<Project> setSideClearance(const Typing& t) {
    return changeBox(t, [&](BoxSpec& box) { box.sideClearance = t.value; });
}
Result<Project> setRunnerLength(const Typing& t) {
    return changeBox(t, [&](BoxSpec& box) { box.runnerLength = t.value; });
}
Result<Project> setFurring(const Typing& t) {
    return changeBox(t, [&](BoxSpec& box) { box.toCaseSide = t.value; });
}

Result<Project> setScrewLength(const Typing& t) {
    return changeMounting(t, [&](MountingSpec& spec) { spec.length = t.value; });
}
Result<Project> setClearanceHole(const Typing& t) {
    return changeMounting(t, [&](MountingSpec& spec) { spec.clearanceHole = t.value; });
}
Result<Project> setPilotHole(const Typing& t) {
    return changeMounting(t, [&](MountingSpec& spec) { spec.pilotHole = t.value; });
}

Result<Project> setHoleX(const Typing& t) {
    return movedHole(t, &CasePoint::x, t.front().mounting.holes.at(t.quantity.index).at.x);
}
Result<Project> setHoleY(const Typing& t) {
    return movedHole(t, &CasePoint::y, t.front().mounting.holes.at(t.quantity.index).at.y);
}

Result<Project> setHandleX(const Typing& t) {
    return movedHandle(t, &CasePoint::x, t.front().hardware->holes.at(t.quantity.index).x);
}
Result<Project> setHandleY(const Typing& t) {
    return movedHandle(t, &CasePoint::y, t.front().hardware->holes.at(t.quantity.index).y);
}

Result<Project> setBoltLength(const Typing& t) {
    return changeHardware(t, [&](HardwareSpec& spec) { spec.boltLength = t.value; });
}

namespace {

template<class Change>
Result<Project> changeFitting(const Typing& t, Change change) {
    const FittingPlan& plan = t.front().fittings->at(t.quantity.index);
    return changeHardware(t,
                          [&](HardwareSpec& spec) { change(spec.fittings.at(plan.spec), plan); });
}

} // namespace

Result<Project> setFittingX(const Typing& t) {
    return changeFitting(t, [&](FittingSpec& spec, const FittingPlan& plan) {
        const Length width = t.front().rect.width();
        const bool isRight =
            spec.across == FittingAcross::FromRight ||
            (spec.across == FittingAcross::BothSides && plan.centre.x > width.half());
        if (spec.across == FittingAcross::Middle)
            spec.across = FittingAcross::FromLeft;
        spec.fromSide = isRight ? WrittenLength(width - t.value) : t.value;
    });
}
Result<Project> setFittingY(const Typing& t) {
    if (t.front().fittings->at(t.quantity.index).form->belowTop)
        return t.follows(text("the lock's own height below the top edge"));
    return changeFitting(t, [&](FittingSpec& spec, const FittingPlan&) {
        const bool isFromTop = spec.upright == FittingUpright::FromTop;
        if (!isFromTop)
            spec.upright = FittingUpright::FromBottom;
        spec.fromEdge = isFromTop ? WrittenLength(t.front().rect.height() - t.value) : t.value;
    });
}
Result<Project> setFittingScrewLength(const Typing& t) {
    return changeFitting(
        t, [&](FittingSpec& spec, const FittingPlan&) { spec.screwLength = t.value; });
}

Result<Project> setCounterbore(const Typing& t) {
    return changeHardware(t, [&](HardwareSpec& spec) { spec.counterbore = t.value; });
}

Result<Project> setSpacer(const Typing& t) {
    const Spacer& spacer = t.plan.spacers[t.quantity.item];
    const MemberPlan& member = t.plan.members[spacer.member];
    const bool between = !isUpright(member.kind);
    const FrontPlan& lower = t.plan.fronts[spacer.lower];
    const FrontPlan& upper = t.plan.fronts[spacer.upper];
    const auto first = setFrontFit(t.project, {lower.opening}, between ? Side::Top : Side::Right,
                                   {Fit::Gap, t.value});
    if (!first.ok())
        return first;
    return setFrontFit(first.value(), {upper.opening}, between ? Side::Bottom : Side::Left,
                       {Fit::Gap, t.value});
}

Result<Project> setStopFromFarEdge(const Typing& t) {
    const Stop& stop = t.plan.stops[t.quantity.item];
    const MemberPlan& member =
        t.plan.members[t.plan.fronts[stop.front].neighbours[stop.side].member];
    const Length width = isLeftOrRight(stop.side) ? member.rect.width() : member.rect.height();
    return setStop(t, width - t.value.length);
}
Result<Project> setStopFromOpening(const Typing& t) {
    return setStop(t, t.value);
}

Result<Project> setSpaceWidth(const Typing& t) {
    return setOpeningSize(t.project, t.plan.spaces[t.quantity.item].opening, Direction::Columns,
                          t.value);
}
Result<Project> setSpaceHeight(const Typing& t) {
    return setOpeningSize(t.project, t.plan.spaces[t.quantity.item].opening, Direction::Rows,
                          t.value);
}

} // namespace frontwright::typing
