#include "core/plan/overlays.h"

namespace frontwright {
namespace {

/// The gaps asked for, one for each front's side; only those of Fit::Gap mean something.
using Gaps = std::vector<PerSide<Length>>;

const SideFit& fitOf(const Opening& opening, const FrontFit& ofCase, Side side) {
    const auto& own = opening.choices.fit[side];
    return own ? *own : ofCase[side];
}

/// A gap is taken as if the far side of its member were empty.
Length overlayOf(const SideFit& fit, Length member) {
    switch (fit.fit) {
    case Fit::Overlay:
        return fit.amount;
    case Fit::Inset:
        return -fit.amount.length;
    case Fit::Gap:
        break;
    }
    return member - fit.amount;
}

/// Returns the gaps asked for; empty where no front asks for one.
Gaps setOwnOverlays(Arrangement& all, const Layout& layout, const FrontFit& ofCase) {
    Gaps gaps;
    for (std::size_t i = 0; i < all.fronts.size(); ++i) {
        FrontPlace& front = all.fronts[i];
        for (Side side : allSides) {
            const SideFit& fit = fitOf(*layout.openings[i].opening, ofCase, side);
            const MemberPlan& member = all.members[front.neighbours[side].member];
            front.fit[side] = fit.fit;
            front.overlay[side] = overlayOf(fit, widthOf(member));
            if (fit.fit != Fit::Gap)
                continue;
            gaps.resize(all.fronts.size());
            gaps[i][side] = fit.amount;
        }
    }
    return gaps;
}

/// A front's side across a member from another one.
struct Facer {
    FrontPlace& front;
    Side side;
    Length gap;
    [[nodiscard]] bool asksForGap() const { return front.fit[side] == Fit::Gap; }
    [[nodiscard]] Length overlay() const { return front.overlay[side]; }
    void coverAtMost(Length most) const { front.overlay[side] = least(front.overlay[side], most); }
};

/// Overlays of Fit::Gap begin at the most that an empty far side leaves and only grow less.
void share(Length member, const Facer& lower, const Facer& upper) {
    if (lower.asksForGap() && upper.asksForGap()) {
        const Length covered = member - greatest(lower.gap, upper.gap);
        lower.coverAtMost(covered.half());
        upper.coverAtMost(covered - covered.half());
    } else if (lower.asksForGap()) {
        lower.coverAtMost(member - lower.gap - upper.overlay());
    } else if (upper.asksForGap()) {
        upper.coverAtMost(member - upper.gap - lower.overlay());
    }
}

} // namespace

void setOverlays(Arrangement& all, const Layout& layout, const FrontFit& ofCase,
                 const std::vector<Facing>& facing) {
    const Gaps gaps = setOwnOverlays(all, layout, ofCase);
    if (gaps.empty())
        return;
    for (const Facing& pair : facing) {
        const MemberPlan& member = all.members[pair.member];
        const Side ofLower = sideOfLower(member.kind), ofUpper = sideOfUpper(member.kind);
        share(widthOf(member), {all.fronts[pair.lower], ofLower, gaps[pair.lower][ofLower]},
              {all.fronts[pair.upper], ofUpper, gaps[pair.upper][ofUpper]});
    }
}

void setRects(Arrangement& all) {
    for (FrontPlace& front : all.fronts) {
        const CaseRect& opening = front.openingRect;
        front.rect = {opening.left - front.overlay.left, opening.bottom - front.overlay.bottom,
                      opening.right + front.overlay.right, opening.top + front.overlay.top};
    }
}

} // namespace frontwright
