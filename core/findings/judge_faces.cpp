#include "core/fastening/fixed_front.h"
#include "core/findings/judging.h"
#include "core/plan/own_part.h"

#include <algorithm>

namespace frontwright::judging {

namespace {

constexpr Length nothing{};

/// figures: wall and front together, what screws need of it
void tellMissing(const Judged& judged, Side side, Length together, Length left) {
    judged.tell(FindingCode::FrontMissesWall, Severity::WontWork, {together, together - left},
                side);
}

/// The widest overlay over a member, and the least that screws ask for there.
struct Widest {
    Length overlay;
    Length needed;
    Side side = Side::Left;
};
std::optional<Widest> widestOverlay(const Judged& judged) {
    const FrontPlan& front = judged.front;
    const MountingSpec& spec = chosenMounting(judged.project, front);
    const PerSide<Length> edges = fromFrontEdges(judged.project, front);
    std::optional<Widest> widest;
    for (const Side side : allSides) {
        if (!hasMember(judged, side))
            continue;
        const Length needed =
            leastOverlay(spec, *front.mounting.screw, judged.project.limits, edges[side]);
        if (!widest || needed - front.overlay[side] < widest->needed - widest->overlay)
            widest = Widest{front.overlay[side], needed, side};
    }
    return widest;
}

/// Holes placed by hand. figures: across and up the front
void judgePlaced(const Judged& judged) {
    const MountingPlan& mounting = judged.front.mounting;
    for (std::uint32_t i = 0; i < mounting.holes.size(); ++i)
        if (const MountingHole& hole = mounting.holes[i]; !hole.allowed) {
            judged.tell(FindingCode::HoleOffMember, Severity::WontWork, {hole.at.x, hole.at.y});
            judged.found.back().where.mountingHole = i;
            return;
        }
}

Finding atFiller(const Plan& plan, const Filler& filler, FindingCode code, Severity severity,
                 const Figures4& figures) {
    const Spacer gap{filler.lower, filler.upper, filler.member, filler.width, filler.along};
    return atSpacer(plan, gap, code, severity, figures);
}

} // namespace

bool hasRoomOnSharedWall(const Judged& judged) {
    const Limits& limits = judged.project.limits;
    // Nowhere thick enough for a screw is another fault, and told at the holes.
    const bool isThick =
        judged.front.thickness >= limits.leastPenetration.length + limits.leastTipCover.length;
    return !judged.front.face || !isThick || !judged.front.mounting.allowed.outer.isEmpty();
}

void judgeSharedWall(const Judged& judged) {
    if (hasRoomOnSharedWall(judged))
        return;
    const auto part = ownPartOf(judged.project, judged.front);
    const WallRect& left = judged.front.mounting.allowed.outer;
    if (!part)
        return;
    if (left.upright().isEmpty())
        tellMissing(judged, Side::Bottom, part->wall.height(), left.height());
    else
        tellMissing(judged, Side::Left, part->wall.width(), left.width());
}

void judgeFixedFront(const Judged& judged) {
    const FrontPlan& front = judged.front;
    if (judged.project.casework.construction == Construction::Frameless) {
        judged.tell(FindingCode::FixedFrontNoFrame, Severity::OutsidePractice, {});
        return;
    }
    const auto widest = front.mounting.holes.empty() ? widestOverlay(judged) : std::nullopt;
    if (widest && widest->overlay < widest->needed) {
        // figures: overlay, least overlay
        judged.tell(FindingCode::FixedFrontNoRoom, Severity::WontWork,
                    {widest->overlay, widest->needed}, widest->side);
        return;
    }
    judgeScrewLength(judged);
    judgeHolding(judged);
    judgeScrewRows(judged);
    judgePlaced(judged);
}

void judgeFillers(const Project& project, const Plan& plan, std::vector<BetweenFronts>& found) {
    const Limits& limits = project.limits;
    for (const Filler& filler : plan.fillers) {
        const std::uint32_t first = std::min(filler.lower, filler.upper);
        if (filler.thickness <= nothing)
            // figures: thinner edge, shadow
            found.push_back(
                {first, atFiller(plan, filler, FindingCode::FillerNoThickness, Severity::WontWork,
                                 {filler.edge, limits.fillerShadow})});
        else if (filler.bend && *filler.bend > limits.fillerBend)
            // figures: bend, greatest bend, thickness, least thickness
            found.push_back(
                {first, atFiller(plan, filler, FindingCode::FillerBends, Severity::OutsidePractice,
                                 {*filler.bend, limits.fillerBend, filler.thickness,
                                  filler.leastThickness.value_or(nothing)})});
    }
}

} // namespace frontwright::judging
