#include "ui/panels/spec_rows.h"

#include "core/edits/divisions.h"
#include "core/plan/plan.h"
#include "ui/panels/opening_kinds.h"

#include <QCoreApplication>

#include <array>

namespace frontwright {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("frontwright", text);
}

/// nullptr where there is no such opening.
const CaseRect* openingRect(const Plan& plan, EditTarget target) {
    if (!target.opening)
        return nullptr;
    if (const FrontPlan* front = plan.frontOf(*target.opening))
        return &front->openingRect;
    const SpacePlan* space = plan.spaceOf(*target.opening);
    return space ? &space->rect : nullptr;
}

ChoiceRow useRow() {
    return {tr("Used for"), tr("Change what an opening is for"),
            [](const Work&) { return openingKindNames(); },
            [](const Work& w, EditTarget t) {
                const Opening* opening = t.opening ? findOpening(w.project, *t.opening) : nullptr;
                return opening ? indexOf(kindOf(*opening)) : -1;
            },
            [](const Work&, const Project& p, EditTarget t, int index) {
                return setOffered(p, std::array{*t.opening}, index);
            }};
}

LengthRow openingRow(Session& session, const QString& label, const QString& name,
                     Direction direction) {
    return {label, name,
            [&session, direction](const Project&, EditTarget t) -> std::optional<Length> {
                const CaseRect* rect = openingRect(session.plan(), t);
                if (!rect)
                    return std::nullopt;
                return direction == Direction::Columns ? rect->width() : rect->height();
            },
            [direction](const Project& p, EditTarget t, WrittenLength v) {
                return setOpeningSize(p, *t.opening, direction, v);
            }};
}

CheckRow holdRow(const QString& label, Direction direction) {
    return {label, tr("Lock or free a size"),
            [direction](const Project& p, EditTarget t) {
                return t.opening && holdOf(p, *t.opening, direction) == Hold::Locked;
            },
            [direction](const Project& p, EditTarget t, bool on) {
                return setHold(p, *t.opening, direction, on ? Hold::Locked : Hold::Flexible);
            }};
}

SideFit fitOf(const Project& project, EditTarget target, Side side) {
    if (target.opening)
        if (const Opening* opening = findOpening(project, *target.opening))
            if (const auto& own = opening->choices.fit[side])
                return *own;
    return project.fronts.fit[side];
}

void addFitRows(PropertyForm& form, const QString& label, Side side, QuantityKind overlay) {
    form.add(PropertyForm::ChoiceRow{
        label, tr("Change how the front fits"),
        [](const Work&) {
            return QStringList{tr("Overlay"), tr("Gap first"), tr("Inset")};
        },
        [side](const Work& w, EditTarget t) {
            return static_cast<int>(fitOf(w.project, t, side).fit);
        },
        [side](const Work&, const Project& p, EditTarget t, int index) {
            constexpr Fit fits[] = {Fit::Overlay, Fit::Gap, Fit::Inset};
            return setFrontFit(p, t, side, {fits[index], fitOf(p, t, side).amount});
        }});
    form.add(PropertyForm::LengthRow{tr("… by"), tr("Change an overlay or gap"),
                                     [side](const Project& p, EditTarget t) {
                                         return std::optional<Length>(fitOf(p, t, side).amount);
                                     },
                                     [side](const Project& p, EditTarget t, WrittenLength v) {
                                         return setFrontFit(p, t, side, {fitOf(p, t, side).fit, v});
                                     }});
    form.explains(overlay);
}

} // namespace

PropertyForm* openingForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Opening"));
    form->add(PropertyForm::TextRow{tr("Name"), tr("Rename the front"),
                                    [](const Project& p, EditTarget t) {
                                        const Opening* opening =
                                            t.opening ? findOpening(p, *t.opening) : nullptr;
                                        return opening ? opening->name : std::string();
                                    },
                                    [](const Project& p, EditTarget t, const std::string& v) {
                                        return renameOpening(p, *t.opening, v);
                                    }});
    form->add(useRow());
    form->add(openingRow(session, tr("Width"), tr("Set opening width"), Direction::Columns));
    form->explains(QuantityKind::OpeningWidth);
    form->add(holdRow(tr("keeps its width"), Direction::Columns));
    form->add(openingRow(session, tr("Height"), tr("Set opening height"), Direction::Rows));
    form->explains(QuantityKind::OpeningHeight);
    form->add(holdRow(tr("keeps its height"), Direction::Rows));
    return form;
}

PropertyForm* fitForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Fit of the front"));
    addFitRows(*form, tr("Left"), Side::Left, QuantityKind::OverlayLeft);
    addFitRows(*form, tr("Right"), Side::Right, QuantityKind::OverlayRight);
    addFitRows(*form, tr("Bottom"), Side::Bottom, QuantityKind::OverlayBottom);
    addFitRows(*form, tr("Top"), Side::Top, QuantityKind::OverlayTop);
    form->setOwn(
        [](const Project& p, EditTarget t) {
            const Opening* opening = findOpening(p, *t.opening);
            return opening && opening->choices.fit != PerSide<Rare<SideFit>>{};
        },
        [](const Project& p, EditTarget t) -> Result<Project> {
            Result<Project> project = p;
            for (const Side side : allSides) {
                project = clearFrontFit(project.value(), *t.opening, side);
                if (!project.ok())
                    break;
            }
            return project;
        });
    return form;
}

PropertyForm* stockForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Front"));
    form->add(PropertyForm::LengthRow{
        tr("Thickness"), tr("Set front thickness"),
        [](const Project& p, EditTarget t) {
            return std::optional<Length>(
                specOf(p, t, &FrontChoices::thickness, &FrontDefaults::thickness));
        },
        [](const Project& p, EditTarget t, WrittenLength v) { return setThickness(p, t, v); }});
    form->explains(QuantityKind::FrontThickness);
    followsCase(*form, &FrontChoices::thickness, Choice::Thickness);
    return form;
}

PropertyForm* profileForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Edge profile"));
    form->addPresets(PresetKind::Profile);
    const auto get = [](const Project& p, EditTarget t) -> const Profile& {
        return specOf(p, t, &FrontChoices::profile, &FrontDefaults::profile);
    };
    form->add(PropertyForm::ChoiceRow{
        tr("Family"), tr("Choose the edge profile"),
        [](const Work&) {
            return QStringList{
                tr("Square"), tr("Eased"), tr("Chamfer"), tr("Round"), tr("Bevelled and raised"),
                tr("Cove")};
        },
        [get](const Work& w, EditTarget t) { return static_cast<int>(get(w.project, t).family); },
        [get](const Work&, const Project& p, EditTarget t, int index) {
            constexpr ProfileFamily families[] = {ProfileFamily::Square,  ProfileFamily::Eased,
                                                  ProfileFamily::Chamfer, ProfileFamily::Round,
                                                  ProfileFamily::Raised,  ProfileFamily::Cove};
            Profile profile = get(p, t);
            profile.family = families[index];
            return setProfile(p, t, profile);
        }});
    const QString name = tr("Change the edge profile");
    form->add(specRow(tr("Width into the face"), name, &Profile::width, get, setProfile));
    form->add(specRow(tr("Depth at the edge"), name, &Profile::depth, get, setProfile));
    form->explains(QuantityKind::EdgeThickness);
    form->add(specRow(tr("Step (raised)"), name, &Profile::step, get, setProfile));
    return form;
}

} // namespace frontwright
