#pragma once

#include "core/boards/board_numbers.h"
#include "core/plan/quantity.h"
#include "ui/session/session.h"

#include <QWidget>

class QScrollArea;
class QTreeWidget;

namespace frontwright {

class NumberAnswer;

/// Every computed number of what is selected; choosing one tells how it came about.
class NumbersPanel : public QWidget {
    Q_OBJECT
public:
    explicit NumbersPanel(Session&, QWidget* parent = nullptr);

    /// Selects the number's part and chooses the number; the panel has to be seen.
    void ask(Quantity);
    [[nodiscard]] std::optional<Quantity> chosen() const;
    [[nodiscard]] QTreeWidget& list() { return *m_list; }

protected:
    void showEvent(QShowEvent*) override;

private:
    void fill();
    void explain();
    [[nodiscard]] std::vector<Quantity> quantities() const;
    [[nodiscard]] std::vector<BoardNumber> boardNumbers() const;
    void listQuantities();
    void addRow(const QString& name, const QString& value);

    Session& m_session;
    QTreeWidget* m_list;
    NumberAnswer* m_answer;
    std::vector<Quantity> m_shown;
    std::vector<BoardNumber> m_ofBoard; ///< instead, where a pull-out board is selected
    /// Asked for, and not of what is selected: a spacer, a stop.
    std::optional<Quantity> m_asked;
};

/// What has to be selected for the number to be among those of the selection.
Selection partOf(Quantity, const Plan&);

} // namespace frontwright
