#include "core/drawings/elevation_parts.h"

#include <algorithm>

namespace frontwright {

namespace {

/// A stretch less another, which may cover it, cut it in two or miss it.
std::vector<Span> less(const std::vector<Span>& spans, Span hidden) {
    std::vector<Span> rest;
    for (const Span& s : spans) {
        const Span common = s.common(hidden);
        if (common.high <= common.low) {
            rest.push_back(s);
            continue;
        }
        if (s.low < common.low)
            rest.push_back({s.low, common.low});
        if (common.high < s.high)
            rest.push_back({common.high, s.high});
    }
    return rest;
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
std::vector<std::vector<std::uint32_t>> frontsByMember(const Plan& plan) {
    std::vector<std::vector<std::uint32_t>> result(plan.members.size());
    for (std::uint32_t i = 0; i < plan.fronts.size(); ++i)
        for (const Side side : allSides)
            result[plan.fronts[i].neighbours[side].member].push_back(i);
    return result;
}

bool isUpright(MemberKind kind) {
    return kind == MemberKind::Stile || kind == MemberKind::OuterStile;
}

bool isOnOutline(const Edge& edge, const CaseRect& outline) {
    return edge.at == edgeOf(outline, edge.side).at;
}

void drawEnds(Sketch& sketch, const Plan& plan, const MemberPlan& member,
              const std::vector<std::uint32_t>& fronts) {
    const auto ends = isUpright(member.kind) ? std::array{Side::Bottom, Side::Top}
                                             : std::array{Side::Left, Side::Right};
    for (const Side side : ends) {
        const Edge edge = edgeOf(member.rect, side);
        if (isOnOutline(edge, plan.outline))
            continue;
        std::vector<Span> seen{edge.along};
        for (const std::uint32_t i : fronts)
            seen = less(seen, hiddenBy(edge, plan.fronts[i].rect));
        for (const Span& span : seen)
            drawEdge(sketch, Layer::MemberEdge, edge, span, {{}, member.id, "member end"});
    }
}

} // namespace

void drawMembers(Sketch& sketch, const Plan& plan) {
    const auto fronts = frontsByMember(plan);
    for (std::size_t i = 0; i < plan.members.size(); ++i)
        drawEnds(sketch, plan, plan.members[i], fronts[i]);
    sketch.rectangle(Layer::CaseOutline, toMm(plan.outline), {{}, {}, "case outline"});
}

void drawOpening(Sketch& sketch, const FrontPlan& front) {
    const Part part{front.opening, {}, "opening edge"};
    for (const Side side : allSides) {
        const Edge edge = edgeOf(front.openingRect, side);
        const Length fromFront = (edge.at - edgeOf(front.rect, side).at).magnitude();
        if (fromFront.inMillimetres() * sketch.paperScale() < nearestParallel)
            continue; // the front's own edge is drawn there
        const Span hidden = hiddenBy(edge, front.rect);
        if (hidden.low < hidden.high)
            drawEdge(sketch, Layer::OpeningEdge, edge, hidden, part);
        for (const Span& seen : less({edge.along}, hidden))
            drawEdge(sketch, Layer::MemberEdge, edge, seen, part);
    }
}

} // namespace frontwright
