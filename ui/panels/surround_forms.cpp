#include "core/edits/construction.h"
#include "ui/panels/forms.h"

#include <QCoreApplication>

#include <algorithm>

namespace frontwright {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("frontwright", text);
}

QString nameOf(SurroundKind kind) {
    switch (kind) {
    case SurroundKind::OpenSide:
        return tr("Nothing");
    case SurroundKind::Wall:
        return tr("Wall");
    case SurroundKind::NeighbouringCase:
        return tr("Neighbouring case");
    case SurroundKind::OverhangingTop:
        return tr("Overhanging top");
    case SurroundKind::Moulding:
        return tr("Moulding");
    case SurroundKind::Plinth:
        return tr("Plinth");
    case SurroundKind::Legs:
        break;
    }
    return tr("Legs");
}

/// Indented below the kind they belong to.
QString nameOf(SurroundMeasure measure) {
    switch (measure) {
    case SurroundMeasure::Distance:
        return tr("– distance from the case");
    case SurroundMeasure::FrontFromEdge:
        return tr("– its front inside its edge");
    case SurroundMeasure::Thickness:
        return tr("– thickness");
    case SurroundMeasure::Height:
        return tr("– height");
    case SurroundMeasure::Width:
        return tr("– width of a leg");
    case SurroundMeasure::OverFront:
        return tr("– over the front");
    case SurroundMeasure::OverSides:
        return tr("– over the sides");
    case SurroundMeasure::Projection:
        return tr("– projection");
    case SurroundMeasure::Setback:
        return tr("– setback");
    case SurroundMeasure::Lip:
        return tr("– moulding before the case");
    case SurroundMeasure::Gap:
        break;
    }
    return tr("– gap to the front");
}

ChoiceRow kindRow(const QString& label, Side side) {
    return {label, tr("Change what stands round the case"),
            [side](const Work&) {
                QStringList names;
                for (const SurroundKind kind : kindsAt(side))
                    names << nameOf(kind);
                return names;
            },
            [side](const Work& w, EditTarget) {
                const auto kinds = kindsAt(side);
                const auto found =
                    std::ranges::find(kinds, kindOf(w.project.casework.surroundings[side]));
                return static_cast<int>(found - kinds.begin());
            },
            [side](const Work&, const Project& p, EditTarget, int index) -> Result<Project> {
                const SurroundKind kind = kindsAt(side)[static_cast<std::size_t>(index)];
                if (kind == kindOf(p.casework.surroundings[side]))
                    return p;
                return setSurround(p, side, usualSurround(kind, p.style.unit));
            }};
}

LengthRow measureRow(Side side, SurroundMeasure measure) {
    PropertyForm::LengthRow row{
        nameOf(measure), tr("Change what stands round the case"),
        [side, measure](const Project& p, EditTarget) -> std::optional<Length> {
            const WrittenLength* length = lengthOf(p.casework.surroundings[side], measure);
            return length ? std::optional<Length>(*length) : std::nullopt;
        },
        [side, measure](const Project& p, EditTarget, WrittenLength v) -> Result<Project> {
            Surround changed = p.casework.surroundings[side];
            if (WrittenLength* length = lengthOf(changed, measure))
                *length = v;
            return setSurround(p, side, changed);
        }};
    row.isShown = [side, measure](const Project& p) {
        return lengthOf(p.casework.surroundings[side], measure) != nullptr;
    };
    return row;
}

/// Whether anything that can stand at that side has such a length.
bool canHave(Side side, SurroundMeasure measure) {
    return std::ranges::any_of(kindsAt(side), [measure](SurroundKind kind) {
        const Surround any = surroundOf(kind);
        return lengthOf(any, measure) != nullptr;
    });
}

