#include "core/plan/reveals.h"

namespace frontwright {

namespace {

class Ranges {
public:
    void add(RevealKind kind, const RevealAt& reveal) {
        RevealRange& range = m_ranges[static_cast<std::size_t>(kind)];
        if (range.count == 0 || reveal.width < range.smallest.width)
            range.smallest = reveal;
        if (range.count == 0 || reveal.width > range.largest.width)
            range.largest = reveal;
        range.kind = kind;
        ++range.count;
    }
    [[nodiscard]] std::vector<RevealRange> present() const {
        std::vector<RevealRange> result;
        for (const RevealRange& range : m_ranges)
            if (range.count > 0)
                result.push_back(range);
        return result;
    }

private:
    std::array<RevealRange, allRevealKinds.size()> m_ranges;
};

} // namespace

std::vector<RevealRange> revealRanges(const Plan& plan) {
    Ranges ranges;
    for (const Spacer& spacer : plan.spacers) {
        const Side side = isUpright(plan.members[spacer.member].kind) ? Side::Right : Side::Top;
        ranges.add(RevealKind::BetweenFronts, {spacer.lower, side, spacer.upper, spacer.width});
    }
    for (std::uint32_t i = 0; i < plan.fronts.size(); ++i) {
        const FrontPlan& front = plan.fronts[i];
        for (const Side side : allSides) {
            const Neighbour& neighbour = front.neighbours[side];
            if (front.fit[side] == Fit::Inset)
                ranges.add(RevealKind::RoundInset, {i, side, std::nullopt, neighbour.gap});
            else if (isOuter(plan.members[neighbour.member].kind))
                ranges.add(RevealKind::AtCaseEdge, {i, side, std::nullopt, neighbour.gap});
        }
    }
    return ranges.present();
}

} // namespace frontwright
