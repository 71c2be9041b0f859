#include "ui/sheets/sheet_choice.h"

#include "ui/language/told.h"

#include <QCheckBox>
#include <QHeaderView>
#include <QSignalBlocker>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <map>

namespace frontwright {

namespace {

constexpr int templateRole = Qt::UserRole;
constexpr int pageRole = Qt::UserRole + 1;
constexpr Qt::ItemFlags parentFlags =
    Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable | Qt::ItemIsAutoTristate;

std::tuple<std::size_t, int, int, int, int> keyOf(const PagePlace& at) {
    return {at.part, at.row, at.column, at.rows, at.columns};
}

} // namespace

SheetChoice::SheetChoice(std::vector<Template> templates, std::vector<OpeningId> selectedFronts,
                         QWidget* parent)
    : QWidget(parent),
      m_templates(std::move(templates)),
      m_selected(std::move(selectedFronts)),
      m_tree(new QTreeWidget),
      m_onlySelected(new QCheckBox(tr("Only the selected &fronts (%1)").arg(m_selected.size()))) {
    m_tree->setHeaderHidden(true);
    m_tree->header()->setStretchLastSection(false);
    m_tree->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_tree->setAccessibleName(tr("Sheets"));
    m_tree->setWhatsThis(tr("Tick what is to be printed; a tile alone can be printed again."));
    m_onlySelected->setEnabled(!m_selected.empty());
    m_onlySelected->setToolTip(
        tr("Fronts that were selected in the drawing, with their box walls"));
    addTemplates();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    column->addWidget(m_onlySelected);
    column->addWidget(m_tree);
    connect(m_tree, &QTreeWidget::itemChanged, this, &SheetChoice::ticked);
    connect(m_tree, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        if (item && item->data(0, pageRole).isValid())
            Q_EMIT pageActivated(item->data(0, pageRole).toULongLong());
    });
    connect(m_onlySelected, &QCheckBox::toggled, this, &SheetChoice::wantOnlySelected);
}

QString SheetChoice::nameOfGroup(TemplateKind kind) {
    switch (kind) {
    case TemplateKind::Front:
        return tr("Fronts");
    case TemplateKind::BoxWall:
        return tr("Box walls");
    case TemplateKind::StoryStick:
        return tr("Story sticks");
    case TemplateKind::KeeperStrip:
        return tr("Keepers");
    }
    return {};
}

void SheetChoice::addTemplates() {
    std::map<TemplateKind, QTreeWidgetItem*> groups;
    for (std::size_t i = 0; i < m_templates.size(); ++i) {
        QTreeWidgetItem*& group = groups[m_templates[i].kind];
        if (!group) {
            group = new QTreeWidgetItem(m_tree, {nameOfGroup(m_templates[i].kind)});
            group->setFlags(parentFlags);
        }
        auto* item = new QTreeWidgetItem(group, {told(m_templates[i].title)});
        item->setFlags(parentFlags);
        item->setCheckState(0, Qt::Checked);
        item->setData(0, templateRole, static_cast<qulonglong>(i));
        m_items.push_back(item);
    }
    m_tree->expandToDepth(0);
}

std::vector<QTreeWidgetItem*> SheetChoice::wantedItems() const {
    std::vector<QTreeWidgetItem*> wanted;
    std::copy_if(m_items.begin(), m_items.end(), std::back_inserter(wanted),
                 [](QTreeWidgetItem* item) { return item->checkState(0) != Qt::Unchecked; });
    return wanted;
}

std::vector<Template> SheetChoice::wantedTemplates() const {
    std::vector<Template> wanted;
    for (QTreeWidgetItem* item : wantedItems())
        wanted.push_back(m_templates[item->data(0, templateRole).toULongLong()]);
    return wanted;
}

void SheetChoice::setPages(const std::vector<Page>& laid) {
    const QSignalBlocker quiet(m_tree);
    std::vector<std::vector<std::size_t>> pagesOf(m_items.size());
    const std::vector<QTreeWidgetItem*> wanted = wantedItems();
    m_places.clear();
    m_pageItems.assign(laid.size(), nullptr);
    for (std::size_t i = 0; i < laid.size(); ++i) {
        m_places.push_back(laid[i].place);
        m_places.back().part = wanted.at(laid[i].place.part)->data(0, templateRole).toULongLong();
        pagesOf.at(m_places.back().part).push_back(i);
    }
    for (std::size_t part = 0; part < m_items.size(); ++part)
        addTiles(*m_items[part], pagesOf[part], laid);
    readTicks();
}

