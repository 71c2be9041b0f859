#include "ui/window/face_actions.h"

#include "core/edits/faces.h"
#include "ui/window/action_list.h"
#include "ui/window/split_count.h"

#include <QInputDialog>

namespace frontwright {

FaceActions::FaceActions(Session& session, ActionList& list, MemberWidth memberWidth,
                         QWidget& window)
    : QObject(&window),
      m_session(session),
      m_memberWidth(std::move(memberWidth)),
      m_window(window) {
    list.setMenu(tr("Se&veral fronts over one opening"));
    const auto one = [this] { return oneOpening(); };
    list.add(tr("Several fronts, one &above the other…"),
             tr("Divide the face of the opening into rows of fronts on one box"),
             QKeySequence(Qt::Key_F), one, [this] { divide(Direction::Rows); });
    list.add(tr("Several fronts, &side by side…"),
             tr("Divide the face of the opening into columns of fronts on one box"),
             QKeySequence(Qt::SHIFT | Qt::Key_F), one, [this] { divide(Direction::Columns); });
    list.add(
        tr("Fronts like the &bank beside it"),
        tr("Divide the face of the opening so that its fronts line up with the neighbouring bank"),
        QKeySequence(Qt::Key_D), one, [this] {
            m_session.apply(
                tr("Fronts like the bank beside it"),
                divideFaceLikeNeighbour(m_session.project(), *m_session.selection().lastOpening()));
        });
    list.add(
        tr("&One front again"), tr("Make one front of all those over the opening"),
        QKeySequence(Qt::SHIFT | Qt::Key_J), [this] { return isDivided(); },
        [this] {
            m_session.apply(tr("One front again"),
                            joinFace(m_session.project(), *m_session.selection().lastOpening()));
        });
    list.setMenu({});
}

void FaceActions::divide(Direction direction) {
    bool chosen = false;
    const int count =
        QInputDialog::getInt(&m_window, tr("Several fronts over one opening"),
                             direction == Direction::Rows ? tr("How many, one above the other?")
                                                          : tr("How many, side by side?"),
                             2, 2, mostParts, 1, &chosen);
    if (!chosen)
        return;
    const OpeningId opening = *m_session.selection().lastOpening();
    const FrontPlan* front = m_session.plan().frontOf(opening);
    const bool arePairs =
        front && front->use == OpeningUse::Door && direction == Direction::Columns;
    const auto leaves = arePairs ? betweenLeaves(m_session.project(), opening) : std::nullopt;
    m_session.apply(tr("Divide the face"),
                    divideFace(m_session.project(), opening, direction, count,
                               leaves ? *leaves : m_memberWidth(direction)));
}

bool FaceActions::isDivided() const {
    const auto& opening = m_session.selection().lastOpening();
    return opening && isInFace(m_session.project(), *opening);
}

} // namespace frontwright
