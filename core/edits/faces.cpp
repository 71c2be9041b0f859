#include "core/edits/faces.h"

#include "core/case/layout.h"
#include "core/edits/divisions.h"
#include "core/edits/kept_sizes.h"
#include "core/edits/tree_paths.h"
#include "core/edits/uses.h"
#include "core/lengths/format.h"

#include <algorithm>
#include <vector>

namespace frontwright {
namespace {

/// Steps down to the outermost split of the face in which the path ends; none where it ends in
/// none.
std::optional<std::size_t> stepsToFace(TreePathView path) {
    for (std::size_t i = 0; i < path.size(); ++i)
        if (path[i].split->divides == Divides::Face)
            return i;
    return std::nullopt;
}

RegionPtr alone(const Opening& opening) {
    return std::make_shared<const Region>(Region{opening});
}

Span along(Direction direction, const CaseRect& rect) {
    return direction == Direction::Rows ? rect.upright() : rect.across();
}

const PlacedOpening* placedIn(const Layout& layout, OpeningId id) {
    const auto found = std::ranges::find(layout.openings, id, &PlacedOpening::id);
    return found == layout.openings.end() ? nullptr : &*found;
}

/// From the first to the last of what a region holds.
Span extentOf(const Region& region, Direction direction, const Layout& layout) {
    if (const auto* opening = std::get_if<Opening>(&region.content))
        return along(direction, placedIn(layout, opening->id)->rect);
    std::optional<Span> all;
    for (const Child& child : std::get<Split>(region.content).children) {
        const Span one = extentOf(*child.region, direction, layout);
        all = all ? Span{least(all->low, one.low), greatest(all->high, one.high)} : one;
    }
    return *all;
}

/// The children of a bank's split over a stretch of the case.
struct BankPart {
    const Split* split = nullptr;
    std::size_t first = 0;
    std::size_t last = 0;
    std::vector<Length> sizes;
    [[nodiscard]] bool isWhole() const { return first == 0 && last + 1 == split->children.size(); }
};

Error endsElsewhere(const Project& project, Direction direction, Length off) {
    const std::string amount = shown(off, project.style);
    return {{},
            direction == Direction::Rows
                ? phrase("the bank beside it does not begin and end where the opening does: its "
                         "nearest openings are %1 off",
                         amount)
                : phrase("the columns above or below do not begin and end where the opening does: "
                         "the nearest openings are %1 off",
                         amount),
            text("set the heights or widths alike first, or divide the face by hand")};
}

/// How far the ends of the stretch are from the nearest ends of the bank's openings, both together.
Length offEnds(const std::vector<Span>& children, Span stretch) {
    Length low = (children.front().low - stretch.low).magnitude();
    Length high = (children.front().high - stretch.high).magnitude();
    for (const Span& child : children) {
        low = least(low, (child.low - stretch.low).magnitude());
        high = least(high, (child.high - stretch.high).magnitude());
    }
    return greatest(low, high);
}

Result<BankPart> partOver(const Project& project, const Layout& layout, const Split& split,
                          Span stretch) {
    std::vector<Span> children;
    for (const Child& child : split.children)
        children.push_back(extentOf(*child.region, split.direction, layout));
    if (const Length off = offEnds(children, stretch); off > Length{})
        return endsElsewhere(project, split.direction, off);
    BankPart part{&split, children.size(), 0, {}};
    for (std::size_t i = 0; i < children.size(); ++i)
        if (stretch.low <= children[i].low && children[i].high <= stretch.high) {
            part.first = std::min(part.first, i);
            part.last = i;
            part.sizes.push_back(children[i].size());
        }
    if (part.sizes.size() < 2)
        return Error{{},
                     text("the bank beside it is not divided over the opening's height or width"),
                     text("choose another bank, or divide the face by hand")};
    return part;
}

/// The bank's split, innermost first, that follows the stretch; the innermost one's error.
Result<BankPart> bankOver(const Project& project, const Layout& layout, OpeningId like,
                          Direction direction, Span stretch) {
    const std::optional<TreePath> path = pathTo(project.casework, like);
    std::optional<Error> first;
    for (std::size_t i = path->size(); i-- > 0;) {
        const Split& split = *(*path)[i].split;
        if (split.direction != direction)
            continue;
        auto part = partOver(project, layout, split, stretch);
        if (part.ok())
            return part;
        if (!first)
            first = part.error();
    }
    return first ? std::move(*first)
                 : Error{{},
                         text("the opening does not stand in a bank"),
                         text("choose one between rails")};
}

/// A split of fronts sized as the bank's openings, with ids of their own but for the first.
Split likeBank(Project& project, const BankPart& part, const Opening& opening) {
    Split face;
    face.direction = part.split->direction;
    face.divides = Divides::Face;
    for (std::size_t i = part.first; i <= part.last; ++i) {
        Opening front = opening;
        if (i > part.first) {
            face.members.push_back({MemberId{project.nextId++}, part.split->members[i - 1].width});
            front.id = OpeningId{project.nextId++};
            front.name.clear();
        }
        const SizeRule& rule = part.split->children[i].rule;
        const bool isFixed = std::holds_alternative<FixedSize>(rule);
        face.children.push_back(
            {part.isWhole() || isFixed ? rule : SizeRule(Share{}), alone(front)});
    }
    face.remainderChild = face.children.size() - 1;
    if (part.isWhole()) {
        face.graduation = part.split->graduation;
        face.remainderChild = part.split->remainderChild;
    }
    return face;
}

/// Left or right of it, or else above or below.
Direction directionFor(const CaseRect& opening, const CaseRect& like) {
    const Span common = opening.upright().common(like.upright());
    return common.size() > Length{} ? Direction::Rows : Direction::Columns;
}

Error isNotDivided() {
    return {{}, text("the face of the opening is not divided"), {}};
}

/// Those beside that side of a rectangle, nearest first.
std::vector<OpeningId> besideAt(const Layout& layout, const CaseRect& rect, Side side) {
    struct Found {
        OpeningId id;
        Length away;
    };
    std::vector<Found> found;
    for (const PlacedOpening& other : layout.openings) {
        const Span common = isLeftOrRight(side) ? rect.upright().common(other.rect.upright())
                                                : rect.across().common(other.rect.across());
        const PerSide<Length> away{rect.left - other.rect.right, other.rect.left - rect.right,
                                   rect.bottom - other.rect.top, other.rect.bottom - rect.top};
        if (common.size() > Length{} && away[side] >= Length{})
            found.push_back({other.id, away[side]});
    }
    std::ranges::stable_sort(found, {}, &Found::away);
    std::vector<OpeningId> ids;
    for (const Found& one : found)
        ids.push_back(one.id);
    return ids;
}

} // namespace

Result<Project> divideFaceLike(const Project& project, OpeningId id, OpeningId like) {
    if (isInFace(project, id)) {
        const auto whole = joinFace(project, id);
        return whole.ok() ? divideFaceLike(whole.value(), decidesBox(project, id), like) : whole;
    }
    const auto layout = layOut(project.casework);
    if (!layout.ok())
        return layout.error();
    const PlacedOpening* target = placedIn(layout.value(), id);
    const PlacedOpening* bank = placedIn(layout.value(), like);
    if (target == nullptr || bank == nullptr)
        return noSuchOpening();
    const Direction direction = directionFor(target->rect, bank->rect);
    const Span stretch = along(direction, target->rect);
    const auto part = bankOver(project, layout.value(), like, direction, stretch);
    if (!part.ok())
        return part.error();
    Project changed = project;
    Split face = likeBank(changed, part.value(), *target->opening);
    if (!part.value().isWhole())
        keepSizes(face, part.value().sizes, stretch.size(), project.casework.grid);
    return laidOut(withSplit(changed, *pathTo(project.casework, id), std::move(face)));
}

Result<Project> divideFaceLikeNeighbour(const Project& project, OpeningId id) {
    const auto layout = layOut(project.casework);
    if (!layout.ok())
        return layout.error();
    const PlacedOpening* target = placedIn(layout.value(), id);
    if (target == nullptr)
        return noSuchOpening();
    const CaseRect rect = target->face ? layout.value().faces[*target->face].rect : target->rect;
    std::optional<Error> first;
    for (const Side side : {Side::Left, Side::Right, Side::Top, Side::Bottom})
        for (const OpeningId like : besideAt(layout.value(), rect, side)) {
            auto divided = divideFaceLike(project, id, like);
            if (divided.ok())
                return divided;
            if (!first)
                first = divided.error();
        }
    return first ? std::move(*first)
                 : Error{{},
                         text("there is no bank beside the opening"),
                         text("divide the face by hand")};
}

Result<Project> joinFace(const Project& project, OpeningId id) {
    const std::optional<TreePath> path = pathTo(project.casework, id);
    if (!path)
        return noSuchOpening();
    const auto steps = stepsToFace(*path);
    if (!steps)
        return isNotDivided();
    const TreePathView to = TreePathView(*path).first(*steps);
    return laidOut(withRegion(project, to, alone(firstOpening(regionAt(project.casework, to)))));
}

bool isInFace(const Project& project, OpeningId id) {
    const std::optional<TreePath> path = pathTo(project.casework, id);
    return path && stepsToFace(*path).has_value();
}

OpeningId decidesBox(const Project& project, OpeningId id) {
    const std::optional<TreePath> path = pathTo(project.casework, id);
    const auto steps = path ? stepsToFace(*path) : std::nullopt;
    if (!steps)
        return id;
    return firstOpening(regionAt(project.casework, TreePathView(*path).first(*steps))).id;
}

std::optional<WrittenLength> betweenLeaves(const Project& project, OpeningId id) {
    const Opening* opening = findOpening(project, id);
    if (!opening)
        return std::nullopt;
    Length between =
        project.style.unit == Unit::Inch ? Length::inches(0, 8) : Length::millimetres(3);
    for (const Side side : {Side::Left, Side::Right}) {
        const SideFit fit = opening->choices.fit[side].value_or(project.fronts.fit[side]);
        switch (fit.fit) {
        case Fit::Overlay:
            between += fit.amount;
            break;
        case Fit::Inset:
            between -= fit.amount;
            break;
        case Fit::Gap:
            return std::nullopt;
        }
    }
    return WrittenLength(greatest(between, least(project.casework.grid, Length::millimetres(1))));
}

Result<Project> makePairOfDoors(const Project& project, std::span<const OpeningId> openings) {
    if (std::ranges::any_of(openings, [&](OpeningId id) { return isInFace(project, id); }))
        return Error{{},
                     text("several fronts lie over this opening already"),
                     text("make one front of them first")};
    auto made = setUse(project, openings, OpeningUse::Door);
    for (const OpeningId id : openings) {
        if (!made.ok())
            break;
        const auto leaves = betweenLeaves(made.value(), id);
        made = divideFace(made.value(), id, Direction::Columns, 2,
                          leaves ? *leaves : project.casework.frame.left);
    }
    return made;
}

} // namespace frontwright
