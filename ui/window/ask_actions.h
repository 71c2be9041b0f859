#pragma once

#include "core/plan/quantity.h"
#include "ui/session/session.h"

#include <QAction>

class QMenu;

namespace frontwright {

/// "Why this number?": of what is selected from the menu, of what is pointed at from the
/// drawing's context menu.
class AskActions : public QObject {
    Q_OBJECT
public:
    AskActions(Session&, QObject* parent);

    void fill(QMenu& menu);
    [[nodiscard]] QAction& why() { return *m_why; }
    /// One line for each number, with its value; nothing where there are none.
    void fillContext(QMenu& menu, const std::vector<Quantity>& numbers);

private:
    Session& m_session;
    QAction* m_why;
};

} // namespace frontwright
