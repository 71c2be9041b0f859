#include "core/edits/part_snap.h"

#include "core/edits/snap.h"

#include <algorithm>

namespace frontwright {
namespace {

using Kind = PlacedPart::Kind;

/// Keeps the nearest candidate within reach; at the same distance the first one stays.
class NearestPlace {
public:
    NearestPlace(Length wanted, Length reach) : m_wanted(wanted), m_reach(reach) {}

    void offer(Length at, PartSnapTo to, std::optional<PlacedPart> like = std::nullopt) {
        const Length distance = (at - m_wanted).magnitude();
        if (m_reach <= Length{} || distance > m_reach ||
            (m_best && distance >= (m_best->at - m_wanted).magnitude()))
            return;
        m_best = PartSnap{at, to, like};
    }
    /// From a corner of the part's own frame.
    [[nodiscard]] PartSnap orGrid(Length origin, Length grid) const {
        if (m_best)
            return *m_best;
        const Length at = grid > Length{} ? origin + onGrid(m_wanted - origin, grid) : m_wanted;
        return {at, PartSnapTo::Grid, std::nullopt};
    }

private:
    Length m_wanted;
    Length m_reach;
    std::optional<PartSnap> m_best;
};

CaseRect wallOf(const FrontPlan& front) {
    const BoxPlan& box = front.box;
    return {box.origin.x, box.origin.y, box.origin.x + box.width, box.origin.y + box.height};
}

/// The corner from which a part's place is measured.
CasePoint cornerFor(const FrontPlan& front, Kind kind) {
    return kind == Kind::MountingHole ? front.box.origin : front.rect.lowerLeft();
}

class Snapping {
public:
    Snapping(const Plan& plan, const PlacedPart& part, const FrontPlan& front, CasePoint start,
             CasePoint wanted, PartReach reach)
        : m_plan(plan),
          m_part(part),
          m_front(front),
          m_start(start),
          m_x(wanted.x, reach.x),
          m_y(wanted.y, reach.y) {}

    SnappedPart snapped(Length grid, Together together) {
        m_x.offer(m_start.x, PartSnapTo::Start);
        m_y.offer(m_start.y, PartSnapTo::Start);
        offerCentres();
        if (m_part.kind == Kind::MountingHole)
            offerAllowed();
        else
            offerField();
        offerOwnParts();
        if (together == Together::Alone)
            offerBank();
        offerBeside();
        const CasePoint corner = cornerFor(m_front, m_part.kind);
        return {m_x.orGrid(corner.x, grid), m_y.orGrid(corner.y, grid)};
    }

private:
    void offerCentre(const CaseRect& rect, PartSnapTo to) {
        m_x.offer(rect.across().middle(), to);
        m_y.offer(rect.upright().middle(), to);
    }
    void offerCentres() {
        offerCentre(m_front.rect, PartSnapTo::FrontCentre);
        if (!m_front.box.wall.isEmpty())
            offerCentre(wallOf(m_front), PartSnapTo::WallCentre);
    }
    void offerAllowed() {
        const WallRect& allowed = m_front.mounting.allowed.outer;
        const CasePoint origin = m_front.box.origin;
        if (allowed.isEmpty())
            return;
        for (const Length x : {allowed.left, allowed.right})
            m_x.offer(origin.x + x, PartSnapTo::AllowedEdge);
        for (const Length y : {allowed.bottom, allowed.top})
            m_y.offer(origin.y + y, PartSnapTo::AllowedEdge);
    }
    void offerField() {
        const FrontRect& field = m_front.field;
        if (field.isEmpty())
            return;
        const CasePoint origin = m_front.rect.lowerLeft();
        offerCentre({origin.x + field.left, origin.y + field.bottom, origin.x + field.right,
                     origin.y + field.top},
                    PartSnapTo::FieldCentre);
        const HandlePlan& handle = m_front.hardware->handles[m_part.index];
        const FrontRect& base = handle.footprint;
        m_x.offer(origin.x + field.left + (handle.centre.x - base.left), PartSnapTo::FieldEdge);
        m_x.offer(origin.x + field.right - (base.right - handle.centre.x), PartSnapTo::FieldEdge);
        m_y.offer(origin.y + field.bottom + (handle.centre.y - base.bottom), PartSnapTo::FieldEdge);
        m_y.offer(origin.y + field.top - (base.top - handle.centre.y), PartSnapTo::FieldEdge);
    }
    void offerOwnParts() {
        const Length mirror = m_part.kind == Kind::MountingHole
                                  ? 2 * m_front.box.origin.x + m_front.box.width
                                  : m_front.rect.left + m_front.rect.right;
        for (const PlacedPart& other : partsOn(m_front, m_part.kind)) {
            if (other == m_part)
                continue;
            const CasePoint at = *centreOf(m_plan, other);
            m_x.offer(at.x, PartSnapTo::SameLine, other);
            m_y.offer(at.y, PartSnapTo::SameLine, other);
            m_x.offer(mirror - at.x, PartSnapTo::Mirrored, other);
        }
    }
    /// In line down the bank, and as high on its front as those are on theirs.
    void offerBank() {
        const CasePoint own = cornerFor(m_front, m_part.kind);
        for (const FrontPlan& front : m_plan.fronts) {
            if (front.bank != m_front.bank || front.opening == m_front.opening)
                continue;
            const CasePoint corner = cornerFor(front, m_part.kind);
            for (const PlacedPart& other : partsOn(front, m_part.kind)) {
                const CasePoint at = *centreOf(m_plan, other);
                m_x.offer(at.x, PartSnapTo::SameLine, other);
                m_y.offer(own.y + (at.y - corner.y), PartSnapTo::SameHeight, other);
                if (m_part.kind == Kind::Handle)
                    m_y.offer(m_front.rect.top - (front.rect.top - at.y), PartSnapTo::SameHeight,
                              other);
            }
        }
    }
    void offerBeside() {
        for (const Side side : {Side::Left, Side::Right})
            if (const auto index = m_front.neighbours[side].front)
                for (const PlacedPart& other : partsOn(m_plan.fronts[*index], m_part.kind))
                    m_y.offer(centreOf(m_plan, other)->y, PartSnapTo::SameLine, other);
    }

    const Plan& m_plan;
    const PlacedPart& m_part;
    const FrontPlan& m_front;
    CasePoint m_start;
    NearestPlace m_x;
    NearestPlace m_y;
};

} // namespace

SnappedPart snapPart(const Plan& plan, const PlacedPart& part, CasePoint wanted, PartReach reach,
                     Length grid, Together together) {
    const auto start = centreOf(plan, part);
    if (!start)
        return {{wanted.x, PartSnapTo::Grid, {}}, {wanted.y, PartSnapTo::Grid, {}}};
    return Snapping(plan, part, *plan.frontOf(part.opening), *start, wanted, reach)
        .snapped(grid, together);
}

} // namespace frontwright
