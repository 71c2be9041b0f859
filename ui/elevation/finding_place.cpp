#include "ui/elevation/finding_place.h"

#include "core/geometry/mm.h"
#include "ui/elevation/scene_rect.h"

namespace frontwright {

namespace {

QPointF point(const PointMm& p) {
    return {p.x(), p.y()};
}

QPointF sidePoint(const BoxMm& box, Side side) {
    const PointMm c = box.center();
    switch (side) {
    case Side::Left:
        return {box.min().x(), c.y()};
    case Side::Right:
        return {box.max().x(), c.y()};
    case Side::Bottom:
        return {c.x(), box.min().y()};
    case Side::Top:
        break;
    }
    return {c.x(), box.max().y()};
}

bool isAboutBolts(FindingCode code) {
    return code == FindingCode::BoltTooShort || code == FindingCode::BoltBottomsOut ||
           code == FindingCode::NoBoltFits || code == FindingCode::CounterboreTooDeep;
}

QPointF placeOnFront(const Whereabouts& where, FindingCode code, const FrontPlan& front) {
    if (where.mountingHole && *where.mountingHole < front.mounting.holes.size())
        return point(toMm(front.box.origin) + toMm(front.mounting.holes[*where.mountingHole].at));
    if (where.handleHole && front.hardware && *where.handleHole < front.hardware->holes.size())
        return point(toMm(front.rect.lowerLeft()) + toMm(front.hardware->holes[*where.handleHole]));
    if (isAboutBolts(code) && front.hardware && !front.hardware->holes.empty())
        return inScene(PointMm(toMm(front.rect.lowerLeft()) + toMm(front.hardware->holes.front())));
    if (where.side)
        return sidePoint(toMm(front.rect), *where.side);
    // On the edge, clear of the label and the handle.
    return sidePoint(toMm(front.rect), Side::Left);
}

} // namespace

std::optional<QPointF> placeOf(const Finding& finding, const Plan& plan) {
    if (finding.where.opening)
        if (const FrontPlan* front = plan.frontOf(*finding.where.opening))
            return placeOnFront(finding.where, finding.code, *front);
    if (finding.where.member)
        if (const MemberPlan* member = plan.memberOf(*finding.where.member))
            return point(toMm(member->rect).center());
    return std::nullopt;
}

} // namespace frontwright
