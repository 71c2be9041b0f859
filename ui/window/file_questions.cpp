#include "ui/window/file_questions.h"
#include "ui/language/told.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

namespace frontwright {

namespace {

struct FileQuestions {
    Q_DECLARE_TR_FUNCTIONS(frontwright::FileQuestions)
};

} // namespace

HeldAnswer askHeld(const QString& path, const LockHolder& holder, QWidget& window) {
    QMessageBox box(QMessageBox::Question, FileQuestions::tr("Open elsewhere"),
                    FileQuestions::tr("%1 is open in another window (process %2 on %3). Only one "
                                      "of them may save it.")
                        .arg(QFileInfo(path).fileName())
                        .arg(holder.process)
                        .arg(holder.host),
                    QMessageBox::Cancel, &window);
    box.setTextFormat(Qt::PlainText);
    QPushButton* copy = box.addButton(FileQuestions::tr("Open a &copy"), QMessageBox::AcceptRole);
    QPushButton* look = box.addButton(FileQuestions::tr("&Read only"), QMessageBox::AcceptRole);
    box.setDefaultButton(copy);
    box.exec();
    if (box.clickedButton() == copy)
        return HeldAnswer::Copy;
    return box.clickedButton() == look ? HeldAnswer::ReadOnly : HeldAnswer::Cancel;
}

OutsideAnswer askChangedOutside(const CaseFile& file, QWidget& window) {
    QMessageBox box(QMessageBox::Warning, FileQuestions::tr("Changed outside"),
                    FileQuestions::tr("%1 was changed by something else since it was opened here. "
                                      "Saving would replace that version.")
                        .arg(file.name()),
                    QMessageBox::Cancel, &window);
    box.setTextFormat(Qt::PlainText);
    QPushButton* as = box.addButton(FileQuestions::tr("Save &as…"), QMessageBox::AcceptRole);
    QPushButton* anyway =
        box.addButton(FileQuestions::tr("&Replace it"), QMessageBox::DestructiveRole);
    box.setDefaultButton(as);
    box.exec();
    if (box.clickedButton() == as)
        return OutsideAnswer::SaveAs;
    return box.clickedButton() == anyway ? OutsideAnswer::Replace : OutsideAnswer::Cancel;
}

LeaveAnswer askUnsaved(const CaseFile& file, QWidget& window) {
    const auto answer = QMessageBox::question(
        &window, FileQuestions::tr("Unsaved changes"),
        FileQuestions::tr("Save the changes to %1?").arg(file.name()),
        QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, QMessageBox::Save);
    if (answer == QMessageBox::Save)
        return LeaveAnswer::Save;
    return answer == QMessageBox::Discard ? LeaveAnswer::Discard : LeaveAnswer::Cancel;
}

bool askToForget(const QString& path, QWidget& window) {
    return QMessageBox::question(
               &window, FileQuestions::tr("Not found"),
               FileQuestions::tr("%1 is no longer there. Take it off the list of recent cases?")
                   .arg(path)) == QMessageBox::Yes;
}

void reportError(const QString& title, const Error& error, QWidget& window) {
    QMessageBox box(QMessageBox::Warning, title, told(error.sentence()), QMessageBox::Ok, &window);
    box.setTextFormat(Qt::PlainText);
    box.exec();
}

} // namespace frontwright
