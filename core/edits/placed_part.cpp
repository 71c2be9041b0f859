#include "core/edits/placed_part.h"

#include "core/edits/choices.h"
#include "core/plan/chosen.h"

#include <algorithm>

namespace frontwright {
namespace {

using Kind = PlacedPart::Kind;

std::size_t countOf(const FrontPlan& front, Kind kind) {
    if (kind == Kind::MountingHole)
        return front.mounting.holes.size();
    return front.hardware ? front.hardware->handles.size() : 0;
}

std::uint32_t holesPerHandle(const HardwarePlan& hardware) {
    const std::size_t handles = std::max<std::size_t>(1, hardware.handles.size());
    return static_cast<std::uint32_t>(std::max<std::size_t>(1, hardware.holes.size() / handles));
}

MountingSpec placedByHand(const Project& project, const FrontPlan& front) {
    MountingSpec spec = chosenMounting(project, front);
    spec.pattern = ScrewPattern::ByHand;
    spec.placed.clear();
    for (const MountingHole& hole : front.mounting.holes)
        spec.placed.push_back(hole.at);
    return spec;
}

Result<PlacedMove> moveHole(const Project& project, const FrontPlan& front, std::uint32_t index,
                            CasePoint by) {
    MountingSpec spec = placedByHand(project, front);
    WallPoint& at = spec.placed.at(index);
    at = {at.x + by.x, at.y + by.y};
    auto moved = setMounting(project, {front.opening}, spec);
    if (!moved.ok())
        return moved.error();
    return PlacedMove{std::move(moved).value(), {}};
}

/// Nearest whole per cent, halves up.
std::int64_t percentOf(Length part, Length whole) {
    if (whole <= Length{})
        return 0;
    return (200 * part.nanometres() + whole.nanometres()) / (2 * whole.nanometres());
}

/// The handles keep alike; the one that is held decides. A third stays in the middle.
Result<PlacedMove> moveOneOfTwo(const Project& project, const FrontPlan& front, std::uint32_t index,
                                CasePoint by) {
    HardwareSpec spec = chosenHardware(project, front);
    const FrontPoint centre = front.hardware->handles.at(index).centre;
    Phrase because;
    if (!by.y.isZero()) {
        spec.placing = Placing::FromTop;
        spec.distance = front.rect.height() - (centre.y + by.y);
    }
    if (!by.x.isZero() && index + 1 < front.hardware->handles.size() && index > 0) {
        because = text("a third handle stands in the middle of the width");
    } else if (!by.x.isZero()) {
        const Length x = centre.x + by.x;
        const Length fromSide = index == 0 ? x : front.rect.width() - x;
        spec.twoAtPercent =
            std::clamp<std::int64_t>(percentOf(fromSide, front.rect.width()), 1, 49);
        because = text("two handles stand at a whole per cent of the width");
    }
    auto moved = setHardware(project, {front.opening}, spec);
    if (!moved.ok())
        return moved.error();
    return PlacedMove{std::move(moved).value(), std::move(because)};
}

Result<PlacedMove> moveHandle(const Project& project, const FrontPlan& front, std::uint32_t index,
                              CasePoint by) {
    if (front.hardware->handles.size() > 1)
        return moveOneOfTwo(project, front, index, by);
    HardwareSpec spec = chosenHardware(project, front);
    const FrontPoint centre = front.hardware->handles.at(index).centre;
    spec.placedAt = FrontPoint{centre.x + by.x, centre.y + by.y};
    auto moved = setHardware(project, {front.opening}, spec);
    if (!moved.ok())
        return moved.error();
    return PlacedMove{std::move(moved).value(), {}};
}

Error noSuchPart() {
    return {{}, text("there is no such hole or handle"), {}};
}

} // namespace

std::optional<CasePoint> centreOf(const Plan& plan, const PlacedPart& part) {
    const FrontPlan* front = plan.frontOf(part.opening);
    if (!front || part.index >= countOf(*front, part.kind))
        return std::nullopt;
    if (part.kind == Kind::MountingHole) {
        const WallPoint at = front->mounting.holes[part.index].at;
        return CasePoint{front->box.origin.x + at.x, front->box.origin.y + at.y};
    }
    const FrontPoint at = front->hardware->handles[part.index].centre;
    return CasePoint{front->rect.left + at.x, front->rect.bottom + at.y};
}

std::vector<PlacedPart> partsOn(const FrontPlan& front, Kind kind) {
    std::vector<PlacedPart> parts;
    for (std::uint32_t i = 0; i < countOf(front, kind); ++i)
        parts.push_back({kind, front.opening, i});
    return parts;
}

std::uint32_t handleOfHole(const HardwarePlan& hardware, std::uint32_t hole) {
    return hole / holesPerHandle(hardware);
}
std::uint32_t firstHoleOf(const HardwarePlan& hardware, std::uint32_t handle) {
    return handle * holesPerHandle(hardware);
}

std::vector<PlacedPart> movedWith(const Plan& plan, const PlacedPart& part, Together together) {
    std::vector<PlacedPart> parts{part};
    const FrontPlan* own = plan.frontOf(part.opening);
    if (!own || together == Together::Alone)
        return parts;
    for (const FrontPlan& front : plan.fronts)
        if (front.bank == own->bank && front.opening != own->opening &&
            countOf(front, part.kind) == countOf(*own, part.kind))
            parts.push_back({part.kind, front.opening, part.index});
    return parts;
}

Result<PlacedMove> movePart(const Project& project, const Plan& plan, const PlacedPart& part,
                            CasePoint by, Together together) {
    if (!centreOf(plan, part))
        return noSuchPart();
    PlacedMove outcome{project, {}};
    if (by == CasePoint{})
        return outcome;
    for (const PlacedPart& each : movedWith(plan, part, together)) {
        const FrontPlan& front = *plan.frontOf(each.opening);
        auto moved = each.kind == Kind::MountingHole
                         ? moveHole(outcome.project, front, each.index, by)
                         : moveHandle(outcome.project, front, each.index, by);
        if (!moved.ok())
            return moved;
        outcome = std::move(moved).value();
    }
    return outcome;
}

Result<Project> removeMountingHole(const Project& project, const Plan& plan, OpeningId opening,
                                   std::uint32_t hole) {
    const FrontPlan* front = plan.frontOf(opening);
    if (!front || hole >= front->mounting.holes.size())
        return noSuchPart();
    MountingSpec spec = placedByHand(project, *front);
    spec.placed.erase(spec.placed.begin() + hole);
    return setMounting(project, {opening}, spec);
}

} // namespace frontwright
