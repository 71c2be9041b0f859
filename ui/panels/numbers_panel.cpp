#include "ui/panels/numbers_panel.h"

#include "core/amounts/measure.h"
#include "core/plan/boards.h"
#include "core/reports/groups.h"
#include "ui/help/topics.h"
#include "ui/language/told.h"
#include "ui/panels/number_answer.h"
#include "ui/panels/numbers_tree.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

namespace frontwright {

namespace {

/// "Tip cover, screw hole 2"
QString rowName(Quantity quantity, const QString& name) {
    const QString which = told(indexName(quantity));
    return which.isEmpty() ? name : NumbersPanel::tr("%1, %2").arg(name, which);
}

std::vector<Quantity> joined(std::vector<Quantity> all, const std::vector<Quantity>& more) {
    all.insert(all.end(), more.begin(), more.end());
    return all;
}
std::vector<Quantity> ofFront(const Plan& plan, std::uint32_t front) {
    return joined(quantitiesOfFront(plan, front), quantitiesOfBlocksBeside(plan, front));
}
std::vector<Quantity> ofMember(const Plan& plan, std::uint32_t member) {
    return joined(quantitiesOfMember(plan, member), quantitiesOfBlocksAt(plan, member));
}

bool isOfBlock(Quantity quantity) {
    return subjectOf(quantity.kind) == Subject::Blocks;
}

} // namespace

NumbersPanel::NumbersPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_search(new QLineEdit),
      m_list(new NumbersTree),
      m_none(new QLabel),
      m_answer(new NumberAnswer(session)) {
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
    column->addWidget(m_search);
    column->addWidget(m_none);
    column->addWidget(splitter, 1);
    addSearch();
    setHelpTopic(*this, QStringLiteral("window#numbers"));
    connect(m_list, &NumbersTree::currentItemChanged, this, [this] { explain(); });
    connect(m_list, &NumbersTree::itemActivated, this, [this] {
        if (const auto quantity = chosen(); quantity && m_isElsewhere)
            ask(*quantity);
    });
    connect(&session, &Session::selectionChanged, this, [this] {
        m_asked.reset();
        fill();
    });
    connect(&session, &Session::workChanged, this, &NumbersPanel::fill);
    connect(&session, &Session::styleChanged, this, &NumbersPanel::fill);
}

void NumbersPanel::addSearch() {
    m_search->setPlaceholderText(tr("Search: a word of the number's name"));
    m_search->setAccessibleName(tr("Search the numbers"));
    m_search->setClearButtonEnabled(true);
    m_search->installEventFilter(this);
    m_none->setWordWrap(true);
    m_none->hide();
    connect(m_search, &QLineEdit::textChanged, this, &NumbersPanel::search);
}

bool NumbersPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_search && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down) {
        m_list->setFocus(Qt::OtherFocusReason);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

std::vector<Quantity> NumbersPanel::quantities() const {
    const Plan& plan = m_session.plan();
    const Selection& selection = m_session.selection();
    std::vector<Quantity> all = quantitiesOfCase(plan);
    if (const auto id = selection.lastOpening()) {
        if (const FrontPlan* front = plan.frontOf(*id))
            all = ofFront(plan, static_cast<std::uint32_t>(front - plan.fronts.data()));
        else if (const SpacePlan* space = plan.spaceOf(*id))
            all = quantitiesOfSpace(static_cast<std::uint32_t>(space - plan.spaces.data()));
    } else if (selection.member) {
        if (const MemberPlan* member = plan.memberOf(*selection.member))
            all = ofMember(plan, static_cast<std::uint32_t>(member - plan.members.data()));
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

std::vector<NumbersTree::Row> NumbersPanel::rows() const {
    std::vector<NumbersTree::Row> rows;
    for (std::size_t i = 0; i < m_ofBoard.size(); ++i)
        rows.push_back({Subject::Board, told(m_ofBoard[i].name),
                        QString::fromStdString(m_ofBoard[i].value), i});
    if (!rows.empty())
        return rows;
    // A number that is not the selected part's own says whose it is.
    for (const Quantity quantity : quantities())
        rows.push_back(rowOf(quantity, isOfBlock(quantity)));
    return rows;
}

NumbersTree::Row NumbersPanel::rowOf(Quantity quantity, bool saysWhose) const {
    QString name = rowName(quantity, told(nameOf(quantity.kind, m_session.plan().construction)));
    if (saysWhose)
        name = tr("%1, %2").arg(name,
                                told(partWords(m_session.project(), m_session.plan(), quantity)));
    const auto value = measureOf(m_session.plan(), quantity);
    return {subjectOf(quantity.kind), name,
            value ? QString::fromStdString(shown(quantity.kind, *value, m_session.style()))
                  : QString(),
            quantity};
}

/// Where nothing of what is selected has such a name: of all other parts.
std::vector<NumbersTree::Row> NumbersPanel::rowsElsewhere(const QString& words) const {
    constexpr std::size_t most = 200;
    std::vector<NumbersTree::Row> rows;
    for (const Quantity quantity : allQuantities(m_session.plan())) {
        NumbersTree::Row row = rowOf(quantity, true);
        if (NumbersTree::isFound(row, words))
            rows.push_back(std::move(row));
        if (rows.size() == most)
            break;
    }
    return rows;
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
    m_search->clear();
    fill();
    m_list->choose(quantity);
    m_list->setFocus(Qt::OtherFocusReason);
}

std::optional<Quantity> NumbersPanel::chosen() const {
    const auto number = m_list->chosen();
    const auto* quantity = number ? std::get_if<Quantity>(&*number) : nullptr;
    return quantity ? std::optional(*quantity) : std::nullopt;
}

void NumbersPanel::fill() {
    // Texts are made only while someone looks.
    if (!isVisible())
        return;
    m_ofBoard = boardNumbers();
    m_isElsewhere = false;
    {
        const QSignalBlocker quiet(m_list);
        m_list->show(rows());
    }
    search();
}

void NumbersPanel::search() {
    const QString words = m_search->text();
    {
        const QSignalBlocker quiet(m_list);
        if (m_isElsewhere)
            m_list->show(rows());
        m_list->search(words);
        m_isElsewhere = !m_list->isAnyShown() && !words.trimmed().isEmpty();
        if (m_isElsewhere)
            m_list->show(rowsElsewhere(words));
    }
    m_none->setVisible(m_isElsewhere);
    m_none->setText(m_list->isAnyShown() ? tr("Of other parts; Enter goes there:")
                                         : tr("No number has such a name."));
    explain();
}

void NumbersPanel::explain() {
    const auto number = m_list->chosen();
    if (const auto* ofBoard = number ? std::get_if<std::size_t>(&*number) : nullptr) {
        m_answer->tell(m_ofBoard[*ofBoard]);
        setHelpTopic(*this, topicOf(InputPlace::Board));
        return;
    }
    const auto quantity = chosen();
    m_answer->tell(quantity);
    setHelpTopic(*this, quantity ? topicOf(quantity->kind) : QStringLiteral("window#numbers"));
}

Selection partOf(Quantity quantity, const Plan& plan) {
    const std::size_t item = quantity.item;
    const auto ofMember = [&](std::size_t member) {
        return Selection::of(plan.members[member].id);
    };
    switch (partOf(quantity.kind)) {
    case PlanPart::Case:
        return {};
    case PlanPart::Member:
        return item < plan.members.size() ? ofMember(item) : Selection();
    case PlanPart::Spacer:
        return item < plan.spacers.size() ? ofMember(plan.spacers[item].member) : Selection();
    case PlanPart::Filler:
        return item < plan.fillers.size() ? ofMember(plan.fillers[item].member) : Selection();
    case PlanPart::Space:
        return item < plan.spaces.size() ? Selection::of(plan.spaces[item].opening) : Selection();
    case PlanPart::Stop:
    case PlanPart::Front:
        break;
    }
    const FrontPlan* front = frontOf(plan, quantity);
    return front ? Selection::of(front->opening) : Selection();
}

} // namespace frontwright
