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

void mirrorFittings(HardwareSpec& hardware) {
    for (FittingSpec& fitting : hardware.fittings)
        if (fitting.across == FittingAcross::FromLeft)
            fitting.across = FittingAcross::FromRight;
        else if (fitting.across == FittingAcross::FromRight)
            fitting.across = FittingAcross::FromLeft;
}

/// Turns what one opening decides for itself. Its handle's and screws' places are known by their
/// distance from the left, so its own widths count; where it has none now (no front, no wall) they
/// could be turned about nothing, and go.
void mirrorChoices(FrontChoices& choices, const FrontPlan* front) {
    std::swap(choices.fit.left, choices.fit.right);
    if (choices.profile)
        mirrorSides(*choices.profile);
    if (choices.hardware && choices.hardware->placedAt) {
        if (front)
            choices.hardware->placedAt->x = front->rect.width() - choices.hardware->placedAt->x;
        else
            choices.hardware->placedAt.reset();
    }
    if (choices.hardware)
        mirrorFittings(*choices.hardware);
    if (!choices.mounting)
        return;
    if (!front || !front->isScrewedOn())
        choices.mounting->placed.clear();
    for (WallPoint& point : choices.mounting->placed)
        point.x = front->box.width - point.x;
}

/// The box behind several fronts is the first one's: whoever comes to stand there takes it over.
RegionPtr withBoxOf(const Region& region, const FrontChoices& owner) {
    Region copy = region;
    if (auto* split = std::get_if<Split>(&copy.content)) {
        RegionPtr& first = split->children.front().region;
        first = withBoxOf(*first, owner);
    } else {
        FrontChoices& choices = std::get<Opening>(copy.content).choices;
        choices.box = owner.box;
        setPresetName(choices, PresetKind::Box, std::string(presetName(owner, PresetKind::Box)));
    }
    return std::make_shared<const Region>(std::move(copy));
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
        mirrorChoices(opening->choices, plan.frontOf(opening->id));
        if (opening->use == OpeningUse::Door)
            opening->hinge = opening->hinge == HingeSide::Left ? HingeSide::Right : HingeSide::Left;
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
    if (split.divides == Divides::Face) {
        RegionPtr& first = split.children.front().region;
        first = withBoxOf(*first, firstOpening(region).choices);
    }
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

/// To the smallest part with columns in it that holds all the openings.
Result<TreePath> partWithColumns(const Project& project, std::span<const OpeningId> openings) {
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
    if (!hasColumns(regionAt(project.casework, *common)))
        return Error{{}, text("there are no columns to mirror"), text("split into columns first")};
    return *std::move(common);
}

/// The same, but for the part itself being divided into columns.
Result<TreePath> dividedIntoColumns(const Project& project, std::span<const OpeningId> openings) {
    auto path = partWithColumns(project, openings);
    if (!path.ok())
        return path;
    TreePath found = std::move(path).value();
    const auto isColumns = [&] {
        const auto* split = std::get_if<Split>(&regionAt(project.casework, found).content);
        return split != nullptr && split->direction == Direction::Columns;
    };
    while (!found.empty() && !isColumns())
        found.pop_back();
    if (!isColumns())
        return Error{{},
                     text("the part is not divided into columns"),
                     text("choose openings of a part that is")};
    return found;
}

bool holdsOne(const Region& region, std::span<const OpeningId> openings) {
    if (const auto* opening = std::get_if<Opening>(&region.content))
        return std::ranges::find(openings, opening->id) != openings.end();
    const auto& children = std::get<Split>(region.content).children;
    return std::ranges::any_of(
        children, [&](const Child& child) { return holdsOne(*child.region, openings); });
}

/// Without names, which stand for one opening only, and with ids of its own.
RegionPtr renumbered(const Region& region, Project& project) {
    Region copy = region;
    if (auto* opening = std::get_if<Opening>(&copy.content)) {
        opening->id = OpeningId{project.nextId++};
        opening->name.clear();
    } else {
        auto& split = std::get<Split>(copy.content);
        for (Child& child : split.children)
            child.region = renumbered(*child.region, project);
        for (Member& member : split.members)
            member.id = MemberId{project.nextId++};
    }
    return std::make_shared<const Region>(std::move(copy));
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
    mirrorFittings(changed.fronts.hardware);
    for (Preset<HardwareSpec>& preset : changed.presets.hardware)
        mirrorFittings(preset.value);
    for (Preset<Profile>& preset : changed.presets.profile)
        mirrorSides(preset.value);
    return laidOut(std::move(changed));
}

Result<Project> mirrorRegion(const Project& project, const Plan& plan,
                             std::span<const OpeningId> openings) {
    const auto path = partWithColumns(project, openings);
    if (!path.ok())
        return path.error();
    const Region& region = regionAt(project.casework, path.value());
    auto turned = mirrored(region, plan);
    if (!turned.ok())
        return turned.error();
    return laidOut(withRegion(project, path.value(), std::move(turned).value()));
}

Result<Project> mirrorOnto(const Project& project, const Plan& plan,
                           std::span<const OpeningId> openings) {
    const auto path = dividedIntoColumns(project, openings);
    if (!path.ok())
        return path.error();
    Split split = std::get<Split>(regionAt(project.casework, path.value()).content);
    if (split.graduation)
        return Error{{},
                     text("columns of a graduated run differ from side to side"),
                     text("end the graduation first; the sizes stay")};
    const std::size_t count = split.children.size(), half = count / 2;
    const bool fromLeft = std::any_of(
        split.children.begin(), split.children.begin() + static_cast<std::ptrdiff_t>(count - half),
        [&](const Child& child) { return holdsOne(*child.region, openings); });
    const FrontChoices boxOwner = firstOpening(*split.children.front().region).choices;
    Project changed = project;
    for (std::size_t i = 0; i < half; ++i) {
        const std::size_t from = fromLeft ? i : count - 1 - i, to = count - 1 - from;
        auto turned = mirrored(*split.children[from].region, plan);
        if (!turned.ok())
            return turned.error();
        split.children[to] = {split.children[from].rule, renumbered(*turned.value(), changed)};
        const std::size_t stile = fromLeft ? i : count - 2 - i;
        split.members[count - 2 - stile].width = split.members[stile].width;
    }
    if (split.divides == Divides::Face) {
        RegionPtr& first = split.children.front().region;
        first = withBoxOf(*first, boxOwner);
    }
    return laidOut(withSplit(changed, path.value(), std::move(split)));
}

} // namespace frontwright
