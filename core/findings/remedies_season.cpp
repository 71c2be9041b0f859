#include "core/findings/remedying_fits.h"

#include "core/edits/choices.h"
#include "core/findings/remedying_holes.h"
#include "core/plan/screw_rows.h"

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

/// "screw row 2, 5 1/4 in above the box's lower edge"
Phrase rowWords(const Search& search) {
    const FrontSeason& season = *search.front.season;
    const std::uint32_t row = rowOfLargestHole(season);
    const std::string number = std::to_string(row + 1), at = search.say(season.rows[row].at);
    return chosenStock(search.project, search.front).grain == Grain::AlongHeight
               ? phrase("screw row %1, %2 from the box's left side", number, at)
               : phrase("screw row %1, %2 above the box's lower edge", number, at);
}

/// All holes of the front are made larger, for a document tells one size for all of them. A hole
/// that the head goes through is no cure.
void proposeDrill(const Search& search) {
    const Length drill = search.finding.figures[3];
    const std::string now = search.say(search.front.mounting.clearanceHole);
    const Phrase row = rowWords(search);
    proposeHoles(search, drill,
                 {phrase("Drill all clearance holes of %1 %2 instead of %3, for %4", search.name(),
                         search.say(drill), now, row),
                  phrase("Drill all clearance holes of the whole case %1 instead of %2, for %3, %4",
                         search.say(drill), now, search.name(), row)});
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
