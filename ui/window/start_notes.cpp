#include "ui/window/start_notes.h"

#include "ui/language/told.h"
#include "ui/window/recovery.h"
#include "ui/window/recovery_dialog.h"

#include <QCoreApplication>
#include <QMessageBox>

namespace frontwright {

namespace {

struct StartNotes {
    Q_DECLARE_TR_FUNCTIONS(frontwright::StartNotes)
public:
    static void show(QWidget& window, QMessageBox::Icon icon, const QString& title,
                     const QString& text) {
        QMessageBox box(icon, title, text, QMessageBox::Ok, &window);
        box.setTextFormat(Qt::PlainText);
        box.setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        box.exec();
    }
    static bool mayThrowAway(QWidget& window, const RecoveryCopy& copy) {
        return QMessageBox::question(
                   &window, tr("Throw the copy away"),
                   tr("The unsaved work on %1 can't be brought back after that.").arg(copy.name),
                   QMessageBox::Discard | QMessageBox::Cancel,
                   QMessageBox::Cancel) == QMessageBox::Discard;
    }
};

} // namespace

bool offerRecovery(Recovery& recovery, QWidget& window) {
    for (;;) {
        const auto copies = recovery.abandoned();
        if (copies.isEmpty())
            return false;
        RecoveryDialog dialog(copies, &window);
        dialog.exec();
        switch (dialog.answer()) {
        case RecoveryDialog::Answer::Later:
            return false;
        case RecoveryDialog::Answer::ThrowAway:
            if (StartNotes::mayThrowAway(window, dialog.chosen()))
                RecoveryFolder::discard(dialog.chosen());
            break;
        case RecoveryDialog::Answer::Open:
            if (const auto failed = recovery.openCopy(dialog.chosen())) {
                StartNotes::show(window, QMessageBox::Warning,
                                 StartNotes::tr("The copy can't be opened"),
                                 told(failed->sentence()));
                return false;
            }
            return true;
        }
    }
}

void tellOfBadSettings(const QString& keptAside, QWidget& window) {
    StartNotes::show(window, QMessageBox::Information, StartNotes::tr("Settings could not be read"),
                     StartNotes::tr("Frontwright starts with its defaults. Your cases are not "
                                    "touched. The old settings are kept in %1.")
                         .arg(keptAside));
}

void tellOfCrashes(const QStringList& reports, QWidget& window) {
    StartNotes::show(
        window, QMessageBox::Information, StartNotes::tr("Frontwright ended by mistake"),
        StartNotes::tr("Your case files are as they were saved last; unsaved work is offered from "
                       "its recovery copy. What happened is written in %1. Nothing was sent "
                       "anywhere.")
            .arg(reports.constLast()));
}

} // namespace frontwright
