#include "ui/panels/numbers_panel.h"

#include "core/lengths/format.h"

#include <QHeaderView>
#include <QLabel>
#include <QSignalBlocker>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace frontwright {

NumbersPanel::NumbersPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_list(new QTreeWidget),
      m_explanation(new QLabel) {
    m_list->setAccessibleName(tr("Computed numbers"));
    m_list->setHeaderLabels({tr("Number"), tr("Value")});
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_list->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    m_list->header()->setStretchLastSection(false);
    m_explanation->setWordWrap(true);
    m_explanation->setTextFormat(Qt::PlainText);
    m_explanation->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_explanation->setMinimumHeight(fontMetrics().lineSpacing() * 6);
    m_explanation->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_list, 1);
    column->addWidget(m_explanation);
    connect(m_list, &QTreeWidget::currentItemChanged, this, [this] { explain(); });
    connect(&session, &Session::selectionChanged, this, &NumbersPanel::fill);
    connect(&session, &Session::workChanged, this, &NumbersPanel::fill);
    connect(&session, &Session::styleChanged, this, &NumbersPanel::fill);
}

std::vector<Quantity> NumbersPanel::quantities() const {
    const Plan& plan = m_session.plan();
    const Selection& selection = m_session.selection();
    if (const auto id = selection.lastOpening())
        if (const FrontPlan* front = plan.frontOf(*id))
            return quantitiesOfFront(plan, static_cast<std::uint32_t>(front - plan.fronts.data()));
    if (selection.member)
        if (const MemberPlan* member = plan.memberOf(*selection.member))
            return quantitiesOfMember(plan,
                                      static_cast<std::uint32_t>(member - plan.members.data()));
    return quantitiesOfCase(plan);
}

void NumbersPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    fill();
}

void NumbersPanel::fill() {
    // Texts are made only while someone looks.
    if (!isVisible())
        return;
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        m_shown.clear();
        for (const Quantity quantity : quantities()) {
            const auto derivation =
                derive(m_session.project(), m_session.plan(), quantity, m_session.style());
            if (!derivation)
                continue;
            m_shown.push_back(quantity);
            auto* item = new QTreeWidgetItem(m_list);
            item->setText(0, QString::fromStdString(derivation->name));
            item->setText(1, QString::fromStdString(shown(derivation->value, m_session.style())));
            item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
        }
        if (m_list->topLevelItemCount() > 0)
            m_list->setCurrentItem(
                m_list->topLevelItem(std::clamp(row, 0, m_list->topLevelItemCount() - 1)));
    }
    explain();
}

void NumbersPanel::explain() {
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    if (row < 0 || static_cast<std::size_t>(row) >= m_shown.size()) {
        m_explanation->clear();
        return;
    }
    const auto derivation = derive(m_session.project(), m_session.plan(),
                                   m_shown[static_cast<std::size_t>(row)], m_session.style());
    if (!derivation)
        return;
    m_explanation->setText(tr("%1 = %2\n%3\n\nRule: %4")
                               .arg(QString::fromStdString(derivation->name),
                                    QString::fromStdString(derivation->formula),
                                    QString::fromStdString(derivation->figures),
                                    QString::fromStdString(derivation->source.title)));
}

} // namespace frontwright
