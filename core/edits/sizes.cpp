#include "core/case/child_sizes.h"
#include "core/edits/choices_checks.h"
#include "core/edits/divisions.h"
#include "core/edits/kept_sizes.h"
#include "core/edits/tree_paths.h"
#include "core/lengths/format.h"

#include <algorithm>

namespace frontwright {
namespace {

Error lockedSiblings(Direction direction) {
    return {{},
            direction == Direction::Rows ? text("all other rows of this split are locked")
                                         : text("all other columns of this split are locked"),
            text("unlock one of them first")};
}

/// The other shares of a split, nearest first; of two equally near the one listed later first.
std::vector<std::size_t> sharesNear(const Split& split, std::size_t child) {
    std::vector<std::size_t> shares;
    for (std::size_t distance = 1; distance < split.children.size(); ++distance) {
        const bool hasLater = child + distance < split.children.size();
        if (hasLater && std::holds_alternative<Share>(split.children[child + distance].rule))
            shares.push_back(child + distance);
        if (distance <= child &&
            std::holds_alternative<Share>(split.children[child - distance].rule))
            shares.push_back(child - distance);
    }
    return shares;
}

bool hasRun(const Split& split) {
    return std::ranges::any_of(split.children, [](const Child& child) {
        return std::holds_alternative<GraduatedPlace>(child.rule);
    });
}

/// What a child may change by towards `wanted`: a part of it where the child cannot do it all, on
/// the grid then.
Length possibleChange(Length wanted, Length present, const SizeRange& range, Length grid) {
    Length most = wanted.magnitude();
    if (wanted < Length())
        most = greatest(present - range.least, Length());
    else if (range.most)
        most = greatest(*range.most - present, Length());
    if (wanted.magnitude() <= most)
        return wanted;
    if (grid > Length())
        most -= Length::fromNanometres(most.nanometres() % grid.nanometres());
    return wanted < Length() ? -most : most;
}

/// Lets the nearest shares give or take `room` (> 0: they grow), one after the other. Returns what
/// they could not.
Length distribute(const Project& project, SizedPlace& sized, Length room) {
    const Split& split = *sized.place.split;
    const Length grid = project.casework.grid;
    for (const std::size_t i : sharesNear(split, sized.place.child)) {
        if (room.isZero())
            break;
        const SizeRange range = sizeRange(*split.children[i].region, split.direction,
                                          project.limits.leastOpening, grid);
        const Length change = possibleChange(room, sized.sizes[i], range, grid);
        sized.sizes[i] += change;
        room -= change;
    }
    return room;
}

Error noRoomAround(const Project& project, Length wanted, Length left) {
    if (left > Length())
        return {
            {},
            phrase("%1 would be left over: the other sizes are locked", shown(left, project.style)),
            text("unlock one of them first")};
    return {
        {},
        phrase("%1 of room is missing beside the locked sizes and the least openings of %2",
               shown(-left, project.style, Rounding::Up),
               shown(project.limits.leastOpening, project.style, Rounding::Up)),
        phrase("at most %1 has room here", shown(wanted + left, project.style, Rounding::Down))};
}

/// A run takes what a new fixed size leaves it, by its own rule.
Result<Project> sizeBesideRun(const Project& project, const SizePlace& place, WrittenLength size) {
    Split split = *place.split;
    split.children[place.child].rule = FixedSize{size};
    if (!hasRun(split))
        split.graduation.reset();
    return laidOut(withSplit(project, place.path, std::move(split)));
}

} // namespace

Result<Project> setOpeningSize(const Project& project, OpeningId id, Direction direction,
                               WrittenLength size) {
    if (size.length <= Length())
        return Error{{}, text("the size of an opening must be more than 0"), {}};
    auto place = sizePlace(project.casework, id, direction);
    if (!place.ok())
        return place.error();
    auto found = sizedPlace(project.casework, place.value());
    if (!found.ok()) // nothing to keep: this may be the size that makes room again
        return sizeBesideRun(project, place.value(), size);
    SizedPlace sized = std::move(found).value();
    const std::size_t child = sized.place.child;
    Split split = *sized.place.split;
    split.children[child].rule = FixedSize{size};
    const Length room = sized.sizes[child] - size.length;
    if (demandOf(split).shares == 0) {
        if (!hasRun(split) && !room.isZero())
            return lockedSiblings(direction);
        return sizeBesideRun(project, sized.place, size);
    }
    const Length left = distribute(project, sized, room);
    if (!left.isZero() && !hasRun(split))
        return noRoomAround(project, size, left);
    sized.sizes[child] = size;
    if (!hasRun(split))
        split.graduation.reset();
    keepSizes(split, sized.sizes, sized.total, project.casework.grid);
    return laidOut(withSplit(project, sized.place.path, std::move(split)));
}

Result<Project> setMemberWidth(const Project& project, MemberId id, WrittenLength width) {
    const bool isOuter = id == leftStile || id == rightStile || id == bottomRail || id == topRail;
    if (auto error = isOuter ? notPositive(text("the width of a member"), width)
                             : impossibleMember(project.casework.construction, width))
        return *error;
    Project changed = project;
    PerSide<WrittenLength>& frame = changed.casework.frame;
    if (id == leftStile)
        frame.left = width;
    else if (id == rightStile)
        frame.right = width;
    else if (id == bottomRail)
        frame.bottom = width;
    else if (id == topRail)
        frame.top = width;
    else {
        const std::optional<MemberPlace> place = placeOf(project.casework, id);
        if (!place)
            return noSuchMember();
        Split split = *place->split;
        split.members[place->member].width = width;
        changed = withSplit(project, place->path, std::move(split));
    }
    return laidOut(std::move(changed));
}

Result<Project> setHold(const Project& project, OpeningId id, Direction direction, Hold hold) {
    auto found = sizedPlace(project.casework, id, direction);
    if (!found.ok())
        return found.error();
    const SizedPlace& sized = found.value();
    Split split = *sized.place.split;
    const std::size_t child = sized.place.child;
    SizeRule& rule = split.children[child].rule;
    const bool isFixed = std::holds_alternative<FixedSize>(rule);
    if (isFixed == (hold == Hold::Locked))
        return project;
    if (std::holds_alternative<GraduatedPlace>(rule))
        return Error{{},
                     text("the opening has its place in a graduated run"),
                     text("end the graduation first")};
    if (hold == Hold::Locked)
        rule = FixedSize{sized.sizes[child]};
    else
        rule = Share{};
    keepSizes(split, sized.sizes, sized.total, project.casework.grid);
    if (auto error = runChanges(split, sized.sizes, sized.total, project.casework.grid))
        return std::move(*error);
    return laidOut(withSplit(project, sized.place.path, std::move(split)));
}

Hold holdOf(const Project& project, OpeningId id, Direction direction) {
    const auto place = sizePlace(project.casework, id, direction);
    if (!place.ok())
        return Hold::Flexible;
    const SizeRule& rule = place.value().split->children[place.value().child].rule;
    return std::holds_alternative<FixedSize>(rule) ? Hold::Locked : Hold::Flexible;
}

Result<Project> setCaseSize(const Project& project, WrittenLength width, WrittenLength height) {
    if (width.length <= Length() || height.length <= Length())
        return Error{{}, text("the size of a case must be more than 0"), {}};
    Project changed = project;
    changed.casework.width = width;
    changed.casework.height = height;
    return laidOut(std::move(changed));
}

} // namespace frontwright
