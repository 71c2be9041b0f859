#pragma once

#include "ui/window/case_file.h"
#include "ui/window/recent_files.h"

class QMenu;
class QWidget;

namespace frontwright {

class CaseOnly;
struct SampleCase;

/// New, open, recent, save, save as, close, and the question before a case is left unsaved. The
/// file itself is the CaseFile's.
class FileActions : public QObject {
    Q_OBJECT
public:
    FileActions(CaseFile&, QSettings&, QWidget& window);

    /// Those that act on the case that is shown join `ofCase`.
    void fill(QMenu& menu, CaseOnly& ofCase);

    // Each of these asks first where the open case is unsaved.
    void newCase();
    void openDialog();
    void openRecent(const QString& path);
    void openSample(const SampleCase& sample);
    void closeCase();

    /// Opens without a dialog, unless somebody else has the file open; reports what went wrong in
    /// one.
    bool openPath(const QString& path);
    bool save();
    bool saveAs();
    /// True where the case may be left: it is saved, was saved now, or may be discarded.
    bool mayLeave();

    [[nodiscard]] QStringList recent() const { return m_recent.paths(); }

Q_SIGNALS:
    void caseClosed();
    void startWanted(); ///< the start page, with the case left open

private:
    void fillRecent(QMenu& menu);
    bool replaceOutsideChange();
    void report(const QString& title, const Error& error);

    CaseFile& m_file;
    RecentFiles m_recent;
    QWidget& m_window;
};

} // namespace frontwright
