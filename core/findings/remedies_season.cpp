#include "core/findings/remedying_fits.h"

#include "core/edits/choices.h"

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

/// Leaves the least gap in the wettest air: what the gap must be in the air in which it is cut.
Length bestGap(const Search& search) {
    const auto& [gap, season, leastGap, unused] = search.finding.figures;
    return search.up(leastGap + gap - season);
}

void proposeGap(const Search& search) {
    const Whereabouts& where = search.finding.where;
    const Length gap = bestGap(search);
    if (where.other) {
        const auto pair = between(search, *where.opening, *where.other);
        if (!pair)
            return;
        const SideFit fit{Fit::Gap, gap};
        search.propose(phrase("Leave a gap of %1 between %2 and %3 when cut", search.say(gap),
                              pair->firstName(), pair->secondName()),
                       setFits(pair->both(fit)));
        search.forCase.push_back(
            {phrase("Leave a gap of %1 there in all the case", search.say(gap)),
             setFits(pair->bothOfCase(fit))});
        return;
    }
    if (where.side)
        proposeForSide(search, makeGapWhenCut(*where.side, search.name(), search.say(gap)),
                       *where.side, {Fit::Inset, gap});
}

void proposeOverlay(const Search& search) {
    if (!search.finding.where.side)
        return;
    const Side side = *search.finding.where.side;
    const Length lost = search.finding.figures[0] - search.finding.figures[1];
    const SideFit fit{Fit::Overlay, search.up(lost + search.grid())};
    proposeForSide(search, makeOverlayWhenCut(side, search.name(), search.say(fit.amount)), side,
                   fit);
}

/// Quarter-sawn boards move about half as much as flat-sawn ones.
void proposeCut(const Search& search) {
    Stock stock = chosenStock(search.project, search.front);
    if (stock.build == Build::Stable || stock.cut == Cut::QuarterSawn)
        return;
    stock.cut = Cut::QuarterSawn;
    search.propose({phrase("Cut %1 from quarter-sawn boards", search.name()),
                    text("Cut the whole case from quarter-sawn boards")},
                   stock);
}

/// The head must still bear on the wall all round its hole.
void proposeDrill(const Search& search) {
    const Length drill = search.finding.figures[3];
    if (drill >= search.front.mounting.screw->headDiameter)
        return;
    MountingSpec mounting = chosenMounting(search.project, search.front);
    mounting.clearanceHole = WrittenLength(drill);
    search.propose({phrase("Drill the clearance holes of %1 %2", search.name(), search.say(drill)),
                    phrase("Drill the clearance holes of the whole case %1", search.say(drill))},
                   mounting);
}

} // namespace

void forSeason(const Search& search) {
    using enum FindingCode;
    const FindingCode code = search.finding.code;
    if (code == OverlayLost)
        proposeOverlay(search);
    else if (code == ClearanceSmall)
        proposeDrill(search);
    else if (code != GapsGoUneven)
        proposeGap(search);
    proposeCut(search);
}

} // namespace frontwright::remedying
