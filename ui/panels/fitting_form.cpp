#include "ui/panels/spec_rows.h"

#include "core/hardware/fittings.h"
#include "core/plan/plan.h"

#include <QCoreApplication>

#include <memory>

namespace frontwright {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("frontwright", text);
}

const HardwareSpec& hardwareOf(const Project& p, EditTarget t) {
    return specOf(p, t, &FrontChoices::hardware, &FrontDefaults::hardware);
}

/// Which of a front's fittings the form shows; as many as there are: one that is yet to be added.
using Slot = std::shared_ptr<std::size_t>;

const FittingSpec* fittingAt(const Project& p, EditTarget t, const Slot& slot) {
    const auto& fittings = hardwareOf(p, t).fittings;
    return *slot < fittings.size() ? &fittings[*slot] : nullptr;
}

template<class Change>
Result<Project> change(const Project& p, EditTarget t, const Slot& slot, Change how) {
    HardwareSpec spec = hardwareOf(p, t);
    if (*slot >= spec.fittings.size())
        return Error{{}, text("no fitting is chosen here"), text("choose one first")};
    how(spec.fittings[*slot]);
    return setHardware(p, t, spec);
}

QString nameOf(const Work& w, const FittingSpec& fitting) {
    const FittingForm* form = w.catalogue->fittingForm(fitting.form);
    return form ? toldName(form->name) : QString::fromStdString(fitting.form);
}

/// The fittings of the first target, and one to be added.
PropertyForm::PickRow slotRow(const Slot& slot) {
    return {tr("Fitting"),
            [](const Work& w, EditTarget t) {
                QStringList names;
                for (const FittingSpec& fitting : hardwareOf(w.project, t).fittings)
                    names << tr("%1: %2").arg(names.size() + 1).arg(nameOf(w, fitting));
                names << tr("another one");
                return names;
            },
            [slot](const Work& w, EditTarget t) {
                *slot = std::min(*slot, hardwareOf(w.project, t).fittings.size());
                return static_cast<int>(*slot);
            },
            [slot](int index) { *slot = static_cast<std::size_t>(index); }};
}

/// Index 0 is "none": chosen, it takes the fitting away.
ChoiceRow formRow(const Slot& slot) {
    return {tr("Kind"), tr("Choose the fitting"),
            [](const Work& w) {
                QStringList names{tr("none")};
                for (const FittingForm& form : w.catalogue->fittings)
                    names << toldName(form.name);
                return names;
            },
            [slot](const Work& w, EditTarget t) {
                const FittingSpec* fitting = fittingAt(w.project, t, slot);
                const auto& all = w.catalogue->fittings;
                for (std::size_t i = 0; fitting && i < all.size(); ++i)
                    if (all[i].id == fitting->form)
                        return static_cast<int>(i) + 1;
                return fitting ? -1 : 0;
            },
            [slot](const Work& w, const Project& p, EditTarget t, int index) -> Result<Project> {
                HardwareSpec spec = hardwareOf(p, t);
                const bool isThere = *slot < spec.fittings.size();
                if (index == 0 && !isThere)
                    return p;
                if (index == 0) {
                    spec.fittings.erase(spec.fittings.begin() + static_cast<std::ptrdiff_t>(*slot));
                    return setHardware(p, t, spec);
                }
                if (!isThere)
                    spec.fittings.emplace_back();
                FittingSpec& fitting = isThere ? spec.fittings[*slot] : spec.fittings.back();
                fitting.form = w.catalogue->fittings.at(static_cast<std::size_t>(index - 1)).id;
                return setHardware(p, t, spec);
            }};
}

ChoiceRow acrossRow(const Slot& slot) {
    return {tr("Across"), tr("Place the fitting"),
            [](const Work&) {
                return QStringList{tr("in the middle"), tr("from the left"), tr("from the right"),
                                   tr("two, from both sides")};
            },
            [slot](const Work& w, EditTarget t) {
                const FittingSpec* fitting = fittingAt(w.project, t, slot);
                return fitting ? static_cast<int>(fitting->across) : -1;
            },
            [slot](const Work& w, const Project& p, EditTarget t, int index) {
                constexpr FittingAcross places[] = {FittingAcross::Middle, FittingAcross::FromLeft,
                                                    FittingAcross::FromRight,
                                                    FittingAcross::BothSides};
                const FrontPlan* front = t.opening ? w.plan.frontOf(*t.opening) : nullptr;
                const Length width = front ? front->rect.width() : p.casework.width.length;
                return change(p, t, slot, [&](FittingSpec& fitting) {
                    fitting.across = places[index];
                    if (fitting.fromSide.length.isZero())
                        fitting.fromSide = usualFromSide(width, p.style.unit);
                });
            }};
}

ChoiceRow uprightRow(const Slot& slot) {
    return {tr("Up"), tr("Place the fitting"),
            [](const Work&) {
                return QStringList{tr("in the middle"), tr("from the top edge"),
                                   tr("from the lower edge")};
            },
            [slot](const Work& w, EditTarget t) {
                const FittingSpec* fitting = fittingAt(w.project, t, slot);
                return fitting ? static_cast<int>(fitting->upright) : -1;
            },
            [slot](const Work&, const Project& p, EditTarget t, int index) {
                constexpr FittingUpright places[] = {
                    FittingUpright::Middle, FittingUpright::FromTop, FittingUpright::FromBottom};
                return change(p, t, slot, [&](FittingSpec& fitting) {
                    fitting.upright = places[index];
                    if (fitting.fromEdge.length.isZero())
                        fitting.fromEdge = usualFromEdge(p.style.unit);
                });
            }};
}

LengthRow distanceRow(const QString& label, const Slot& slot, WrittenLength FittingSpec::*part) {
    return {label, tr("Place the fitting"),
            [slot, part](const Project& p, EditTarget t) -> std::optional<Length> {
                const FittingSpec* fitting = fittingAt(p, t, slot);
                return fitting ? std::optional<Length>(fitting->*part) : std::nullopt;
            },
            [slot, part](const Project& p, EditTarget t, WrittenLength v) {
                return change(p, t, slot, [&](FittingSpec& fitting) { fitting.*part = v; });
            }};
}

LengthRow screwRow(const Slot& slot) {
    const auto part = &FittingSpec::screwLength;
    return {tr("Screws in hand"),
            tr("Set the fitting's screws"),
            [slot, part](const Project& p, EditTarget t) -> std::optional<Length> {
                const FittingSpec* fitting = fittingAt(p, t, slot);
                return fitting && fitting->*part ? std::optional<Length>(*(fitting->*part))
                                                 : std::nullopt;
            },
            [slot, part](const Project& p, EditTarget t, WrittenLength v) {
                return change(p, t, slot, [&](FittingSpec& fitting) { fitting.*part = v; });
            },
            [slot, part](const Project& p, EditTarget t) {
                return change(p, t, slot, [&](FittingSpec& fitting) { (fitting.*part).reset(); });
            },
            tr("from stock")};
}

} // namespace

PropertyForm* fittingForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Fittings"));
    const Slot slot = std::make_shared<std::size_t>(0);
    form->add(slotRow(slot));
    form->add(formRow(slot));
    form->add(acrossRow(slot));
    form->add(distanceRow(tr("From the side"), slot, &FittingSpec::fromSide));
    form->add(uprightRow(slot));
    form->add(distanceRow(tr("From the edge"), slot, &FittingSpec::fromEdge));
    form->add(screwRow(slot));
    return form;
}

} // namespace frontwright
