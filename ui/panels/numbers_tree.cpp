#include "ui/panels/numbers_tree.h"

#include "ui/language/told.h"
#include "ui/panels/wrapping_delegate.h"

#include <QHeaderView>
#include <QSignalBlocker>

#include <algorithm>

namespace frontwright {

namespace {

constexpr int subjectRole = Qt::UserRole;

Subject subjectOf(const QTreeWidgetItem& group) {
    return static_cast<Subject>(group.data(0, subjectRole).toInt());
}

/// Whether subject and name hold all the words.
bool hasAll(const QString& subject, const QString& name, const QString& words) {
    const QString text = subject + QLatin1Char(' ') + name;
    const QStringList wanted = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::all_of(wanted.begin(), wanted.end(), [&](const QString& word) {
        return text.contains(word, Qt::CaseInsensitive);
    });
}

/// Whether both are the same number, though of other parts.
bool areOfOneKind(const NumbersTree::Number& a, const NumbersTree::Number& b) {
    const auto *first = std::get_if<Quantity>(&a), *second = std::get_if<Quantity>(&b);
    if (!first || !second)
        return a == b;
    return first->kind == second->kind && first->index == second->index;
}

} // namespace

bool NumbersTree::isFound(const Row& row, const QString& words) {
    return hasAll(told(nameOf(row.subject)), row.name, words);
}

NumbersTree::NumbersTree(QWidget* parent) : QTreeWidget(parent) {
    setAccessibleName(tr("Computed numbers"));
    setHeaderLabels({tr("Number"), tr("Value")});
    setWordWrap(true); // long names go on in a further line
    setItemDelegate(new WrappingDelegate(this, WrappingDelegate::Wraps::FirstColumn));
    setIndentation(fontMetrics().averageCharWidth() * 2);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    header()->setStretchLastSection(false);
    connect(header(), &QHeaderView::sectionResized, this, [this] { scheduleDelayedItemsLayout(); });
    connect(this, &QTreeWidget::itemCollapsed, this,
            [this](QTreeWidgetItem* group) { setFolded(*group, true); });
    connect(this, &QTreeWidget::itemExpanded, this,
            [this](QTreeWidgetItem* group) { setFolded(*group, false); });
}

void NumbersTree::setFolded(const QTreeWidgetItem& group, bool isFolded) {
    if (!m_words.isEmpty())
        return;
    if (isFolded)
        m_folded.insert(subjectOf(group));
    else
        m_folded.erase(subjectOf(group));
}

QTreeWidgetItem* NumbersTree::groupOf(Subject subject) {
    int at = 0;
    for (; at < topLevelItemCount() && subjectOf(*topLevelItem(at)) <= subject; ++at)
        if (subjectOf(*topLevelItem(at)) == subject)
            return topLevelItem(at);
    const QString name = told(nameOf(subject));
    auto* group = new QTreeWidgetItem({name});
    group->setData(0, subjectRole, static_cast<int>(subject));
    group->setData(1, Qt::AccessibleTextRole, name); // its second cell is empty
    group->setFlags(Qt::ItemIsEnabled);
    QFont bold = font();
    bold.setBold(true);
    group->setFont(0, bold);
    insertTopLevelItem(at, group);
    group->setFirstColumnSpanned(true);
    return group;
}

void NumbersTree::show(const std::vector<Row>& rows) {
    const auto before = chosen();
    {
        const QSignalBlocker quiet(this);
        clear();
        m_rows.clear();
        for (const Row& row : rows) {
            auto* item = new QTreeWidgetItem(groupOf(row.subject));
            item->setText(0, row.name);
            item->setToolTip(0, row.name);
            item->setText(1, row.value);
            item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
            m_rows.emplace_back(row.number, item);
        }
        const auto same = std::find_if(m_rows.begin(), m_rows.end(), [&](const auto& row) {
            return before && areOfOneKind(row.first, *before);
        });
        if (same != m_rows.end())
            choose(same->first);
    }
    search(m_words);
}

void NumbersTree::search(const QString& words) {
    m_words = words;
    const QSignalBlocker quiet(this);
    for (int i = 0; i < topLevelItemCount(); ++i) {
        QTreeWidgetItem* group = topLevelItem(i);
        bool hasSome = false;
        for (int j = 0; j < group->childCount(); ++j) {
            QTreeWidgetItem* item = group->child(j);
            const bool isFound = hasAll(group->text(0), item->text(0), words);
            item->setHidden(!isFound);
            hasSome = hasSome || isFound;
        }
        group->setHidden(!hasSome);
        group->setExpanded(!words.trimmed().isEmpty() || !m_folded.contains(subjectOf(*group)));
    }
    if (!chosen() || currentItem()->isHidden())
        setCurrentItem(firstShown());
}

std::optional<NumbersTree::Number> NumbersTree::chosen() const {
    const QTreeWidgetItem* current = currentItem();
    for (const auto& [number, item] : m_rows)
        if (item == current)
            return number;
    return std::nullopt;
}

void NumbersTree::choose(const Number& number) {
    const auto row = std::find_if(m_rows.begin(), m_rows.end(),
                                  [&](const auto& each) { return each.first == number; });
    if (row == m_rows.end())
        return;
    row->second->parent()->setExpanded(true);
    setCurrentItem(row->second);
    scrollToItem(row->second);
}

QTreeWidgetItem* NumbersTree::firstShown() const {
    for (int i = 0; i < topLevelItemCount(); ++i) {
        const QTreeWidgetItem* group = topLevelItem(i);
        if (group->isHidden() || !group->isExpanded())
            continue;
        for (int j = 0; j < group->childCount(); ++j)
            if (!group->child(j)->isHidden())
                return group->child(j);
    }
    return nullptr;
}

} // namespace frontwright
