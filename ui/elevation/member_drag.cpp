#include "ui/elevation/member_drag.h"
#include "ui/elevation/scene_rect.h"

#include "core/lengths/format.h"
#include "ui/language/told.h"

namespace frontwright {

namespace {

constexpr double snapPixels = 6;
constexpr double leavePixels = 9;

QPointF middle(const CaseRect& rect) {
    return inScene(rect).center();
}

} // namespace

MemberDrag::MemberDrag(Session& session, MemberId member, Emphasis& emphasis)
    : m_session(session),
      m_member(member),
      m_emphasis(emphasis) {
    if (const MemberPlan* plan = session.plan().memberOf(member))
        m_axis = dragAxis(*plan);
}

void MemberDrag::begin(const PointerAt& at) {
    m_start = at.mm;
    m_emphasis = {};
    if (const MemberPlan* member = m_session.plan().memberOf(m_member))
        m_emphasis.ghost = inScene(member->rect);
}

void MemberDrag::moved(const PointerAt& at) {
    if (m_typed || isOvertaken())
        return;
    const double mm =
        m_axis == DragAxis::LeftRight ? at.mm.x() - m_start.x() : at.mm.y() - m_start.y();
    m_wanted = Length::nearestToMillimetres(mm);
    const Plan& settled = m_session.settled().plan;
    const Length grid = m_session.project().casework.grid;
    Snapped snapped{onGrid(m_wanted, grid), SnapTo::Grid, {}, {}};
    // Alt suspends snapping for as long as it is held.
    m_suspended = at.modifiers.testFlag(Qt::AltModifier);
    if (!m_suspended) {
        const double reach = at.millimetres(m_snapping ? leavePixels : snapPixels);
        snapped = snapDrag(settled, m_member, m_wanted, Length::nearestToMillimetres(reach), grid);
    }
    m_snapping = snapped.to != SnapTo::Grid;
    moveTo(snapped);
}

void MemberDrag::typed(Length distance) {
    if (isOvertaken())
        return;
    m_typed = true;
    const bool backwards = m_wanted < Length();
    moveTo({backwards ? -distance : distance, SnapTo::Grid, {}, {}});
}

void MemberDrag::moveTo(const Snapped& snapped) {
    const auto outcome = dragMember(m_session.settled().project, m_member, snapped.delta);
    if (!outcome.ok()) {
        describe(snapped, outcome.error().sentence());
        return;
    }
    m_moved = outcome.value().moved;
    m_begun = m_session.preview(outcome.value().project) || m_begun;
    describe(snapped, outcome.value().heldBecause);
}

void MemberDrag::describe(const Snapped& snapped, const Phrase& heldBecause) {
    m_heldBecause = told(heldBecause);
    m_emphasis.tags.clear();
    m_emphasis.guides.clear();
    m_emphasis.selected.clear();
    const MemberPlan* member = m_session.plan().memberOf(m_member);
    if (!member)
        return;
    const QRectF rect = inScene(member->rect);
    m_emphasis.selected.push_back(rect);
    tagSizes();
    QString text = (m_moved < Length() ? QString() : QStringLiteral("+")) +
                   QString::fromStdString(shown(m_moved, m_session.style()));
    const bool reached = m_moved == snapped.delta;
    if (reached && snapped.to == SnapTo::EqualSizes)
        text += tr(" · equal sizes");
    if (reached && snapped.to == SnapTo::Line)
        text += tr(" · in line");
    m_emphasis.tags.push_back({rect.center(), text, Emphasis::Tag::Kind::Plain});
    if (snapped.to == SnapTo::Line && snapped.line) {
        if (const MemberPlan* line = m_session.plan().memberOf(*snapped.line)) {
            const QRectF both = rect | inScene(line->rect);
            m_emphasis.guides.push_back(
                m_axis == DragAxis::UpDown
                    ? QLineF(both.left(), rect.top(), both.right(), rect.top())
                    : QLineF(rect.left(), both.top(), rect.left(), both.bottom()));
        }
    }
    if (!heldBecause.empty()) {
        const QPointF below(rect.center().x(), rect.top() - rect.height() / 2);
        m_emphasis.tags.push_back({below, m_heldBecause, Emphasis::Tag::Kind::Warning});
    }
}

void MemberDrag::tagSizes() {
    const Plan& plan = m_session.plan();
    const Beside beside = openingsBeside(plan, m_member);
    for (const auto* side : {&beside.before, &beside.after}) {
        if (side->empty())
            continue;
        const FrontPlan& front = plan.fronts[side->front()];
        const Length size =
            m_axis == DragAxis::LeftRight ? front.openingRect.width() : front.openingRect.height();
        m_emphasis.tags.push_back({middle(front.openingRect),
                                   QString::fromStdString(shown(size, m_session.style())),
                                   Emphasis::Tag::Kind::Plain});
    }
}

QString MemberDrag::asks() const {
    return tr("Move by");
}

QString MemberDrag::hint() const {
    return m_suspended ? tr("Snapping is suspended while Alt is held.")
                       : tr("Type a distance to move by exactly that. Alt suspends snapping. Esc "
                            "puts it back.");
}

void MemberDrag::released(const PointerAt&) {
    m_begun = false;
    m_session.commitPreview(name());
    m_emphasis = {};
}

void MemberDrag::cancel() {
    m_begun = false;
    m_session.cancelPreview();
    m_emphasis = {};
}

QString MemberDrag::name() const {
    const MemberPlan* member = m_session.plan().memberOf(m_member);
    if (!member)
        return {};
    const bool isFrame = m_session.plan().construction == Construction::FaceFrame;
    switch (member->kind) {
    case MemberKind::OuterStile:
        return isFrame ? tr("Change stile width") : tr("Change panel thickness");
    case MemberKind::OuterRail:
        return isFrame ? tr("Change rail width") : tr("Change panel thickness");
    case MemberKind::Stile:
        return isFrame ? tr("Move stile") : tr("Move divider");
    case MemberKind::Rail:
        return isFrame ? tr("Move rail") : tr("Move shelf");
    case MemberKind::NoStile:
    case MemberKind::NoRail:
        break;
    }
    return tr("Move division of the face");
}

} // namespace frontwright
