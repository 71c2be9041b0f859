#include "core/plan/arrangement.h"
#include "core/plan/banks.h"
#include "core/plan/boards.h"
#include "core/plan/collisions.h"
#include "core/plan/fillers.h"
#include "core/plan/moving.h"
#include "core/plan/outfitter.h"
#include "core/plan/panel_holes.h"
#include "core/plan/round_case.h"

#include <algorithm>
#include <utility>

namespace frontwright {
namespace {

/// Says at which front the error was met.
Error at(const Project& project, const FrontPlan& front, Error error) {
    const Phrase place = phrase("front %1", label(project, front));
    error.place = error.place.empty() ? place : phrase("%1, %2", place, std::move(error.place));
    return error;
}

/// The openings without a front, with the places that they have among all.
std::vector<SpacePlan> spacesIn(const Layout& layout, const std::vector<BankPlace>& banks) {
    std::vector<SpacePlan> spaces;
    for (std::size_t i = 0; i < layout.openings.size(); ++i) {
        const PlacedOpening& from = layout.openings[i];
        if (!hasFront(from.opening->use))
            spaces.push_back({from.id, from.opening->use, banks[i].bank, banks[i].place, from.rect,
                              from.bounds, &from.opening->name});
    }
    return spaces;
}

/// The same for the fronts, in the order of the layout without the spaces.
std::vector<BankPlace> banksOfFronts(const Layout& layout, std::vector<BankPlace> banks) {
    std::size_t kept = 0;
    for (std::size_t i = 0; i < banks.size(); ++i)
        if (hasFront(layout.openings[i].opening->use))
            banks[kept++] = banks[i];
    banks.resize(kept);
    return banks;
}

/// Tells the front how it lies, before its box and holes.
void place(FrontPlan& front, const Arrangement& all, std::size_t i, BankPlace bank) {
    const PlacedOpening& from = all.layout.openings[i];
    front.opening = from.id;
    front.use = from.opening->use;
    front.hinge = from.opening->hinge;
    front.face = from.face;
    front.bank = bank.bank;
    front.place = bank.place;
    front.openingRect = from.rect;
    front.rect = all.rects[i];
    front.overlay = all.overlays[i];
    front.fit = all.fits[i];
    front.neighbours = all.neighbours[i];
    front.choices = &from.opening->choices;
    const std::size_t first = from.face ? all.layout.faces[*from.face].first : i;
    front.boxChoices = &all.layout.openings[first].opening->choices;
    front.name = &from.opening->name;
}

std::optional<Error> addFronts(Plan& plan, const Project& project, const Catalogue& catalogue,
                               const Arrangement& all, const std::vector<BankPlace>& banks) {
    Outfitter outfitter(project, catalogue, plan.season);
    plan.fronts.reserve(banks.size());
    for (std::size_t i = 0; i < banks.size(); ++i) {
        FrontPlan& front = plan.fronts.emplace_back();
        place(front, all, i, banks[i]);
        if (auto error = outfitter.outfit(front, all.layout))
            return at(project, front, std::move(*error));
    }
    return std::nullopt;
}

/// The first front's runner carries them all.
void weighFaces(Plan& plan) {
    for (const DividedFace& face : plan.faces)
        for (std::uint32_t i = 1; i < face.count; ++i)
            plan.fronts[face.first].load.otherFronts +=
                plan.fronts[face.first + i].load.front.value_or(Mass{});
}

/// Drawers, and where the wood is known the face frame, or frameless the panels.
CaseLoad loadOf(const Plan& plan, const Case& casework) {
    CaseLoad load;
    for (const FrontPlan& front : plan.fronts) {
        load.empty += front.load.front.value_or(Mass{}) + front.load.box.value_or(Mass{});
        load.contents += front.load.contents;
        load.storage += front.load.storage;
    }
    if (plan.wood == nullptr || !plan.wood->gravity)
        return load;
    load.isWoodKnown = true;
    const Length deep = depthOfMembers(casework);
    Volume frame;
    for (const MemberPlan& member : plan.members)
        if (isBuilt(member.kind))
            frame += Volume::of(member.rect.width(), member.rect.height(), deep);
    load.empty += massOf(frame, *plan.wood->gravity);
    return load;
}

std::int32_t numberOf(const FrontPlan& front) {
    return front.opening.number;
}
std::int32_t numberOf(const SpacePlan& space) {
    return space.opening.number;
}
std::int32_t numberOf(const MemberPlan& member) {
    return member.id.number;
}

/// Indices, ascending by id. Most trees are numbered in reading order.
template<class Item>
std::vector<std::uint32_t> byId(const std::vector<Item>& items) {
    std::vector<std::pair<std::int32_t, std::uint32_t>> order(items.size());
    for (std::uint32_t i = 0; i < items.size(); ++i)
        order[i] = {numberOf(items[i]), i};
    if (!std::is_sorted(order.begin(), order.end()))
        std::sort(order.begin(), order.end());
    std::vector<std::uint32_t> indices(items.size());
    std::transform(order.begin(), order.end(), indices.begin(),
                   [](const auto& entry) { return entry.second; });
    return indices;
}

} // namespace

Result<Plan> makePlan(const Project& project, const Catalogue& catalogue) {
    const std::string& species = project.fronts.stock.species;
    if (!species.empty() && !catalogue.speciesOf(species))
        return Error{{},
                     phrase("no species \"%1\" in the catalogue", species),
                     text("choose one that is there")};
    auto whole = layOut(project.casework);
    if (!whole.ok())
        return whole.error();
    const auto moisture = moistureOf(project);
    if (!moisture.ok())
        return moisture.error();
    Plan plan;
    plan.construction = project.casework.construction;
    plan.season = moisture.value();
    plan.systemHoles = panelHoles(project.casework, whole.value());
    plan.outline = CaseRect::atOrigin(project.casework.width, project.casework.height);
    auto banks = banksOf(whole.value());
    plan.spaces = spacesIn(whole.value(), banks);
    if (auto error = addBoards(plan, project, catalogue, whole.value()))
        return *error;
    banks = banksOfFronts(whole.value(), std::move(banks));
    const Layout layout = withFrontsOnly(std::move(whole).value());
    Arrangement all = arrange(layout, project.fronts.fit);
    if (auto error = addFronts(plan, project, catalogue, all, banks))
        return *error;
    if (plan.season)
        addSeasonGaps(plan, project, all);
    plan.faces = layout.faces;
    weighFaces(plan);
    plan.members = std::move(all.members);
    plan.wood = catalogue.speciesOf(species);
    plan.load = loadOf(plan, project.casework);
    plan.spacers = std::move(all.spacers);
    plan.fillers = fillersOf(plan, project.limits);
    plan.stops = std::move(all.stops);
    addSurroundings(plan, project.casework);
    if (!plan.systemHoles.empty())
        addSteps(plan);
    plan.collisions = collisionsAmong(all.rects);
    plan.frontsById = byId(plan.fronts);
    plan.spacesById = byId(plan.spaces);
    plan.membersById = byId(plan.members);
    return plan;
}

} // namespace frontwright
