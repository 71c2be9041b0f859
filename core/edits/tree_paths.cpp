#include "core/edits/tree_paths.h"

#include "core/case/layout.h"
#include "core/edits/divisions.h"

#include <algorithm>

namespace frontwright {
namespace {

bool findOpeningIn(const Region& region, OpeningId id, TreePath& path) {
    if (const auto* opening = std::get_if<Opening>(&region.content))
        return opening->id == id;
    const auto& split = std::get<Split>(region.content);
    path.push_back({&split, 0});
    for (std::size_t i = 0; i < split.children.size(); ++i) {
        path.back().child = i;
        if (findOpeningIn(*split.children[i].region, id, path))
            return true;
    }
    path.pop_back();
    return false;
}

/// On success the last step's child is the member's place.
bool findMemberIn(const Region& region, MemberId id, TreePath& path) {
    const auto* split = std::get_if<Split>(&region.content);
    if (split == nullptr)
        return false;
    path.push_back({split, 0});
    for (std::size_t i = 0; i < split->children.size(); ++i) {
        path.back().child = i;
        if (i < split->members.size() && split->members[i].id == id)
            return true;
        if (findMemberIn(*split->children[i].region, id, path))
            return true;
    }
    path.pop_back();
    return false;
}

RegionPtr replacedAt(TreePathView path, RegionPtr region) {
    for (std::size_t i = path.size(); i-- > 0;) {
        Split copy = *path[i].split;
        copy.children[path[i].child].region = std::move(region);
        region = std::make_shared<const Region>(Region{std::move(copy)});
    }
    return region;
}

Error spansTheCase(Direction direction) {
    if (direction == Direction::Rows)
        return {{},
                text("the opening spans the case's full height"),
                text("change the height of the case, or split it")};
    return {{},
            text("the opening spans the case's full width"),
            text("change the width of the case, or split it")};
}

} // namespace

std::optional<TreePath> pathTo(const Case& casework, OpeningId id) {
    TreePath path;
    if (!findOpeningIn(*casework.divisions, id, path))
        return std::nullopt;
    return path;
}

std::optional<MemberPlace> placeOf(const Case& casework, MemberId id) {
    MemberPlace place;
    if (!findMemberIn(*casework.divisions, id, place.path))
        return std::nullopt;
    place.split = place.path.back().split;
    place.member = place.path.back().child;
    place.path.pop_back();
    return place;
}

const Region& regionAt(const Case& casework, TreePathView path) {
    return path.empty() ? *casework.divisions
                        : *path.back().split->children[path.back().child].region;
}

std::size_t openingCount(const Region& region) {
    const auto* split = std::get_if<Split>(&region.content);
    if (split == nullptr)
        return 1;
    std::size_t count = 0;
    for (const Child& child : split->children)
        count += openingCount(*child.region);
    return count;
}

int depthOf(const Region& region) {
    const auto* split = std::get_if<Split>(&region.content);
    if (split == nullptr)
        return 0;
    int deepest = 0;
    for (const Child& child : split->children)
        deepest = std::max(deepest, depthOf(*child.region));
    return deepest + 1;
}

const Opening& firstOpening(const Region& region) {
    const Region* first = &region;
    while (const auto* split = std::get_if<Split>(&first->content))
        first = split->children.front().region.get();
    return std::get<Opening>(first->content);
}

Project withRegion(const Project& project, TreePathView path, RegionPtr region) {
    Project result = project;
    result.casework.divisions = replacedAt(path, std::move(region));
    return result;
}

Project withSplit(const Project& project, TreePathView path, Split split) {
    return withRegion(project, path, std::make_shared<const Region>(Region{std::move(split)}));
}

Result<Length> lengthAlong(const Case& casework, TreePathView path, Direction direction) {
    const CaseRect inside = insideFrame(casework);
    Length length = direction == Direction::Rows ? inside.height() : inside.width();
    for (const TreeStep& step : path) {
        if (step.split->direction != direction)
            continue;
        const auto sizes = childSizes(*step.split, length, casework.grid);
        if (!sizes.ok())
            return sizes.error();
        length = sizes.value()[step.child];
    }
    return length;
}

Result<SizePlace> sizePlace(const Case& casework, OpeningId id, Direction direction) {
    std::optional<TreePath> path = pathTo(casework, id);
    if (!path)
        return noSuchOpening();
    while (!path->empty() && path->back().split->direction != direction)
        path->pop_back();
    if (path->empty())
        return spansTheCase(direction);
    const TreeStep step = path->back();
    path->pop_back();
    return SizePlace{std::move(*path), step.split, step.child};
}

Result<SizedPlace> sizedPlace(const Case& casework, SizePlace place) {
    const auto total = lengthAlong(casework, place.path, place.split->direction);
    if (!total.ok())
        return total.error();
    auto sizes = childSizes(*place.split, total.value(), casework.grid);
    if (!sizes.ok())
        return sizes.error();
    return SizedPlace{std::move(place), total.value(), std::move(sizes).value()};
}

Result<SizedPlace> sizedPlace(const Case& casework, OpeningId id, Direction direction) {
    auto place = sizePlace(casework, id, direction);
    if (!place.ok())
        return place.error();
    return sizedPlace(casework, std::move(place).value());
}

Result<Project> laidOut(Project project) {
    const Result<Layout> layout = layOut(project.casework);
    if (!layout.ok())
        return layout.error();
    return project;
}

Error noSuchOpening() {
    return {{}, text("there is no such opening in the case"), {}};
}
Error noSuchMember() {
    return {{}, text("there is no such member in the case"), {}};
}

Result<Project> changeOpening(const Project& project, OpeningId id,
                              const std::function<Opening(const Opening&)>& change) {
    const std::optional<TreePath> path = pathTo(project.casework, id);
    if (!path)
        return noSuchOpening();
    Opening changed = change(std::get<Opening>(regionAt(project.casework, *path).content));
    changed.id = id;
    return withRegion(project, *path, std::make_shared<const Region>(Region{std::move(changed)}));
}

const Opening* findOpening(const Project& project, OpeningId id) {
    const std::optional<TreePath> path = pathTo(project.casework, id);
    return path ? &std::get<Opening>(regionAt(project.casework, *path).content) : nullptr;
}

} // namespace frontwright
