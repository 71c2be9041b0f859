#include "core/edits/every_opening.h"

#include "core/edits/tree_paths.h"

#include <algorithm>
#include <vector>

namespace frontwright {
namespace {

RegionPtr changedRegion(const RegionPtr& region, const OpeningEdit& change) {
    if (const auto* opening = std::get_if<Opening>(&region->content)) {
        std::optional<Opening> changed = change(*opening);
        if (!changed)
            return region;
        changed->id = opening->id;
        return std::make_shared<const Region>(Region{std::move(*changed)});
    }
    const auto& split = std::get<Split>(region->content);
    std::optional<Split> copy;
    for (std::size_t i = 0; i < split.children.size(); ++i) {
        RegionPtr child = changedRegion(split.children[i].region, change);
        if (child == split.children[i].region)
            continue;
        if (!copy)
            copy = split;
        copy->children[i].region = std::move(child);
    }
    return copy ? std::make_shared<const Region>(Region{std::move(*copy)}) : region;
}

} // namespace

Project withEveryOpening(const Project& project, const OpeningEdit& change) {
    Project result = project;
    result.casework.divisions = changedRegion(project.casework.divisions, change);
    return result;
}

Result<Project> changeChoices(const Project& project, std::span<const OpeningId> openings,
                              const std::function<void(FrontChoices&)>& change) {
    std::vector<OpeningId> wanted(openings.begin(), openings.end());
    std::ranges::sort(wanted);
    const auto repeated = std::ranges::unique(wanted);
    wanted.erase(repeated.begin(), repeated.end());
    std::size_t found = 0;
    Project changed =
        withEveryOpening(project, [&](const Opening& opening) -> std::optional<Opening> {
            if (!std::ranges::binary_search(wanted, opening.id))
                return std::nullopt;
            ++found;
            Opening result = opening;
            change(result.choices);
            return result;
        });
    if (found != wanted.size())
        return noSuchOpening();
    return changed;
}

} // namespace frontwright
