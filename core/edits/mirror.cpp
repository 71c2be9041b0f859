#include "core/case/child_sizes.h"
#include "core/edits/banks.h"
#include "core/edits/tree_paths.h"

#include <algorithm>
#include <utility>

namespace frontwright {
namespace {

constexpr std::int64_t wholeMillionths = 1'000'000'000'000; // 1, in millionths of millionths

std::int64_t reciprocal(std::int64_t millionths) {
    return (wholeMillionths + millionths / 2) / millionths;
}

void mirrorSides(Profile& profile) {
    std::swap(profile.sides.left, profile.sides.right);
}

/// Turns what one front decides for itself. Its handle's and screws' places are known by their
/// distance from the left, so its own widths count.
void mirrorChoices(FrontChoices& choices, const FrontPlan& front) {
    std::swap(choices.fit.left, choices.fit.right);
    if (choices.profile)
        mirrorSides(*choices.profile);
    if (choices.hardware && choices.hardware->placedAt)
        choices.hardware->placedAt->x = front.rect.width() - choices.hardware->placedAt->x;
    if (choices.mounting)
        for (WallPoint& point : choices.mounting->placed)
            point.x = front.box.width - point.x;
}

std::optional<Error> mirrorRun(std::optional<Graduation>& graduation) {
    if (!graduation)
        return std::nullopt;
    if (auto* run = std::get_if<ArithmeticRun>(&*graduation)) {
        run->step.length = -run->step.length;
        return std::nullopt;
    }
    std::int64_t& ratio = std::get<GeometricRun>(*graduation).ratioMillionths;
    const std::int64_t turned = reciprocal(ratio);
    if (turned <= 0 || reciprocal(turned) != ratio)
        return Error{{},
                     text("columns that grow by this ratio cannot be mirrored exactly"),
                     text("end the graduation first; the sizes stay")};
    ratio = turned;
    return std::nullopt;
}

/// Columns are listed left to right, rows keep their order.
std::optional<Error> mirrorColumns(Split& split) {
    if (split.direction != Direction::Columns)
        return std::nullopt;
    const std::size_t taker = remainderTaker(split).value_or(split.remainderChild);
    std::ranges::reverse(split.children);
    std::ranges::reverse(split.members);
    split.remainderChild = split.children.size() - 1 - taker;
    return mirrorRun(split.graduation);
}

Result<RegionPtr> mirrored(const Region& region, const Plan& plan) {
    Region copy = region;
    if (auto* opening = std::get_if<Opening>(&copy.content)) {
        if (const FrontPlan* front = plan.frontOf(opening->id))
            mirrorChoices(opening->choices, *front);
        return std::make_shared<const Region>(std::move(copy));
    }
    auto& split = std::get<Split>(copy.content);
    for (Child& child : split.children) {
        auto part = mirrored(*child.region, plan);
        if (!part.ok())
            return part;
        child.region = std::move(part).value();
    }
    if (std::optional<Error> error = mirrorColumns(split))
        return std::move(*error);
    return std::make_shared<const Region>(std::move(copy));
}

/// Steps that the paths have in common, and through the same children.
std::size_t commonSteps(TreePathView a, TreePathView b) {
    const std::size_t most = std::min(a.size(), b.size());
    for (std::size_t i = 0; i < most; ++i)
        if (a[i].split != b[i].split || a[i].child != b[i].child)
            return i;
    return most;
}

bool hasColumns(const Region& region) {
    const auto* split = std::get_if<Split>(&region.content);
    return split != nullptr && (split->direction == Direction::Columns ||
                                std::ranges::any_of(split->children, [](const Child& child) {
                                    return hasColumns(*child.region);
                                }));
}

} // namespace

Result<Project> mirrorCase(const Project& project, const Plan& plan) {
    auto divisions = mirrored(*project.casework.divisions, plan);
    if (!divisions.ok())
        return divisions.error();
    Project changed = project;
    changed.casework.divisions = std::move(divisions).value();
    std::swap(changed.casework.frame.left, changed.casework.frame.right);
    std::swap(changed.casework.surroundings.left, changed.casework.surroundings.right);
    std::swap(changed.fronts.fit.left, changed.fronts.fit.right);
    mirrorSides(changed.fronts.profile);
    for (Preset<Profile>& preset : changed.presets.profile)
        mirrorSides(preset.value);
    return laidOut(std::move(changed));
}

Result<Project> mirrorRegion(const Project& project, const Plan& plan,
                             std::span<const OpeningId> openings) {
    std::optional<TreePath> common;
    for (const OpeningId id : openings) {
        const std::optional<TreePath> path = pathTo(project.casework, id);
        if (!path)
            return noSuchOpening();
        common = common
                     ? TreePath(common->begin(), common->begin() + static_cast<std::ptrdiff_t>(
                                                                       commonSteps(*common, *path)))
                     : *path;
    }
    if (!common)
        return Error{{}, text("nothing is chosen to mirror"), text("choose openings")};
    while (!common->empty() && !hasColumns(regionAt(project.casework, *common)))
        common->pop_back();
    const Region& region = regionAt(project.casework, *common);
    if (!hasColumns(region))
        return Error{{}, text("there are no columns to mirror"), text("split into columns first")};
    auto turned = mirrored(region, plan);
    if (!turned.ok())
        return turned.error();
    return laidOut(withRegion(project, *common, std::move(turned).value()));
}

} // namespace frontwright
