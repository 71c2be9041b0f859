#pragma once

#include "ui/session/session.h"

#include <QWidget>

class QLabel;
class QTableWidget;

namespace frontwright {

/// The three ways to hold a handle, side by side, for the selected front: grip, the lengths that
/// fit, the bolt, and whether it does. The chosen way is marked; a double-click chooses another.
class WaysPanel : public QWidget {
    Q_OBJECT
public:
    explicit WaysPanel(Session&, QWidget* parent = nullptr);

protected:
    void showEvent(QShowEvent*) override;

private:
    void fill();
    void choose(int way);

    Session& m_session;
    QTableWidget* m_table;
    QLabel* m_note;
};

} // namespace frontwright
