#include "ui/window/selection_words.h"

#include "core/lengths/format.h"
#include "ui/session/session.h"

#include <QCoreApplication>

namespace frontwright {

QString selectionWords(const Session& session) {
    const Selection& selection = session.selection();
    if (selection.openings.size() > 1)
        return QCoreApplication::translate("frontwright::MainWindow", "%1 fronts selected")
            .arg(selection.openings.size());
    const auto id = selection.lastOpening();
    const FrontPlan* front = id ? session.plan().frontOf(*id) : nullptr;
    if (!front)
        return {};
    return QCoreApplication::translate("frontwright::MainWindow", "Front %1: %2 × %3")
        .arg(QString::fromStdString(label(session.project(), *front)),
             QString::fromStdString(shown(front->rect.width(), session.style())),
             QString::fromStdString(shown(front->rect.height(), session.style())));
}

} // namespace frontwright
