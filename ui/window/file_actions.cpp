#include "ui/window/file_actions.h"

#include "ui/files/sample_cases.h"
#include "ui/window/case_only.h"
#include "ui/window/file_questions.h"
#include "ui/window/new_case_dialog.h"

#include <QAction>
#include <QFileDialog>
#include <QFileInfo>
#include <QKeySequence>
#include <QMenu>
#include <QWidget>

namespace frontwright {

namespace {
const QString suffix = QStringLiteral("frontwright");
}

FileActions::FileActions(CaseFile& file, QSettings& settings, QWidget& window)
    : QObject(&window),
      m_file(file),
      m_recent(settings),
      m_window(window) {}

void FileActions::fill(QMenu& menu, CaseOnly& ofCase) {
    const auto add = [&](const QString& text, const QString& tip, const QList<QKeySequence>& keys,
                         auto slot) {
        QAction* action = menu.addAction(text);
        action->setStatusTip(tip);
        action->setShortcuts(keys);
        connect(action, &QAction::triggered, this, slot);
        return action;
    };
    add(tr("&New case…"), tr("Start a case from a few numbers"),
        QKeySequence::keyBindings(QKeySequence::New), [this] { newCase(); });
    add(tr("&Open…"), tr("Open a case file"), QKeySequence::keyBindings(QKeySequence::Open),
        [this] { openDialog(); });
    QMenu* recent = menu.addMenu(tr("Open &recent"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(*recent); });
    menu.addSeparator();
    ofCase.add(add(tr("&Save"), tr("Save the case to its file"),
                   QKeySequence::keyBindings(QKeySequence::Save), [this] { save(); }));
    ofCase.add(add(tr("Save &as…"), tr("Save the case under another name"),
                   {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S)}, [this] { saveAs(); }));
    ofCase.add(add(tr("Start pa&ge"), tr("Show the start page; the case stays open"),
                   {QKeySequence(Qt::ALT | Qt::Key_Home)}, [this] { Q_EMIT startWanted(); }));
    ofCase.add(add(tr("&Close the case"), tr("Close the case and go back to the start page"),
                   {QKeySequence(Qt::CTRL | Qt::Key_W)}, [this] { closeCase(); }));
    menu.addSeparator();
}

void FileActions::fillRecent(QMenu& menu) {
    menu.clear();
    for (const QString& path : m_recent.paths()) {
        QString text = QFileInfo(path).fileName();
        text.replace(QLatin1Char('&'), QStringLiteral("&&"));
        QAction* action = menu.addAction(text);
        action->setStatusTip(path);
        connect(action, &QAction::triggered, this, [this, path] { openRecent(path); });
    }
    if (menu.isEmpty())
        menu.addAction(tr("No case was opened yet"))->setEnabled(false);
}

void FileActions::newCase() {
    if (!mayLeave())
        return;
    NewCaseDialog dialog(&m_window);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const auto project = dialog.project();
    if (!project.ok()) {
        report(tr("The case can't be made"), project.error());
        return;
    }
    if (const auto failed = m_file.startNew(project.value()))
        report(tr("The case can't be made"), *failed);
}

void FileActions::openDialog() {
    if (!mayLeave())
        return;
    const QString folder = m_file.hasPath() ? QFileInfo(m_file.path()).absolutePath() : QString();
    const QString path = QFileDialog::getOpenFileName(
        &m_window, tr("Open a case"), folder, tr("Case files (*.%1);;All files (*)").arg(suffix));
    if (!path.isEmpty())
        openPath(path);
}

void FileActions::openRecent(const QString& path) {
    if (mayLeave())
        openPath(path);
}

void FileActions::openSample(const SampleCase& sample) {
    if (!mayLeave())
        return;
    const QString name = tr("Sample %1").arg(sample.fileName);
    if (const auto failed = m_file.startNamed(sample.project, name, CaseFile::Mark::Saved))
        report(tr("The sample can't be opened"), *failed);
}

void FileActions::closeCase() {
    if (!mayLeave())
        return;
    if (const auto failed = m_file.startNew(newProject(Unit::Inch))) {
        report(tr("The case can't be closed"), *failed);
        return;
    }
    Q_EMIT caseClosed();
}

bool FileActions::openPath(const QString& path) {
    auto as = CaseFile::OpenAs::Own;
    if (const auto holder = m_file.holderOf(path)) {
        switch (askHeld(path, *holder, m_window)) {
        case HeldAnswer::Cancel:
            return false;
        case HeldAnswer::Copy:
            as = CaseFile::OpenAs::Copy;
            break;
        case HeldAnswer::ReadOnly:
            as = CaseFile::OpenAs::ReadOnly;
            break;
        }
    }
    if (const auto failed = m_file.open(path, as)) {
        if (QFileInfo::exists(path) || !m_recent.paths().contains(path))
            report(tr("The case can't be opened"), *failed);
        else if (askToForget(path, m_window))
            m_recent.remove(path);
        return false;
    }
    m_recent.add(QFileInfo(path).absoluteFilePath());
    return true;
}

bool FileActions::replaceOutsideChange() {
    switch (askChangedOutside(m_file, m_window)) {
    case OutsideAnswer::SaveAs:
        return saveAs();
    case OutsideAnswer::Replace:
        break;
    case OutsideAnswer::Cancel:
        return false;
    }
    const auto failed = m_file.save();
    if (failed)
        report(tr("The case was not saved"), *failed);
    return !failed;
}

bool FileActions::save() {
    if (!m_file.hasPath() || m_file.isReadOnly())
        return saveAs();
    if (m_file.changedOutside())
        return replaceOutsideChange();
    if (const auto failed = m_file.save()) {
        report(tr("The case was not saved"), *failed);
        return false;
    }
    return true;
}

bool FileActions::saveAs() {
    QFileDialog dialog(&m_window, tr("Save the case as"), m_file.path(),
                       tr("Case files (*.%1)").arg(suffix));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(suffix);
    if (!m_file.hasPath())
        dialog.selectFile(m_file.isNamed() ? m_file.name() : tr("my-case") + u'.' + suffix);
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return false;
    if (const auto failed = m_file.saveAs(dialog.selectedFiles().constFirst())) {
        report(tr("The case was not saved"), *failed);
        return false;
    }
    m_recent.add(m_file.path());
    return true;
}

bool FileActions::mayLeave() {
    if (!m_file.isUnsaved())
        return true;
    switch (askUnsaved(m_file, m_window)) {
    case LeaveAnswer::Save:
        return save();
    case LeaveAnswer::Discard:
        return true;
    case LeaveAnswer::Cancel:
        break;
    }
    return false;
}

void FileActions::report(const QString& title, const Error& error) {
    reportError(title, error, m_window);
}

} // namespace frontwright
