#pragma once

#include "core/plan/quantity.h"
#include "ui/session/session.h"

#include <QWidget>

class QLabel;
class QTreeWidget;

namespace frontwright {

/// Every computed number of what is selected; choosing one tells how it came about.
class NumbersPanel : public QWidget {
    Q_OBJECT
public:
    explicit NumbersPanel(Session&, QWidget* parent = nullptr);

protected:
    void showEvent(QShowEvent*) override;

private:
    void fill();
    void explain();
    [[nodiscard]] std::vector<Quantity> quantities() const;

    Session& m_session;
    QTreeWidget* m_list;
    QLabel* m_explanation;
    std::vector<Quantity> m_shown;
};

} // namespace frontwright
