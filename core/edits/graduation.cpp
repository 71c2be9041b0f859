#include "core/case/child_sizes.h"
#include "core/case/layout.h"
#include "core/edits/divisions.h"
#include "core/edits/kept_sizes.h"
#include "core/edits/tree_paths.h"

#include <algorithm>

namespace frontwright {
namespace {

bool isPlace(const Child& child) {
    return std::holds_alternative<GraduatedPlace>(child.rule);
}

/// Does a region hold one of the openings (ascending), without another split along `direction` in
/// between? Counts those it holds.
bool standsFor(const Region& region, std::span<const OpeningId> openings, Direction direction,
               std::size_t& count) {
    if (const auto* opening = std::get_if<Opening>(&region.content)) {
        const bool isOne = std::ranges::binary_search(openings, opening->id);
        count += isOne ? 1 : 0;
        return isOne;
    }
    const auto& split = std::get<Split>(region.content);
    bool holdsOne = false;
    for (std::size_t i = 0; i < split.children.size() && split.direction != direction; ++i)
        holdsOne = standsFor(*split.children[i].region, openings, direction, count) || holdsOne;
    return holdsOne;
}

/// The children of one split that the openings stand for, ascending.
Result<std::vector<std::size_t>> siblings(const Split& split, std::span<const OpeningId> openings) {
    std::vector<OpeningId> ids(openings.begin(), openings.end());
    std::ranges::sort(ids);
    const auto repeated = std::ranges::unique(ids);
    ids.erase(repeated.begin(), repeated.end());
    std::vector<std::size_t> children;
    std::size_t count = 0;
    for (std::size_t i = 0; i < split.children.size(); ++i)
        if (standsFor(*split.children[i].region, ids, split.direction, count))
            children.push_back(i);
    if (count != ids.size())
        return Error{{},
                     text("the openings do not stand side by side in one split"),
                     text("choose openings of one row or of one bank")};
    return children;
}

std::vector<std::size_t> unlockedChildren(const Split& split) {
    std::vector<std::size_t> children;
    for (std::size_t i = 0; i < split.children.size(); ++i)
        if (isFlexible(split.children[i].rule))
            children.push_back(i);
    return children;
}

void turnRunIntoShares(Split& split) {
    for (Child& child : split.children)
        if (isPlace(child))
            child.rule = Share{};
    split.graduation.reset();
}

std::optional<Error> graduationError(const Graduation& graduation) {
    const auto* geometric = std::get_if<GeometricRun>(&graduation);
    if (geometric == nullptr ||
        (geometric->ratioMillionths > 0 && geometric->ratioMillionths <= greatestRatioMillionths))
        return std::nullopt;
    return Error{{}, text("the ratio of a graduated run must be more than 0 and at most 1000"), {}};
}

} // namespace

Result<Project> makeEqual(const Project& project, std::span<const OpeningId> openings,
                          Direction direction) {
    if (openings.empty())
        return Error{{}, text("no opening is chosen"), text("choose the openings to make equal")};
    auto found = sizedPlace(project.casework, openings.front(), direction);
    if (!found.ok())
        return found.error();
    const SizedPlace& sized = found.value();
    auto chosen = siblings(*sized.place.split, openings);
    if (!chosen.ok())
        return chosen.error();
    Split split = *sized.place.split;
    const std::vector<std::size_t> equals =
        openings.size() == 1 ? unlockedChildren(split) : std::move(chosen).value();
    if (equals.size() < 2)
        return Error{{},
                     text("there is nothing to be equal to: the other sizes are locked"),
                     text("choose at least two openings, or unlock one")};
    const bool breaksRun =
        std::ranges::any_of(equals, [&](std::size_t i) { return isPlace(split.children[i]); });
    if (breaksRun)
        turnRunIntoShares(split);
    for (const std::size_t i : equals)
        split.children[i].rule = Share{};
    keepSizesWithEquals(split, sized.sizes, equals, sized.total, project.casework.grid);
    if (auto error = runChanges(split, sized.sizes, sized.total, project.casework.grid))
        return std::move(*error);
    return laidOut(withSplit(project, sized.place.path, std::move(split)));
}

Result<Project> graduate(const Project& project, OpeningId id, Direction direction,
                         Graduation graduation) {
    if (std::optional<Error> error = graduationError(graduation))
        return std::move(*error);
    auto place = sizePlace(project.casework, id, direction);
    if (!place.ok())
        return place.error();
    Split split = *place.value().split;
    if (unlockedChildren(split).size() < 2)
        return Error{{},
                     text("fewer than two sizes are left to graduate: the others are locked"),
                     text("unlock them first")};
    for (Child& child : split.children)
        if (isFlexible(child.rule))
            child.rule = GraduatedPlace{};
    split.graduation = graduation;
    return laidOut(withSplit(project, place.value().path, std::move(split)));
}

Result<Project> endGraduation(const Project& project, OpeningId id, Direction direction) {
    auto found = sizedPlace(project.casework, id, direction);
    if (!found.ok())
        return found.error();
    const SizedPlace& sized = found.value();
    Split split = *sized.place.split;
    if (!split.graduation)
        return Error{{}, text("the opening does not stand in a graduated run"), {}};
    turnRunIntoShares(split);
    keepSizes(split, sized.sizes, sized.total, project.casework.grid);
    return laidOut(withSplit(project, sized.place.path, std::move(split)));
}

} // namespace frontwright
