#include "core/findings/remedying_fits.h"

#include "core/edits/choices.h"
#include "core/lengths/length.h"
#include "core/plan/banks.h"
#include "core/plan/facing.h"

#include <algorithm>

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

void proposeForPair(const Search& search, const Between& pair) {
    const Length leastGap = search.project.limits.leastGap;
    const Length overlay = search.down((widthOf(pair.member) - leastGap).half());
    if (overlay > nothing) {
        const SideFit fit{Fit::Overlay, overlay};
        const std::string amount = search.say(overlay);
        search.propose(phrase("Make the overlays between %1 and %2 %3", pair.firstName(),
                              pair.secondName(), amount),
                       setFits(pair.both(fit)));
        search.forCase.push_back({phrase("Make all such overlays of the case %1", amount),
                                  setFits(pair.bothOfCase(fit))});
    }
    search.propose(phrase("Leave a gap of %1 between %2 and %3", search.say(leastGap),
                          pair.firstName(), pair.secondName()),
                   setFits(pair.both({Fit::Gap, leastGap})));
}

/// Two fronts that meet in other ways: the one or the other is drawn back past the other.
void proposeSmaller(const Search& search, const FrontPlan& front, const CaseRect& common) {
    const Length leastGap = search.project.limits.leastGap;
    for (const Side side : allSides) {
        const Length overlap = isLeftOrRight(side) ? common.width() : common.height();
        const Length overlay = search.down(front.overlay[side] - overlap - leastGap);
        if (front.fit[side] == Fit::Inset || overlay <= nothing)
            continue;
        search.propose(makeOverlay(side, label(search.project, front), search.say(overlay)).ofFront,
                       setFits({{{front.opening}, side, {Fit::Overlay, overlay}}}));
    }
}

void proposeInsetGap(const Search& search, Side side) {
    const Length gap = search.up(search.project.limits.leastGap);
    proposeForSide(search, makeGap(side, search.name(), search.say(gap)), side, {Fit::Inset, gap});
}

/// The spacers down the finding's bank.
std::vector<Between> downTheBank(const Search& search, std::vector<Length>& widths) {
    std::vector<Between> pairs;
    for (const Spacer& spacer : search.plan.spacers) {
        const FrontPlan& lower = search.plan.fronts[spacer.lower];
        const FrontPlan& upper = search.plan.fronts[spacer.upper];
        const MemberPlan& member = search.plan.members[spacer.member];
        if (isUpright(member.kind) || lower.bank != search.front.bank || upper.bank != lower.bank)
            continue;
        pairs.push_back({search, lower, upper, member});
        widths.push_back(spacer.width);
    }
    return pairs;
}

/// The commonest first, then the widest, then the narrowest.
std::vector<Length> gapsToTry(std::vector<Length> widths) {
    std::sort(widths.begin(), widths.end());
    std::vector<Length> tried{widths.front()};
    std::ptrdiff_t most = 0;
    for (const Length width : widths)
        if (const auto n = std::count(widths.begin(), widths.end(), width); n >= most) {
            most = n;
            tried.front() = width;
        }
    for (const Length width : {widths.back(), widths.front()})
        if (std::find(tried.begin(), tried.end(), width) == tried.end())
            tried.push_back(width);
    return tried;
}

void proposeCaseFits(const Search& search) {
    std::vector<OpeningId> bank;
    for (const FrontPlan& front : search.plan.fronts)
        if (front.bank == search.front.bank)
            bank.push_back(front.opening);
    search.propose(
        phrase("Let the gaps of bank %1 follow the case", bankLetters(search.front.bank)),
        [bank](const Project& project) {
            Result<Project> changed(project);
            for (const OpeningId opening : bank)
                for (const Side side : {Side::Bottom, Side::Top})
                    if (changed.ok())
                        changed = clearFrontFit(changed.value(), opening, side);
            return changed;
        });
}

void proposeEvenGap(const Search& search, const std::vector<Between>& pairs,
                    const std::vector<Length>& widths, Length gap) {
    std::vector<NewFit> fits;
    for (std::size_t i = 0; i < pairs.size(); ++i)
        if (widths[i] != gap)
            for (const NewFit& fit : pairs[i].both({Fit::Gap, gap}))
                fits.push_back(fit);
    search.propose(
        phrase("Make all gaps of bank %1 %2", bankLetters(search.front.bank), search.say(gap)),
        setFits(std::move(fits)));
}

void proposeOverlay(const Search& search, Side side, Length overlay) {
    if (overlay > nothing)
        proposeForSide(search, makeOverlay(side, search.name(), search.say(overlay)), side,
                       {Fit::Overlay, overlay});
}

} // namespace

void forGap(const Search& search) {
    const Whereabouts& where = search.finding.where;
    if (!where.other) {
        if (where.side)
            proposeInsetGap(search, *where.side);
        return;
    }
    if (const auto pair = between(search, *where.opening, *where.other))
        return proposeForPair(search, *pair);
    const FrontPlan* other = search.plan.frontOf(*where.other);
    if (other == nullptr)
        return;
    const CaseRect common = search.front.rect.common(other->rect);
    proposeSmaller(search, search.front, common);
    proposeSmaller(search, *other, common);
}

void forUnevenGaps(const Search& search) {
    std::vector<Length> widths;
    const std::vector<Between> pairs = downTheBank(search, widths);
    if (pairs.empty())
        return;
    proposeCaseFits(search);
    for (const Length gap : gapsToTry(widths))
        proposeEvenGap(search, pairs, widths, gap);
}

void forOverlay(const Search& search) {
    if (!search.finding.where.side)
        return;
    const Side side = *search.finding.where.side;
    const FrontPlan& front = search.front;
    if (search.finding.code == FindingCode::FrontOffCase)
        return proposeOverlay(search, side, front.overlay[side] - search.finding.figures[0]);
    const SideFit& ofCase = search.project.fronts.fit[side];
    if (ofCase.fit == Fit::Overlay)
        proposeOverlay(search, side, ofCase.amount);
    for (const int steps : {4, 2, 1})
        proposeOverlay(search, side, search.grid() * steps);
}

} // namespace frontwright::remedying
