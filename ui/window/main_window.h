#pragma once

#include "ui/elevation/elevation_view.h"
#include "ui/session/session.h"
#include "ui/window/case_file.h"
#include "ui/window/recovery.h"

#include <QMainWindow>
#include <QSettings>

class QLabel;
class QStackedWidget;

namespace frontwright {

class CentralArea;
class EditActions;
class AskActions;
class CaseOnly;
class FileActions;
class FindingsPanel;
class StartPlace;
class HelpDesk;
class PanelDock;
class ViewActions;
class ViewSettings;

/// Puts the parts together: elevation in the middle, panels round it, menus, status bar, title.
/// Holds no behaviour of its own but closing and dropping files.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    MainWindow(Catalogue programs, QSettings& settings);

    /// Opens without a question; reports what went wrong in a dialog.
    bool openPath(const QString& path);
    /// The start page instead of a case.
    void showStart();

    [[nodiscard]] Session& session() { return m_session; }
    [[nodiscard]] ElevationView& elevation() { return *m_view; }
    [[nodiscard]] CentralArea& views() { return *m_views; }
    [[nodiscard]] CaseFile& file() { return m_file; }
    [[nodiscard]] Recovery& recovery() { return m_recovery; }
    [[nodiscard]] StartPlace& start() { return *m_start; }
    [[nodiscard]] FindingsPanel& findings() { return *m_findings; }
    [[nodiscard]] HelpDesk& help() { return *m_help; }

Q_SIGNALS:
    /// A further file was dropped: it wants a window of its own.
    void windowWanted(const QString& path);

protected:
    void childEvent(QChildEvent*) override;
    void closeEvent(QCloseEvent*) override;
    void dragEnterEvent(QDragEnterEvent*) override;
    void dropEvent(QDropEvent*) override;

private:
    void listen();
    void addDocks();
    void answerAsks(PanelDock& selected, PanelDock& numbers, PanelDock& wood);
    QWidget* stepsPanel();
    void addMenus();
    void showTitle();
    void showTemplates();

    Session m_session;
    QSettings& m_settings;
    CaseFile m_file;
    Recovery m_recovery;
    ElevationView* m_view;
    CentralArea* m_views;
    QStackedWidget* m_middle;
    FindingsPanel* m_findings;
    FileActions* m_fileActions;
    EditActions* m_editActions;
    ViewSettings* m_viewSettings;
    ViewActions* m_viewActions;
    StartPlace* m_start;
    CaseOnly* m_caseOnly;
    AskActions* m_askActions;
    HelpDesk* m_help;
    QLabel* m_selectionLabel;
};

} // namespace frontwright
