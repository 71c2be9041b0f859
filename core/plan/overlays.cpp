#include "core/plan/overlays.h"

namespace frontwright {
namespace {

/// What a side of Fit::Gap asks for, and whether it has met a facing front that bounds it.
struct Asked {
    Length gap;
    bool isBounded = false;
};
/// One for each front's side; only those of Fit::Gap mean something.
using Gaps = std::vector<PerSide<Asked>>;

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
            gaps[i][side].gap = fit.amount;
        }
    }
    return gaps;
}

/// A front's side across a member from another one.
struct Facer {
    FrontPlace& front;
    Side side;
    Asked& asked;
    [[nodiscard]] bool asksForGap() const { return front.fit[side] == Fit::Gap; }
    /// What it takes of the member; nothing where it lies in its opening.
    [[nodiscard]] Length covered() const { return greatest(Length{}, front.overlay[side]); }
    void coverAtMost(Length most) const {
        Length& overlay = front.overlay[side];
        overlay = asked.isBounded ? least(overlay, most) : most;
        asked.isBounded = true;
    }
};

void share(Length member, const Facer& lower, const Facer& upper) {
    if (lower.asksForGap() && upper.asksForGap()) {
        const Length rest = member - greatest(lower.asked.gap, upper.asked.gap);
        lower.coverAtMost(rest.half());
        upper.coverAtMost(rest - rest.half());
    } else if (lower.asksForGap()) {
        lower.coverAtMost(member - lower.asked.gap - upper.covered());
    } else if (upper.asksForGap()) {
        upper.coverAtMost(member - upper.asked.gap - lower.covered());
    }
}

} // namespace

void setOverlays(Arrangement& all, const Layout& layout, const FrontFit& ofCase,
                 const std::vector<Facing>& facing) {
    Gaps gaps = setOwnOverlays(all, layout, ofCase);
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
