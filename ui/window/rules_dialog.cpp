#include "ui/window/rules_dialog.h"
#include "ui/look/first_size.h"

#include "ui/help/topics.h"
#include "ui/language/told.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>
#include <QVBoxLayout>

namespace frontwright {

namespace {

QTableWidgetItem* cell(const QString& text) {
    auto* item = new QTableWidgetItem(text);
    item->setToolTip(item->text());
    return item;
}

} // namespace

RulesDialog::RulesDialog(const Catalogue& program, QWidget* parent)
    : QDialog(parent),
      m_rules(allRules(program, spokenLanguage().decimalMark())),
      m_search(new QLineEdit),
      m_table(new QTableWidget(static_cast<int>(m_rules.size()), 5)),
      m_count(new QLabel) {
    setWindowTitle(tr("Rules and their sources"));
    setHelpTopic(*this, QStringLiteral("window#rules"));
    m_search->setPlaceholderText(tr("A word of the rule, its use or its source"));
    m_search->setClearButtonEnabled(true);
    m_search->setAccessibleName(tr("Search the rules"));
    auto* label = new QLabel(tr("&Search"));
    label->setBuddy(m_search);
    m_table->setAccessibleName(tr("Rules"));
    m_table->setHorizontalHeaderLabels(
        {tr("Rule"), tr("Value"), tr("Used for"), tr("Source"), tr("Kind of source")});
    m_table->verticalHeader()->hide();
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setWordWrap(true);
    m_table->setTabKeyNavigation(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->horizontalHeader()->setSectionResizeMode(4, QHeaderView::ResizeToContents);
    fill();
    auto* top = new QHBoxLayout;
    top->addWidget(label);
    top->addWidget(m_search, 1);
    top->addWidget(m_count);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* column = new QVBoxLayout(this);
    column->addLayout(top);
    column->addWidget(m_table, 1);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_search, &QLineEdit::textChanged, this, &RulesDialog::search);
    const int line = fontMetrics().lineSpacing();
    resize(firstSize(*this, {line * 70, line * 40}));
    search({});
}

void RulesDialog::fill() {
    for (std::size_t i = 0; i < m_rules.size(); ++i) {
        const RuleRow& rule = m_rules[i];
        const int row = static_cast<int>(i);
        m_table->setItem(row, 0, cell(told(rule.rule)));
        m_table->setItem(row, 1, cell(told(rule.value)));
        m_table->setItem(row, 2, cell(told(rule.where)));
        m_table->setItem(row, 3, cell(told(rule.source.words())));
        m_table->setItem(row, 4, cell(told(wordsFor(rule.source.kind))));
        m_table->item(row, 0)->setToolTip(QString::fromStdString(rule.id));
    }
    m_table->resizeRowsToContents();
    connect(m_table->horizontalHeader(), &QHeaderView::sectionResized, m_table,
            &QTableWidget::resizeRowsToContents, Qt::QueuedConnection);
}

void RulesDialog::search(const QString& wanted) {
    int found = 0;
    for (int row = 0; row < m_table->rowCount(); ++row) {
        bool isThere = wanted.trimmed().isEmpty() ||
                       m_table->item(row, 0)->toolTip().contains(wanted, Qt::CaseInsensitive);
        for (int column = 0; column < m_table->columnCount() && !isThere; ++column)
            isThere =
                m_table->item(row, column)->text().contains(wanted.trimmed(), Qt::CaseInsensitive);
        m_table->setRowHidden(row, !isThere);
        found += isThere ? 1 : 0;
    }
    m_count->setText(tr("%n rule(s)", nullptr, found));
}

} // namespace frontwright
