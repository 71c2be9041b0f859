#include "ui/window/ask_actions.h"

#include "core/amounts/measure.h"
#include "ui/elevation/case_parts.h"
#include "ui/language/told.h"

#include <QMenu>

namespace frontwright {

AskActions::AskActions(Session& session, QObject* parent)
    : QObject(parent),
      m_session(session),
      m_why(new QAction(tr("Why this &number?"), this)) {
    m_why->setStatusTip(tr("Tell how the size of what is selected came about"));
    m_why->setShortcut(QKeySequence(Qt::SHIFT | Qt::Key_F1));
    connect(m_why, &QAction::triggered, this, [this] {
        const auto numbers = numbersOf(m_session.selection(), m_session.plan());
        if (!numbers.empty())
            Q_EMIT m_session.numberAsked(numbers.front());
    });
}

void AskActions::fill(QMenu& menu) {
    menu.addAction(m_why);
}

void AskActions::fillContext(QMenu& menu, const std::vector<Quantity>& numbers) {
    if (numbers.empty())
        return;
    QMenu* why = menu.addMenu(tr("Why this &number?"));
    for (const Quantity quantity : numbers) {
        const auto value = measureOf(m_session.plan(), quantity);
        if (!value)
            continue;
        QAction* action = why->addAction(tr("%1: %2").arg(
            told(nameOf(quantity.kind, m_session.plan().construction)),
            QString::fromStdString(shown(quantity.kind, *value, m_session.style()))));
        action->setStatusTip(m_why->statusTip());
        connect(action, &QAction::triggered, this,
                [this, quantity] { Q_EMIT m_session.numberAsked(quantity); });
    }
}

} // namespace frontwright
