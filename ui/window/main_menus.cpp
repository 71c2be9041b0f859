#include "ui/window/main_window.h"

#include "ui/language/language_menu.h"
#include "ui/window/ask_actions.h"
#include "ui/window/case_only.h"
#include "ui/window/central_area.h"
#include "ui/window/edit_actions.h"
#include "ui/window/file_actions.h"
#include "ui/window/help.h"
#include "ui/window/view_actions.h"

#include <QDockWidget>
#include <QMenu>
#include <QMenuBar>
#include <QStatusBar>
#include <QToolBar>

namespace frontwright {

void MainWindow::addMenus() {
    QMenu* file = menuBar()->addMenu(tr("&File"));
    m_fileActions->fill(*file, *m_caseOnly);
    QAction* print = file->addAction(tr("&Templates at full size…"));
    print->setStatusTip(tr("Look at the drilling templates, save them as PDF or print them"));
    print->setShortcuts(QKeySequence::keyBindings(QKeySequence::Print));
    connect(print, &QAction::triggered, this, &MainWindow::showTemplates);
    m_caseOnly->add(print);
    file->addSeparator();
    QAction* quit = file->addAction(tr("&Quit"));
    quit->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Q));
    quit->setStatusTip(tr("Close the window"));
    connect(quit, &QAction::triggered, this, &QWidget::close);
    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    m_editActions->fill(*edit);
    m_caseOnly->add(edit->menuAction());
    QMenu* view = menuBar()->addMenu(tr("&View"));
    m_views->fill(*view);
    view->addSeparator();
    m_viewActions->fill(*view);
    view->addSeparator();
    QMenu* panels = view->addMenu(tr("&Panels"));
    for (QDockWidget* dock : findChildren<QDockWidget*>()) {
        dock->toggleViewAction()->setStatusTip(
            tr("Show or hide the panel “%1”").arg(dock->windowTitle()));
        panels->addAction(dock->toggleViewAction());
    }
    auto* language = new LanguageMenu(m_settings, view);
    connect(language, &LanguageMenu::chosen, this,
            [this](const QString& sentence) { statusBar()->showMessage(sentence); });
    for (QAction* action : view->actions())
        if (action != &m_viewActions->theme())
            m_caseOnly->add(action);
    view->addMenu(language);
    QMenu* help = menuBar()->addMenu(tr("&Help"));
    addHelp(*help, *m_help, *this);
    help->addSeparator();
    m_askActions->fill(*help);
    m_caseOnly->add(&m_askActions->why());

    QToolBar* bar = addToolBar(tr("Tools"));
    bar->setObjectName(QStringLiteral("tools"));
    m_editActions->fill(*bar);
    bar->addSeparator();
    m_viewActions->fill(*bar);
    bar->addSeparator();
    bar->addAction(print);
}

} // namespace frontwright
