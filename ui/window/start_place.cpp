#include "ui/window/start_place.h"

#include "ui/start/start_page.h"
#include "ui/window/file_actions.h"
#include "ui/window/window_layout.h"

#include <QDockWidget>
#include <QMainWindow>
#include <QStackedWidget>
#include <QToolBar>

namespace frontwright {

StartPlace::StartPlace(QMainWindow& window, QStackedWidget& middle, FileActions& actions,
                       Catalogue programs)
    : QObject(&window),
      m_window(window),
      m_middle(middle),
      m_actions(actions),
      m_programs(std::move(programs)) {}

void StartPlace::build() {
    m_page = new StartPage(m_programs);
    m_middle.addWidget(m_page);
    connect(m_page, &StartPage::newWanted, &m_actions, &FileActions::newCase);
    connect(m_page, &StartPage::openWanted, &m_actions, &FileActions::openDialog);
    // A file that is gone may have been taken off the list.
    connect(m_page, &StartPage::recentWanted, this, [this](const QString& path) {
        m_actions.openRecent(path);
        if (m_shown)
            QMetaObject::invokeMethod(
                this, [this] { m_page->showRecent(m_actions.recent()); }, Qt::QueuedConnection);
    });
    connect(m_page, &StartPage::backWanted, this, &StartPlace::leave);
    connect(m_page, &StartPage::sampleWanted, &m_actions, &FileActions::openSample);
}

void StartPlace::showOver(const QString& caseName) {
    show();
    m_page->leadBack(caseName);
}

void StartPlace::show() {
    if (m_shown)
        return;
    if (!m_page)
        build();
    m_panels = m_window.saveState(layoutVersion);
    for (QDockWidget* dock : m_window.findChildren<QDockWidget*>())
        dock->hide();
    for (QToolBar* bar : m_window.findChildren<QToolBar*>())
        bar->hide();
    m_page->showRecent(m_actions.recent());
    m_page->leadBack({});
    m_middle.setCurrentWidget(m_page);
    m_page->setFocus();
    m_shown = true;
    Q_EMIT shownChanged(true);
}

void StartPlace::leave() {
    if (!m_shown)
        return;
    m_shown = false;
    m_middle.setCurrentIndex(0);
    m_middle.currentWidget()->setFocus();
    m_window.restoreState(m_panels, layoutVersion);
    Q_EMIT shownChanged(false);
}

QByteArray StartPlace::panels() const {
    return m_shown ? m_panels : m_window.saveState(layoutVersion);
}

} // namespace frontwright
