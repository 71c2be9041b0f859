#pragma once

#include "ui/window/case_file.h"
#include "ui/window/recent_files.h"

class QMenu;
class QWidget;

namespace frontwright {

/// New, open, recent, save, save as, and the question before a case is left unsaved. Owns the
/// dialogs; the file itself is the CaseFile's.
class FileActions : public QObject {
    Q_OBJECT
public:
    FileActions(CaseFile&, QSettings&, QWidget& window);

    void fill(QMenu& menu);

    /// Opens without a dialog; reports what went wrong in one.
    bool openPath(const QString& path);
    bool save();
    bool saveAs();
    /// True where the case may be left: it is saved, was saved now, or may be discarded.
    bool mayLeave();

private:
    void newCase();
    void openDialog();
    void fillRecent(QMenu& menu);
    bool mayOverwriteOutsideChange();
    void report(const QString& title, const Error& error);

    CaseFile& m_file;
    RecentFiles m_recent;
    QWidget& m_window;
};

} // namespace frontwright
