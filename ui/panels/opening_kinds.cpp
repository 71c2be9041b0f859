#include "ui/panels/opening_kinds.h"

#include "core/edits/faces.h"
#include "core/edits/uses.h"

#include <QCoreApplication>

#include <algorithm>

namespace frontwright {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("frontwright", text);
}

QString nameOf(OpeningKind kind) {
    switch (kind.use) {
    case OpeningUse::Drawer:
        return tr("Drawer");
    case OpeningUse::FixedFront:
        return tr("Fixed front");
    case OpeningUse::Door:
        return kind.hinge == HingeSide::Left ? tr("Door, hinges at the left")
                                             : tr("Door, hinges at the right");
    case OpeningUse::OpenSpace:
        return tr("Open space");
    case OpeningUse::Board:
        break;
    }
    return tr("Pull-out board");
}

} // namespace

OpeningKind kindOf(const Opening& opening) {
    return {opening.use, opening.use == OpeningUse::Door ? opening.hinge : HingeSide::Left};
}

int indexOf(OpeningKind kind) {
    return static_cast<int>(std::ranges::find(allOpeningKinds, kind) - allOpeningKinds.begin());
}

QStringList openingKindNames() {
    QStringList names;
    for (const OpeningKind kind : allOpeningKinds)
        names << nameOf(kind);
    names << tr("Pair of doors");
    return names;
}

QStringList openingKindActions() {
    return {tr("&Drawer"),
            tr("&Fixed front"),
            tr("Door, hinges at the &left"),
            tr("Door, hinges at the &right"),
            tr("&Open space"),
            tr("&Pull-out board"),
            tr("P&air of doors")};
}

Result<Project> setOffered(const Project& project, std::span<const OpeningId> openings, int index) {
    const auto place = static_cast<std::size_t>(index);
    if (place == allOpeningKinds.size())
        return makePairOfDoors(project, openings);
    const OpeningKind kind = allOpeningKinds.at(place);
    auto used = setUse(project, openings, kind.use);
    if (!used.ok() || kind.use != OpeningUse::Door)
        return used;
    return setHinge(used.value(), openings, kind.hinge);
}

} // namespace frontwright
