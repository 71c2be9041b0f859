#include "ui/window/split_count.h"

#include "core/edits/divisions.h"

#include <QAction>

namespace frontwright {

SplitCount::SplitCount(Session& session, QObject* parent) : QObject(parent), m_session(session) {
    for (int digit = 0; digit < 10; ++digit) {
        auto* action = new QAction(tr("Split into %1").arg(digit), this);
        action->setShortcut(QKeySequence(Qt::Key_0 + digit));
        connect(action, &QAction::triggered, this, [this, digit] { typed(digit); });
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        m_digits << action;
    }
    const auto end = [this] {
        if (!m_splitting)
            listen(false);
    };
    connect(&session, &Session::workChanged, this, end);
    connect(&session, &Session::selectionChanged, this, end);
    listen(false);
}

void SplitCount::listen(bool on) {
    m_count = 0;
    for (QAction* action : m_digits)
        action->setEnabled(on);
}

void SplitCount::split(const QString& name, OpeningId opening, Direction direction,
                       WrittenLength memberWidth) {
    m_made = {name, opening, direction, memberWidth};
    const bool made = m_session.apply(
        name, splitOpening(m_session.project(), opening, direction, 2, memberWidth));
    listen(made);
}

void SplitCount::typed(int digit) {
    m_count = m_count * 10 + digit;
    if (m_count > mostParts)
        m_count = digit;
    if (m_count >= 2)
        splitAgain();
}

/// In place of the split that was made.
void SplitCount::splitAgain() {
    m_splitting = true;
    m_session.undoStack().undo();
    const bool made =
        m_session.apply(m_made.name, splitOpening(m_session.project(), m_made.opening,
                                                  m_made.direction, m_count, m_made.memberWidth));
    if (!made)
        m_session.undoStack().redo();
    m_splitting = false;
}

} // namespace frontwright
