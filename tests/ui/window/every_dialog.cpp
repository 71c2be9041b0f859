#include "tests/ui/window/every_dialog.h"

#include "core/drawings/seen_size.h"
#include "ui/panels/preset_name_dialog.h"
#include "ui/rendering/card_dialog.h"
#include "ui/sheets/calibration_dialog.h"
#include "ui/sheets/template_dialog.h"
#include "ui/window/graduate_dialog.h"
#include "ui/window/new_case_dialog.h"
#include "ui/window/recovery_dialog.h"

namespace frontwright::testing {

std::vector<std::unique_ptr<QDialog>> everyDialog(Session& session, QSettings& settings) {
    std::vector<std::unique_ptr<QDialog>> dialogs;
    dialogs.push_back(std::make_unique<NewCaseDialog>());
    dialogs.push_back(std::make_unique<GraduateDialog>(
        session.project(), session.plan().fronts.front().opening, session.style(), nullptr));
    dialogs.push_back(
        std::make_unique<TemplateDialog>(session, settings, QStringLiteral("case"), nullptr));
    RecoveryCopy copy;
    copy.name = QStringLiteral("New case");
    copy.written = QDateTime(QDate(2020, 2, 29), QTime(12, 30));
    copy.size = 4096;
    dialogs.push_back(std::make_unique<RecoveryDialog>(QList<RecoveryCopy>{copy, copy}, nullptr));
    dialogs.push_back(std::make_unique<PresetNameDialog>(
        QStringLiteral("Keep as preset"), QStringLiteral("Deep drawers"),
        [](const std::string&) { return std::optional<Error>(); }, nullptr));
    dialogs.push_back(std::make_unique<CardDialog>(96 / 25.4, usualEyeDistance, session.style()));
    dialogs.push_back(std::make_unique<CalibrationDialog>(
        settings, QStringLiteral("2160"), paperNamed("A4").value(), Length::millimetres(10),
        session.style(), Orientation::Portrait, [](const Page&) { return true; }));
    return dialogs;
}

} // namespace frontwright::testing
