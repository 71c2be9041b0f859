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
Gaps setOwnOverlays(Arrangement& all, const FrontFit& ofCase) {
    Gaps gaps;
    const auto& openings = all.layout.openings;
    all.fits.resize(openings.size());
    all.overlays.resize(openings.size());
    for (std::size_t i = 0; i < openings.size(); ++i)
        for (Side side : allSides) {
            const SideFit& fit = fitOf(*openings[i].opening, ofCase, side);
            all.fits[i][side] = fit.fit;
            all.overlays[i][side] = overlayOf(fit, widthOf(all.members[openings[i].bounds[side]]));
            if (fit.fit != Fit::Gap)
                continue;
            gaps.resize(openings.size());
            gaps[i][side].gap = fit.amount;
        }
    return gaps;
}

/// A front's side across a member from another one.
struct Facer {
    Fit fit;
    Length& overlay;
    Asked& asked;
    [[nodiscard]] bool asksForGap() const { return fit == Fit::Gap; }
    /// What it takes of the member; nothing where it lies in its opening.
    [[nodiscard]] Length covered() const { return greatest(Length{}, overlay); }
    void coverAtMost(Length most) const {
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

void setOverlays(Arrangement& all, const FrontFit& ofCase) {
    Gaps gaps = setOwnOverlays(all, ofCase);
    if (gaps.empty())
        return;
    const auto facer = [&](std::uint32_t i, Side side) {
        return Facer{all.fits[i][side], all.overlays[i][side], gaps[i][side]};
    };
    for (const Facing& pair : all.facing) {
        const MemberPlan& member = all.members[pair.member];
        share(widthOf(member), facer(pair.lower, sideOfLower(member.kind)),
              facer(pair.upper, sideOfUpper(member.kind)));
    }
}

void setRects(Arrangement& all) {
    const auto& openings = all.layout.openings;
    all.rects.resize(openings.size());
    for (std::size_t i = 0; i < openings.size(); ++i) {
        const CaseRect& opening = openings[i].rect;
        const PerSide<Length>& overlay = all.overlays[i];
        all.rects[i] = {opening.left - overlay.left, opening.bottom - overlay.bottom,
                        opening.right + overlay.right, opening.top + overlay.top};
    }
}

} // namespace frontwright
