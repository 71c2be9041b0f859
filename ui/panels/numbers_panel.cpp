#include "ui/panels/numbers_panel.h"

#include "core/amounts/measure.h"
#include "core/plan/boards.h"
#include "core/reports/groups.h"
#include "ui/help/topics.h"
#include "ui/language/told.h"
#include "ui/panels/number_answer.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace frontwright {

namespace {

constexpr int subjectRole = Qt::UserRole;
constexpr int ofBoard = -1; ///< as a subject: numbers of a pull-out board

/// "Tip cover, screw hole 2"
QString rowName(Quantity quantity, const Derivation& derivation) {
    const QString name = told(derivation.name), which = told(indexName(quantity));
    return which.isEmpty() ? name : NumbersPanel::tr("%1, %2").arg(name, which);
}

bool hasAll(const QString& text, const QStringList& words) {
    return std::all_of(words.begin(), words.end(), [&](const QString& word) {
        return text.contains(word, Qt::CaseInsensitive);
    });
}

} // namespace

NumbersPanel::NumbersPanel(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_search(new QLineEdit),
      m_list(new QTreeWidget),
      m_none(new QLabel),
      m_answer(new NumberAnswer(session)) {
    m_list->setAccessibleName(tr("Computed numbers"));
    m_list->setHeaderLabels({tr("Number"), tr("Value")});
    m_list->setUniformRowHeights(true);
    m_list->setIndentation(fontMetrics().averageCharWidth() * 2);
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
    column->addWidget(m_search);
    column->addWidget(m_none);
    column->addWidget(splitter, 1);
    addSearch();
    setHelpTopic(*this, QStringLiteral("window#numbers"));
    connect(m_list, &QTreeWidget::currentItemChanged, this, [this] { explain(); });
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
    m_none->setText(tr("No number of what is selected has such a name."));
    m_none->setWordWrap(true);
    m_none->hide();
    connect(m_search, &QLineEdit::textChanged, this, &NumbersPanel::search);
    const auto fold = [this](QTreeWidgetItem* group, bool isFolded) {
        if (!m_search->text().isEmpty())
            return;
        const auto subject = static_cast<Subject>(group->data(0, subjectRole).toInt());
        if (isFolded)
            m_folded.insert(subject);
        else
            m_folded.erase(subject);
    };
    connect(m_list, &QTreeWidget::itemCollapsed, this,
            [fold](QTreeWidgetItem* group) { fold(group, true); });
    connect(m_list, &QTreeWidget::itemExpanded, this,
            [fold](QTreeWidgetItem* group) { fold(group, false); });
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

void NumbersPanel::listQuantities() {
    for (const Quantity quantity : quantities())
        if (const auto derivation =
                derive(m_session.project(), m_session.plan(), quantity, m_session.style()))
            addRow(quantity, *derivation);
}

void NumbersPanel::listBoard() {
    QTreeWidgetItem* group = newGroup(tr("Pull-out board"), ofBoard);
    m_list->addTopLevelItem(group);
    group->setFirstColumnSpanned(true);
    for (const BoardNumber& number : m_ofBoard) {
        auto* item = new QTreeWidgetItem(group);
        item->setText(0, told(number.name));
        item->setToolTip(0, item->text(0));
        item->setText(1, QString::fromStdString(number.value));
        item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
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
    m_search->clear();
    fill();
    const auto row = std::find_if(m_rows.begin(), m_rows.end(),
                                  [&](const Row& each) { return each.quantity == quantity; });
    if (row == m_rows.end())
        return;
    row->item->parent()->setExpanded(true);
    choose(row->item);
    m_list->setFocus(Qt::OtherFocusReason);
}

void NumbersPanel::choose(QTreeWidgetItem* item) {
    m_list->setCurrentItem(item);
    m_list->scrollToItem(item);
}

std::optional<Quantity> NumbersPanel::chosen() const {
    const QTreeWidgetItem* current = m_list->currentItem();
    for (const Row& row : m_rows)
        if (row.item == current)
            return row.quantity;
    return std::nullopt;
}

QTreeWidgetItem* NumbersPanel::newGroup(const QString& name, int place) const {
    auto* group = new QTreeWidgetItem({name});
    group->setData(0, subjectRole, place);
    group->setFlags(Qt::ItemIsEnabled);
    group->setData(1, Qt::AccessibleTextRole, name); // its second cell is empty
    QFont bold = m_list->font();
    bold.setBold(true);
    group->setFont(0, bold);
    return group;
}

QTreeWidgetItem* NumbersPanel::groupOf(Subject subject) {
    const int place = static_cast<int>(subject);
    int at = 0;
    for (; at < m_list->topLevelItemCount(); ++at) {
        const int other = m_list->topLevelItem(at)->data(0, subjectRole).toInt();
        if (other == place)
            return m_list->topLevelItem(at);
        if (other > place)
            break;
    }
    QTreeWidgetItem* group = newGroup(told(nameOf(subject)), place);
    m_list->insertTopLevelItem(at, group);
    group->setFirstColumnSpanned(true);
    return group;
}

void NumbersPanel::addRow(Quantity quantity, const Derivation& derivation) {
    auto* item = new QTreeWidgetItem(groupOf(subjectOf(quantity.kind)));
    item->setText(0, rowName(quantity, derivation));
    item->setToolTip(0, item->text(0));
    item->setText(1, QString::fromStdString(shown(derivation.value, m_session.style())));
    item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
    m_rows.push_back({quantity, item});
}

void NumbersPanel::fill() {
    // Texts are made only while someone looks.
    if (!isVisible())
        return;
    // The same number stays chosen, of whatever part.
    const auto before = chosen();
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        m_rows.clear();
        m_ofBoard = boardNumbers();
        if (m_ofBoard.empty())
            listQuantities();
        else
            listBoard();
        for (const Row& row : m_rows)
            if (before && row.quantity.kind == before->kind &&
                row.quantity.index == before->index) {
                choose(row.item);
                break;
            }
    }
    search();
}

QTreeWidgetItem* NumbersPanel::firstSeen() const {
    for (int i = 0; i < m_list->topLevelItemCount(); ++i) {
        const QTreeWidgetItem* group = m_list->topLevelItem(i);
        if (group->isHidden() || !group->isExpanded())
            continue;
        for (int j = 0; j < group->childCount(); ++j)
            if (!group->child(j)->isHidden())
                return group->child(j);
    }
    return nullptr;
}

void NumbersPanel::search() {
    const QStringList words = m_search->text().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    {
        const QSignalBlocker quiet(m_list);
        for (int i = 0; i < m_list->topLevelItemCount(); ++i) {
            QTreeWidgetItem* group = m_list->topLevelItem(i);
            bool hasSome = false;
            for (int j = 0; j < group->childCount(); ++j) {
                QTreeWidgetItem* item = group->child(j);
                const bool isFound =
                    hasAll(group->text(0) + QLatin1Char(' ') + item->text(0), words);
                item->setHidden(!isFound);
                hasSome = hasSome || isFound;
            }
            group->setHidden(!hasSome);
            const auto subject = static_cast<Subject>(group->data(0, subjectRole).toInt());
            group->setExpanded(!words.isEmpty() || !m_folded.contains(subject));
        }
        const QTreeWidgetItem* current = m_list->currentItem();
        QTreeWidgetItem* first = firstSeen();
        if ((!chosen() && !chosenOfBoard()) || current->isHidden())
            m_list->setCurrentItem(first);
        m_none->setVisible(first == nullptr && !words.isEmpty());
    }
    explain();
}

std::optional<std::size_t> NumbersPanel::chosenOfBoard() const {
    QTreeWidgetItem* current = m_list->currentItem();
    if (m_ofBoard.empty() || !current || !current->parent())
        return std::nullopt;
    return static_cast<std::size_t>(current->parent()->indexOfChild(current));
}

void NumbersPanel::explain() {
    if (const auto number = chosenOfBoard()) {
        m_answer->tell(m_ofBoard[*number]);
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
    if (kind == CaseWidth || kind == CaseHeight || kind == TotalWidth || kind == TotalHeight)
        return {};
    if (kind == MemberWidth || kind == MemberLength || kind == MemberReveal)
        return item < plan.members.size() ? Selection::of(plan.members[item].id) : Selection();
    if (kind == SpacerWidth)
        return item < plan.spacers.size()
                   ? Selection::of(plan.members[plan.spacers[item].member].id)
                   : Selection();
    if (kind >= FillerWidth && kind <= FillerLeastThickness)
        return item < plan.fillers.size()
                   ? Selection::of(plan.members[plan.fillers[item].member].id)
                   : Selection();
    std::size_t front = item;
    if (kind == StopFromFarEdge || kind == StopFromOpening)
        front = item < plan.stops.size() ? plan.stops[item].front : plan.fronts.size();
    return front < plan.fronts.size() ? Selection::of(plan.fronts[front].opening) : Selection();
}

} // namespace frontwright
