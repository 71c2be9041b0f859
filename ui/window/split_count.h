#pragma once

#include "ui/session/session.h"

#include <QList>
#include <QObject>

class QAction;

namespace frontwright {

/// Into how many an opening or a face is split, and how often a bank is repeated; more would be a
/// slip of the hand.
inline constexpr int mostParts = 40;

/// Digits typed right after a split say into how many: R 5, or C 1 2. Still one undo step. Any
/// other edit or selection ends it.
class SplitCount : public QObject {
    Q_OBJECT
public:
    explicit SplitCount(Session&, QObject* parent = nullptr);

    /// Splits in two and listens for digits.
    void split(const QString& name, OpeningId, Direction, WrittenLength memberWidth);

    /// The digits; they act in the widgets that have them.
    [[nodiscard]] const QList<QAction*>& digits() const { return m_digits; }

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
    QList<QAction*> m_digits;
    Made m_made;
    int m_count = 0; ///< typed so far
    bool m_splitting = false;
};

} // namespace frontwright
