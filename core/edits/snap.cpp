#include "core/edits/snap.h"

namespace frontwright {

namespace {

Length sizeAlong(const CaseRect& rect, DragAxis axis) {
    return axis == DragAxis::LeftRight ? rect.width() : rect.height();
}

Span across(const CaseRect& rect, DragAxis axis) {
    return axis == DragAxis::LeftRight ? rect.across() : rect.upright();
}

/// Keeps the nearest candidate within the tolerance; at the same distance the first one stays.
class Nearest {
public:
    Nearest(Length wanted, Length tolerance) : m_wanted(wanted), m_reach(tolerance) {}

    void offer(const Snapped& candidate) {
        const Length distance = (candidate.delta - m_wanted).magnitude();
        if (distance > m_reach || (m_best && distance >= (m_best->delta - m_wanted).magnitude()))
            return;
        m_best = candidate;
    }
    [[nodiscard]] const std::optional<Snapped>& best() const { return m_best; }

private:
    Length m_wanted;
    Length m_reach;
    std::optional<Snapped> m_best;
};

void offerEqualSizes(Nearest& nearest, const Plan& plan, const Beside& beside, DragAxis axis) {
    if (beside.before.empty() || beside.after.empty())
        return;
    const FrontPlan& before = plan.fronts[beside.before.front()];
    const FrontPlan& after = plan.fronts[beside.after.front()];
    const Length sizeBefore = sizeAlong(before.openingRect, axis);
    const Length sizeAfter = sizeAlong(after.openingRect, axis);
    nearest.offer({(sizeAfter - sizeBefore).half(), SnapTo::EqualSizes, {}, after.opening});
    for (const FrontPlan& front : plan.fronts) {
        const Length size = sizeAlong(front.openingRect, axis);
        if (front.opening != before.opening)
            nearest.offer({size - sizeBefore, SnapTo::EqualSizes, {}, front.opening});
        if (front.opening != after.opening)
            nearest.offer({sizeAfter - size, SnapTo::EqualSizes, {}, front.opening});
    }
}

void offerLines(Nearest& nearest, const Plan& plan, const MemberPlan& dragged, DragAxis axis) {
    const Span own = across(dragged.rect, axis);
    for (const MemberPlan& member : plan.members) {
        if (member.id == dragged.id || dragAxis(member) != axis)
            continue;
        const Span other = across(member.rect, axis);
        nearest.offer({other.low - own.low, SnapTo::Line, member.id, {}});
        nearest.offer({other.high - own.high, SnapTo::Line, member.id, {}});
    }
}

} // namespace

DragAxis dragAxis(const MemberPlan& member) {
    return isUpright(member.kind) ? DragAxis::LeftRight : DragAxis::UpDown;
}

Beside openingsBeside(const Plan& plan, MemberId id) {
    Beside beside;
    const MemberPlan* member = plan.memberOf(id);
    if (!member)
        return beside;
    const auto index = static_cast<std::uint32_t>(member - plan.members.data());
    const bool upright = dragAxis(*member) == DragAxis::LeftRight;
    for (std::uint32_t i = 0; i < plan.fronts.size(); ++i) {
        const auto& neighbours = plan.fronts[i].neighbours;
        if ((upright ? neighbours.right : neighbours.top).member == index)
            beside.before.push_back(i);
        if ((upright ? neighbours.left : neighbours.bottom).member == index)
            beside.after.push_back(i);
    }
    return beside;
}

Snapped snapDrag(const Plan& plan, MemberId id, Length wanted, Length tolerance, Length grid) {
    const Snapped gridded{onGrid(wanted, grid), SnapTo::Grid, {}, {}};
    const MemberPlan* member = plan.memberOf(id);
    if (!member)
        return gridded;
    const DragAxis axis = dragAxis(*member);
    Nearest equal(wanted, tolerance);
    offerEqualSizes(equal, plan, openingsBeside(plan, id), axis);
    if (equal.best())
        return *equal.best();
    Nearest line(wanted, tolerance);
    offerLines(line, plan, *member, axis);
    return line.best().value_or(gridded);
}

Length onGrid(Length length, Length grid) {
    const std::int64_t step = grid.nanometres();
    const std::int64_t nm = length.nanometres();
    const std::int64_t half = step / 2;
    return Length::fromNanometres((nm >= 0 ? nm + half : nm - half) / step * step);
}

} // namespace frontwright
