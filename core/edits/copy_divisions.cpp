#include "core/case/layout.h"
#include "core/edits/choices.h"
#include "core/edits/divisions.h"
#include "core/edits/tree_paths.h"

namespace frontwright {
namespace {

/// The same region with new ids, taken from `nextId` in reading order.
RegionPtr withNewIds(const Region& region, std::int32_t& nextId) {
    Region copy = region;
    if (auto* opening = std::get_if<Opening>(&copy.content)) {
        opening->id = OpeningId{nextId++};
    } else {
        auto& split = std::get<Split>(copy.content);
        for (std::size_t i = 0; i < split.children.size(); ++i) {
            split.children[i].region = withNewIds(*split.children[i].region, nextId);
            if (i < split.members.size())
                split.members[i].id = MemberId{nextId++};
        }
    }
    return std::make_shared<const Region>(std::move(copy));
}

std::optional<Error> tooMuch(const Project& project, const Region& bank, std::size_t levelsAbove) {
    if (levelsAbove + static_cast<std::size_t>(depthOf(bank)) >
        static_cast<std::size_t>(deepestDivisions))
        return Error{"", "divisions lie at most " + std::to_string(deepestDivisions) + " deep", ""};
    if (openingCount(*project.casework.divisions) + openingCount(bank) - 1 > mostOpenings)
        return Error{"", "a case holds at most " + std::to_string(mostOpenings) + " openings", ""};
    return std::nullopt;
}

bool isWithin(TreePathView path, const Split* split) {
    for (const TreeStep& step : path)
        if (step.split == split)
            return true;
    return false;
}

} // namespace

Result<Project> copyDivisions(const Project& project, OpeningId from, OpeningId to) {
    const auto place = sizePlace(project.casework, from, Direction::Rows);
    if (!place.ok())
        return Error{"", "the opening does not stand in a bank", "choose one between rails"};
    const std::optional<TreePath> target = pathTo(project.casework, to);
    if (!target)
        return noSuchOpening();
    if (isWithin(*target, place.value().split))
        return Error{"", "both openings stand in the same bank", "choose an opening of another"};
    const Region& bank = regionAt(project.casework, place.value().path);
    if (std::optional<Error> error = tooMuch(project, bank, target->size()))
        return std::move(*error);
    Project changed = project;
    RegionPtr copy = withNewIds(bank, changed.nextId);
    return laidOut(withRegion(changed, *target, std::move(copy)));
}

} // namespace frontwright
