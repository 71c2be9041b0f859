#include "core/drawings/elevation_parts.h"
#include "core/drawings/tones.h"
#include "core/plan/fillers.h"

#include <array>
#include <span>
#include <vector>

namespace frontwright {

namespace {

/// Takes a stretch out of others; it may cover them, cut them in two or miss them.
void takeOut(std::vector<Span>& spans, Span hidden) {
    for (std::size_t i = spans.size(); i-- > 0;) {
        const Span s = spans[i];
        const Span common = s.common(hidden);
        if (common.high <= common.low)
            continue;
        const bool below = s.low < common.low;
        const bool above = common.high < s.high;
        const auto at = spans.begin() + static_cast<std::ptrdiff_t>(i);
        if (below && above) {
            spans[i].high = common.low;
            spans.insert(at + 1, {common.high, s.high});
        } else if (below) {
            spans[i].high = common.low;
        } else if (above) {
            spans[i].low = common.high;
        } else {
            spans.erase(at);
        }
    }
}

/// One side of a rectangle: where it lies, and from where to where it runs.
struct Edge {
    Side side = Side::Left;
    Length at;
    Span along;
};
Edge edgeOf(const CaseRect& rect, Side side) {
    switch (side) {
    case Side::Left:
        return {side, rect.left, rect.upright()};
    case Side::Right:
        return {side, rect.right, rect.upright()};
    case Side::Bottom:
        return {side, rect.bottom, rect.across()};
    case Side::Top:
        break;
    }
    return {side, rect.top, rect.across()};
}

void drawEdge(Sketch& sketch, Layer layer, const Edge& edge, Span along, const Part& part) {
    const CasePoint from =
        isLeftOrRight(edge.side) ? CasePoint{edge.at, along.low} : CasePoint{along.low, edge.at};
    const CasePoint to =
        isLeftOrRight(edge.side) ? CasePoint{edge.at, along.high} : CasePoint{along.high, edge.at};
    sketch.line(layer, toMm(from), toMm(to), part);
}

/// The part of an edge that lies behind a rectangle; a border does not hide.
Span hiddenBy(const Edge& edge, const CaseRect& rect) {
    const Span across = isLeftOrRight(edge.side) ? rect.across() : rect.upright();
    const Span along = isLeftOrRight(edge.side) ? rect.upright() : rect.across();
    if (across.low < edge.at && edge.at < across.high)
        return edge.along.common(along);
    return {edge.along.high, edge.along.low};
}

/// Fronts by the members beside them: only those can hide a member's end.
class FrontsByMember {
public:
    explicit FrontsByMember(const Plan& plan) : m_first(plan.members.size() + 1, 0) {
        for (const FrontPlan& front : plan.fronts)
            for (const Side side : allSides)
                ++m_first[front.neighbours[side].member + 1];
        for (std::size_t i = 1; i < m_first.size(); ++i)
            m_first[i] += m_first[i - 1];
        m_fronts.resize(m_first.back());
        std::vector<std::uint32_t> next(m_first.begin(), m_first.end() - 1);
        for (std::uint32_t i = 0; i < plan.fronts.size(); ++i)
            for (const Side side : allSides)
                m_fronts[next[plan.fronts[i].neighbours[side].member]++] = i;
    }
    [[nodiscard]] std::span<const std::uint32_t> of(std::size_t member) const {
        return std::span(m_fronts).subspan(m_first[member], m_first[member + 1] - m_first[member]);
    }

private:
    std::vector<std::uint32_t> m_first; ///< where a member's fronts begin
    std::vector<std::uint32_t> m_fronts;
};

bool isOnOutline(const Edge& edge, const CaseRect& outline) {
    return edge.at == edgeOf(outline, edge.side).at;
}

void drawEnds(Sketch& sketch, const Plan& plan, const MemberPlan& member,
              std::span<const std::uint32_t> fronts, std::vector<Span>& seen) {
    const auto ends = isUpright(member.kind) ? std::array{Side::Bottom, Side::Top}
                                             : std::array{Side::Left, Side::Right};
    for (const Side side : ends) {
        const Edge edge = edgeOf(member.rect, side);
        if (isOnOutline(edge, plan.outline))
            continue;
        seen.assign({edge.along});
        for (const std::uint32_t i : fronts)
            takeOut(seen, hiddenBy(edge, plan.fronts[i].rect));
        for (const Span& span : seen)
            drawEdge(sketch, Layer::MemberEdge, edge, span, {{}, member.id, "member end"});
    }
}

} // namespace

void drawMembers(Sketch& sketch, const Plan& plan) {
    const FrontsByMember fronts(plan);
    sketch.expect(2 * plan.members.size() + 1);
    std::vector<Span> seen;
    for (std::size_t i = 0; i < plan.members.size(); ++i)
        if (isBuilt(plan.members[i].kind))
            drawEnds(sketch, plan, plan.members[i], fronts.of(i), seen);
    sketch.rectangle(Layer::CaseOutline, toMm(plan.outline), {{}, {}, "case outline"});
}

void drawFillers(Sketch& sketch, const Plan& plan) {
    constexpr double strength = 0.45; // quiet, and seen on dark ground as on white
    const Tone wood =
        thin(toneOf(plan.wood != nullptr && plan.wood->tone ? *plan.wood->tone : middlingBrown),
             strength);
    for (const Filler& filler : plan.fillers) {
        const MemberId id = plan.members[filler.member].id;
        const BoxMm box = toMm(placeOf(plan, filler));
        sketch.wash(cornersOf(box), wood, {{}, id, "filler strip"});
        const bool isStile = isUpright(plan.members[filler.member].kind);
        const Part end{{}, id, "filler strip end"};
        const auto c = cornersOf(box); // round from the lower left
        sketch.line(Layer::MemberEdge, c[0], isStile ? c[1] : c[3], end);
        sketch.line(Layer::MemberEdge, c[2], isStile ? c[3] : c[1], end);
    }
}

void drawOpening(Sketch& sketch, const Plan& plan, const FrontPlan& front) {
    const Part part{front.opening, {}, "opening edge"};
    for (const Side side : allSides) {
        if (!isBuilt(plan.members[front.neighbours[side].member].kind))
            continue;
        const Edge edge = edgeOf(front.openingRect, side);
        const Length fromFront = (edge.at - edgeOf(front.rect, side).at).magnitude();
        if (fromFront.inMillimetres() * sketch.paperScale() < nearestParallel)
            continue; // the front's own edge is drawn there
        const Span hidden = hiddenBy(edge, front.rect);
        if (hidden.low < hidden.high)
            drawEdge(sketch, Layer::OpeningEdge, edge, hidden, part);
        std::vector<Span> seen{edge.along};
        takeOut(seen, hidden);
        for (const Span& span : seen)
            drawEdge(sketch, Layer::MemberEdge, edge, span, part);
    }
}

} // namespace frontwright
