#include "core/edits/placed_part.h"

namespace frontwright {
namespace {

/// Centres of the other holes of a front, in the case.
std::vector<CasePoint> otherHoles(const FrontPlan& front, const PlacedPart& part) {
    std::vector<CasePoint> holes;
    for (std::uint32_t i = 0; i < front.mounting.holes.size(); ++i)
        if (part.kind != PlacedPart::Kind::MountingHole || i != part.index)
            holes.push_back({front.box.origin.x + front.mounting.holes[i].at.x,
                             front.box.origin.y + front.mounting.holes[i].at.y});
    if (!front.hardware)
        return holes;
    for (std::uint32_t i = 0; i < front.hardware->holes.size(); ++i)
        if (part.kind != PlacedPart::Kind::Handle || handleOfHole(*front.hardware, i) != part.index)
            holes.push_back({front.rect.left + front.hardware->holes[i].x,
                             front.rect.bottom + front.hardware->holes[i].y});
    return holes;
}

class Distances {
public:
    explicit Distances(CasePoint centre) : m_centre(centre) {}

    void add(PartDistance::To to, Side side, Length place) {
        const bool across = isLeftOrRight(side);
        const Length step = place - (across ? m_centre.x : m_centre.y);
        const bool forward = side == Side::Right || side == Side::Top;
        const CasePoint end = across ? CasePoint{place, m_centre.y} : CasePoint{m_centre.x, place};
        m_all.push_back({to, side, end, forward ? step : -step});
    }
    void addEdges(PartDistance::To to, const CaseRect& rect) {
        add(to, Side::Left, rect.left);
        add(to, Side::Right, rect.right);
        add(to, Side::Bottom, rect.bottom);
        add(to, Side::Top, rect.top);
    }
    /// A hole is beside another where it lies more across than up or down.
    void addNearest(const std::vector<CasePoint>& holes) {
        const CasePoint* beside = nullptr;
        const CasePoint* upright = nullptr;
        for (const CasePoint& hole : holes) {
            const Length dx = (hole.x - m_centre.x).magnitude();
            const Length dy = (hole.y - m_centre.y).magnitude();
            if (dx > dy && (!beside || dx < (beside->x - m_centre.x).magnitude()))
                beside = &hole;
            if (dy >= dx && !dy.isZero() &&
                (!upright || dy < (upright->y - m_centre.y).magnitude()))
                upright = &hole;
        }
        if (beside)
            add(PartDistance::To::Hole, beside->x < m_centre.x ? Side::Left : Side::Right,
                beside->x);
        if (upright)
            add(PartDistance::To::Hole, upright->y < m_centre.y ? Side::Bottom : Side::Top,
                upright->y);
    }
    [[nodiscard]] std::vector<PartDistance> all() && { return std::move(m_all); }

private:
    CasePoint m_centre;
    std::vector<PartDistance> m_all;
};

} // namespace

std::vector<PartDistance> distancesOf(const Plan& plan, const PlacedPart& part) {
    const auto centre = centreOf(plan, part);
    if (!centre)
        return {};
    const FrontPlan& front = *plan.frontOf(part.opening);
    const BoxPlan& box = front.box;
    Distances distances(*centre);
    distances.addEdges(PartDistance::To::FrontEdge, front.rect);
    if (!box.wall.isEmpty())
        distances.addEdges(
            PartDistance::To::BoxWall,
            {box.origin.x, box.origin.y, box.origin.x + box.width, box.origin.y + box.height});
    if (part.kind == PlacedPart::Kind::MountingHole && box.bottomTop > Length{})
        distances.add(PartDistance::To::Bottom, Side::Bottom, box.origin.y + box.bottomTop);
    distances.addNearest(otherHoles(front, part));
    return std::move(distances).all();
}

} // namespace frontwright
