#include "core/case/child_sizes.h"
#include "core/case/layout.h"
#include "core/edits/choices_checks.h"
#include "core/edits/divisions.h"
#include "core/edits/faces.h"
#include "core/edits/kept_sizes.h"
#include "core/edits/tree_paths.h"
#include "core/lengths/format.h"

#include <algorithm>

namespace frontwright {
namespace {

RegionPtr regionOf(Opening opening) {
    return std::make_shared<const Region>(Region{std::move(opening)});
}

/// What stays when openings become one: a new Opening with the first one's decisions.
RegionPtr joined(const Region& first) {
    return regionOf(firstOpening(first));
}

/// The split with children first … last joined into one. Precondition: first < last.
Result<Split> withJoined(const SizedPlace& sized, std::size_t first, std::size_t last,
                         Length grid) {
    const Split& old = *sized.place.split;
    Split split = old;
    const auto rules = std::span(old.children).subspan(first, last - first + 1);
    const bool areFixed =
        std::ranges::none_of(rules, [](const Child& child) { return isFlexible(child.rule); });
    std::vector<Length> sizes = sized.sizes;
    for (std::size_t i = first; i < last; ++i)
        sizes[first] += sized.sizes[i + 1] + old.members[i].width;
    Child& child = split.children[first];
    child.region = joined(*child.region);
    child.rule = areFixed ? SizeRule(FixedSize{sizes[first]}) : SizeRule(Share{});
    const auto at = [](auto& list, std::size_t i) {
        return list.begin() + static_cast<std::ptrdiff_t>(i);
    };
    split.children.erase(at(split.children, first + 1), at(split.children, last + 1));
    split.members.erase(at(split.members, first), at(split.members, last));
    sizes.erase(at(sizes, first + 1), at(sizes, last + 1));
    if (split.remainderChild > last)
        split.remainderChild -= last - first;
    else if (split.remainderChild > first)
        split.remainderChild = first;
    const bool breaksRun = std::ranges::any_of(
        rules, [](const Child& one) { return std::holds_alternative<GraduatedPlace>(one.rule); });
    for (Child& one : split.children)
        if (breaksRun && std::holds_alternative<GraduatedPlace>(one.rule))
            one.rule = Share{};
    if (breaksRun)
        split.graduation.reset();
    keepSizes(split, sizes, sized.total, grid);
    if (auto error = runChanges(split, sizes, sized.total, grid))
        return std::move(*error);
    return split;
}

/// Joins children first … last of the split; where that is all of them, the split goes.
Result<Project> joinChildren(const Project& project, SizePlace place, std::size_t first,
                             std::size_t last) {
    if (first == 0 && last + 1 == place.split->children.size())
        return laidOut(
            withRegion(project, place.path, joined(*place.split->children.front().region)));
    const auto sized = sizedPlace(project.casework, std::move(place));
    if (!sized.ok())
        return sized.error();
    auto split = withJoined(sized.value(), first, last, project.casework.grid);
    if (!split.ok())
        return split.error();
    return laidOut(withSplit(project, sized.value().place.path, std::move(split).value()));
}

/// `count` openings with members between them; the first is `opening` itself, the others have its
/// choices and ids of their own.
Split inParts(Project& project, const Opening& opening, Direction direction, int count,
              WrittenLength memberWidth) {
    Split split;
    split.direction = direction;
    Opening first = opening;
    const bool isPair = direction == Direction::Columns && opening.use == OpeningUse::Door;
    if (isPair)
        first.hinge = HingeSide::Left;
    split.children.push_back({Share{}, regionOf(std::move(first))});
    for (int i = 1; i < count; ++i) {
        Opening next;
        split.members.push_back({MemberId{project.nextId++}, memberWidth});
        next.id = OpeningId{project.nextId++};
        next.use = opening.use;
        // A pair of doors hangs at its outer sides.
        const bool isLastLeaf = isPair && i + 1 == count;
        next.hinge = isLastLeaf ? HingeSide::Right : opening.hinge;
        next.choices = opening.choices;
        next.board = opening.board;
        split.children.push_back({Share{}, regionOf(std::move(next))});
    }
    split.remainderChild = split.children.size() - 1;
    return split;
}

/// Takes the parts of an opening into the split where it stood as one child.
Split withParts(const SizedPlace& sized, Split parts, const std::vector<Length>& partSizes,
                Length grid) {
    Split split = *sized.place.split;
    const std::size_t child = sized.place.child;
    const auto at = [](auto& list, std::size_t i) {
        return list.begin() + static_cast<std::ptrdiff_t>(i);
    };
    std::vector<Length> sizes = sized.sizes;
    sizes.erase(at(sizes, child));
    sizes.insert(at(sizes, child), partSizes.begin(), partSizes.end());
    std::vector<std::size_t> equals;
    for (std::size_t i = 0; i < partSizes.size(); ++i)
        equals.push_back(child + i);
    if (split.remainderChild >= child)
        split.remainderChild += partSizes.size() - 1;
    split.children.erase(at(split.children, child));
    split.children.insert(at(split.children, child), parts.children.begin(), parts.children.end());
    split.members.insert(at(split.members, child), parts.members.begin(), parts.members.end());
    keepSizesWithEquals(split, sizes, equals, sized.total, grid);
    return split;
}

/// How many of the openings (ascending) a region holds.
std::size_t chosenIn(const Region& region, std::span<const OpeningId> openings) {
    if (const auto* opening = std::get_if<Opening>(&region.content))
        return std::ranges::binary_search(openings, opening->id) ? 1 : 0;
    std::size_t count = 0;
    for (const Child& child : std::get<Split>(region.content).children)
        count += chosenIn(*child.region, openings);
    return count;
}

/// The children of a split from the first to the last that holds one of the openings.
struct Stretch {
    std::size_t first = 0;
    std::size_t last = 0;
    bool isFilled = true; ///< all openings from first to last are among them
};

/// Precondition: the split holds at least one of them.
Stretch stretchOf(const Split& split, std::span<const OpeningId> openings) {
    Stretch stretch{split.children.size(), 0, true};
    std::size_t found = 0;
    std::size_t held = 0; // by first … the last one found
    std::size_t between = 0;
    for (std::size_t i = 0; i < split.children.size(); ++i) {
        const std::size_t chosen = chosenIn(*split.children[i].region, openings);
        if (chosen > 0 && stretch.first > i)
            stretch.first = i;
        if (stretch.first > i)
            continue;
        between += openingCount(*split.children[i].region);
        found += chosen;
        if (chosen > 0) {
            stretch.last = i;
            held = between;
        }
    }
    stretch.isFilled = held == found;
    return stretch;
}

std::optional<Error> splitError(const Project& project, int count, WrittenLength memberWidth) {
    if (count < 2)
        return Error{{}, text("an opening is split into at least two"), {}};
    if (auto error = impossibleMember(project.casework.construction, memberWidth))
        return error;
    const auto more = static_cast<std::size_t>(count) - 1;
    if (more > mostOpenings || openingCount(*project.casework.divisions) + more > mostOpenings)
        return Error{{},
                     phrase("a case holds at most %1 openings", std::to_string(mostOpenings)),
                     text("split into fewer")};
    return std::nullopt;
}

Error partsTooSmall(const Project& project, Length smallest, Direction direction) {
    const std::string size = shown(smallest, project.style);
    const std::string least = shown(project.limits.leastOpening, project.style, Rounding::Up);
    return {{},
            direction == Direction::Rows
                ? phrase("each opening would be %1 high, under the least of %2", size, least)
                : phrase("each opening would be %1 wide, under the least of %2", size, least),
            text("split into fewer, or take narrower members")};
}

/// Whether the path leads into a divided face, where every split divides the face only.
bool leadsIntoFace(TreePathView path) {
    return std::ranges::any_of(
        path, [](const TreeStep& step) { return step.split->divides == Divides::Face; });
}

struct Parts {
    Direction direction = Direction::Rows;
    int count = 2;
    WrittenLength memberWidth;
    Divides divides = Divides::Case;
};

Result<Project> dividedInto(const Project& project, OpeningId id, const Parts& wanted) {
    const auto [direction, count, memberWidth, divides] = wanted;
    if (std::optional<Error> error = splitError(project, count, memberWidth))
        return std::move(*error);
    const std::optional<TreePath> path = pathTo(project.casework, id);
    if (!path)
        return noSuchOpening();
    const auto room = lengthAlong(project.casework, *path, direction);
    if (!room.ok())
        return room.error();
    Project changed = project;
    const auto& opening = std::get<Opening>(regionAt(project.casework, *path).content);
    Split parts = inParts(changed, opening, direction, count, memberWidth);
    const auto sizes = childSizes(parts, room.value(), project.casework.grid);
    if (!sizes.ok())
        return sizes.error();
    if (const Length smallest = *std::ranges::min_element(sizes.value());
        smallest < project.limits.leastOpening)
        return partsTooSmall(project, smallest, direction);

    const bool makesFace = divides == Divides::Face && !leadsIntoFace(*path);
    if (makesFace)
        parts.divides = Divides::Face;
    const bool joinsSiblings = !makesFace && !path->empty() &&
                               path->back().split->direction == direction &&
                               demandOf(*path->back().split).places == 0;
    if (!joinsSiblings) {
        if (path->size() >= static_cast<std::size_t>(deepestDivisions))
            return Error{
                {}, phrase("divisions lie at most %1 deep", std::to_string(deepestDivisions)), {}};
        return laidOut(withSplit(changed, *path, std::move(parts)));
    }
    const auto sized = sizedPlace(project.casework, id, direction);
    if (!sized.ok())
        return sized.error();
    Split split = withParts(sized.value(), std::move(parts), sizes.value(), project.casework.grid);
    return laidOut(withSplit(changed, sized.value().place.path, std::move(split)));
}

} // namespace

Result<Project> splitOpening(const Project& project, OpeningId id, Direction direction, int count,
                             WrittenLength memberWidth) {
    return dividedInto(project, id, {direction, count, memberWidth, Divides::Case});
}

Result<Project> divideFace(const Project& project, OpeningId id, Direction direction, int count,
                           WrittenLength memberWidth) {
    if (const Opening* opening = findOpening(project, id); opening && !hasFront(opening->use))
        return Error{{},
                     text("no front lies over the opening"),
                     text("make it a drawer, a door or a fixed front first")};
    return dividedInto(project, id, {direction, count, memberWidth, Divides::Face});
}

Result<Project> removeMember(const Project& project, MemberId id) {
    if (id.number < firstFreeId)
        return Error{{},
                     text("the outer members of the frame hold the case together"),
                     text("make it narrower instead")};
    std::optional<MemberPlace> place = placeOf(project.casework, id);
    if (!place)
        return noSuchMember();
    return joinChildren(project, {std::move(place->path), place->split, place->member},
                        place->member, place->member + 1);
}

Result<Project> joinOpenings(const Project& project, std::span<const OpeningId> openings) {
    std::vector<OpeningId> ids(openings.begin(), openings.end());
    std::ranges::sort(ids);
    const auto repeated = std::ranges::unique(ids);
    ids.erase(repeated.begin(), repeated.end());
    if (ids.size() < 2)
        return Error{
            {}, text("one opening is not enough to join"), text("choose at least two neighbours")};
    if (chosenIn(*project.casework.divisions, ids) != ids.size())
        return noSuchOpening();
    SizePlace place;
    Stretch stretch;
    const Region* region = project.casework.divisions.get();
    do { // down to the split where the openings part
        if (place.split != nullptr)
            place.path.push_back({place.split, stretch.first});
        place.split = &std::get<Split>(region->content);
        stretch = stretchOf(*place.split, ids);
        region = place.split->children[stretch.first].region.get();
    } while (stretch.first == stretch.last && std::holds_alternative<Split>(region->content));
    if (!stretch.isFilled)
        return Error{{},
                     text("the openings do not fill one stretch of a split"),
                     text("choose neighbours with everything between them")};
    return joinChildren(project, std::move(place), stretch.first, stretch.last);
}

} // namespace frontwright
