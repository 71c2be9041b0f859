#pragma once

#include "core/catalogue/catalogue.h"

#include <QByteArray>
#include <QObject>
#include <QString>

class QMainWindow;
class QStackedWidget;

namespace frontwright {

class FileActions;
class StartPage;

/// Puts the start page in the middle of the window while no case is open, and the panels away.
/// The page is built when it is first shown.
class StartPlace : public QObject {
    Q_OBJECT
public:
    /// `middle` holds what is shown of an open case.
    StartPlace(QMainWindow& window, QStackedWidget& middle, FileActions& actions,
               Catalogue programs);

    void show();
    void leave();
    /// Over an open case, which stays as it is: the page then leads back to it.
    void showOver(const QString& caseName);
    [[nodiscard]] bool isShown() const { return m_shown; }
    [[nodiscard]] StartPage* page() const { return m_page; }
    /// QMainWindow::saveState of the window with a case open.
    [[nodiscard]] QByteArray panels() const;

Q_SIGNALS:
    void shownChanged(bool isShown);

private:
    void build();

    QMainWindow& m_window;
    QStackedWidget& m_middle;
    FileActions& m_actions;
    Catalogue m_programs;
    StartPage* m_page = nullptr;
    QByteArray m_panels;
    bool m_shown = false;
};

} // namespace frontwright
