#include "core/plan/fillers.h"

#include "core/plan/facing.h"

#include <algorithm>
#include <cmath>

namespace frontwright {
namespace {

constexpr Length nothing{};

double pushInNewtons() {
    return handPushPoundsForce * Force::newtonsPerPoundForce;
}
double cubed(double v) {
    return v * v * v;
}

/// Where the screw lies along and across the member, in the case.
struct ScrewPlace {
    Length along;
    Length across;
};
std::vector<ScrewPlace> screwsOf(const FrontPlan& front, MemberKind kind) {
    std::vector<ScrewPlace> places;
    for (const MountingHole& hole : front.mounting.holes) {
        const CasePoint at = front.box.origin + CasePoint{hole.at.x, hole.at.y};
        places.push_back(isUpright(kind) ? ScrewPlace{at.y, at.x} : ScrewPlace{at.x, at.y});
    }
    return places;
}

/// Of the row that lies nearest to the gap.
std::optional<Span> rowBeside(const FrontPlan& front, MemberKind kind, bool isLower) {
    const std::vector<ScrewPlace> screws = screwsOf(front, kind);
    if (screws.empty())
        return std::nullopt;
    const auto across = [](const ScrewPlace& place) { return place.across; };
    const Length row = isLower ? std::ranges::max(screws, {}, across).across
                               : std::ranges::min(screws, {}, across).across;
    std::optional<Span> span;
    for (const ScrewPlace& screw : screws)
        if (screw.across == row)
            span = span ? Span{least(span->low, screw.along), greatest(span->high, screw.along)}
                        : Span{screw.along, screw.along};
    return span;
}

/// The wider of the two rows: what its screws do not hold, the other's may.
Length spanBetweenScrews(const Plan& plan, const Spacer& spacer) {
    const MemberKind kind = plan.members[spacer.member].kind;
    Length widest;
    if (const auto row = rowBeside(plan.fronts[spacer.lower], kind, true))
        widest = greatest(widest, row->size());
    if (const auto row = rowBeside(plan.fronts[spacer.upper], kind, false))
        widest = greatest(widest, row->size());
    return least(widest, spacer.along.size());
}

Length thinnerEdge(const Plan& plan, const Spacer& spacer) {
    const MemberKind kind = plan.members[spacer.member].kind;
    const FrontPlan& lower = plan.fronts[spacer.lower];
    const FrontPlan& upper = plan.fronts[spacer.upper];
    return least(edgeThickness(*lower.profile, lower.thickness, sideOfLower(kind)),
                 edgeThickness(*upper.profile, upper.thickness, sideOfUpper(kind)));
}

bool isInGap(const Plan& plan, const Spacer& spacer) {
    return !isBuilt(plan.members[spacer.member].kind) && plan.fronts[spacer.lower].hasBox() &&
           spacer.width > nothing;
}

} // namespace

std::optional<Length> bendOf(Length span, Length width, Length thickness) {
    if (span <= nothing || width <= nothing || thickness <= nothing)
        return std::nullopt;
    return Length::nearestToMillimetres(pushInNewtons() * cubed(span.inMillimetres()) /
                                        (4 * stiffnessNewtonsPerSquareMillimetre *
                                         width.inMillimetres() * cubed(thickness.inMillimetres())));
}

std::optional<Length> thicknessThatBends(Length by, Length span, Length width) {
    if (by <= nothing || span <= nothing || width <= nothing)
        return std::nullopt;
    return Length::nearestToMillimetres(std::cbrt(
        pushInNewtons() * cubed(span.inMillimetres()) /
        (4 * stiffnessNewtonsPerSquareMillimetre * width.inMillimetres() * by.inMillimetres())));
}

const Filler* fillerOf(const Plan& plan, OpeningId first, MemberId member) {
    for (const Filler& filler : plan.fillers)
        if (plan.members[filler.member].id == member &&
            plan.fronts[std::min(filler.lower, filler.upper)].opening == first)
            return &filler;
    return nullptr;
}

std::vector<Filler> fillersOf(const Plan& plan, const Limits& limits) {
    std::vector<Filler> fillers;
    if (plan.faces.empty())
        return fillers;
    for (const Spacer& spacer : plan.spacers) {
        if (!isInGap(plan, spacer))
            continue;
        const Length edge = thinnerEdge(plan, spacer);
        const Length thickness = edge - limits.fillerShadow;
        const Length span = spanBetweenScrews(plan, spacer);
        fillers.push_back({spacer.lower, spacer.upper, spacer.member, spacer.width, spacer.along,
                           edge, thickness, span, bendOf(span, spacer.width, thickness),
                           thicknessThatBends(limits.fillerBend, span, spacer.width)});
    }
    return fillers;
}

CaseRect placeOf(const Plan& plan, const Filler& filler) {
    const CaseRect& lower = plan.fronts[filler.lower].rect;
    if (isUpright(plan.members[filler.member].kind))
        return {lower.right, filler.along.low, lower.right + filler.width, filler.along.high};
    return {filler.along.low, lower.top, filler.along.high, lower.top + filler.width};
}

} // namespace frontwright
