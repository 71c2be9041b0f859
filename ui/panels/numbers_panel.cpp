#include "ui/panels/numbers_panel.h"

#include "core/amounts/measure.h"
#include "core/plan/boards.h"
#include "ui/help/topics.h"
#include "ui/language/told.h"
#include "ui/panels/number_answer.h"

#include <QHeaderView>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace frontwright {

NumbersPanel::NumbersPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_list(new QTreeWidget),
      m_answer(new NumberAnswer(session)) {
    m_list->setAccessibleName(tr("Computed numbers"));
    m_list->setHeaderLabels({tr("Number"), tr("Value")});
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_list->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    m_list->header()->setStretchLastSection(false);
    auto* scroll = new QScrollArea;
    scroll->setWidget(m_answer);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setAccessibleName(tr("How the number came about"));
    auto* splitter = new QSplitter(Qt::Vertical);
    splitter->addWidget(m_list);
    splitter->addWidget(scroll);
    splitter->setSizes({200, 200});
    splitter->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->addWidget(splitter);
    setHelpTopic(*this, QStringLiteral("window#numbers"));
    connect(m_list, &QTreeWidget::currentItemChanged, this, [this] { explain(); });
    connect(&session, &Session::selectionChanged, this, [this] {
        m_asked.reset();
        fill();
    });
    connect(&session, &Session::workChanged, this, &NumbersPanel::fill);
    connect(&session, &Session::styleChanged, this, &NumbersPanel::fill);
}

std::vector<Quantity> NumbersPanel::quantities() const {
    const Plan& plan = m_session.plan();
    const Selection& selection = m_session.selection();
    std::vector<Quantity> all = quantitiesOfCase(plan);
    if (const auto id = selection.lastOpening()) {
        if (const FrontPlan* front = plan.frontOf(*id))
            all = quantitiesOfFront(plan, static_cast<std::uint32_t>(front - plan.fronts.data()));
    } else if (selection.member) {
        if (const MemberPlan* member = plan.memberOf(*selection.member))
            all =
                quantitiesOfMember(plan, static_cast<std::uint32_t>(member - plan.members.data()));
    }
    if (m_asked && std::find(all.begin(), all.end(), *m_asked) == all.end())
        all.insert(all.begin(), *m_asked);
    return all;
}

std::vector<BoardNumber> NumbersPanel::boardNumbers() const {
    const auto id = m_session.selection().lastOpening();
    const PlannedBoard* board = id && !m_asked ? m_session.plan().boardOf(*id) : nullptr;
    return board ? numbersOf(*board, m_session.style()) : std::vector<BoardNumber>();
}

void NumbersPanel::addRow(const QString& name, const QString& value) {
    auto* item = new QTreeWidgetItem(m_list);
    item->setText(0, name);
    item->setText(1, value);
    item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
}

void NumbersPanel::listQuantities() {
    for (const Quantity quantity : quantities()) {
        const auto derivation =
            derive(m_session.project(), m_session.plan(), quantity, m_session.style());
        if (!derivation)
            continue;
        m_shown.push_back(quantity);
        addRow(told(derivation->name),
               QString::fromStdString(shown(derivation->value, m_session.style())));
    }
}

void NumbersPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    fill();
}

void NumbersPanel::ask(Quantity quantity) {
    if (!measureOf(m_session.plan(), quantity))
        return;
    const Selection part = partOf(quantity, m_session.plan());
    const auto opening = part.lastOpening();
    if (!opening || m_session.selection().lastOpening() != opening)
        m_session.select(part);
    m_asked = quantity;
    fill();
    const auto at = std::find(m_shown.begin(), m_shown.end(), quantity);
    if (at == m_shown.end())
        return;
    m_list->setCurrentItem(m_list->topLevelItem(static_cast<int>(at - m_shown.begin())));
    m_list->setFocus(Qt::OtherFocusReason);
}

std::optional<Quantity> NumbersPanel::chosen() const {
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    return row < 0 || static_cast<std::size_t>(row) >= m_shown.size()
               ? std::nullopt
               : std::optional(m_shown[static_cast<std::size_t>(row)]);
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
        m_ofBoard = boardNumbers();
        for (const BoardNumber& number : m_ofBoard)
            addRow(told(number.name), QString::fromStdString(number.value));
        if (m_ofBoard.empty())
            listQuantities();
        if (m_list->topLevelItemCount() > 0)
            m_list->setCurrentItem(
                m_list->topLevelItem(std::clamp(row, 0, m_list->topLevelItemCount() - 1)));
    }
    explain();
}

void NumbersPanel::explain() {
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    if (row >= 0 && static_cast<std::size_t>(row) < m_ofBoard.size()) {
        m_answer->tell(m_ofBoard[static_cast<std::size_t>(row)]);
        setHelpTopic(*this, topicOf(InputPlace::Board));
        return;
    }
    const auto quantity = chosen();
    m_answer->tell(quantity);
    setHelpTopic(*this, quantity ? topicOf(quantity->kind) : QStringLiteral("window#numbers"));
}

Selection partOf(Quantity quantity, const Plan& plan) {
    using enum QuantityKind;
    const QuantityKind kind = quantity.kind;
    const std::size_t item = quantity.item;
    if (kind == CaseWidth || kind == CaseHeight)
        return {};
    if (kind == MemberWidth || kind == MemberLength || kind == MemberReveal)
        return item < plan.members.size() ? Selection::of(plan.members[item].id) : Selection();
    if (kind == SpacerWidth)
        return item < plan.spacers.size()
                   ? Selection::of(plan.members[plan.spacers[item].member].id)
                   : Selection();
    std::size_t front = item;
    if (kind == StopFromFarEdge || kind == StopFromOpening)
        front = item < plan.stops.size() ? plan.stops[item].front : plan.fronts.size();
    return front < plan.fronts.size() ? Selection::of(plan.fronts[front].opening) : Selection();
}

} // namespace frontwright
