#include "ui/elevation/part_drag.h"

#include "ui/elevation/part_words.h"
#include "ui/elevation/scene_rect.h"
#include "ui/elevation/shown_grid.h"
#include "ui/language/told.h"

#include <algorithm>

namespace frontwright {

namespace {

constexpr double snapPixels = 7;
constexpr double leavePixels = 10;
constexpr std::size_t mostFindings = 3;

bool isAboutPart(const Finding& finding, const PlacedPart& part, const FrontPlan& front) {
    if (part.kind == PlacedPart::Kind::MountingHole)
        return finding.where.mountingHole == part.index;
    return finding.where.handleHole && front.hardware &&
           handleOfHole(*front.hardware, *finding.where.handleHole) == part.index;
}

/// From a place on the part to where what it snaps to is.
QRectF reachOf(const PartSnap& snap, const Plan& plan, const FrontPlan& front) {
    const QRectF whole = inScene(front.rect);
    return snap.like ? whole | partRect(plan, *snap.like) : whole;
}

} // namespace

PartDrag::PartDrag(Session& session, const PlacedPart& part, Emphasis& emphasis)
    : m_session(session),
      m_part(part),
      m_emphasis(emphasis) {}

void PartDrag::begin(const PointerAt& at) {
    m_at = at;
    m_start = at.mm;
    m_from = centreOf(m_session.plan(), m_part).value_or(CasePoint{});
    m_snapped = {{m_from.x, PartSnapTo::Start, {}}, {m_from.y, PartSnapTo::Start, {}}};
    m_emphasis = {};
    m_emphasis.ghost = partRect(m_session.plan(), m_part);
}

void PartDrag::moved(const PointerAt& at) {
    m_at = at;
    if (m_typed || isOvertaken())
        return;
    m_together = at.modifiers.testFlag(Qt::ShiftModifier) ? Together::DownTheBank : Together::Alone;
    m_suspended = at.modifiers.testFlag(Qt::AltModifier);
    m_pointed = {Length::nearestToMillimetres(at.mm.x() - m_start.x()),
                 Length::nearestToMillimetres(at.mm.y() - m_start.y())};
    const auto reach = [&](const PartSnap& before) {
        if (m_suspended)
            return Length();
        const bool holds = before.to != PartSnapTo::Grid;
        return Length::nearestToMillimetres(at.millimetres(holds ? leavePixels : snapPixels));
    };
    moveTo(snapPart(m_session.settled().plan, m_part, m_from + m_pointed,
                    {reach(m_snapped.x), reach(m_snapped.y)}, shownGrid(m_session.style()),
                    m_together));
}

PartDrag::Towards PartDrag::direction() const {
    if (m_pointed.x.magnitude() > m_pointed.y.magnitude())
        return m_pointed.x < Length() ? Towards::Left : Towards::Right;
    return m_pointed.y < Length() ? Towards::Down : Towards::Up;
}

void PartDrag::typed(Length distance) {
    if (isOvertaken())
        return;
    m_typed = true;
    SnappedPart to{{m_from.x, PartSnapTo::Grid, {}}, {m_from.y, PartSnapTo::Grid, {}}};
    switch (direction()) {
    case Towards::Left:
        to.x.at -= distance;
        break;
    case Towards::Right:
        to.x.at += distance;
        break;
    case Towards::Down:
        to.y.at -= distance;
        break;
    case Towards::Up:
        to.y.at += distance;
        break;
    }
    moveTo(to);
}

void PartDrag::moveTo(const SnappedPart& to) {
    const Work& settled = m_session.settled();
    const auto outcome =
        movePart(settled.project, settled.plan, m_part, to.at() - m_from, m_together);
    m_snapped = to;
    if (outcome.ok()) {
        m_heldBecause = told(outcome.value().heldBecause);
        m_begun = m_session.preview(outcome.value().project) || m_begun;
    } else {
        m_heldBecause = told(outcome.error().sentence());
    }
    // A rule may put it elsewhere than the pointer asks; then it snaps to nothing.
    const auto now = centreOf(m_session.plan(), m_part);
    if (now && *now == to.at())
        m_heldBecause.clear();
    describe();
}

void PartDrag::describe() {
    m_emphasis.selected.clear();
    const Plan& plan = m_session.plan();
    for (const PlacedPart& part : movedWith(plan, m_part, m_together))
        m_emphasis.selected.push_back(partFrame(plan, part, m_at.pixelsPerMm));
    showGuides();
    say();
}

void PartDrag::showGuides() {
    m_emphasis.guides.clear();
    const Plan& plan = m_session.plan();
    const FrontPlan* front = plan.frontOf(m_part.opening);
    const auto at = centreOf(plan, m_part);
    if (!front || !at)
        return;
    const PointMm mm = toMm(*at);
    if (at->x == m_snapped.x.at && m_snapped.x.to != PartSnapTo::Grid) {
        const QRectF reach = reachOf(m_snapped.x, plan, *front);
        m_emphasis.guides.emplace_back(mm.x(), reach.top(), mm.x(), reach.bottom());
    }
    if (at->y == m_snapped.y.at && m_snapped.y.to != PartSnapTo::Grid) {
        const QRectF reach = reachOf(m_snapped.y, plan, *front);
        m_emphasis.guides.emplace_back(reach.left(), mm.y(), reach.right(), mm.y());
    }
}

void PartDrag::say() {
    const Plan& plan = m_session.plan();
    const FrontPlan* front = plan.frontOf(m_part.opening);
    const auto at = centreOf(plan, m_part);
    if (!front || !at)
        return;
    const PartWords words(m_session.project(), plan, m_session.style());
    std::vector<Emphasis::Notice::Line> lines;
    lines.push_back({words.moved(*at - m_from), {}});
    if (at->x == m_snapped.x.at)
        lines.push_back({words.across(m_snapped.x), {}});
    if (at->y == m_snapped.y.at)
        lines.push_back({words.upright(m_snapped.y), {}});
    lines.push_back({m_heldBecause, {}});
    std::erase_if(lines, [](const auto& line) { return line.text.isEmpty(); });
    sayFindings(lines);
    const QPointF middle = inScene(front->rect).center();
    m_emphasis.notice =
        Emphasis::Notice{m_at.mm, middle - inScene(toMm(*at)), m_at.visible, std::move(lines)};
}

/// Those of the part itself first, then the gravest of its front.
void PartDrag::sayFindings(std::vector<Emphasis::Notice::Line>& lines) const {
    const Work& work = m_session.work();
    const FrontPlan& front = *work.plan.frontOf(m_part.opening);
    std::vector<const Finding*> heeded;
    for (const Finding& finding : work.findings)
        if (finding.where.opening == m_part.opening)
            heeded.push_back(&finding);
    std::stable_partition(heeded.begin(), heeded.end(), [&](const Finding* finding) {
        return isAboutPart(*finding, m_part, front);
    });
    for (std::size_t i = 0; i < std::min(heeded.size(), mostFindings); ++i) {
        const FindingText text =
            frontwright::describe(*heeded[i], work.project, work.plan, m_session.style());
        lines.push_back({told(text.sentence), heeded[i]->severity});
    }
    if (heeded.size() > mostFindings)
        lines.push_back(
            {tr("and %n more", nullptr, static_cast<int>(heeded.size() - mostFindings)), {}});
}

QString PartDrag::asks() const {
    switch (direction()) {
    case Towards::Left:
        return tr("Move left by");
    case Towards::Right:
        return tr("Move right by");
    case Towards::Down:
        return tr("Move down by");
    case Towards::Up:
        break;
    }
    return tr("Move up by");
}

QString PartDrag::hint() const {
    if (m_suspended)
        return tr("Snapping is suspended while Alt is held.");
    return tr("Type a distance to move by exactly that. Alt suspends snapping, Shift moves those "
              "down the bank along. Esc puts it back.");
}

void PartDrag::released(const PointerAt&) {
    m_begun = false;
    const bool isHole = m_part.kind == PlacedPart::Kind::MountingHole;
    QString name = isHole ? tr("Move mounting hole") : tr("Move handle");
    if (m_together == Together::DownTheBank)
        name = isHole ? tr("Move mounting holes down the bank") : tr("Move handles down the bank");
    m_session.commitPreview(name);
    m_emphasis = {};
}

void PartDrag::cancel() {
    m_begun = false;
    m_session.cancelPreview();
    m_emphasis = {};
}

} // namespace frontwright
