#pragma once

#include "ui/session/session.h"

#include <QObject>

#include <vector>

class QAction;
class QWidget;

namespace frontwright {

/// Digits typed right after a split say into how many: R 5, or C 1 2. Still one undo step. Any
/// other edit or selection ends it.
class SplitCount : public QObject {
    Q_OBJECT
public:
    SplitCount(Session&, QWidget& window);

    /// Splits in two and listens for digits.
    void split(const QString& name, OpeningId, Direction, WrittenLength memberWidth);

private:
    void typed(int digit);
    void splitAgain();
    void listen(bool on);

    struct Made {
        QString name;
        OpeningId opening;
        Direction direction = Direction::Rows;
        WrittenLength memberWidth;
    };
    Session& m_session;
    std::vector<QAction*> m_digits;
    Made m_made;
    int m_count = 0; ///< typed so far
    bool m_splitting = false;
};

} // namespace frontwright
