#include "core/plan/arrangement.h"
#include "core/plan/banks.h"
#include "core/plan/collisions.h"
#include "core/plan/moving.h"
#include "core/plan/outfitter.h"
#include "core/plan/panel_holes.h"

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

/// Tells the front how it lies, before its box and holes.
void place(FrontPlan& front, const Arrangement& all, std::size_t i, BankPlace bank) {
    const PlacedOpening& from = all.layout.openings[i];
    front.opening = from.id;
    front.bank = bank.bank;
    front.place = bank.place;
    front.openingRect = from.rect;
    front.rect = all.rects[i];
    front.overlay = all.overlays[i];
    front.fit = all.fits[i];
    front.neighbours = all.neighbours[i];
    front.choices = &from.opening->choices;
    front.name = &from.opening->name;
}

std::optional<Error> addFronts(Plan& plan, const Project& project, const Catalogue& catalogue,
                               const Arrangement& all) {
    const auto banks = banksOf(all.layout);
    Outfitter outfitter(project, catalogue, plan.season);
    plan.fronts.reserve(banks.size());
    for (std::size_t i = 0; i < banks.size(); ++i) {
        FrontPlan& front = plan.fronts.emplace_back();
        place(front, all, i, banks[i]);
        if (auto error = outfitter.outfit(front))
            return at(project, front, std::move(*error));
    }
    return std::nullopt;
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
        frame += Volume::of(member.rect.width(), member.rect.height(), deep);
    load.empty += massOf(frame, *plan.wood->gravity);
    return load;
}

void addSurroundings(Plan& plan, const Case& casework) {
    for (const Side side : allSides)
        plan.limits[side] = edgeLimit(casework.surroundings[side]);
    const PerSide<Length> out = standingOut(casework.surroundings);
    plan.whole = {plan.outline.left - out.left, plan.outline.bottom - out.bottom,
                  plan.outline.right + out.right, plan.outline.top + out.top};
}

/// Indices, ascending by id. Most trees are numbered in reading order.
template<class Placed>
std::vector<std::uint32_t> byId(const std::vector<Placed>& items) {
    std::vector<std::pair<std::int32_t, std::uint32_t>> order(items.size());
    for (std::uint32_t i = 0; i < items.size(); ++i)
        order[i] = {items[i].id.number, i};
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
    const auto layout = layOut(project.casework);
    if (!layout.ok())
        return layout.error();
    Arrangement all = arrange(layout.value(), project.fronts.fit);
    Plan plan;
    plan.construction = project.casework.construction;
    plan.outline = CaseRect::atOrigin(project.casework.width, project.casework.height);
    const auto moisture = moistureOf(project);
    if (!moisture.ok())
        return moisture.error();
    plan.season = moisture.value();
    if (auto error = addFronts(plan, project, catalogue, all))
        return *error;
    if (plan.season)
        addSeasonGaps(plan, project, all);
    plan.members = std::move(all.members);
    plan.wood = catalogue.speciesOf(species);
    plan.load = loadOf(plan, project.casework);
    plan.spacers = std::move(all.spacers);
    plan.stops = std::move(all.stops);
    addSurroundings(plan, project.casework);
    plan.systemHoles = panelHoles(project.casework, layout.value());
    plan.collisions = collisionsAmong(all.rects);
    plan.frontsById = byId(layout.value().openings);
    plan.membersById = byId(layout.value().members);
    return plan;
}

} // namespace frontwright