LengthRow holesRow(const QString& label, WrittenLength SystemHoles::*measure) {
    PropertyForm::LengthRow row{label, tr("Change the system holes"),
                                [measure](const Project& p, EditTarget) -> std::optional<Length> {
                                    const auto& holes = p.casework.systemHoles;
                                    return holes ? std::optional<Length>((*holes).*measure)
                                                 : std::nullopt;
                                },
                                [measure](const Project& p, EditTarget, WrittenLength v) {
                                    SystemHoles holes = *p.casework.systemHoles;
                                    holes.*measure = v;
                                    return setSystemHoles(p, holes);
                                }};
    row.isShown = [](const Project& p) { return p.casework.systemHoles.has_value(); };
    return row;
}

LengthRow rearRow() {
    PropertyForm::LengthRow row{tr("Rear row from the front edge"), tr("Change the system holes"),
                                [](const Project& p, EditTarget) -> std::optional<Length> {
                                    const auto& holes = p.casework.systemHoles;
                                    return holes && holes->rear
                                               ? std::optional<Length>(*holes->rear)
                                               : std::nullopt;
                                },
                                [](const Project& p, EditTarget, WrittenLength v) {
                                    SystemHoles holes = *p.casework.systemHoles;
                                    holes.rear = v;
                                    return setSystemHoles(p, holes);
                                }};
    row.clear = [](const Project& p, EditTarget) {
        SystemHoles holes = *p.casework.systemHoles;
        holes.rear.reset();
        return setSystemHoles(p, holes);
    };
    row.whenEmpty = tr("none");
    row.isShown = [](const Project& p) { return p.casework.systemHoles.has_value(); };
    return row;
}

ChoiceRow datumRow() {
    PropertyForm::ChoiceRow row{
        tr("First hole measured from"), tr("Change the system holes"),
        [](const Work&) {
            return QStringList{tr("The case's lower edge"), tr("The bottom panel's upper face")};
        },
        [](const Work& w, EditTarget) {
            const auto& holes = w.project.casework.systemHoles;
            return holes ? static_cast<int>(holes->datum) : -1;
        },
        [](const Work&, const Project& p, EditTarget, int index) {
            SystemHoles holes = *p.casework.systemHoles;
            holes.datum = static_cast<HoleDatum>(index);
            return setSystemHoles(p, holes);
        }};
    row.isShown = [](const Project& p) { return p.casework.systemHoles.has_value(); };
    return row;
}

} // namespace

PropertyForm* surroundingsForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Round the case"));
    const auto add = [form](const QString& label, Side side) {
        form->add(kindRow(label, side));
        for (const SurroundMeasure measure : allSurroundMeasures)
            if (canHave(side, measure))
                form->add(measureRow(side, measure));
    };
    add(tr("At the left"), Side::Left);
    add(tr("At the right"), Side::Right);
    add(tr("Above"), Side::Top);
    add(tr("Below"), Side::Bottom);
    return form;
}

PropertyForm* systemHolesForm(Session& session) {
    auto* form = new PropertyForm(session, tr("System holes"));
    form->setToolTip(tr("Rows of holes up the panels of a frameless case. 5 mm every 32 mm, 37 mm "
                        "behind the front edge, is common practice without a published source."));
    form->add(PropertyForm::ChoiceRow{
        tr("Rows of holes"), tr("Change the system holes"),
        [](const Work&) {
            return QStringList{tr("None"), tr("In the panels")};
        },
        [](const Work& w, EditTarget) { return w.project.casework.systemHoles ? 1 : 0; },
        [](const Work&, const Project& p, EditTarget, int index) -> Result<Project> {
            if (index == 0)
                return setSystemHoles(p, std::nullopt);
            return p.casework.systemHoles
                       ? Result<Project>(p)
                       : setSystemHoles(p, usualSystemHoles(p.casework.frame.bottom));
        }});
    form->add(datumRow());
    form->add(holesRow(tr("First hole above it"), &SystemHoles::first));
    form->add(holesRow(tr("From hole to hole"), &SystemHoles::pitch));
    form->add(holesRow(tr("Row from the front edge"), &SystemHoles::setback));
    form->add(rearRow());
    form->add(holesRow(tr("Diameter"), &SystemHoles::diameter));
    return form;
}

} // namespace frontwright
