#pragma once

#include "core/boards/board_numbers.h"
#include "core/plan/quantity.h"
#include "ui/panels/numbers_tree.h"
#include "ui/session/session.h"

#include <QWidget>

class QLabel;
class QLineEdit;

namespace frontwright {

class NumberAnswer;

/// Every computed number of what is selected, by subject; what is typed above leaves those whose
/// names hold all its words, and where there is none looks for them in the whole case. Choosing one
/// tells how it came about.
class NumbersPanel : public QWidget {
    Q_OBJECT
public:
    explicit NumbersPanel(Session&, QWidget* parent = nullptr);

    /// Selects the number's part and chooses the number; the panel has to be seen.
    void ask(Quantity);
    [[nodiscard]] std::optional<Quantity> chosen() const;
    [[nodiscard]] NumbersTree& list() { return *m_list; }
    [[nodiscard]] QLineEdit& searchField() { return *m_search; }

protected:
    void showEvent(QShowEvent*) override;
    bool eventFilter(QObject*, QEvent*) override; ///< Down leads from the search into the list

private:
    void addSearch();
    void fill();
    void search();
    void explain();
    [[nodiscard]] std::vector<Quantity> quantities() const;
    [[nodiscard]] std::vector<BoardNumber> boardNumbers() const;
    [[nodiscard]] std::vector<NumbersTree::Row> rows() const;
    [[nodiscard]] std::vector<NumbersTree::Row> rowsElsewhere(const QString& words) const;
    [[nodiscard]] NumbersTree::Row rowOf(Quantity, bool saysWhose) const;

    Session& m_session;
    QLineEdit* m_search;
    NumbersTree* m_list;
    QLabel* m_none;
    NumberAnswer* m_answer;
    std::vector<BoardNumber> m_ofBoard; ///< instead, where a pull-out board is selected
    bool m_isElsewhere = false;         ///< what was searched is found of other parts only
    /// Asked for, and not of what is selected: a spacer, a stop.
    std::optional<Quantity> m_asked;
};

/// What has to be selected for the number to be among those of the selection.
Selection partOf(Quantity, const Plan&);

} // namespace frontwright