void SheetChoice::addTiles(QTreeWidgetItem& item, const std::vector<std::size_t>& pages,
                           const std::vector<Page>& laid) {
    const Qt::CheckState before = item.checkState(0);
    qDeleteAll(item.takeChildren());
    item.setData(0, pageRole, pages.empty() ? QVariant() : QVariant(qulonglong(pages.front())));
    if (pages.size() < 2) {
        item.setCheckState(0, before == Qt::Unchecked ? Qt::Unchecked : Qt::Checked);
        for (std::size_t page : pages)
            m_pageItems[page] = &item;
        return;
    }
    for (std::size_t page : pages) {
        auto* tile = new QTreeWidgetItem(
            &item,
            {tr("Tile %1, page %2").arg(QString::fromStdString(laid[page].tile)).arg(page + 1)});
        const auto key = keyOf(m_places[page]);
        tile->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        tile->setCheckState(0, m_skipped.contains(key) ? Qt::Unchecked : Qt::Checked);
        tile->setData(0, pageRole, static_cast<qulonglong>(page));
        m_pageItems[page] = tile;
    }
}

void SheetChoice::readTicks() {
    m_isWanted.clear();
    for (const QTreeWidgetItem* item : m_pageItems)
        m_isWanted.push_back(item && item->checkState(0) != Qt::Unchecked);
}

void SheetChoice::ticked() {
    // One click ticks a whole branch, item by item: heed it once, when all is done.
    if (m_waits)
        return;
    m_waits = true;
    QMetaObject::invokeMethod(this, &SheetChoice::heedTicks, Qt::QueuedConnection);
}

void SheetChoice::heedTicks() {
    m_waits = false;
    std::set<std::size_t> laid;
    for (std::size_t page = 0; page < m_places.size(); ++page) {
        const PagePlace& at = m_places[page];
        laid.insert(at.part);
        const bool isSkipped = m_items[at.part]->checkState(0) == Qt::PartiallyChecked &&
                               m_pageItems[page]->checkState(0) == Qt::Unchecked;
        if (isSkipped)
            m_skipped.insert(keyOf(at));
        else
            m_skipped.erase(keyOf(at));
    }
    std::set<std::size_t> wanted;
    for (const QTreeWidgetItem* item : wantedItems())
        wanted.insert(item->data(0, templateRole).toULongLong());
    if (wanted != laid) {
        Q_EMIT templatesChanged();
        return;
    }
    readTicks();
    Q_EMIT tilesChanged();
}

void SheetChoice::wantOnlySelected(bool only) {
    {
        const QSignalBlocker quiet(m_tree);
        m_skipped.clear();
        for (std::size_t i = 0; i < m_items.size(); ++i) {
            const auto& parts = m_templates[i].parts;
            const bool isSelected =
                std::any_of(parts.begin(), parts.end(), [&](const OpeningId& id) {
                    return std::find(m_selected.begin(), m_selected.end(), id) != m_selected.end();
                });
            // Story sticks serve whole banks; who picks fronts wants those.
            const bool isStick = m_templates[i].kind == TemplateKind::StoryStick;
            m_items[i]->setCheckState(0, !only || (isSelected && !isStick) ? Qt::Checked
                                                                           : Qt::Unchecked);
        }
    }
    m_tree->viewport()->update();
    Q_EMIT templatesChanged();
}

void SheetChoice::setCurrentPage(std::size_t index) {
    if (index >= m_pageItems.size() || !m_pageItems[index])
        return;
    const QSignalBlocker quiet(m_tree);
    QTreeWidgetItem* item = m_pageItems[index];
    QTreeWidgetItem* current = m_tree->currentItem();
    // A template stands for its first tile too.
    if (current && current->data(0, pageRole) == item->data(0, pageRole))
        return;
    m_tree->setCurrentItem(item);
}

} // namespace frontwright
