#pragma once

#include "core/plan/quantity.h"
#include "ui/session/session.h"

#include <QWidget>

#include <set>

class QLabel;
class QLineEdit;
class QTreeWidget;
class QTreeWidgetItem;

namespace frontwright {

class NumberAnswer;

/// Every computed number of what is selected, by subject; what is typed above leaves those whose
/// names hold all its words. Choosing one tells how it came about.
class NumbersPanel : public QWidget {
    Q_OBJECT
public:
    explicit NumbersPanel(Session&, QWidget* parent = nullptr);

    /// Selects the number's part and chooses the number; the panel has to be seen.
    void ask(Quantity);
    [[nodiscard]] std::optional<Quantity> chosen() const;
    [[nodiscard]] QTreeWidget& list() { return *m_list; }
    [[nodiscard]] QLineEdit& searchField() { return *m_search; }

protected:
    void showEvent(QShowEvent*) override;
    bool eventFilter(QObject*, QEvent*) override; ///< Down leads from the search into the list

private:
    /// A number and its row.
    struct Row {
        Quantity quantity;
        QTreeWidgetItem* item;
    };
    void addSearch();
    void fill();
    void addRow(Quantity, const Derivation&);
    void search();
    void choose(QTreeWidgetItem*);
    void explain();
    [[nodiscard]] QTreeWidgetItem* groupOf(Subject);
    [[nodiscard]] QTreeWidgetItem* firstSeen() const;
    [[nodiscard]] std::vector<Quantity> quantities() const;

    Session& m_session;
    QLineEdit* m_search;
    QTreeWidget* m_list;
    QLabel* m_none;
    NumberAnswer* m_answer;
    std::vector<Row> m_rows;
    std::set<Subject> m_folded; ///< by the maker
    /// Asked for, and not of what is selected: a spacer, a stop.
    std::optional<Quantity> m_asked;
};

/// What has to be selected for the number to be among those of the selection.
Selection partOf(Quantity, const Plan&);

} // namespace frontwright
