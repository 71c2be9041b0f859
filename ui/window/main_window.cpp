#include "ui/window/main_window.h"

#include "ui/elevation/announcer.h"
#include "ui/elevation/value_entry.h"
#include "ui/files/local_files.h"
#include "ui/files/state_folder.h"
#include "ui/help/help_desk.h"
#include "ui/help/shortcut_list.h"
#include "ui/language/told.h"
#include "ui/panels/findings_panel.h"
#include "ui/panels/input_field.h"
#include "ui/panels/numbers_panel.h"
#include "ui/panels/section_panel.h"
#include "ui/panels/selection_panel.h"
#include "ui/panels/ways_panel.h"
#include "ui/panels/wood_panel.h"
#include "ui/sheets/template_dialog.h"
#include "ui/window/ask_actions.h"
#include "ui/window/case_only.h"
#include "ui/window/central_area.h"
#include "ui/window/edit_actions.h"
#include "ui/window/file_actions.h"
#include "ui/window/panel_dock.h"
#include "ui/window/selection_words.h"
#include "ui/window/start_place.h"
#include "ui/window/view_actions.h"
#include "ui/window/view_settings.h"
#include "ui/window/window_layout.h"

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QLabel>
#include <QMenuBar>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabBar>
#include <QUndoView>

namespace frontwright {

namespace {

constexpr int tabGap = 4; ///< pixels that a tab takes beside its title and the style's margin

} // namespace

MainWindow::MainWindow(Catalogue programs, QSettings& settings)
    : m_session(std::move(programs)),
      m_settings(settings),
      m_file(m_session),
      m_recovery(m_session, m_file, stateFolder() + QStringLiteral("/recovery")),
      m_view(new ElevationView(m_session)),
      m_views(new CentralArea(m_session, *m_view, settings)),
      m_middle(new QStackedWidget),
      m_findings(new FindingsPanel(m_session)),
      m_fileActions(new FileActions(m_file, settings, *this)),
      m_editActions(new EditActions(m_session, *this)),
      m_viewSettings(new ViewSettings(settings, m_session, m_file, this)),
      m_viewActions(new ViewActions(m_session, *m_view, *m_viewSettings, this)),
      m_start(new StartPlace(*this, *m_middle, *m_fileActions, m_session.programsCatalogue())),
      m_caseOnly(new CaseOnly(this)),
      m_askActions(new AskActions(m_session, this)),
      m_help(new HelpDesk([this] { return shortcutTable(*menuBar()); }, *this)),
      m_selectionLabel(new QLabel) {
    m_middle->addWidget(m_views);
    setCentralWidget(m_middle);
    new ValueEntry(m_session, *m_view);
    m_views->giveKeys(m_editActions->onDrawing());
    setAcceptDrops(true);
    setDockOptions(AnimatedDocks | AllowTabbedDocks | AllowNestedDocks);
    addDocks();
    addMenus();
    statusBar()->addPermanentWidget(m_selectionLabel);
    listen();
    showTitle();
    restoreLayout(*this, m_settings);
}

void MainWindow::listen() {
    const auto tell = [this](const Error& error) {
        statusBar()->showMessage(told(error.sentence()));
    };
    connect(m_viewActions, &ViewActions::zoomWanted, m_views, &CentralArea::zoom);
    connect(m_viewActions, &ViewActions::fitWanted, m_views, &CentralArea::fit);
    connect(m_view, &ElevationView::hint, this,
            [this](const QString& text) { statusBar()->showMessage(text); });
    connect(&m_session, &Session::refused, this, tell);
    connect(&m_recovery, &Recovery::failed, this, tell);
    connect(m_findings, &FindingsPanel::findingChosen, m_view, &ElevationView::showFinding);
    connect(m_view, &ElevationView::contextMenuWanted, this,
            [this](QPoint at, const std::vector<Quantity>& numbers) {
                QMenu menu;
                m_editActions->fillContext(menu);
                menu.addSeparator();
                m_askActions->fillContext(menu, numbers);
                menu.exec(at);
            });
    new Announcer(m_session, *m_view, *m_selectionLabel);
    connect(m_start, &StartPlace::shownChanged, this, [this](bool isShown) {
        m_caseOnly->setCaseShown(!isShown);
        showTitle();
    });
    connect(m_fileActions, &FileActions::startWanted, this,
            [this] { m_start->showOver(m_file.name()); });
    connect(m_fileActions, &FileActions::caseClosed, this, &MainWindow::showStart);
    connect(&m_session, &Session::started, m_start, &StartPlace::leave);
    connect(&m_session.undoStack(), &QUndoStack::indexChanged, m_start, &StartPlace::leave);
    connect(&m_file, &CaseFile::changed, this, &MainWindow::showTitle);
    connect(&m_session, &Session::workChanged, this, &MainWindow::showTitle);
    connect(&m_session, &Session::selectionChanged, this, &MainWindow::showTitle);
    connect(&m_session, &Session::styleChanged, this, &MainWindow::showTitle);
}

void MainWindow::addDocks() {
    const auto dock = [this](const QString& title, const char* name, PanelDock::Maker panel,
                             Qt::DockWidgetArea area) {
        auto* widget = new PanelDock(withoutMnemonic(title), QString::fromLatin1(name),
                                     std::move(panel), this);
        widget->toggleViewAction()->setText(title);
        addDockWidget(area, widget);
        setHelpTopic(*widget, QStringLiteral("window#") + widget->objectName());
        return widget;
    };
    const auto right = Qt::RightDockWidgetArea;
    setCorner(Qt::BottomRightCorner, right);
    auto* selected = dock(
        tr("&Selected"), "selected", [this] { return new SelectionPanel(m_session); }, right);
    auto* numbers = dock(
        tr("&Numbers"), "numbers", [this] { return new NumbersPanel(m_session); }, right);
    auto* ways = dock(
        tr("&Ways to hold it"), "ways", [this] { return new WaysPanel(m_session); }, right);
    auto* wood = dock(
        tr("W&ood and air"), "wood", [this] { return new WoodPanel(m_session); }, right);
    auto* steps = dock(
        tr("S&teps"), "steps", [this] { return stepsPanel(); }, right);
    tabifyDockWidget(selected, numbers);
    tabifyDockWidget(numbers, ways);
    tabifyDockWidget(ways, wood);
    tabifyDockWidget(wood, steps);
    selected->panel();
    selected->raise();
    auto* section = dock(
        tr("S&ection"), "section", [this] { return new SectionPanel(m_session); }, right);
    section->panel();
    auto* findings = dock(
        tr("&Findings"), "findings", [this] { return m_findings; }, Qt::BottomDockWidgetArea);
    findings->panel();
    // As wide as the tabs need, whatever the letters' size.
    const QFontMetrics letters = fontMetrics();
    int tabs = 0;
    for (const QDockWidget* each : {selected, numbers, ways, wood, steps})
        tabs += letters.horizontalAdvance(each->windowTitle()) +
                style()->pixelMetric(QStyle::PM_TabBarTabHSpace) + tabGap;
    resizeDocks({selected, section}, {380, 420}, Qt::Vertical);
    resizeDocks({selected}, {std::max({400, letters.averageCharWidth() * 62, tabs})},
                Qt::Horizontal);
    resizeDocks({findings}, {std::max(220, letters.lineSpacing() * 15)}, Qt::Vertical);
    answerAsks(*selected, *numbers, *wood);
}

void MainWindow::answerAsks(PanelDock& selected, PanelDock& numbers, PanelDock& wood) {
    connect(&m_session, &Session::numberAsked, &numbers, [&numbers](Quantity quantity) {
        numbers.bringForward();
        qobject_cast<NumbersPanel*>(numbers.panel())->ask(quantity);
    });
    connect(&m_session, &Session::inputAsked, &selected,
            [this, &selected, &wood](InputPlace place, std::optional<Quantity> about) {
                const InputField where =
                    inputField(place, about, m_session.plan(), m_session.selection());
                if (where.panel == InputPanel::Wood) {
                    wood.bringForward();
                    qobject_cast<WoodPanel*>(wood.panel())->goTo(where);
                } else {
                    selected.bringForward();
                    qobject_cast<SelectionPanel*>(selected.panel())->goTo(where);
                }
            });
    const auto tell = [this] { setHelpTopic(*m_view, topicOf(m_session.selection())); };
    connect(&m_session, &Session::selectionChanged, m_view, tell);
    tell();
}

QWidget* MainWindow::stepsPanel() {
    auto* steps = new QUndoView(&m_session.undoStack());
    steps->setAccessibleName(tr("Steps that can be taken back"));
    steps->setEmptyLabel(tr("The case as it was opened"));
    return steps;
}

bool MainWindow::openPath(const QString& path) {
    return m_fileActions->openPath(path);
}

void MainWindow::showStart() {
    m_start->show();
}

void MainWindow::showTitle() {
    if (m_start->isShown())
        setWindowTitle(tr("Frontwright"));
    else if (m_file.isReadOnly())
        setWindowTitle(tr("%1[*] (read only) – Frontwright").arg(m_file.name()));
    else
        setWindowTitle(tr("%1[*] – Frontwright").arg(m_file.name()));
    setWindowModified(m_file.isUnsaved());
    m_selectionLabel->setText(selectionWords(m_session));
}

void MainWindow::showTemplates() {
    TemplateDialog dialog(m_session, m_settings, m_file.name(), this);
    dialog.exec();
}

void MainWindow::childEvent(QChildEvent* event) {
    QMainWindow::childEvent(event);
    // Where the panels' tabs lack room they are scrolled, not cut off.
    if (auto* tabs = qobject_cast<QTabBar*>(event->child()); tabs && event->polished()) {
        tabs->setElideMode(Qt::ElideNone);
        tabs->setUsesScrollButtons(true);
    }
}

void MainWindow::closeEvent(QCloseEvent* event) {
    m_view->cancelGesture();
    if (!m_fileActions->mayLeave()) {
        event->ignore();
        return;
    }
    m_recovery.finish();
    keepLayout(*this, m_start->panels(), m_settings);
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!localFiles(*event->mimeData()).isEmpty())
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    QStringList paths = localFiles(*event->mimeData());
    if (paths.isEmpty() || !m_fileActions->mayLeave())
        return;
    openPath(paths.takeFirst());
    for (const QString& path : paths)
        Q_EMIT windowWanted(path);
}

} // namespace frontwright
