#include "core/fastening/bounds.h"
#include "core/findings/judging.h"
#include "core/plan/own_part.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace frontwright::judging {

namespace {

constexpr Length nothing{};

MountingPlace placeOf(const Judged& judged) {
    const FrontPlan& front = judged.front;
    MountingPlace place{front.box,
                        {FrontRect::atOrigin(front.rect.width(), front.rect.height()), front.field,
                         front.thickness, front.profile, front.box.wallThickness},
                        front.hardware ? &*front.hardware : nullptr,
                        nullptr,
                        {}};
    place.fittings = front.fittings ? &*front.fittings : nullptr;
    place.runner = front.runner ? &*front.runner : nullptr;
    place.part = ownPartOf(judged.project, front);
    return place;
}

/// What the findings about one hole are made from.
struct HoleInQuestion {
    const Judged& judged;
    const MountingBounds& bounds;
    const MountingHole& hole;

    [[nodiscard]] const BoxPlan& box() const { return judged.front.box; }
    [[nodiscard]] const MountingPlan& mounting() const { return judged.front.mounting; }
    [[nodiscard]] Length headRadius() const { return mounting().screw->headDiameter.half(); }
    [[nodiscard]] Length tool() const { return bounds.forTool - box().bottomTop; }
};

/// figures: hole's height, bottom's top, head's radius, margin
Finding inBottom(const HoleInQuestion& q) {
    const bool meets = q.hole.at.y < q.bounds.forHead;
    return q.judged.at(
        FindingCode::HoleInBottom, meets ? Severity::Ruins : Severity::OutsidePractice,
        {q.hole.at.y, q.box().bottomTop, q.headRadius(), q.judged.project.limits.screwMargin});
}

/// figures: hole's height, bottom's top, tool's radius, least height
Finding recessBlocked(const HoleInQuestion& q) {
    return q.judged.at(FindingCode::RecessToolBlocked, Severity::WontWork,
                       {q.hole.at.y, q.box().bottomTop, q.tool(), q.mounting().leastHeight});
}

/// figures: from that side of the box, its thickness, tool's radius
Finding atBoxSide(const HoleInQuestion& q) {
    const bool isLeft = q.hole.at.x < q.bounds.sides.low;
    const Length fromSide = isLeft ? q.hole.at.x : q.box().width - q.hole.at.x;
    Finding finding = q.judged.at(FindingCode::HoleAtBoxSide, Severity::WontWork,
                                  {fromSide, q.box().sideThickness, q.tool()});
    finding.where.side = isLeft ? Side::Left : Side::Right;
    return finding;
}

/// figures: below the wall's top edge, least distance from it, head's radius
Finding atTopEdge(const HoleInQuestion& q) {
    const Length below = q.box().height - q.hole.at.y;
    return q.judged.at(FindingCode::HoleAtTopEdge,
                       below < q.headRadius() ? Severity::Ruins : Severity::OutsidePractice,
                       {below, q.box().height - q.bounds.top, q.headRadius()});
}

Length distance(WallPoint a, WallPoint b) {
    const double dx = (a.x - b.x).inMillimetres(), dy = (a.y - b.y).inMillimetres();
    return Length::nearestToMillimetres(std::sqrt(dx * dx + dy * dy));
}

/// figures: between the centres, least distance between them, wood that must stay between holes
Finding atHardware(const HoleInQuestion& q) {
    const auto& discs = q.mounting().allowed.withoutDiscs; // first one for each handle hole
    const std::size_t count = q.judged.front.hardware->holes.size();
    std::size_t nearest = 0;
    for (std::size_t i = 1; i < count; ++i)
        if (distance(q.hole.at, discs[i].centre) < distance(q.hole.at, discs[nearest].centre))
            nearest = i;
    const Length apart = distance(q.hole.at, discs[nearest].centre);
    const Length between = q.judged.project.limits.holeToHole, needed = discs[nearest].radius;
    Finding finding =
        q.judged.at(FindingCode::HoleAtHardware,
                    apart < needed - between ? Severity::WontWork : Severity::OutsidePractice,
                    {apart, needed, between});
    finding.where.handleHole = static_cast<std::uint32_t>(nearest);
    return finding;
}

/// From a point to the outline of a cut; negative inside it.
Length outside(FrontPoint p, const FittingCut& cut) {
    if (cut.shape == FootprintShape::Round) {
        const FrontPoint centre = cut.around.centre();
        const double dx = (p.x - centre.x).inMillimetres(), dy = (p.y - centre.y).inMillimetres();
        return Length::nearestToMillimetres(std::sqrt(dx * dx + dy * dy)) -
               cut.around.width().half();
    }
    return greatest(greatest(cut.around.left - p.x, p.x - cut.around.right),
                    greatest(cut.around.bottom - p.y, p.y - cut.around.top));
}

/// figures: from the screw's centre to what is cut, its radius, wood that must stay between
Finding atFitting(const HoleInQuestion& q) {
    const FrontPoint at = toFront(q.box(), q.hole.at);
    const std::vector<FittingCut> cuts = cutsOf(*q.judged.front.fittings);
    const auto nearest =
        std::ranges::min_element(cuts, {}, [&](const FittingCut& cut) { return outside(at, cut); });
    const Length apart = outside(at, *nearest), radius = q.mounting().screw->shankDiameter.half();
    Finding finding = q.judged.at(FindingCode::HoleAtFitting,
                                  apart < radius ? Severity::WontWork : Severity::OutsidePractice,
                                  {apart, radius, q.judged.project.limits.holeToHole});
    finding.where.fitting = nearest->fitting;
    return finding;
}

/// figures: front behind the hole (0: none), least thickness
Finding offFront(const HoleInQuestion& q) {
    const Limits& limits = q.judged.project.limits;
    return q.judged.at(
        FindingCode::HoleOffFront,
        q.hole.thickness <= nothing ? Severity::WontWork : Severity::OutsidePractice,
        {q.hole.thickness, limits.leastPenetration.length + limits.leastTipCover.length});
}

/// figures: hole from the nearer lower corner (of a centre runner: from the middle), above the
/// lower edge; how far the zone with the tool's radius reaches that way, and up
Finding atRunner(const HoleInQuestion& q) {
    const auto& rects = q.mounting().allowed.withoutRects;
    const auto rect = std::find_if(rects.begin(), rects.end(),
                                   [&](const WallRect& r) { return isInside(q.hole.at, r); });
    const bool isPaired = isPair(q.judged.front.runner->kind->form);
    const bool isLeft = 2 * q.hole.at.x < q.box().width;
    const Length middle = q.box().width.half();
    const Length from = isPaired ? (isLeft ? q.hole.at.x : q.box().width - q.hole.at.x)
                                 : (q.hole.at.x - middle).magnitude();
    const Length reach =
        isPaired ? (isLeft ? rect->right : q.box().width - rect->left) : rect->right - middle;
    Finding finding = q.judged.at(FindingCode::HoleAtRunner, Severity::WontWork,
                                  {from, q.hole.at.y, reach, rect->top});
    if (isPaired)
        finding.where.side = isLeft ? Side::Left : Side::Right;
    return finding;
}

std::optional<Finding> inTheWay(const HoleInQuestion& q, Obstacle obstacle) {
    switch (obstacle) {
    case Obstacle::None:
        return std::nullopt;
    case Obstacle::Bottom:
        return inBottom(q);
    case Obstacle::RecessTool:
        return recessBlocked(q);
    case Obstacle::BoxSide:
        return atBoxSide(q);
    case Obstacle::TopEdge:
        return atTopEdge(q);
    case Obstacle::HardwareHole:
    case Obstacle::AccessHole:
        return atHardware(q);
    case Obstacle::Fitting:
        return atFitting(q);
    case Obstacle::ThinRim:
        return offFront(q);
    case Obstacle::FrontEdge: // ScrewNearEdge tells it
        return std::nullopt;
    case Obstacle::Runner:
        break;
    }
    return atRunner(q);
}

/// The gravest finding of each code; of equally grave ones the first hole's.
class GravestOfEach {
public:
    void consider(const Finding& finding) {
        for (std::size_t i = 0; i < m_count; ++i)
            if (m_findings[i].code == finding.code) {
                if (finding.severity < m_findings[i].severity)
                    m_findings[i] = finding;
                return;
            }
        m_findings[m_count++] = finding;
    }
    void tell(std::vector<Finding>& found) const {
        found.insert(found.end(), m_findings.begin(),
                     m_findings.begin() + static_cast<std::ptrdiff_t>(m_count));
    }

private:
    std::array<Finding, 9> m_findings; ///< as many codes as obstacles
    std::size_t m_count = 0;
};

/// A screw that comes out, or nearly, behind the thin rim says more than the rim does.
bool saysTip(const Judged& judged) {
    for (auto it = judged.found.rbegin(); it != judged.found.rend(); ++it) {
        if (it->where.opening != judged.front.opening)
            return false;
        if (it->code == FindingCode::ScrewThroughShowFace || it->code == FindingCode::TipCoverThin)
            return true;
    }
    return false;
}

void judgeHole(const HoleInQuestion& q, GravestOfEach& gravest) {
    const Judged& judged = q.judged;
    const Obstacle obstacle = obstacleAt(chosenMounting(judged.project, judged.front), q.mounting(),
                                         judged.project.limits, placeOf(judged), q.hole.at);
    if (obstacle == Obstacle::ThinRim && q.hole.thickness > nothing && saysTip(judged))
        return;
    if (auto finding = inTheWay(q, obstacle)) {
        finding->where.mountingHole =
            static_cast<std::uint32_t>(&q.hole - q.mounting().holes.data());
        gravest.consider(*finding);
    }
}

} // namespace

void judgeScrewHoles(const Judged& judged) {
    const MountingPlan& mounting = judged.front.mounting;
    const auto isAllowed = [](const MountingHole& hole) { return hole.allowed; };
    if (std::all_of(mounting.holes.begin(), mounting.holes.end(), isAllowed))
        return;
    const MountingBounds bounds = boundsOf(chosenMounting(judged.project, judged.front),
                                           *mounting.screw, judged.project.limits, placeOf(judged));
    GravestOfEach gravest;
    for (const MountingHole& hole : mounting.holes)
        if (!hole.allowed)
            judgeHole({judged, bounds, hole}, gravest);
    gravest.tell(judged.found);
}

} // namespace frontwright::judging
