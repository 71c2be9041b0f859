#include "core/boards/keeper_pieces.h"

#include <algorithm>

namespace frontwright {
namespace {

constexpr std::int64_t mostScrews = 200;

std::vector<Span> interruptionsOf(const KeeperSpec& spec, Span strip, Side side) {
    std::vector<Span> found;
    for (const FastenerToReach& fastener : spec.fasteners) {
        const Length reach = fastener.reach;
        const Length free = reach - reach.half() + spec.allowance.length;
        const Length at = fastener.depth;
        const Span cut = strip.common({at - free, at + free});
        if (fastener.side == side && cut.low < cut.high)
            found.push_back(cut);
    }
    std::sort(found.begin(), found.end(),
              [](Span a, Span b) { return a.low != b.low ? a.low < b.low : a.high < b.high; });
    return found;
}

std::vector<Span> merged(const std::vector<Span>& sorted) {
    std::vector<Span> apart;
    for (const Span cut : sorted) {
        if (!apart.empty() && cut.low <= apart.back().high)
            apart.back().high = greatest(apart.back().high, cut.high);
        else
            apart.push_back(cut);
    }
    return apart;
}

void addPiece(KeeperStrip& strip, const KeeperSpec& spec, Span along) {
    if (along.size() <= Length{})
        return;
    if (along.size() < spec.leastPiece.length)
        strip.leftOut.push_back(along);
    else
        strip.pieces.push_back({along, screwsAlong(along, spec.screwFromEnd, spec.screwSpacing)});
}

/// Steps between the first and the last screw; 0 where one screw is enough.
std::int64_t stepsBetween(Length run, Length spacing) {
    if (run <= Length{})
        return 0;
    if (spacing <= Length{})
        return 1;
    const std::int64_t steps = (run.nanometres() - 1) / spacing.nanometres() + 1;
    return std::min(steps, mostScrews - 1);
}

} // namespace

KeeperStrip keeperStrip(const KeeperSpec& spec, Span strip, Side side) {
    KeeperStrip made;
    made.interruptions = merged(interruptionsOf(spec, strip, side));
    Length from = strip.low;
    for (const Span cut : made.interruptions) {
        addPiece(made, spec, {from, cut.low});
        from = cut.high;
    }
    addPiece(made, spec, {from, strip.high});
    return made;
}

std::vector<Length> screwsAlong(Span piece, Length fromEnd, Length spacing) {
    const Length run = piece.size() - 2 * fromEnd;
    const std::int64_t steps = stepsBetween(run, spacing);
    if (steps == 0)
        return {piece.middle()};
    std::vector<Length> screws;
    for (std::int64_t i = 0; i <= steps; ++i)
        screws.push_back(piece.low + fromEnd +
                         Length::fromNanometres(run.nanometres() * i / steps));
    return screws;
}

} // namespace frontwright
