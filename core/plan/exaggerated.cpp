#include "core/plan/exaggerated.h"

#include "core/plan/facing.h"

#include <algorithm>

namespace frontwright {

namespace {

/// What a stretch of the case along one axis is made of, in mm.
struct Need {
    double room = 0;   ///< with the reveals exaggerated and the fronts as planned
    double fronts = 0; ///< of it: the fronts
};

/// One end of an opening's stretch: from the middle of the member to the front's edge.
double edgeRoom(const Plan& plan, const FrontPlan& front, Side side, double times) {
    const MemberPlan& member = plan.members[front.neighbours[side].member];
    const double wood = widthOf(member).inMillimetres() * (isOuter(member.kind) ? 1 : 0.5);
    const double overlay = front.overlay[side].inMillimetres();
    return front.fit[side] == Fit::Inset ? wood - times * overlay : times * (wood - overlay);
}

class Places {
public:
    Places(const Project& project, const Plan& plan, double times) : m_plan(plan), m_times(times) {
        const Region& root = *project.casework.divisions;
        m_places.reveals = times;
        m_places.outline = {PointMm(0, 0), PointMm(needOf(root, Direction::Columns).room,
                                                   needOf(root, Direction::Rows).room)};
        m_places.fronts.resize(plan.fronts.size());
        place(root, m_places.outline);
    }
    FrontPlaces take() { return std::move(m_places); }

private:
    [[nodiscard]] std::size_t indexOf(const FrontPlan& front) const {
        return static_cast<std::size_t>(&front - m_plan.fronts.data());
    }

    /// An open space keeps its size, up to the middles of the members beside it.
    [[nodiscard]] Need needOf(const SpacePlan& space, bool isAcross) const {
        const auto wood = [&](Side side) {
            const MemberPlan& member = m_plan.members[space.bounds[side]];
            return widthOf(member).inMillimetres() * (isOuter(member.kind) ? 1 : 0.5);
        };
        const double size = (isAcross ? space.rect.width() : space.rect.height()).inMillimetres();
        return {size + wood(isAcross ? Side::Left : Side::Bottom) +
                    wood(isAcross ? Side::Right : Side::Top),
                size};
    }

    [[nodiscard]] Need needOf(const FrontPlan& front, bool isAcross) const {
        const double size = (isAcross ? front.rect.width() : front.rect.height()).inMillimetres();
        return {size + edgeRoom(m_plan, front, isAcross ? Side::Left : Side::Bottom, m_times) +
                    edgeRoom(m_plan, front, isAcross ? Side::Right : Side::Top, m_times),
                size};
    }

    /// Along x for columns, along y for rows.
    [[nodiscard]] Need needOf(const Region& region, Direction along) const {
        if (const auto* opening = std::get_if<Opening>(&region.content)) {
            const bool isAcross = along == Direction::Columns;
            const FrontPlan* front = m_plan.frontOf(opening->id);
            return front ? needOf(*front, isAcross)
                         : needOf(*m_plan.spaceOf(opening->id), isAcross);
        }
        const auto& split = std::get<Split>(region.content);
        Need whole;
        for (const Child& child : split.children) {
            const Need need = needOf(*child.region, along);
            if (split.direction == along)
                whole = {whole.room + need.room, whole.fronts + need.fronts};
            else if (need.room > whole.room)
                whole = need;
        }
        return whole;
    }

    void place(const Region& region, const BoxMm& room) {
        if (const auto* opening = std::get_if<Opening>(&region.content))
            return placeFront(m_plan.frontOf(opening->id), room);
        const auto& split = std::get<Split>(region.content);
        const int axis = split.direction == Direction::Columns ? 0 : 1;
        const Need whole = needOf(region, split.direction);
        const double spare = room.sizes()[axis] - whole.room;
        double at = axis == 0 ? room.min().x() : room.max().y(); // rows are listed from the top
        for (const Child& child : split.children) {
            const Need need = needOf(*child.region, split.direction);
            const double size =
                need.room + (whole.fronts > 0 ? spare * need.fronts / whole.fronts : 0);
            BoxMm part = room;
            part.min()[axis] = axis == 0 ? at : at - size;
            part.max()[axis] = axis == 0 ? at + size : at;
            at += axis == 0 ? size : -size;
            place(*child.region, part);
        }
    }

    /// null: an open space
    void placeFront(const FrontPlan* front, const BoxMm& room) {
        if (!front)
            return;
        const auto edge = [&](Side side) { return edgeRoom(m_plan, *front, side, m_times); };
        m_places.fronts[indexOf(*front)] = {
            room.min() + PointMm(edge(Side::Left), edge(Side::Bottom)),
            room.max() - PointMm(edge(Side::Right), edge(Side::Top))};
    }

    const Plan& m_plan;
    double m_times;
    FrontPlaces m_places;
};

} // namespace

FrontPlaces placesAsPlanned(const Plan& plan) {
    FrontPlaces places;
    places.outline = toMm(plan.outline);
    for (const FrontPlan& front : plan.fronts)
        places.fronts.push_back(toMm(front.rect));
    return places;
}

FrontPlaces placesExaggerated(const Project& project, const Plan& plan, double times) {
    return Places(project, plan, times).take();
}

} // namespace frontwright
