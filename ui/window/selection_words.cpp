#include "ui/window/selection_words.h"

#include "ui/elevation/case_parts.h"
#include "ui/session/session.h"

#include <QCoreApplication>

#include <algorithm>

namespace frontwright {

QString selectionWords(const Session& session) {
    const Selection& selection = session.selection();
    if (selection.openings.size() > 1) {
        const bool areFronts = std::ranges::all_of(
            selection.openings, [&](OpeningId id) { return session.plan().frontOf(id); });
        return (areFronts
                    ? QCoreApplication::translate("frontwright::MainWindow", "%1 fronts selected")
                    : QCoreApplication::translate("frontwright::MainWindow",
                                                  "%1 openings selected"))
            .arg(selection.openings.size());
    }
    const auto id = selection.lastOpening();
    if (!id)
        return {};
    const Selection opening = Selection::of(*id);
    const QString name = nameOf(opening, session.project(), session.plan());
    if (name.isEmpty())
        return {};
    return QCoreApplication::translate("frontwright::MainWindow", "%1: %2")
        .arg(name, sizeOf(opening, session.plan(), session.style()));
}

} // namespace frontwright
