#include "ui/sheets/template_dialog.h"
#include "ui/look/first_size.h"
#include "ui/look/upright_scroll.h"

#include "ui/fields/length_field.h"
#include "ui/files/revision.h"
#include "ui/help/topics.h"
#include "ui/language/told.h"
#include "ui/paper/page_view.h"
#include "ui/sheets/printer_panel.h"
#include "ui/sheets/sheet_choice.h"
#include "ui/sheets/sheet_setup.h"
#include "ui/sheets/tile_map_view.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPrinterInfo>
#include <QPushButton>
#include <QShortcut>
#include <QSpinBox>
#include <QSplitter>
#include <QToolButton>

#include <algorithm>

namespace frontwright {

namespace {

constexpr int beside = 4; ///< pixels between columns and the handles between them

QLabel* wrappedLabel(const QString& text = {}) {
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    return label;
}

/// A button whose key acts at once, wherever the keyboard is.
QToolButton* turner(Qt::ArrowType arrow, const QString& name, const QKeySequence& key) {
    auto* button = new QToolButton;
    button->setArrowType(arrow);
    button->setAccessibleName(name);
    button->setToolTip(QStringLiteral("%1 (%2)").arg(name, key.toString(QKeySequence::NativeText)));
    return button;
}

QVBoxLayout* columnIn(QWidget& widget) {
    auto* column = new QVBoxLayout(&widget);
    column->setContentsMargins(beside, 0, beside, 0);
    return column;
}

} // namespace

TemplateDialog::TemplateDialog(const Session& session, QSettings& settings,
                               const QString& documentName, QWidget* parent)
    : QDialog(parent),
      m_session(session),
      m_settings(settings),
      m_documentName(documentName),
      m_choice(new SheetChoice(
          templates(session.project(), session.plan(), session.style(), spokenLanguage()),
          session.selection().openings)),
      m_map(new TileMapView),
      m_setup(new SheetSetup(settings, session.style())),
      m_printer(new PrinterPanel(settings, QPrinterInfo::availablePrinterNames())),
      m_view(new PageView),
      m_pageLabel(wrappedLabel()),
      m_pageBox(new QSpinBox),
      m_back(turner(Qt::LeftArrow, tr("Previous page"), Qt::Key_PageUp)),
      m_forward(turner(Qt::RightArrow, tr("Next page"), Qt::Key_PageDown)),
      m_count(wrappedLabel()),
      m_problem(wrappedLabel()),
      m_save(new QPushButton(tr("&Save as PDF…"))),
      m_print(new QPushButton(tr("&Print…"))) {
    setWindowTitle(tr("Templates at full size"));
    setHelpTopic(*this, QStringLiteral("window#templates"));
    auto* columns = new QSplitter;
    columns->setChildrenCollapsible(false);
    columns->addWidget(choiceColumn());
    columns->addWidget(pageColumn());
    columns->addWidget(setupColumn());
    columns->setStretchFactor(1, 1);
    auto* whole = new QVBoxLayout(this);
    whole->addWidget(columns);
    connectParts();
    layPages();
    resize(firstSize(*this, sizeHint().expandedTo({1180, 780})));
}

QWidget* TemplateDialog::choiceColumn() {
    auto* widget = new QWidget;
    auto* column = columnIn(*widget);
    column->addWidget(m_choice, 1);
    auto* heading = new QLabel(tr("Til&es of this template"));
    heading->setBuddy(m_map);
    column->addWidget(heading);
    column->addWidget(m_map);
    return widget;
}

QWidget* TemplateDialog::pageColumn() {
    m_pageBox->setMinimum(1);
    m_pageBox->setAccessibleName(tr("Page"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_back);
    auto* label = new QLabel(tr("Pa&ge"));
    label->setBuddy(m_pageBox);
    row->addWidget(label);
    row->addWidget(m_pageBox);
    row->addWidget(m_forward);
    row->addWidget(m_pageLabel, 1);
    auto* widget = new QWidget;
    auto* column = columnIn(*widget);
    column->addLayout(row);
    column->addWidget(m_view, 1);
    return widget;
}

QWidget* TemplateDialog::setupColumn() {
    for (QLabel* label : {m_count, m_problem})
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_count->setAccessibleName(tr("Number of pages"));
    m_problem->setAccessibleName(tr("Problem"));
    auto* close = new QPushButton(tr("&Close"));
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    // Enter in a length field decides the length; it must not print.
    for (QPushButton* button : {m_save, m_print, close})
        button->setAutoDefault(false);
    auto* settings = new QWidget;
    auto* rows = columnIn(*settings);
    for (QWidget* row : std::initializer_list<QWidget*>{m_setup, m_count, m_problem})
        rows->addWidget(row);
    rows->addStretch();
    rows->addWidget(m_printer);
    rows->addWidget(wrappedLabel(tr("Print at “Actual size”, never “Fit”. Measure the check "
                                    "bars in both directions before drilling.")));
    auto* widget = new QWidget;
    auto* column = columnIn(*widget);
    // What is done with the sheets stays in reach on a small screen.
    column->addWidget(new UprightScroll(settings), 1);
    column->addWidget(m_save);
    column->addWidget(m_print);
    column->addWidget(close);
    return widget;
}

void TemplateDialog::connectParts() {
    connect(m_setup, &SheetSetup::changed, this, &TemplateDialog::layPages);
    connect(m_printer, &PrinterPanel::changed, this, &TemplateDialog::layPages);
    connect(m_printer, &PrinterPanel::testPageWanted, this, &TemplateDialog::openTestPage);
    connect(m_choice, &SheetChoice::templatesChanged, this, &TemplateDialog::layPages);
    connect(m_choice, &SheetChoice::tilesChanged, this, &TemplateDialog::showWanted);
    connect(m_choice, &SheetChoice::pageActivated, this, [this](std::size_t page) {
        if (const int shown = shownIndex(page); shown >= 0)
            m_pageBox->setValue(shown + 1);
    });
    connect(m_map, &TileMapView::pageActivated, this,
            [this](int page) { m_pageBox->setValue(page + 1); });
    connect(m_pageBox, &QSpinBox::valueChanged, this, &TemplateDialog::turnTo);
    connect(m_back, &QToolButton::clicked, m_pageBox, &QSpinBox::stepDown);
    connect(m_forward, &QToolButton::clicked, m_pageBox, &QSpinBox::stepUp);
    connect(new QShortcut(Qt::Key_PageUp, this), &QShortcut::activated, m_pageBox,
            &QSpinBox::stepDown);
    connect(new QShortcut(Qt::Key_PageDown, this), &QShortcut::activated, m_pageBox,
            &QSpinBox::stepUp);
    connect(m_save, &QPushButton::clicked, this, &TemplateDialog::savePdf);
    connect(m_print, &QPushButton::clicked, this, &TemplateDialog::print);
}

SheetOptions TemplateDialog::options(const Paper& paper) const {
    SheetOptions options;
    options.paper = paper;
    options.orientation = m_setup->orientation();
    options.overlap = m_setup->overlap();
    options.margin = m_setup->margin();
    options.documentName = m_documentName.toStdString();
    options.revision = revisionOf(m_session.project());
    options.printer = m_printer->printer().toStdString();
    options.language = spokenLanguage();
    options.calibration = m_printer->factors(m_printer->printer(), paper);
    return options;
}

void TemplateDialog::layPages() {
    m_wanted = m_choice->wantedTemplates();
    m_laid.clear();
    m_problem->clear();
    const auto paper = m_setup->paper();
    if (paper.ok()) {
        m_paper = paper.value();
        auto laid = pages(m_session.project(), m_session.plan(), m_wanted, options(m_paper));
        if (laid.ok())
            m_laid = std::move(laid).value();
        else
            m_problem->setText(told(laid.error().sentence()));
    } else {
        m_problem->setText(told(paper.error().sentence()));
    }
    m_choice->setPages(m_laid);
    showWanted();
}

void TemplateDialog::showWanted() {
    m_shown.clear();
    m_laidIndex.clear();
    for (std::size_t i = 0; i < m_laid.size(); ++i)
        if (m_choice->wantedPages()[i]) {
            m_shown.push_back(m_laid[i]);
            m_laidIndex.push_back(i);
        }
    m_save->setEnabled(!m_shown.empty());
    m_print->setEnabled(!m_shown.empty());
    m_pageBox->setEnabled(!m_shown.empty());
    m_pageBox->setMaximum(std::max(1, static_cast<int>(m_shown.size())));
    m_pageBox->setSuffix(tr(" of %1").arg(m_shown.size()));
    m_view->setPages(m_shown);
    m_printer->tell(m_paper, m_shown);
    tellCount();
    turnTo(m_pageBox->value());
}

int TemplateDialog::currentPage() const {
    return m_view->pageIndex();
}

int TemplateDialog::shownIndex(std::size_t laidIndex) const {
    const auto found = std::find(m_laidIndex.begin(), m_laidIndex.end(), laidIndex);
    return found == m_laidIndex.end() ? -1 : static_cast<int>(found - m_laidIndex.begin());
}

void TemplateDialog::turnTo(int page) {
    m_view->setPageIndex(page - 1);
    m_back->setEnabled(currentPage() > 0);
    m_forward->setEnabled(currentPage() + 1 < static_cast<int>(m_shown.size()));
    showPlace();
}

/// The page's words, its place in the tree and in the tile map.
void TemplateDialog::showPlace() {
    const auto index = static_cast<std::size_t>(currentPage());
    if (index >= m_shown.size()) {
        m_pageLabel->setText(tr("Nothing is ticked."));
        m_map->setTiles({}, 1, 1, {}, -1);
        return;
    }
    const Page& page = m_shown[index];
    m_pageLabel->setText(told(page.label));
    m_choice->setCurrentPage(m_laidIndex[index]);
    std::vector<MappedTile> tiles;
    for (std::size_t i = 0; i < m_laid.size(); ++i)
        if (const PagePlace& at = m_laid[i].place; at.part == page.place.part)
            tiles.push_back(
                {at.column, at.row,
                 m_laid[i].tile.empty() ? tr("one page") : QString::fromStdString(m_laid[i].tile),
                 shownIndex(i)});
    m_map->setTiles(told(m_wanted[page.place.part].title), page.place.columns, page.place.rows,
                    std::move(tiles), static_cast<int>(index));
}

/// How many pages, and what the other ways to lay them would take.
void TemplateDialog::tellCount() {
    if (m_laid.empty()) {
        m_count->setText(tr("No page."));
        return;
    }
    const QString chosen = m_shown.size() == m_laid.size()
                               ? tr("Pages: %1.").arg(m_shown.size())
                               : tr("Pages: %1 of %2.").arg(m_shown.size()).arg(m_laid.size());
    QStringList others;
    for (const auto& [way, text] : {std::pair{std::optional<Orientation>(), tr("fewest %1")},
                                    {std::optional(Orientation::Portrait), tr("upright %1")},
                                    {std::optional(Orientation::Landscape), tr("landscape %1")}}) {
        SheetOptions other = options(m_paper);
        other.orientation = way;
        if (const auto count = pageCount(m_session.project(), m_wanted, other); count.ok())
            others << text.arg(count.value());
    }
    m_count->setText(
        tr("%1 On %2: %3.").arg(chosen, told(nameOf(m_paper)), others.join(QStringLiteral(", "))));
}

} // namespace frontwright
