#include "ui/window/file_actions.h"

#include "ui/window/new_case_dialog.h"

#include <QAction>
#include <QFileDialog>
#include <QFileInfo>
#include <QKeySequence>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
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

void FileActions::fill(QMenu& menu) {
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
    add(tr("&Save"), tr("Save the case to its file"), QKeySequence::keyBindings(QKeySequence::Save),
        [this] { save(); });
    add(tr("Save &as…"), tr("Save the case under another name"),
        {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S)}, [this] { saveAs(); });
    menu.addSeparator();
}

void FileActions::fillRecent(QMenu& menu) {
    menu.clear();
    for (const QString& path : m_recent.paths()) {
        QString text = QFileInfo(path).fileName();
        text.replace(QLatin1Char('&'), QStringLiteral("&&"));
        QAction* action = menu.addAction(text);
        action->setStatusTip(path);
        connect(action, &QAction::triggered, this, [this, path] {
            if (mayLeave())
                openPath(path);
        });
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

bool FileActions::openPath(const QString& path) {
    if (const auto failed = m_file.open(path)) {
        if (!QFileInfo::exists(path) && m_recent.paths().contains(path)) {
            const auto answer = QMessageBox::question(
                &m_window, tr("Not found"),
                tr("%1 is no longer there. Take it off the list of recent cases?").arg(path));
            if (answer == QMessageBox::Yes)
                m_recent.remove(path);
            return false;
        }
        report(tr("The case can't be opened"), *failed);
        return false;
    }
    m_recent.add(m_file.path());
    return true;
}

bool FileActions::mayOverwriteOutsideChange() {
    if (!m_file.changedOutside())
        return true;
    QMessageBox box(QMessageBox::Warning, tr("Changed outside"),
                    tr("%1 was changed by something else since it was opened here. Saving would "
                       "replace that version.")
                        .arg(m_file.name()),
                    QMessageBox::Cancel, &m_window);
    QPushButton* as = box.addButton(tr("Save &as…"), QMessageBox::AcceptRole);
    QPushButton* anyway = box.addButton(tr("&Replace it"), QMessageBox::DestructiveRole);
    box.setDefaultButton(as);
    box.exec();
    if (box.clickedButton() == as) {
        saveAs();
        return false;
    }
    return box.clickedButton() == anyway;
}

bool FileActions::save() {
    if (!m_file.hasPath())
        return saveAs();
    if (!mayOverwriteOutsideChange())
        return !m_file.isUnsaved();
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
        dialog.selectFile(tr("my-case") + QLatin1Char('.') + suffix);
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
    const auto answer = QMessageBox::question(
        &m_window, tr("Unsaved changes"), tr("Save the changes to %1?").arg(m_file.name()),
        QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, QMessageBox::Save);
    if (answer == QMessageBox::Save)
        return save();
    return answer == QMessageBox::Discard;
}

void FileActions::report(const QString& title, const Error& error) {
    QMessageBox box(QMessageBox::Warning, title, QString::fromStdString(error.sentence()),
                    QMessageBox::Ok, &m_window);
    box.setTextFormat(Qt::PlainText);
    box.exec();
}

} // namespace frontwright
