#pragma once

#include "ui/session/session.h"

#include <QObject>

#include <functional>

class QWidget;

namespace frontwright {

class ActionList;

/// Drawing a bank again: copied and pasted, repeated side by side, mirrored.
class BankActions : public QObject {
    Q_OBJECT
public:
    /// How wide a stile between repeated banks is.
    using StileWidth = std::function<WrittenLength()>;
    BankActions(Session&, ActionList&, StileWidth, QWidget& window);

private:
    void addCopies(ActionList&);
    void addMirrors(ActionList&);
    void addLikeOtherSide(ActionList&);
    void copy();
    void repeat();
    void selectBank();
    [[nodiscard]] bool someOpenings() const { return !m_session.selection().openings.empty(); }

    Session& m_session;
    StileWidth m_stileWidth;
    QWidget& m_window;
    RegionPtr m_copied; ///< none before the first copy, and in another case
};

} // namespace frontwright
