#pragma once

#include "ui/session/session.h"

#include <QObject>

#include <functional>

class QWidget;

namespace frontwright {

class ActionList;

/// Several fronts over one opening: made, lined up with the bank beside it, made one again.
class FaceActions : public QObject {
    Q_OBJECT
public:
    /// How wide a member would be that stood between the fronts.
    using MemberWidth = std::function<WrittenLength(Direction)>;
    FaceActions(Session&, ActionList&, MemberWidth, QWidget& window);

private:
    void divide(Direction);
    [[nodiscard]] bool oneOpening() const { return m_session.selection().openings.size() == 1; }
    [[nodiscard]] bool isDivided() const;

    Session& m_session;
    MemberWidth m_memberWidth;
    QWidget& m_window;
};

} // namespace frontwright
