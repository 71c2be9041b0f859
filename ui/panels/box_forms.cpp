#include "ui/panels/spec_rows.h"

#include <QCoreApplication>

#include <algorithm>

namespace frontwright {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("frontwright", text);
}

const BoxSpec& boxOf(const Project& p, EditTarget t) {
    return specOf(p, t, &FrontChoices::box, &FrontDefaults::box);
}
const MountingSpec& mountingOf(const Project& p, EditTarget t) {
    return specOf(p, t, &FrontChoices::mounting, &FrontDefaults::mounting);
}

/// What the drawer is for, and the maker's own load in its place.
void addLoad(PropertyForm& form) {
    form.add(PropertyForm::ChoiceRow{
        tr("Purpose"), tr("Choose what the drawer is for"),
        [](const Work&) {
            return QStringList{tr("Household, 15 lb/ft² of bottom"), tr("Clothing, 8.5 lb/ft³"),
                               tr("School or laboratory, 100 lb"), tr("Nothing is counted on")};
        },
        [](const Work& w, EditTarget t) { return static_cast<int>(boxOf(w.project, t).purpose); },
        [](const Work&, const Project& p, EditTarget t, int index) {
            BoxSpec box = boxOf(p, t);
            box.purpose = static_cast<DrawerPurpose>(index);
            return setBox(p, t, box);
        }});
    form.add(PropertyForm::TextRow{
        tr("Own load"), tr("Set the drawer's load"),
        [](const Project& p, EditTarget t) {
            const auto& load = boxOf(p, t).load;
            return load ? exact(*load) : std::string();
        },
        [](const Project& p, EditTarget t, const std::string& typed) -> Result<Project> {
            BoxSpec box = boxOf(p, t);
            box.load.reset();
            if (!typed.empty()) {
                const Result<Mass> load = parseMass(typed);
                if (!load.ok())
                    return load.error();
                box.load = load.value();
            }
            return setBox(p, t, box);
        },
        tr("e.g. 25 lb or 12 kg"), tr("What lies in it, where its purpose does not tell")});
}

/// What it runs on; what follows from that is beside it.
void addRunners(PropertyForm& form) {
    form.add(catalogueRow(
        tr("Runners"), tr("Choose the runners"), &Catalogue::runners,
        [](const Project& p, EditTarget t) { return boxOf(p, t).runner; },
        [](const Project& p, EditTarget t, const std::string& id) {
            BoxSpec box = boxOf(p, t);
            box.runner = id;
            return setBox(p, t, box);
        }));
    form.add(specRow(tr("Runner length"), tr("Set the runner's length"), &BoxSpec::runnerLength,
                     tr("longest stocked that fits"), boxOf, setBox));
    form.explains(QuantityKind::RunnerLength);
    form.add(specRow(tr("Opening's edge to the case's side"), tr("Set the furring"),
                     &BoxSpec::toCaseSide, tr("not told"), boxOf, setBox));
    form.explains(QuantityKind::RunnerFurring);
}

ChoiceRow depthRuleRow() {
    return {
        tr("Depth is"), tr("Choose where the depth comes from"),
        [](const Work&) {
            return QStringList{tr("as given"), tr("the runner's length")};
        },
        [](const Work& w, EditTarget t) { return static_cast<int>(boxOf(w.project, t).depthRule); },
        [](const Work&, const Project& p, EditTarget t, int index) {
            BoxSpec box = boxOf(p, t);
            box.depthRule = static_cast<BoxDepthRule>(index);
            return setBox(p, t, box);
        }};
}

ChoiceRow boxWoodRow() {
    return catalogueRow(
        tr("Wood of the box"), tr("Choose the box's wood"), &Catalogue::species,
        [](const Project& p, EditTarget t) { return boxOf(p, t).wood; },
        [](const Project& p, EditTarget t, const std::string& id) {
            BoxSpec box = boxOf(p, t);
            box.wood = id;
            return setBox(p, t, box);
        },
        tr("not told"));
}

} // namespace

