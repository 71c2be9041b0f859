#include "ui/panels/spec_rows.h"

#include "core/plan/plan.h"
#include "ui/language/data_names.h"

#include <QCoreApplication>

namespace frontwright {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("frontwright", text);
}

const HardwareSpec& hardwareOf(const Project& p, EditTarget t) {
    return specOf(p, t, &FrontChoices::hardware, &FrontDefaults::hardware);
}

template<class Change>
Result<Project> change(const Project& p, EditTarget t, Change how) {
    HardwareSpec spec = hardwareOf(p, t);
    how(spec);
    return setHardware(p, t, spec);
}

/// Index 0 is "no handle".
ChoiceRow formRow() {
    return {tr("Handle"), tr("Choose the handle"),
            [](const Work& w) {
                QStringList names{tr("no handle")};
                for (const HardwareForm& form : w.catalogue->hardware)
                    names << toldName(form.name);
                return names;
            },
            [](const Work& w, EditTarget t) {
                const std::string& id = hardwareOf(w.project, t).form;
                const auto& all = w.catalogue->hardware;
                for (std::size_t i = 0; i < all.size(); ++i)
                    if (all[i].id == id)
                        return static_cast<int>(i) + 1;
                return id.empty() ? 0 : -1;
            },
            [](const Work& w, const Project& p, EditTarget t, int index) {
                return change(p, t, [&](HardwareSpec& spec) {
                    spec.form =
                        index == 0
                            ? std::string()
                            : w.catalogue->hardware.at(static_cast<std::size_t>(index - 1)).id;
                });
            }};
}

ChoiceRow placingRow() {
    return {tr("Placed"), tr("Place the handle"),
            [](const Work&) {
                return QStringList{tr("in the middle of the front"),
                                   tr("in the middle of the field"), tr("from the top edge"),
                                   tr("a little above the middle")};
            },
            [](const Work& w, EditTarget t) {
                return static_cast<int>(hardwareOf(w.project, t).placing);
            },
            [](const Work&, const Project& p, EditTarget t, int index) {
                constexpr Placing placings[] = {Placing::CentredOnFront, Placing::CentredInField,
                                                Placing::FromTop, Placing::OpticalCentre};
                return change(p, t, [&](HardwareSpec& spec) {
                    spec.placing = placings[index];
                    spec.placedAt.reset();
                });
            }};
}

ChoiceRow wayRow() {
    return {
        tr("Held"), tr("Choose how the handle is held"),
        [](const Work&) {
            return QStringList{tr("through wall and front"),
                               tr("front only, head in a counterbore"),
                               tr("front only, access hole in the wall")};
        },
        [](const Work& w, EditTarget t) { return static_cast<int>(hardwareOf(w.project, t).way); },
        [](const Work&, const Project& p, EditTarget t, int index) {
            return change(p, t, [&](HardwareSpec& spec) {
                spec.way = allMountingWays[static_cast<std::size_t>(index)];
            });
        }};
}

} // namespace

PropertyForm* hardwareForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Handle and bolt"));
    form->addPresets(PresetKind::Hardware);
    const QString name = tr("Change the handle");
    const auto get = hardwareOf;
    form->add(formRow());
    form->add(placingRow());
    form->add(
        specRow(tr("Distance from the top"), name, &HardwareSpec::distance, get, setHardware));
    form->explains(QuantityKind::HandleY);
    form->add(specRow(tr("Two on fronts wider than"), name, &HardwareSpec::twoPast,
                      tr("always one"), get, setHardware));
    form->add(specRow(tr("Three on fronts wider than"), name, &HardwareSpec::threePast,
                      tr("never three"), get, setHardware));
    form->add(wayRow());
    form->add(specRow(tr("Bolt in hand"), name, &HardwareSpec::boltLength,
                      tr("supplied or stocked"), get, setHardware));
    form->explains(QuantityKind::BoltLength);
    form->add(specRow(tr("Counterbore depth"), name, &HardwareSpec::counterbore,
                      tr("as the way needs"), get, setHardware));
    form->explains(QuantityKind::Counterbore);
    form->add(specRow(tr("Counterbore diameter"), name, &HardwareSpec::counterboreDiameter,
                      tr("head and room round it"), get, setHardware));
    form->add(specRow(tr("Access hole diameter"), name, &HardwareSpec::accessDiameter,
                      tr("head and room round it"), get, setHardware));
    return form;
}

} // namespace frontwright
