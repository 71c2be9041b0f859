#include "core/plan/outfitter.h"

#include "core/plan/chosen.h"
#include "core/plan/moving.h"

#include <algorithm>

namespace frontwright {
namespace {

constexpr std::size_t mostRims = 8;
/// As many as the rows of most banks: those of the bank beside it are alike.
constexpr std::size_t mostDistinct = 8;

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

bool areOfOneSize(const CaseRect& a, const CaseRect& b) {
    return a.width() == b.width() && a.height() == b.height();
}

/// The whole block, edge profile left on; none where the wood is not known.
std::optional<Mass> weightOf(const FrontPlan& front, const Species* wood) {
    if (wood == nullptr || !wood->gravity)
        return std::nullopt;
    return massOf(Volume::of(front.rect.width(), front.rect.height(), front.thickness),
                  *wood->gravity);
}

/// Whether all that is worked out is the same for both, but for where the box lies in the case.
/// Fits follow from what they decide; overlays do not, where a gap is shared with a neighbour.
bool areAlike(const FrontPlan& a, const FrontPlan& b) {
    return a.use == b.use && a.hinge == b.hinge && !a.face && !b.face &&
           areOfOneSize(a.openingRect, b.openingRect) && a.overlay == b.overlay &&
           *a.choices == *b.choices;
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
      m_rowGrid(project.style.unit == Unit::Inch ? Length::inches(0, 8) : Length::millimetres(1)) {}

std::optional<Error> Outfitter::outfit(FrontPlan& front, const CaseRect& behind) {
    if (const FrontPlan* alike = alikeTo(front)) {
        takeOver(front, *alike);
        return std::nullopt;
    }
    if (auto error = workOut(front, behind))
        return error;
    remember(front);
    return std::nullopt;
}

const FrontPlan* Outfitter::alikeTo(const FrontPlan& front) const {
    const auto found =
        std::find_if(m_distinct.begin(), m_distinct.end(),
                     [&](const FrontPlan* distinct) { return areAlike(*distinct, front); });
    return found == m_distinct.end() ? nullptr : *found;
}

void Outfitter::takeOver(FrontPlan& front, const FrontPlan& alike) const {
    front.thickness = alike.thickness;
    front.profile = &chosenProfile(m_project, front);
    front.field = alike.field;
    front.box = alike.box;
    front.box.origin =
        alike.box.origin + (front.openingRect.lowerLeft() - alike.openingRect.lowerLeft());
    front.mounting = alike.mounting;
    front.hardware = alike.hardware;
    front.fittings = alike.fittings;
    front.season = alike.season;
    front.holding = alike.holding;
    front.load = alike.load;
    front.wood = alike.wood;
}

void Outfitter::remember(const FrontPlan& front) {
    if (m_distinct.size() == mostDistinct)
        m_distinct.pop_back();
    m_distinct.push_front(&front);
}

std::optional<Error> Outfitter::workOut(FrontPlan& front, const CaseRect& behind) {
    if (const auto& stock = front.choices->stock;
        stock && !stock->species.empty() && !m_catalogue.speciesOf(stock->species))
        return notInCatalogue(phrase("no species \"%1\" in the catalogue", stock->species));
    front.wood =
        front.choices->stock ? m_catalogue.speciesOf(front.choices->stock->species) : m_wood;
    front.thickness = chosenThickness(m_project, front);
    front.profile = &chosenProfile(m_project, front);
    front.field =
        field(*front.profile, FrontRect::atOrigin(front.rect.width(), front.rect.height()));
    if (auto error = front.hasBox() ? fitOut(front, behind) : fitOutWithoutBox(front))
        return error;
    weigh(front, behind);
    letMove(front);
    return std::nullopt;
}

/// Nothing is screwed to it, and nothing is bored.
std::optional<Error> Outfitter::fitOutWithoutBox(FrontPlan& front) const {
    front.mounting.screw = m_catalogue.woodScrew(chosenMounting(m_project, front).screw);
    if (!front.mounting.screw)
        return notInCatalogue(phrase("no wood screw \"%1\" in the catalogue",
                                     chosenMounting(m_project, front).screw));
    front.holding = HoldingPlan{};
    return std::nullopt;
}

/// Box, handles and screws.
std::optional<Error> Outfitter::fitOut(FrontPlan& front, const CaseRect& behind) {
    if (auto error = buildBox(front, behind))
        return error;
    const FrontStock stock{FrontRect::atOrigin(front.rect.width(), front.rect.height()),
                           front.field, front.thickness, front.profile, front.box.wallThickness};
    if (auto error = placeHardware(front, stock))
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
    front.box = planBox(spec, runner, behind, front.rect, setbackOf(front));
    return std::nullopt;
}

std::optional<Error> Outfitter::placeHardware(FrontPlan& front, const FrontStock& stock) const {
    const HardwareSpec& spec = chosenHardware(m_project, front);
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

std::optional<Error> Outfitter::placeScrews(FrontPlan& front, const FrontStock& stock) {
    const MountingSpec& spec = chosenMounting(m_project, front);
    const WoodScrew* screw = front.choices->mounting ? m_catalogue.woodScrew(spec.screw) : m_screw;
    if (!screw)
        return notInCatalogue(phrase("no wood screw \"%1\" in the catalogue", spec.screw));
    MountingPlace place{front.box, stock, front.hardware ? &*front.hardware : nullptr,
                        &rimOf(front), m_rowGrid};
    place.fittings = front.fittings ? &*front.fittings : nullptr;
    if (front.wood && front.wood->gravity)
        place.pilotHole =
            pilotRule(*screw, *front.wood->gravity, front.wood->kind, m_project.style.unit).advised;
    front.mounting = planMounting(spec, *screw, m_project.limits, place);
    return std::nullopt;
}

void Outfitter::workOutHolding(FrontPlan& front, const FrontStock& stock) const {
    front.holding = planHolding({front.mounting, stock.front, front.box.wallOnFront,
                                 front.hardware ? &*front.hardware : nullptr, front.wood,
                                 m_project.style.unit, chosenStock(m_project, front).grain});
}

void Outfitter::weigh(FrontPlan& front, const CaseRect& behind) const {
    const BoxSpec& spec = chosenBox(m_project, front);
    const RunnerKind* runner = front.boxChoices->box ? m_catalogue.runner(spec.runner) : m_runner;
    if (!front.hasBox())
        front.load.front = weightOf(front, front.wood);
    else
        front.load =
            drawerLoad({spec, front.box, behind, front.rect, front.thickness, front.wood, runner});
}

void Outfitter::letMove(FrontPlan& front) const {
    if (!m_moisture)
        return;
    const Stock& stock = chosenStock(m_project, front);
    front.season = seasonOf(front, stock, front.wood ? front.wood->figures : WoodFigures{},
                            *m_moisture, m_project.style.unit);
}

const ThinRim& Outfitter::rimOf(const FrontPlan& front) {
    for (const SolvedRim& solved : m_rims)
        if (solved.thickness == front.thickness &&
            (solved.profile == front.profile || *solved.profile == *front.profile))
            return solved.rim;
    if (m_rims.size() == mostRims)
        m_rims.pop_front();
    const Limits& limits = m_project.limits;
    m_rims.push_back({front.profile, front.thickness,
                      thinRim(*front.profile, front.thickness,
                              limits.leastPenetration.length + limits.leastTipCover.length)});
    return m_rims.back().rim;
}

} // namespace frontwright
