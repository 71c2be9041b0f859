#pragma once

#include "ui/help/help_window.h"
#include "ui/help/topics.h"

#include <QObject>
#include <QPointer>

namespace frontwright {

/// Opens the help where it is asked for: one window beside the main window, and a window of its
/// own for a dialog that blocks all others. F1 in a dialog comes here too.
class HelpDesk : public QObject {
    Q_OBJECT
public:
    HelpDesk(std::function<QString()> actions, QWidget& mainWindow);

    HelpWindow* open(const HelpTopic&);
    /// At what has the keyboard.
    HelpWindow* openHere();

protected:
    bool eventFilter(QObject*, QEvent*) override;

private:
    std::function<QString()> m_actions;
    QWidget& m_mainWindow;
    QPointer<HelpWindow> m_window;
    QPointer<HelpWindow> m_dialogsWindow;
};

} // namespace frontwright
