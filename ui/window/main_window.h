#pragma once

#include "ui/elevation/elevation_view.h"
#include "ui/session/session.h"
#include "ui/window/case_file.h"

#include <QMainWindow>
#include <QSettings>

class QLabel;

namespace frontwright {

class EditActions;
class FileActions;
class FindingsPanel;
class ViewActions;

/// Puts the parts together: elevation in the middle, panels round it, menus, status bar, title.
/// Holds no behaviour of its own but closing and dropping files.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    MainWindow(Catalogue programs, QSettings& settings);

    /// Opens without a question; reports what went wrong in a dialog.
    bool openPath(const QString& path);

    [[nodiscard]] Session& session() { return m_session; }
    [[nodiscard]] ElevationView& elevation() { return *m_view; }
    [[nodiscard]] CaseFile& file() { return m_file; }
    [[nodiscard]] FindingsPanel& findings() { return *m_findings; }

protected:
    void closeEvent(QCloseEvent*) override;
    void dragEnterEvent(QDragEnterEvent*) override;
    void dropEvent(QDropEvent*) override;

private:
    void addDocks();
    QWidget* stepsPanel();
    void addMenus();
    void showTitle();
    void showTemplates();
    void restore();

    Session m_session;
    QSettings& m_settings;
    CaseFile m_file;
    ElevationView* m_view;
    FindingsPanel* m_findings;
    FileActions* m_fileActions;
    EditActions* m_editActions;
    ViewActions* m_viewActions;
    QLabel* m_selectionLabel;
};

} // namespace frontwright
