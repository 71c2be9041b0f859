#include "core/edits/banks.h"

#include "core/case/layout.h"
#include "core/edits/choices.h"
#include "core/edits/divisions.h"
#include "core/edits/tree_paths.h"

#include <algorithm>
#include <string>
#include <vector>

namespace frontwright {
namespace {

void dropLostPresets(const Presets& presets, FrontChoices& choices) {
    for (const PresetKind kind : allPresetKinds)
        if (!hasPreset(presets, kind, presetName(choices, kind)))
            setPresetName(choices, kind, {});
}

/// The same region with new ids, taken from the project's in reading order.
RegionPtr withNewIds(const Region& region, Project& project) {
    Region copy = region;
    if (auto* opening = std::get_if<Opening>(&copy.content)) {
        opening->id = OpeningId{project.nextId++};
        dropLostPresets(project.presets, opening->choices);
    } else {
        auto& split = std::get<Split>(copy.content);
        for (std::size_t i = 0; i < split.children.size(); ++i) {
            split.children[i].region = withNewIds(*split.children[i].region, project);
            if (i < split.members.size())
                split.members[i].id = MemberId{project.nextId++};
        }
    }
    return std::make_shared<const Region>(std::move(copy));
}

std::optional<Error> tooMuch(const Project& project, const Region& bank, std::size_t levelsAbove) {
    if (levelsAbove + static_cast<std::size_t>(depthOf(bank)) >
        static_cast<std::size_t>(deepestDivisions))
        return Error{
            {}, phrase("divisions lie at most %1 deep", std::to_string(deepestDivisions)), {}};
    if (openingCount(*project.casework.divisions) + openingCount(bank) - 1 > mostOpenings)
        return Error{
            {}, phrase("a case holds at most %1 openings", std::to_string(mostOpenings)), {}};
    return std::nullopt;
}

bool isWithin(TreePathView path, const Split* split) {
    return std::ranges::any_of(path, [&](const TreeStep& step) { return step.split == split; });
}

Error standsInNoBank() {
    return {{}, text("the opening does not stand in a bank"), text("choose one between rails")};
}

/// `region` divided like `divisions`; what was in it goes.
Result<Project> pasted(const Project& project, TreePathView path, const Region& divisions) {
    if (std::optional<Error> error = tooMuch(project, divisions, path.size()))
        return std::move(*error);
    Project changed = project;
    RegionPtr copy = withNewIds(divisions, changed);
    return withRegion(changed, path, std::move(copy));
}

void collectOpenings(const Region& region, std::vector<OpeningId>& ids) {
    if (const auto* opening = std::get_if<Opening>(&region.content))
        return ids.push_back(opening->id);
    for (const Child& child : std::get<Split>(region.content).children)
        collectOpenings(*child.region, ids);
}

enum class Extent : std::uint8_t { TheOpening, ItsBank };
struct PasteTarget {
    OpeningId opening;
    Extent extent = Extent::TheOpening;
};

/// Takes from `ids` (ascending) the openings of one target after the other.
PasteTarget takeTarget(const Case& casework, std::vector<OpeningId>& ids) {
    const OpeningId first = ids.front();
    std::vector<OpeningId> bank;
    if (const auto place = sizePlace(casework, first, Direction::Rows); place.ok())
        collectOpenings(regionAt(casework, place.value().path), bank);
    std::ranges::sort(bank);
    if (bank.empty() || !std::ranges::includes(ids, bank)) {
        ids.erase(ids.begin());
        return {first, Extent::TheOpening};
    }
    std::erase_if(ids, [&](OpeningId id) { return std::ranges::binary_search(bank, id); });
    return {first, Extent::ItsBank};
}

Result<Project> pastedInto(const Project& project, const Region& divisions, PasteTarget target) {
    std::optional<TreePath> path = pathTo(project.casework, target.opening);
    if (!path)
        return noSuchOpening();
    if (target.extent == Extent::ItsBank) {
        const auto place = sizePlace(project.casework, target.opening, Direction::Rows);
        if (!place.ok())
            return place.error();
        path = place.value().path;
    }
    return pasted(project, *path, divisions);
}

} // namespace

Result<Project> copyDivisions(const Project& project, OpeningId from, OpeningId to) {
    const auto place = sizePlace(project.casework, from, Direction::Rows);
    if (!place.ok())
        return standsInNoBank();
    const std::optional<TreePath> target = pathTo(project.casework, to);
    if (!target)
        return noSuchOpening();
    if (isWithin(*target, place.value().split))
        return Error{
            {}, text("both openings stand in the same bank"), text("choose an opening of another")};
    auto changed = pasted(project, *target, regionAt(project.casework, place.value().path));
    return changed.ok() ? laidOut(std::move(changed).value()) : changed;
}

Result<RegionPtr> bankDivisions(const Project& project, OpeningId opening) {
    const auto place = sizePlace(project.casework, opening, Direction::Rows);
    if (!place.ok())
        return standsInNoBank();
    const TreePath& path = place.value().path;
    return path.empty() ? project.casework.divisions
                        : path.back().split->children[path.back().child].region;
}

Result<Project> pasteDivisions(const Project& project, const RegionPtr& divisions,
                               std::span<const OpeningId> to) {
    std::vector<OpeningId> left(to.begin(), to.end());
    std::ranges::sort(left);
    const auto repeated = std::ranges::unique(left);
    left.erase(repeated.begin(), repeated.end());
    Project changed = project;
    while (!left.empty()) {
        const PasteTarget target = takeTarget(project.casework, left);
        auto next = pastedInto(changed, *divisions, target);
        if (!next.ok())
            return next;
        changed = std::move(next).value();
    }
    return laidOut(std::move(changed));
}

Result<Project> repeatBank(const Project& project, OpeningId opening, int count,
                           WrittenLength memberWidth) {
    const auto divisions = bankDivisions(project, opening);
    if (!divisions.ok())
        return divisions.error();
    const auto place = sizePlace(project.casework, opening, Direction::Rows);
    const Opening first = firstOpening(*divisions.value());
    const auto alone = std::make_shared<const Region>(Region{first});
    const auto split = splitOpening(withRegion(project, place.value().path, alone), first.id,
                                    Direction::Columns, count, memberWidth);
    if (!split.ok())
        return split;
    std::vector<OpeningId> all;
    collectOpenings(*split.value().casework.divisions, all);
    std::erase_if(all, [&](OpeningId id) { return id.number < project.nextId; });
    auto repeated = pasteDivisions(split.value(), divisions.value(), all);
    if (!repeated.ok())
        return repeated;
    const std::optional<TreePath> path = pathTo(repeated.value().casework, first.id);
    return laidOut(withRegion(repeated.value(), *path, divisions.value()));
}

} // namespace frontwright
