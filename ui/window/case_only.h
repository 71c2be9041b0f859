#pragma once

#include <QObject>

#include <vector>

class QAction;

namespace frontwright {

/// Actions that act on the case that is shown: out of reach, with their shortcuts, while none is.
/// Those that are enabled by what is selected join through their menu's own action.
class CaseOnly : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    void add(QAction*);
    void setCaseShown(bool isShown);

private:
    std::vector<QAction*> m_actions;
};

} // namespace frontwright
