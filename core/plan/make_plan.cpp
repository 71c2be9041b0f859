#include "core/plan/arrangement.h"
#include "core/plan/banks.h"
#include "core/plan/blocks.h"
#include "core/plan/collisions.h"
#include "core/plan/facing.h"
#include "core/plan/outfitter.h"
#include "core/plan/overlays.h"

#include <algorithm>
#include <utility>

namespace frontwright {
namespace {

Arrangement arrangedFronts(const Layout& layout, const FrontFit& ofCase) {
    Arrangement all = arranged(layout);
    assignBanks(all.fronts);
    const auto facing = facingOpenings(layout);
    setOverlays(all, layout, ofCase, facing);
    setRects(all);
    setNeighbours(all, facing);
    setStops(all);
    return all;
}

/// Says at which front the error was met.
Error at(const Project& project, const FrontPlan& front, Error error) {
    const std::string place = "front " + label(project, front);
    error.place = error.place.empty() ? place : place + ", " + error.place;
    return error;
}

std::optional<Error> outfitFronts(Plan& plan, const Project& project, const Catalogue& catalogue,
                                  const Layout& layout, const std::vector<FrontPlace>& places) {
    Outfitter outfitter(project, catalogue);
    plan.fronts.reserve(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        FrontPlan& front = plan.fronts.emplace_back();
        static_cast<FrontPlace&>(front) = places[i];
        front.choices = &layout.openings[i].opening->choices;
        front.name = &layout.openings[i].opening->name;
        if (auto error = outfitter.outfit(front))
            return at(project, front, std::move(*error));
    }
    return std::nullopt;
}

std::vector<Collision> collisionsOf(const std::vector<FrontPlace>& fronts) {
    std::vector<CaseRect> rects(fronts.size());
    std::transform(fronts.begin(), fronts.end(), rects.begin(),
                   [](const FrontPlace& front) { return front.rect; });
    return collisionsAmong(rects);
}

template<class Items, class IdOf>
std::vector<std::uint32_t> ascending(const Items& items, IdOf idOf) {
    std::vector<std::pair<std::int32_t, std::uint32_t>> order(items.size());
    for (std::uint32_t i = 0; i < items.size(); ++i)
        order[i] = {idOf(items[i]).number, i};
    if (!std::is_sorted(order.begin(), order.end()))
        std::sort(order.begin(), order.end());
    std::vector<std::uint32_t> indices(items.size());
    std::transform(order.begin(), order.end(), indices.begin(),
                   [](const auto& entry) { return entry.second; });
    return indices;
}

void indexById(Plan& plan) {
    plan.frontsById = ascending(plan.fronts, [](const FrontPlan& front) { return front.opening; });
    plan.membersById = ascending(plan.members, [](const MemberPlan& member) { return member.id; });
}

} // namespace

Result<Plan> makePlan(const Project& project, const Catalogue& catalogue) {
    const std::string& species = project.fronts.species;
    if (!species.empty() && !catalogue.speciesOf(species))
        return Error{"", "no species \"" + species + "\" in the catalogue",
                     "choose one that is there"};
    const auto layout = layOut(project.casework);
    if (!layout.ok())
        return layout.error();
    Arrangement all = arrangedFronts(layout.value(), project.fronts.fit);
    Plan plan;
    plan.outline = CaseRect::atOrigin(project.casework.width, project.casework.height);
    plan.members = std::move(all.members);
    plan.spacers = std::move(all.spacers);
    plan.stops = std::move(all.stops);
    plan.collisions = collisionsOf(all.fronts);
    if (auto error = outfitFronts(plan, project, catalogue, layout.value(), all.fronts))
        return *error;
    indexById(plan);
    return plan;
}

} // namespace frontwright
