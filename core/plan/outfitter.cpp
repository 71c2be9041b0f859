#include "core/plan/outfitter.h"

#include "core/fastening/fixed_front.h"
#include "core/plan/chosen.h"
#include "core/plan/moving.h"
#include "core/plan/own_part.h"
#include "core/wood/movement.h"

#include <algorithm>

namespace frontwright {
namespace {

Error notInCatalogue(Phrase what) {
    return {{}, std::move(what), text("choose one that is there")};
}

bool givesAllClearances(const BoxSpec& spec) {
    return spec.sideClearance && spec.clearanceBelow && (spec.clearanceAbove || spec.height);
}

/// An inset side lies between the frame's parts, so the wall behind it lies back.
Length setbackOf(const FrontPlan& front) {
    const bool liesInFrame = std::any_of(allSides.begin(), allSides.end(),
                                         [&](Side side) { return front.fit[side] == Fit::Inset; });
    return liesInFrame ? front.thickness : Length{};
}

/// The whole block, edge profile left on; none where the wood is not known.
std::optional<Mass> weightOf(const FrontPlan& front, const Species* wood) {
    if (wood == nullptr || !wood->gravity)
        return std::nullopt;
    return massOf(Volume::of(front.rect.width(), front.rect.height(), front.thickness),
                  *wood->gravity);
}

FrontStock stockOf(const FrontPlan& front) {
    return {FrontRect::atOrigin(front.rect.width(), front.rect.height()), front.field,
            front.thickness, front.profile, front.box.wallThickness};
}

/// Behind a fixed front there is no wall: its bolts go through the front alone, whichever way is
/// chosen for drawers, and a head that nothing lies behind needs no counterbore.
HardwareSpec throughTheFrontAlone(HardwareSpec spec) {
    if (spec.way != MountingWay::FrontCounterbore && !spec.counterbore)
        spec.counterbore = Length{};
    spec.way = MountingWay::FrontCounterbore;
    return spec;
}

/// So that no other way is offered.
void tellOneWay(Shared<HardwarePlan>& hardware) {
    if (!hardware)
        return;
    HardwarePlan plan = *hardware;
    plan.ways.fill(plan.chosenWay());
    hardware = std::move(plan);
}

/// A fixed front lies on the frame by its own outline.
BoxPlan outlineAsWall(const FrontPlan& front, Length frame) {
    BoxPlan box;
    box.width = front.rect.width();
    box.height = front.rect.height();
    box.wallThickness = frame;
    box.origin = front.rect.lowerLeft();
    box.wall = WallRect::atOrigin(box.width, box.height);
    return box;
}

/// 0 where the member is not built.
PerSide<Length> membersRound(const FrontPlan& front, const Layout& layout) {
    PerSide<Length> widths;
    for (const Side side : allSides) {
        const PlacedMember& member = layout.members[front.neighbours[side].member];
        if (isBuilt(member.kind))
            widths[side] = isLeftOrRight(side) ? member.rect.width() : member.rect.height();
    }
    return widths;
}

} // namespace

Outfitter::Outfitter(const Project& project, const Catalogue& catalogue,
                     const std::optional<SeasonMoisture>& moisture)
    : m_project(project),
      m_catalogue(catalogue),
      m_moisture(moisture),
      m_runner(catalogue.runner(project.fronts.box.runner)),
      m_screw(catalogue.woodScrew(project.fronts.mounting.screw)),
      m_wood(catalogue.speciesOf(project.fronts.stock.species)),
      m_handle(handleOf(project.fronts.hardware)),
      m_rowGrid(project.style.unit == Unit::Inch ? Length::inches(0, 8) : Length::millimetres(1)),
      m_rims(project.limits) {}

std::optional<Error> Outfitter::outfit(FrontPlan& front, const Layout& layout) {
    if (const FrontPlan* alike = m_done.alikeTo(front)) {
        takeOver(m_project, front, *alike);
        return std::nullopt;
    }
    if (auto error = workOut(front, layout))
        return error;
    m_done.remember(front);
    return std::nullopt;
}

std::optional<Error> Outfitter::workOut(FrontPlan& front, const Layout& layout) {
    if (const auto& stock = front.choices->stock;
        stock && !stock->species.empty() && !m_catalogue.speciesOf(stock->species))
        return notInCatalogue(phrase("no species \"%1\" in the catalogue", stock->species));
    front.wood =
        front.choices->stock ? m_catalogue.speciesOf(front.choices->stock->species) : m_wood;
    front.thickness = chosenThickness(m_project, front);
    front.profile = &chosenProfile(m_project, front);
    front.field =
        field(*front.profile, FrontRect::atOrigin(front.rect.width(), front.rect.height()));
    const CaseRect& behind = front.face ? layout.faces[*front.face].rect : front.openingRect;
    auto error = front.hasBox()        ? fitOut(front, behind)
                 : front.isScrewedOn() ? fitOutFixed(front, layout)
                                       : fitOutDoor(front);
    if (error)
        return error;
    front.box.setback = setbackOf(front);
    weigh(front, behind);
    letMove(front);
    return std::nullopt;
}

/// Nothing is screwed to it, and nothing is bored.
std::optional<Error> Outfitter::fitOutDoor(FrontPlan& front) const {
    const auto screw = screwOf(front);
    if (!screw.ok())
        return screw.error();
    front.mounting.screw = screw.value();
    front.holding = HoldingPlan{};
    return std::nullopt;
}

/// Handle and screws.
std::optional<Error> Outfitter::fitOutFixed(FrontPlan& front, const Layout& layout) {
    const auto screw = screwOf(front);
    if (!screw.ok())
        return screw.error();
    front.mounting.screw = screw.value();
    front.box = outlineAsWall(front, thicknessOfFrame(m_project.casework));
    FrontStock stock = stockOf(front);
    stock.wallThickness = {};
    if (auto error =
            placeHardware(front, stock, throughTheFrontAlone(chosenHardware(m_project, front))))
        return error;
    tellOneWay(front.hardware);
    if (auto error = placeFittings(front, stock))
        return error;
    const MountingPlace place = placeOf(front, stock, *screw.value());
    const PerSide<Length> members = m_project.casework.construction == Construction::FaceFrame
                                        ? membersRound(front, layout)
                                        : PerSide<Length>{};
    front.mounting =
        planFixedMounting(chosenMounting(m_project, front), *screw.value(), m_project.limits,
                          {place, front.overlay, members, fromFrontEdges(m_project, front)});
    workOutHolding(front, stock);
    return std::nullopt;
}

/// Box, handles and screws.
std::optional<Error> Outfitter::fitOut(FrontPlan& front, const CaseRect& behind) {
    if (auto error = buildBox(front, behind))
        return error;
    const FrontStock stock = stockOf(front);
    if (auto error = placeHardware(front, stock, chosenHardware(m_project, front)))
        return error;
    if (auto error = placeFittings(front, stock))
        return error;
    if (auto error = placeScrews(front, stock))
        return error;
    workOutHolding(front, stock);
    return std::nullopt;
}

Outfitter::Handle Outfitter::handleOf(const HardwareSpec& spec) const {
    const HardwareForm* form = spec.form.empty() ? nullptr : m_catalogue.hardwareForm(spec.form);
    return {form, form ? m_catalogue.bolt(form->bolt) : nullptr};
}

std::optional<Error> Outfitter::buildBox(FrontPlan& front, const CaseRect& behind) const {
    const BoxSpec& spec = chosenBox(m_project, front);
    const RunnerKind* runner = front.boxChoices->box ? m_catalogue.runner(spec.runner) : m_runner;
    if (!runner && !(spec.runner.empty() && givesAllClearances(spec)))
        return notInCatalogue(phrase("no runner kind \"%1\" in the catalogue", spec.runner));
    if (!spec.wood.empty() && !m_catalogue.speciesOf(spec.wood))
        return notInCatalogue(phrase("no species \"%1\" in the catalogue", spec.wood));
    const Length setback = setbackOf(front);
    if (!runner) {
        front.box = planBox(spec, nullptr, behind, front.rect, setback);
        return std::nullopt;
    }
    const Case& casework = m_project.casework;
    const RunnerReach reach =
        runnerReach(spec, *runner, {setback, thicknessOfFrame(casework), casework.depth});
    front.box = planBox(spec, runner, behind, front.rect, setback);
    front.box.depth = boxDepth(spec, reach);
    front.runner = planRunner(spec, *runner, front.box, reach);
    return std::nullopt;
}

std::optional<Error> Outfitter::placeHardware(FrontPlan& front, const FrontStock& stock,
                                              const HardwareSpec& spec) const {
    const Handle handle = front.choices->hardware ? handleOf(spec) : m_handle;
    if (!handle.form && !spec.form.empty())
        return notInCatalogue(phrase("no hardware form \"%1\" in the catalogue", spec.form));
    if (handle.form && !handle.bolt)
        return notInCatalogue(phrase("no bolt \"%1\" in the catalogue", handle.form->bolt));
    front.hardware = planHardware(spec, handle.form, handle.bolt, m_project.limits, stock);
    return std::nullopt;
}

std::optional<Error> Outfitter::placeFittings(FrontPlan& front, const FrontStock& stock) const {
    const HardwareSpec& spec = chosenHardware(m_project, front);
    if (spec.fittings.empty())
        return std::nullopt;
    auto planned = planFittings(spec, m_catalogue, m_project.limits, stock);
    if (!planned.ok())
        return notInCatalogue(planned.error().what);
    front.fittings = std::move(planned).value();
    return std::nullopt;
}

Result<const WoodScrew*> Outfitter::screwOf(const FrontPlan& front) const {
    const std::string& id = chosenMounting(m_project, front).screw;
    const WoodScrew* screw = front.choices->mounting ? m_catalogue.woodScrew(id) : m_screw;
    if (!screw)
        return notInCatalogue(phrase("no wood screw \"%1\" in the catalogue", id));
    return screw;
}

MountingPlace Outfitter::placeOf(const FrontPlan& front, const FrontStock& stock,
                                 const WoodScrew& screw) {
    MountingPlace place{front.box, stock, front.hardware ? &*front.hardware : nullptr,
                        &m_rims.of(front), m_rowGrid};
    place.fittings = front.fittings ? &*front.fittings : nullptr;
    place.runner = front.runner ? &*front.runner : nullptr;
    if (front.wood && front.wood->gravity)
        place.pilotHole =
            pilotRule(screw, *front.wood->gravity, front.wood->kind, m_project.style.unit).advised;
    return place;
}

std::optional<Error> Outfitter::placeScrews(FrontPlan& front, const FrontStock& stock) {
    const auto screw = screwOf(front);
    if (!screw.ok())
        return screw.error();
    MountingPlace place = placeOf(front, stock, *screw.value());
    front.mounting.screw = screw.value();
    place.part = ownPartOf(m_project, front);
    front.mounting =
        planMounting(chosenMounting(m_project, front), *screw.value(), m_project.limits, place);
    return std::nullopt;
}

void Outfitter::workOutHolding(FrontPlan& front, const FrontStock& stock) const {
    front.holding = planHolding({front.mounting, stock.front, front.box.wallOnFront,
                                 front.hardware ? &*front.hardware : nullptr, front.wood,
                                 m_project.style.unit, chosenStock(m_project, front).grain,
                                 front.hasBox() ? BoltsHold::Wall : BoltsHold::Front});
}

void Outfitter::weigh(FrontPlan& front, const CaseRect& behind) const {
    const BoxSpec& spec = chosenBox(m_project, front);
    const RunnerKind* runner = front.boxChoices->box ? m_catalogue.runner(spec.runner) : m_runner;
    if (!front.hasBox() || !isFirstOnBox(front))
        front.load.front = weightOf(front, front.wood);
    else
        front.load =
            drawerLoad({spec, front.box, behind, front.rect, front.thickness, front.wood, runner});
}

void Outfitter::letMove(FrontPlan& front) const {
    if (!m_moisture)
        return;
    if (front.hasBox())
        front.boxSwelling = swellingOf(front);
    const Stock& stock = chosenStock(m_project, front);
    front.season = seasonOf(front, stock, front.wood ? front.wood->figures : WoodFigures{},
                            *m_moisture, m_project.style.unit);
}

std::optional<Length> Outfitter::swellingOf(const FrontPlan& front) const {
    const Species* wood = m_catalogue.speciesOf(chosenBox(m_project, front).wood);
    const auto coefficient = wood ? coefficientOf(wood->figures, Cut::FlatSawn) : std::nullopt;
    if (!coefficient)
        return std::nullopt;
    return partOf(front.box.height,
                  relativeChange(*coefficient, m_moisture->whenCut, m_moisture->wettest));
}

} // namespace frontwright
