#include "ui/window/case_only.h"

#include <QAction>

namespace frontwright {

void CaseOnly::add(QAction* action) {
    m_actions.push_back(action);
}

void CaseOnly::setCaseShown(bool isShown) {
    for (QAction* action : m_actions)
        action->setEnabled(isShown);
}

} // namespace frontwright
