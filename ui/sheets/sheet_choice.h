#pragma once

#include "core/sheets/sheets.h"

#include <QWidget>

#include <set>
#include <tuple>

class QCheckBox;
class QTreeWidget;
class QTreeWidgetItem;

namespace frontwright {

/// Which sheets are wanted: a box for each template and for each of its tiles. A template that is
/// not wanted is not laid; a tile that is not wanted keeps its page number for another print.
class SheetChoice : public QWidget {
    Q_OBJECT
public:
    SheetChoice(std::vector<Template> templates, std::vector<OpeningId> selectedFronts,
                QWidget* parent = nullptr);

    [[nodiscard]] std::vector<Template> wantedTemplates() const;
    /// Takes what those were laid on; each place's part counts the wanted templates.
    void setPages(const std::vector<Page>& laid);
    /// One flag for each page that was laid.
    [[nodiscard]] const std::vector<bool>& wantedPages() const { return m_isWanted; }
    /// Shows which page is looked at, by its index among those that were laid.
    void setCurrentPage(std::size_t index);

Q_SIGNALS:
    void templatesChanged();              ///< others are to be laid
    void tilesChanged();                  ///< the same pages, others of them are wanted
    void pageActivated(std::size_t page); ///< by its index among those that were laid

private:
    static QString nameOfGroup(TemplateKind);
    void addTemplates();
    void addTiles(QTreeWidgetItem&, const std::vector<std::size_t>& pages,
                  const std::vector<Page>& laid);
    void ticked();
    void heedTicks();
    void wantOnlySelected(bool only);
    void readTicks();
    [[nodiscard]] std::vector<QTreeWidgetItem*> wantedItems() const;

    std::vector<Template> m_templates;
    std::vector<OpeningId> m_selected;
    QTreeWidget* m_tree;
    QCheckBox* m_onlySelected;
    std::vector<QTreeWidgetItem*> m_items; ///< by template
    std::vector<bool> m_isWanted;
    std::vector<QTreeWidgetItem*> m_pageItems;                       ///< by laid page
    std::set<std::tuple<std::size_t, int, int, int, int>> m_skipped; ///< template, place in tiling
    std::vector<PagePlace> m_places; ///< of the laid pages; parts count all templates
    bool m_waits = false;            ///< ticks are to be heeded
};

} // namespace frontwright
