#include "core/plan/blocks.h"

namespace frontwright {
namespace {

constexpr Length nothing{};

/// What a front's side covers of the member; an inset side lies in its opening and covers nothing.
/// Where no member is built, its distance from where one would be counts.
Length covers(const Arrangement& all, const MemberPlan& member, std::uint32_t front, Side side) {
    const bool isInset = isBuilt(member.kind) && all.fits[front][side] == Fit::Inset;
    return isInset ? nothing : all.overlays[front][side];
}

/// What is seen of the member beside a front's side: no more than there is, even where an overlay
/// is negative.
Length hidden(const Arrangement& all, const MemberPlan& member, std::uint32_t front, Side side) {
    return greatest(nothing, covers(all, member, front, side));
}

/// From front to front across the member; an inset one counts from the member's edge.
Length between(const Arrangement& all, const MemberPlan& member, std::uint32_t lower,
               std::uint32_t upper) {
    return widthOf(member) - covers(all, member, lower, sideOfLower(member.kind)) -
           covers(all, member, upper, sideOfUpper(member.kind));
}

void widen(MemberPlan& member, Length shows) {
    member.reveal = member.hasFronts ? Reveal{least(member.reveal.least, shows),
                                              greatest(member.reveal.greatest, shows)}
                                     : Reveal{shows, shows};
    member.hasFronts = true;
}

Span commonStretch(const Arrangement& all, MemberKind kind, std::uint32_t a, std::uint32_t b) {
    return alongMember(kind, all.rects[a]).common(alongMember(kind, all.rects[b]));
}

/// Two fronts face to face.
struct Pair {
    const Facing& facing;
    const MemberPlan& member;
    Length gap;
    Span along;
};

/// Whether the pair's other front is a nearer neighbour of `self` than the one found before it.
bool isNearer(const Arrangement& all, const Pair& pair, std::uint32_t self, Side side) {
    const auto before = all.neighbours[self][side].front;
    if (!before)
        return true;
    const Length gapBefore = self == pair.facing.lower ? between(all, pair.member, self, *before)
                                                       : between(all, pair.member, *before, self);
    if (pair.gap != gapBefore)
        return pair.gap < gapBefore;
    return pair.along.size() > commonStretch(all, pair.member.kind, self, *before).size();
}

void introduce(Arrangement& all, const Pair& pair, std::uint32_t self, Side side,
               std::uint32_t other) {
    if (!isNearer(all, pair, self, side))
        return;
    Neighbour& neighbour = all.neighbours[self][side];
    neighbour.front = other;
    if (all.fits[self][side] != Fit::Inset)
        neighbour.gap = pair.gap;
}

/// As if nothing lay beyond the members.
void setOwnGaps(Arrangement& all) {
    const auto& openings = all.layout.openings;
    all.neighbours.resize(openings.size());
    for (std::size_t i = 0; i < openings.size(); ++i)
        for (Side side : allSides) {
            const std::uint32_t member = openings[i].bounds[side];
            const Length overlay = all.overlays[i][side];
            const bool isInset = all.fits[i][side] == Fit::Inset;
            Neighbour& neighbour = all.neighbours[i][side];
            neighbour.member = member;
            neighbour.gap = isInset ? -overlay : widthOf(all.members[member]) - overlay;
        }
}

void addSpacer(Arrangement& all, const Pair& pair) {
    const auto& [f, member, gap, along] = pair;
    if (isBuilt(member.kind) && (all.fits[f.lower][sideOfLower(member.kind)] == Fit::Inset ||
                                 all.fits[f.upper][sideOfUpper(member.kind)] == Fit::Inset))
        return;
    // Set in its place: to copy it from a temporary takes longer than all the rest of a facing.
    Spacer& spacer = all.spacers.emplace_back();
    spacer.lower = f.lower;
    spacer.upper = f.upper;
    spacer.member = f.member;
    spacer.width = gap;
    spacer.along = along;
}

} // namespace

void setNeighbours(Arrangement& all) {
    setOwnGaps(all);
    all.spacers.reserve(all.facing.size());
    for (const Facing& f : all.facing) {
        MemberPlan& member = all.members[f.member];
        const Side ofLower = sideOfLower(member.kind), ofUpper = sideOfUpper(member.kind);
        const Pair pair{f, member, between(all, member, f.lower, f.upper),
                        commonStretch(all, member.kind, f.lower, f.upper)};
        if (pair.along.size() <= nothing)
            continue;
        introduce(all, pair, f.lower, ofLower, f.upper);
        introduce(all, pair, f.upper, ofUpper, f.lower);
        widen(member, widthOf(member) - hidden(all, member, f.lower, ofLower) -
                          hidden(all, member, f.upper, ofUpper));
        addSpacer(all, pair);
    }
}

void setStops(Arrangement& all) {
    std::vector<bool> frontsAtBothSides(all.members.size());
    for (std::size_t i = 0; i < all.members.size(); ++i)
        frontsAtBothSides[i] = all.members[i].hasFronts;
    for (std::uint32_t i = 0; i < all.rects.size(); ++i)
        for (Side side : allSides) {
            const std::uint32_t m = all.layout.openings[i].bounds[side];
            if (frontsAtBothSides[m])
                continue;
            MemberPlan& member = all.members[m];
            const Length width = widthOf(member), overlay = all.overlays[i][side];
            widen(member, width - hidden(all, member, i, side));
            if (isOuter(member.kind) && all.fits[i][side] != Fit::Inset)
                all.stops.push_back({i, side, width - overlay, overlay});
        }
}

} // namespace frontwright
