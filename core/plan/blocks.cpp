#include "core/plan/blocks.h"

namespace frontwright {
namespace {

constexpr Length nothing{};

/// What a front's side covers of the member; an inset side lies in its opening and covers nothing.
Length covers(const FrontPlace& front, Side side) {
    return front.fit[side] == Fit::Inset ? nothing : front.overlay[side];
}

/// From front to front across the member; an inset one counts from the member's edge.
Length between(const MemberPlan& member, const FrontPlace& lower, const FrontPlace& upper) {
    return widthOf(member) - covers(lower, sideOfLower(member.kind)) -
           covers(upper, sideOfUpper(member.kind));
}

/// What is seen of the member beside a front's side: no more than there is, even where an overlay
/// is negative.
Length hidden(const FrontPlace& front, Side side) {
    return greatest(nothing, covers(front, side));
}

void widen(MemberPlan& member, Length shows) {
    member.reveal = member.hasFronts ? Reveal{least(member.reveal.least, shows),
                                              greatest(member.reveal.greatest, shows)}
                                     : Reveal{shows, shows};
    member.hasFronts = true;
}

Span commonStretch(const Arrangement& all, MemberKind kind, std::uint32_t a, std::uint32_t b) {
    return alongMember(kind, all.fronts[a].rect).common(alongMember(kind, all.fronts[b].rect));
}

/// Two fronts face to face.
struct Pair {
    const Facing& facing;
    const MemberPlan& member;
    Length gap;
    Span along;
};

/// Whether `other` is a nearer neighbour of `self` than the one found before it.
bool isNearer(const Arrangement& all, const Pair& pair, std::uint32_t self, Side side) {
    const auto before = all.fronts[self].neighbours[side].front;
    if (!before)
        return true;
    const bool isLower = side == sideOfLower(pair.member.kind);
    const Length gapBefore = between(pair.member, all.fronts[isLower ? self : *before],
                                     all.fronts[isLower ? *before : self]);
    if (pair.gap != gapBefore)
        return pair.gap < gapBefore;
    return pair.along.size() > commonStretch(all, pair.member.kind, self, *before).size();
}

void introduce(Arrangement& all, const Pair& pair, std::uint32_t self, Side side,
               std::uint32_t other) {
    if (!isNearer(all, pair, self, side))
        return;
    FrontPlace& front = all.fronts[self];
    front.neighbours[side].front = other;
    if (front.fit[side] != Fit::Inset)
        front.neighbours[side].gap = pair.gap;
}

void setOwnGaps(Arrangement& all) {
    for (FrontPlace& front : all.fronts)
        for (Side side : allSides) {
            Neighbour& neighbour = front.neighbours[side];
            neighbour.gap = front.fit[side] == Fit::Inset
                                ? -front.overlay[side]
                                : widthOf(all.members[neighbour.member]) - front.overlay[side];
        }
}

void addSpacer(Arrangement& all, const Pair& pair) {
    const auto& [f, member, gap, along] = pair;
    if (all.fronts[f.lower].fit[sideOfLower(member.kind)] != Fit::Inset &&
        all.fronts[f.upper].fit[sideOfUpper(member.kind)] != Fit::Inset)
        all.spacers.push_back({f.lower, f.upper, f.member, gap, along});
}

} // namespace

void setNeighbours(Arrangement& all, const std::vector<Facing>& facing) {
    setOwnGaps(all);
    all.spacers.reserve(facing.size());
    for (const Facing& f : facing) {
        MemberPlan& member = all.members[f.member];
        const FrontPlace& lower = all.fronts[f.lower];
        const FrontPlace& upper = all.fronts[f.upper];
        const Side ofLower = sideOfLower(member.kind), ofUpper = sideOfUpper(member.kind);
        const Pair pair{f, member, between(member, lower, upper),
                        commonStretch(all, member.kind, f.lower, f.upper)};
        if (pair.along.size() <= nothing)
            continue;
        introduce(all, pair, f.lower, ofLower, f.upper);
        introduce(all, pair, f.upper, ofUpper, f.lower);
        widen(member, widthOf(member) - hidden(lower, ofLower) - hidden(upper, ofUpper));
        addSpacer(all, pair);
    }
}

void setStops(Arrangement& all) {
    std::vector<bool> frontsAtBothSides(all.members.size());
    for (std::size_t i = 0; i < all.members.size(); ++i)
        frontsAtBothSides[i] = all.members[i].hasFronts;
    for (std::uint32_t i = 0; i < all.fronts.size(); ++i) {
        const FrontPlace& front = all.fronts[i];
        for (Side side : allSides) {
            const std::uint32_t m = front.neighbours[side].member;
            if (frontsAtBothSides[m])
                continue;
            MemberPlan& member = all.members[m];
            const Length width = widthOf(member), overlay = front.overlay[side];
            widen(member, width - hidden(front, side));
            if (isOuter(member.kind) && front.fit[side] != Fit::Inset)
                all.stops.push_back({i, side, width - overlay, overlay});
        }
    }
}

} // namespace frontwright