PropertyForm* boxForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Drawer box"));
    form->addPresets(PresetKind::Box);
    const QString name = tr("Change the box");
    addRunners(*form);
    const QString runners = tr("as the runners ask");
    form->add(specRow(tr("Clearance at each side"), name, &BoxSpec::sideClearance, runners, boxOf,
                      setBox));
    form->explains(QuantityKind::SideClearance);
    form->add(
        specRow(tr("Clearance below"), name, &BoxSpec::clearanceBelow, runners, boxOf, setBox));
    form->add(
        specRow(tr("Clearance above"), name, &BoxSpec::clearanceAbove, runners, boxOf, setBox));
    form->add(specRow(tr("Height"), name, &BoxSpec::height, tr("what the opening leaves"), boxOf,
                      setBox));
    form->explains(QuantityKind::BoxHeight);
    form->add(depthRuleRow());
    form->add(specRow(tr("Depth"), name, &BoxSpec::depth, boxOf, setBox));
    form->explains(QuantityKind::BoxDepth);
    form->add(specRow(tr("Front wall"), name, &BoxSpec::wallThickness, boxOf, setBox));
    form->add(specRow(tr("Sides"), name, &BoxSpec::sideThickness, boxOf, setBox));
    form->add(specRow(tr("Groove above lower edge"), name, &BoxSpec::grooveHeight, boxOf, setBox));
    form->explains(QuantityKind::BottomTop);
    form->add(specRow(tr("Bottom panel"), name, &BoxSpec::bottomThickness, boxOf, setBox));
    form->add(boxWoodRow());
    form->explains(QuantityKind::BoxSwelling);
    addLoad(*form);
    return form;
}

PropertyForm* mountingForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Mounting screws"));
    form->addPresets(PresetKind::Mounting);
    const QString name = tr("Change the mounting screws");
    form->add(catalogueRow(
        tr("Screw"), tr("Choose the mounting screw"), &Catalogue::woodScrews,
        [](const Project& p, EditTarget t) { return mountingOf(p, t).screw; },
        [](const Project& p, EditTarget t, const std::string& id) {
            MountingSpec spec = mountingOf(p, t);
            spec.screw = id;
            return setMounting(p, t, spec);
        }));
    form->add(specRow(tr("Length"), name, &MountingSpec::length, tr("longest stocked that fits"),
                      mountingOf, setMounting));
    form->explains(QuantityKind::ScrewLength);
    form->add(
        specRow(tr("Head recessed by"), name, &MountingSpec::recess, mountingOf, setMounting));
    form->explains(QuantityKind::ScrewPenetration);
    form->add(specRow(tr("Diameter of the recess tool"), name, &MountingSpec::toolDiameter,
                      mountingOf, setMounting));
    form->explains(QuantityKind::LeastHoleHeight);
    form->add(PropertyForm::ChoiceRow{
        tr("Pattern"), tr("Choose the screw pattern"),
        [](const Work&) {
            return QStringList{tr("Four corners"), tr("Six"), tr("By hand")};
        },
        [](const Work& w, EditTarget t) {
            return static_cast<int>(mountingOf(w.project, t).pattern);
        },
        [](const Work& w, const Project& p, EditTarget t, int index) {
            constexpr ScrewPattern patterns[] = {ScrewPattern::FourCorners, ScrewPattern::Six,
                                                 ScrewPattern::ByHand};
            MountingSpec spec = mountingOf(p, t);
            spec.pattern = patterns[index];
            const FrontPlan* front = t.opening ? w.plan.frontOf(*t.opening) : nullptr;
            // By hand starts from where the holes are.
            if (spec.pattern == ScrewPattern::ByHand && spec.placed.empty() && front)
                for (const MountingHole& hole : front->mounting.holes)
                    spec.placed.push_back(hole.at);
            return setMounting(p, t, spec);
        }});
    const QString placed = tr("placed where allowed");
    form->add(specRow(tr("From the box's sides"), name, &MountingSpec::fromSides, placed,
                      mountingOf, setMounting));
    form->explains(QuantityKind::HoleX);
    form->add(specRow(tr("Lower row, from below"), name, &MountingSpec::fromBottom, placed,
                      mountingOf, setMounting));
    form->explains(QuantityKind::HoleY);
    form->add(specRow(tr("Upper row, from the top"), name, &MountingSpec::fromTop, placed,
                      mountingOf, setMounting));
    form->add(specRow(tr("Pilot hole"), name, &MountingSpec::pilotHole, tr("as the wood asks"),
                      mountingOf, setMounting));
    form->add(specRow(tr("Clearance hole"), name, &MountingSpec::clearanceHole,
                      tr("as the screw asks"), mountingOf, setMounting));
    return form;
}

} // namespace frontwright
