#include "core/case/child_sizes.h"
#include "core/case/layout.h"
#include "core/edits/divisions.h"
#include "core/edits/kept_sizes.h"
#include "core/edits/runs.h"
#include "core/edits/snap.h"
#include "core/edits/tree_paths.h"
#include "core/lengths/format.h"
#include "core/plan/arrangement.h"

#include <algorithm>

namespace frontwright {
namespace {

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

/// The children of a split that shall be alike, as shares.
struct AlikePlace {
    SizedPlace sized;
    Split split;
    std::vector<std::size_t> alike; ///< ascending
};

/// The siblings that the openings stand for; all unlocked ones where only one is given.
Result<AlikePlace> alikePlace(const Project& project, std::span<const OpeningId> openings,
                              Direction direction) {
    if (openings.empty())
        return Error{{}, text("no opening is chosen"), text("choose the openings to make equal")};
    auto found = sizedPlace(project.casework, openings.front(), direction);
    if (!found.ok())
        return found.error();
    AlikePlace place{std::move(found).value(), {}, {}};
    auto chosen = siblings(*place.sized.place.split, openings);
    if (!chosen.ok())
        return chosen.error();
    place.split = *place.sized.place.split;
    place.alike = openings.size() == 1 ? unlockedChildren(place.split) : std::move(chosen).value();
    if (place.alike.size() < 2)
        return Error{{},
                     text("there is nothing to be equal to: the other sizes are locked"),
                     text("choose at least two openings, or unlock one")};
    const bool breaksRun = std::ranges::any_of(
        place.alike, [&](std::size_t i) { return isPlace(place.split.children[i]); });
    if (breaksRun)
        turnRunIntoShares(place.split);
    for (const std::size_t i : place.alike)
        place.split.children[i].rule = Share{};
    return place;
}

Result<Project> withAlike(const Project& project, AlikePlace place) {
    if (auto error =
            runChanges(place.split, place.sized.sizes, place.sized.total, project.casework.grid))
        return std::move(*error);
    return laidOut(withSplit(project, place.sized.place.path, std::move(place.split)));
}

/// How much larger a region's first front is than its opening along the direction; 0 where no
/// front lies over it.
Length overlaidBeyond(const Arrangement& arranged, const Region& region, Direction direction) {
    const Region* at = &region;
    while (const auto* split = std::get_if<Split>(&at->content))
        at = split->children.front().region.get();
    const OpeningId id = std::get<Opening>(at->content).id;
    const auto& openings = arranged.layout.openings;
    const auto found = std::ranges::find(openings, id, &PlacedOpening::id);
    if (found == openings.end() || !hasFront(found->opening->use))
        return {};
    const PerSide<Length>& overlay =
        arranged.overlays[static_cast<std::size_t>(found - openings.begin())];
    return direction == Direction::Rows ? overlay.bottom + overlay.top
                                        : overlay.left + overlay.right;
}

} // namespace

Result<Project> makeEqual(const Project& project, std::span<const OpeningId> openings,
                          Direction direction) {
    auto found = alikePlace(project, openings, direction);
    if (!found.ok())
        return found.error();
    AlikePlace place = std::move(found).value();
    keepSizesWithEquals(place.split, place.sized.sizes, place.alike, place.sized.total,
                        project.casework.grid);
    return withAlike(project, std::move(place));
}

Result<Project> makeFrontsEqual(const Project& project, std::span<const OpeningId> openings,
                                Direction direction) {
    auto found = alikePlace(project, openings, direction);
    if (!found.ok())
        return found.error();
    AlikePlace place = std::move(found).value();
    const auto layout = layOut(project.casework);
    if (!layout.ok())
        return layout.error();
    const Arrangement arranged = arrange(layout.value(), project.fronts.fit);
    // What each front has beyond its opening; what all the fronts have together is shared.
    std::vector<Length> beyond;
    Length together;
    for (const std::size_t child : place.alike) {
        beyond.push_back(overlaidBeyond(arranged, *place.split.children[child].region, direction));
        together += place.sized.sizes[child] + beyond.back();
    }
    std::vector<Length> sizes = place.sized.sizes;
    const auto count = static_cast<std::int64_t>(place.alike.size());
    const Length front = Length::fromNanometres(together.nanometres() / count);
    Length left = together;
    for (std::size_t i = 0; i < place.alike.size(); ++i) {
        Length& size = sizes[place.alike[i]];
        const bool isLast = i + 1 == place.alike.size();
        size = isLast ? left - beyond[i] : onGrid(front - beyond[i], project.casework.grid);
        left -= size + beyond[i];
        if (size < project.limits.leastOpening)
            return Error{{},
                         phrase("an opening would be %1, under the least of %2",
                                shown(size, project.style),
                                shown(project.limits.leastOpening, project.style)),
                         text("make fewer fronts alike, or take a smaller overlay")};
    }
    keepSizes(place.split, sizes, place.sized.total, project.casework.grid);
    return withAlike(project, std::move(place));
}

} // namespace frontwright
