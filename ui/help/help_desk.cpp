#include "ui/help/help_desk.h"

#include <QApplication>
#include <QDialog>
#include <QKeyEvent>

namespace frontwright {

HelpDesk::HelpDesk(std::function<QString()> actions, QWidget& mainWindow)
    : QObject(&mainWindow),
      m_actions(std::move(actions)),
      m_mainWindow(mainWindow) {
    qApp->installEventFilter(this);
}

HelpWindow* HelpDesk::open(const HelpTopic& topic) {
    QWidget* modal = QApplication::activeModalWidget();
    QPointer<HelpWindow>& window = modal ? m_dialogsWindow : m_window;
    if (window && modal && window->parentWidget() != modal)
        delete window;
    if (!window)
        window = new HelpWindow(m_actions, modal ? modal : &m_mainWindow);
    window->showTopic(topic);
    return window;
}

HelpWindow* HelpDesk::openHere() {
    return open(helpTopicAt(QApplication::focusWidget()));
}

/// The main window has an action for F1; shortcuts of a blocked window are silent, so that in a
/// dialog the key itself arrives.
bool HelpDesk::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress || !watched->isWidgetType())
        return false;
    const auto* key = static_cast<const QKeyEvent*>(event);
    const auto* widget = static_cast<const QWidget*>(watched);
    if (key->key() != Qt::Key_F1 || key->modifiers() != Qt::NoModifier ||
        !qobject_cast<const QDialog*>(widget->window()))
        return false;
    open(helpTopicAt(widget));
    return true;
}

} // namespace frontwright
