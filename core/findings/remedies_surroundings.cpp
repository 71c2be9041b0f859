#include "core/edits/divisions.h"
#include "core/findings/remedying_fits.h"
#include "core/plan/banks.h"

#include <algorithm>

namespace frontwright::remedying {

namespace {

constexpr Length nothing{};

constexpr PerSide<Text> keepInside{
    text("Keep the fronts at the case's left side %1 inside its edge"),
    text("Keep the fronts at the case's right side %1 inside its edge"),
    text("Keep the fronts at the case's bottom %1 inside its edge"),
    text("Keep the fronts at the case's top %1 inside its edge")};

/// Every front that lies at that side of the case.
std::vector<NewFit> alongTheEdge(const Search& search, Side side, SideFit fit) {
    std::vector<NewFit> fits;
    for (const FrontPlan& front : search.plan.fronts)
        if (front.neighbours[side].member == search.front.neighbours[side].member &&
            front.fit[side] != Fit::Inset)
            fits.push_back({{front.opening}, side, fit});
    return fits;
}

/// The bank's openings from the bottom up, each with the size that makes its step whole.
struct NewSize {
    OpeningId opening;
    Length height;
};
std::vector<NewSize> wholeSteps(const Search& search, Length pitch) {
    std::vector<NewSize> sizes;
    for (auto front = search.plan.fronts.rbegin(); front != search.plan.fronts.rend(); ++front) {
        if (front->bank != search.front.bank || !front->step)
            continue;
        const std::int64_t p = pitch.nanometres();
        const std::int64_t count =
            std::max<std::int64_t>(1, (front->step->nanometres() + p / 2) / p);
        sizes.push_back(
            {front->opening, front->openingRect.height() + count * pitch - *front->step});
    }
    return sizes;
}

} // namespace

void forSurround(const Search& search) {
    const auto side = search.finding.where.side;
    if (!side || search.front.fit[*side] == Fit::Inset)
        return;
    const auto& [distance, gap, toEdge, past] = search.finding.figures;
    const Length inside = gap - past;
    if (inside < nothing)
        return;
    const SideFit fit{Fit::Gap, inside};
    search.propose(Phrase(keepInside[*side], {search.say(inside)}),
                   setFits(alongTheEdge(search, *side, fit)));
    search.propose(makeGap(*side, search.name(), search.say(inside)).ofFront,
                   setFits({{{search.front.opening}, *side, fit}}));
}

void forStep(const Search& search) {
    const Length pitch = search.finding.figures[1];
    search.propose(phrase("Step the fronts of bank %1 by whole pitches of %2",
                          bankLetters(search.front.bank), search.say(pitch)),
                   [sizes = wholeSteps(search, pitch)](const Project& project) {
                       Result<Project> changed(project);
                       for (const NewSize& size : sizes)
                           if (changed.ok())
                               changed = setOpeningSize(changed.value(), size.opening,
                                                        Direction::Rows, size.height);
                       return changed;
                   });
}

} // namespace frontwright::remedying
