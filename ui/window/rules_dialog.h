#pragma once

#include "core/rules/rules.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QTableWidget;

namespace frontwright {

/// Every rule by which the program works, with its value and its source; searched as one types.
class RulesDialog : public QDialog {
    Q_OBJECT
public:
    explicit RulesDialog(const Catalogue& program, QWidget* parent = nullptr);

private:
    void fill();
    void search(const QString& text);

    std::vector<RuleRow> m_rules;
    QLineEdit* m_search;
    QTableWidget* m_table;
    QLabel* m_count;
};

} // namespace frontwright
