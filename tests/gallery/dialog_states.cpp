#include "tests/gallery/dialog_states.h"

#include "core/drawings/seen_size.h"
#include "ui/help/help_desk.h"
#include "ui/help/help_window.h"
#include "ui/rendering/card_dialog.h"
#include "ui/sheets/calibration_dialog.h"
#include "ui/sheets/template_dialog.h"
#include "ui/window/graduate_dialog.h"
#include "ui/window/new_case_dialog.h"
#include "ui/window/own_entries_dialog.h"
#include "ui/window/recovery_dialog.h"
#include "ui/window/rules_dialog.h"

#include <QComboBox>
#include <QTabWidget>
#include <QTemporaryDir>

namespace frontwright::gallery {

QPixmap catalogue(MainWindow& window, Unit unit, int tab) {
    open(window, "glaze-chest", unit);
    OwnEntriesDialog dialog(window.session(), &window);
    dialog.findChild<QTabWidget*>()->setCurrentIndex(tab);
    return dialogOver(dialog);
}

QPixmap help(MainWindow& window, const char* topic) {
    HelpWindow* opened = window.help().open(QLatin1String(topic));
    settle();
    return opened->grab();
}

QPixmap recovery() {
    RecoveryCopy copy;
    copy.name = QStringLiteral("glaze-chest.frontwright");
    copy.origin = QStringLiteral("/home/maker/cases/glaze-chest.frontwright");
    copy.written = QDateTime(QDate(2026, 2, 28), QTime(12, 30));
    copy.size = 4096;
    RecoveryDialog dialog({copy}, nullptr);
    return dialogOver(dialog);
}

QPixmap calibration(Unit unit) {
    const QTemporaryDir home;
    QSettings settings(home.filePath(QStringLiteral("s.ini")), QSettings::IniFormat);
    CalibrationDialog dialog(settings, QStringLiteral("Workshop printer"), paperNamed("A4").value(),
                             Length::millimetres(10), LengthStyle{unit, 16}, Orientation::Portrait,
                             [](const Page&) { return true; });
    return dialogOver(dialog);
}

QPixmap newCase(MainWindow& window) {
    NewCaseDialog dialog(&window);
    return dialogOver(dialog);
}

QPixmap rules(MainWindow& window) {
    RulesDialog dialog(window.session().programsCatalogue());
    return dialogOver(dialog);
}

QPixmap screenSize(MainWindow& window) {
    CardDialog dialog(96 / 25.4, usualEyeDistance, window.session().style(), &window);
    return dialogOver(dialog);
}

QPixmap graduate(MainWindow& window, Unit unit, int way) {
    open(window, "glaze-chest", unit);
    GraduateDialog dialog(window.session().project(),
                          window.session().plan().fronts.front().opening, window.session().style(),
                          &window);
    dialog.findChild<QComboBox*>()->setCurrentIndex(way);
    return dialogOver(dialog);
}

QPixmap templates(MainWindow& window, Unit unit, const char* sample) {
    open(window, sample, unit);
    const QTemporaryDir home;
    QSettings settings(home.filePath(QStringLiteral("s.ini")), QSettings::IniFormat);
    TemplateDialog dialog(window.session(), settings, QString::fromLatin1(sample), &window);
    return dialogOver(dialog);
}

} // namespace frontwright::gallery
