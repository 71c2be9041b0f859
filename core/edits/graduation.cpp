#include "core/case/child_sizes.h"
#include "core/case/layout.h"
#include "core/edits/divisions.h"
#include "core/edits/kept_sizes.h"
#include "core/edits/runs.h"
#include "core/edits/tree_paths.h"

#include <algorithm>

namespace frontwright {
namespace {

std::optional<Error> graduationError(const Graduation& graduation) {
    const auto* geometric = std::get_if<GeometricRun>(&graduation);
    if (geometric == nullptr ||
        (geometric->ratioMillionths > 0 && geometric->ratioMillionths <= greatestRatioMillionths))
        return std::nullopt;
    return Error{{}, text("the ratio of a graduated run must be more than 0 and at most 1000"), {}};
}

} // namespace

bool isPlace(const Child& child) {
    return std::holds_alternative<GraduatedPlace>(child.rule);
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
