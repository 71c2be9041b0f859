#include "core/findings/judging.h"
#include "core/findings/overshoot.h"

#include <algorithm>

namespace frontwright::judging {

namespace {

constexpr Length nothing{};

template<class Frame>
RectIn<Frame> around(PointIn<Frame> centre, Length radius) {
    return {centre.x - radius, centre.y - radius, centre.x + radius, centre.y + radius};
}

std::uint32_t holesPerHandle(const HardwarePlan& hardware) {
    return static_cast<std::uint32_t>(hardware.form->holes.size());
}

struct WorstHandle {
    Overshoot over;
    std::uint32_t handle = 0;
};

/// Of the footprints, the one that reaches furthest out.
WorstHandle worstHandle(const HardwarePlan& hardware, const FrontRect& within) {
    WorstHandle worst{overshoot(hardware.handles.front().footprint, within)};
    for (std::uint32_t i = 1; i < hardware.handles.size(); ++i)
        if (const Overshoot over = overshoot(hardware.handles[i].footprint, within);
            over.by > worst.over.by)
            worst = {over, i};
    return worst;
}

void tellHandle(const Judged& judged, FindingCode code, Severity severity, const WorstHandle& worst,
                const FrontRect& within) {
    const HardwarePlan& hardware = *judged.front.hardware;
    const FrontRect& base = hardware.handles[worst.handle].footprint;
    const bool across = isLeftOrRight(worst.over.side);
    judged.tell(code, severity,
                {worst.over.by, across ? base.width() : base.height(),
                 across ? within.width() : within.height()},
                worst.over.side);
    judged.found.back().where.handleHole = worst.handle * holesPerHandle(hardware);
}

/// figures: how far past the edge, base's size that way, front's size that way. A hole past the
/// edge spoils the front. True where something was told.
bool isOffFront(const Judged& judged) {
    const HardwarePlan& hardware = *judged.front.hardware;
    const FrontRect outline =
        FrontRect::atOrigin(judged.front.rect.width(), judged.front.rect.height());
    const FrontRect safe = outline.inset(hardware.holeDiameter.half());
    const WorstHandle worst = worstHandle(hardware, outline);
    const bool holesOn = std::all_of(hardware.holes.begin(), hardware.holes.end(),
                                     [&](FrontPoint hole) { return safe.contains(hole); });
    if (worst.over.by <= nothing && holesOn)
        return false;
    tellHandle(judged, FindingCode::HandleOffFront, holesOn ? Severity::WontWork : Severity::Ruins,
               worst, outline);
    return true;
}

/// figures: how far off the field, base's size that way, field's size that way
void judgeBase(const Judged& judged) {
    const FrontRect& field = judged.front.field;
    if (field.width() <= nothing || field.height() <= nothing) // told as such
        return;
    const WorstHandle worst = worstHandle(*judged.front.hardware, field);
    if (worst.over.by > nothing)
        tellHandle(judged, FindingCode::BackplateOffField, Severity::WontWork, worst, field);
}

/// figures: how much the bases overlap, from centre to centre
void judgeTwo(const Judged& judged) {
    const std::vector<HandlePlan>& handles = judged.front.hardware->handles;
    if (handles.size() < 2)
        return;
    const FrontRect common = handles[0].footprint.common(handles[1].footprint);
    if (common.width() > nothing && common.height() > nothing)
        judged.tell(FindingCode::HandlesCollide, Severity::WontWork,
                    {common.width(), (handles[1].centre.x - handles[0].centre.x).magnitude()});
}

bool meetsBottom(const BoxPlan& box, const WallRect& hole) {
    return hole.bottom < box.bottomTop && hole.top > box.bottomUnderside;
}

/// Into the bottom or the wall's edge spoils the box; at a side, or past the wall, it won't work.
Severity severityInWall(const BoxPlan& box, const WallRect& hole) {
    const bool breaksOut = (hole.top > box.height && hole.bottom < box.height) ||
                           (hole.bottom < nothing && hole.top > nothing);
    return meetsBottom(box, hole) || breaksOut ? Severity::Ruins : Severity::WontWork;
}

/// Between the box's sides, above the bottom's top (or below the panel, for holes that are).
WallRect freeWall(const BoxPlan& box, const WallRect& hole) {
    WallRect wall{box.sideThickness, box.bottomTop, box.width - box.sideThickness, box.height};
    if (hole.top <= box.bottomUnderside)
        wall.bottom = nothing;
    return wall;
}

} // namespace

Length radiusInWall(const HardwarePlan& hardware) {
    switch (hardware.chosen) {
    case MountingWay::ThroughWall:
        return hardware.chosenWay().counterbore > nothing
                   ? greatest(hardware.holeDiameter, hardware.counterboreDiameter).half()
                   : hardware.holeDiameter.half();
    case MountingWay::FrontAccessHole:
        return hardware.accessDiameter.half();
    case MountingWay::FrontCounterbore:
        break;
    }
    return nothing;
}

void judgeHandles(const Judged& judged) {
    if (judged.front.hardware->handles.empty())
        return;
    if (!isOffFront(judged))
        judgeBase(judged);
    judgeTwo(judged);
}

void judgeHandleHolesInWall(const Judged& judged) {
    const HardwarePlan& hardware = *judged.front.hardware;
    const BoxPlan& box = judged.front.box;
    const Length radius = radiusInWall(hardware);
    if (radius <= nothing)
        return;
    Finding worst;
    bool any = false;
    for (std::uint32_t i = 0; i < hardware.holes.size(); ++i) {
        const WallRect hole = around(toWall(box, hardware.holes[i]), radius);
        const Overshoot over = overshoot(hole, freeWall(box, hole));
        if (over.by <= nothing)
            continue;
        const Severity severity = severityInWall(box, hole);
        if (any && worst.severity <= severity)
            continue;
        // figures: how far it reaches in or out, hole's diameter
        worst = judged.at(FindingCode::AccessHoleOffWall, severity, {over.by, 2 * radius});
        worst.where.side = over.side;
        worst.where.handleHole = i;
        any = true;
    }
    if (any)
        judged.found.push_back(worst);
}

} // namespace frontwright::judging
