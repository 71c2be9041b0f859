#include "core/case/child_sizes.h"
#include "core/case/layout.h"
#include "core/edits/divisions.h"
#include "core/edits/kept_sizes.h"
#include "core/edits/snap.h"
#include "core/edits/tree_paths.h"
#include "core/lengths/format.h"

#include <algorithm>
#include <array>

namespace frontwright {
namespace {

/// Which side of a member, in listed order: before is left of it or above it.
enum class Before : std::uint8_t { Yes, No };

/// What is told of the openings on one side of a member.
struct SideTexts {
    Text tooSmall; ///< %1: the least opening
    Text locked;
    Text graduated;
};
constexpr SideTexts onTheLeft{text("an opening on the left would be under %1 wide"),
                              text("sizes on the left are locked"),
                              text("graduated run on the left; end the graduation to move it")};
constexpr SideTexts onTheRight{text("an opening on the right would be under %1 wide"),
                               text("sizes on the right are locked"),
                               text("graduated run on the right; end the graduation to move it")};
constexpr SideTexts above{text("an opening above would be under %1 high"),
                          text("sizes above are locked"),
                          text("graduated run above; end the graduation to move it")};
constexpr SideTexts below{text("an opening below would be under %1 high"),
                          text("sizes below are locked"),
                          text("graduated run below; end the graduation to move it")};
constexpr Text lockedInside = text("sizes inside the frame are locked");
constexpr SideTexts insideAcross{
    text("an opening inside the frame would be under %1 wide"), lockedInside, {}};
constexpr SideTexts insideUpright{
    text("an opening inside the frame would be under %1 high"), lockedInside, {}};

const SideTexts& textsFor(Direction direction, Before before) {
    if (direction == Direction::Columns)
        return before == Before::Yes ? onTheLeft : onTheRight;
    return before == Before::Yes ? above : below;
}

/// How far something may go, and why not further.
struct Bound {
    std::optional<Length> by; ///< none: no end
    Phrase because;
};
struct Bounds {
    Bound backward; ///< by >= 0
    Bound forward;  ///< by >= 0
};

Bound tighter(Bound a, Bound b) {
    if (!a.by || (b.by && *b.by < *a.by))
        return b;
    return a;
}

Length downToGrid(Length length, Length grid) {
    if (grid <= Length())
        return length;
    return length - Length::fromNanometres(length.nanometres() % grid.nanometres());
}

/// Puts a wanted move on the grid and holds it within bounds.
struct HeldMove {
    Length by;
    Phrase because;
};
HeldMove held(Length wanted, const Bounds& bounds, Length grid) {
    const Length move = grid > Length() ? onGrid(wanted, grid) : wanted;
    const Bound& bound = wanted < Length() ? bounds.backward : bounds.forward;
    // A wish past the bound is held there even where rounding made it less.
    if (!bound.by || wanted.magnitude() <= *bound.by) {
        if (!bound.by || move.magnitude() <= *bound.by)
            return {move, {}};
        return {move < Length() ? move + grid : move - grid, {}};
    }
    const Length most = downToGrid(*bound.by, grid);
    return {wanted < Length() ? -most : most, bound.because};
}

/// How much a region may give, with the reason why not more.
Bound giving(const SizeRange& range, Length present, const Project& project,
             const SideTexts& texts) {
    const Length least = project.limits.leastOpening;
    return {greatest(present - range.least, Length()),
            Phrase(texts.tooSmall, {shown(least, project.style, Rounding::Up)})};
}

Bound taking(const SizeRange& range, Length present, const SideTexts& texts) {
    if (!range.most)
        return {};
    return {greatest(*range.most - present, Length()), texts.locked};
}

/// The nearest child on one side of a member that can change its size; none, with the reason.
struct Taker {
    std::optional<std::size_t> child;
    SizeRange range;
    Phrase because;
};

Taker nearestTaker(const Project& project, const Split& split, std::size_t member, Before before) {
    const SideTexts& texts = textsFor(split.direction, before);
    const std::size_t count =
        before == Before::Yes ? member + 1 : split.children.size() - member - 1;
    bool isGraduated = false;
    for (std::size_t k = 0; k < count; ++k) {
        const std::size_t i = before == Before::Yes ? member - k : member + 1 + k;
        const Child& child = split.children[i];
        isGraduated = isGraduated || std::holds_alternative<GraduatedPlace>(child.rule);
        if (!std::holds_alternative<Share>(child.rule))
            continue;
        const SizeRange range = sizeRange(*child.region, split.direction,
                                          project.limits.leastOpening, project.casework.grid);
        if (!range.isRigid())
            return {i, range, {}};
    }
    return {std::nullopt, {}, isGraduated ? texts.graduated : texts.locked};
}

DragOutcome unmoved(const Project& project, Phrase because) {
    return {project, Length(), std::move(because)};
}

/// Columns are listed to the right, rows downwards, against the drag.
Length alongList(Direction direction, Length delta) {
    return direction == Direction::Columns ? delta : -delta;
}

Bounds memberBounds(const Project& project, const SizedPlace& sized, const Taker& before,
                    const Taker& after) {
    const Direction direction = sized.place.split->direction;
    const Length first = sized.sizes[*before.child];
    const Length second = sized.sizes[*after.child];
    const SideTexts& beforeTexts = textsFor(direction, Before::Yes);
    const SideTexts& afterTexts = textsFor(direction, Before::No);
    return {tighter(giving(before.range, first, project, beforeTexts),
                    taking(after.range, second, afterTexts)),
            tighter(giving(after.range, second, project, afterTexts),
                    taking(before.range, first, beforeTexts))};
}

Result<DragOutcome> dragBetween(const Project& project, MemberPlace place, Length delta) {
    const Direction direction = place.split->direction;
    const Taker before = nearestTaker(project, *place.split, place.member, Before::Yes);
    const Taker after = nearestTaker(project, *place.split, place.member, Before::No);
    if (!before.child || !after.child)
        return unmoved(project, before.child ? after.because : before.because);
    auto found =
        sizedPlace(project.casework, SizePlace{std::move(place.path), place.split, place.member});
    if (!found.ok())
        return found.error();
    SizedPlace sized = std::move(found).value();
    const Length grid = project.casework.grid;
    HeldMove move =
        held(alongList(direction, delta), memberBounds(project, sized, before, after), grid);
    if (move.by.isZero())
        return unmoved(project, std::move(move.because));
    sized.sizes[*before.child] += move.by;
    sized.sizes[*after.child] -= move.by;
    Split split = *sized.place.split;
    keepSizes(split, sized.sizes, sized.total, grid);
    auto result = laidOut(withSplit(project, sized.place.path, std::move(split)));
    if (!result.ok())
        return unmoved(project, result.error().sentence());
    return DragOutcome{std::move(result).value(), alongList(direction, move.by),
                       std::move(move.because)};
}

struct OuterMember {
    MemberId id;
    Side side = Side::Left;
};
constexpr std::array<OuterMember, 4> outerMembers{OuterMember{leftStile, Side::Left},
                                                  {rightStile, Side::Right},
                                                  {bottomRail, Side::Bottom},
                                                  {topRail, Side::Top}};

Result<DragOutcome> dragOuter(const Project& project, Side side, Length delta) {
    const Direction direction = isLeftOrRight(side) ? Direction::Columns : Direction::Rows;
    const bool growsForward = side == Side::Left || side == Side::Bottom;
    const Case& casework = project.casework;
    const CaseRect inside = insideFrame(casework);
    const Length room = isLeftOrRight(side) ? inside.width() : inside.height();
    const SizeRange range =
        sizeRange(*casework.divisions, direction, project.limits.leastOpening, casework.grid);
    const Bound byWidth{
        greatest(casework.frame[side].length - casework.grid.length, Length()),
        phrase("the member would be under %1 wide", shown(casework.grid, project.style))};
    const SideTexts& texts = isLeftOrRight(side) ? insideAcross : insideUpright;
    const Bounds bounds{tighter(byWidth, taking(range, room, texts)),
                        giving(range, room, project, texts)};
    HeldMove move = held(growsForward ? delta : -delta, bounds, casework.grid);
    if (move.by.isZero())
        return unmoved(project, std::move(move.because));
    Project moved = project;
    moved.casework.frame[side] = casework.frame[side].length + move.by;
    auto result = laidOut(std::move(moved));
    if (!result.ok())
        return unmoved(project, result.error().sentence());
    return DragOutcome{std::move(result).value(), growsForward ? move.by : -move.by,
                       std::move(move.because)};
}

} // namespace

Result<DragOutcome> dragMember(const Project& project, MemberId id, Length delta) {
    const auto* outer = std::ranges::find(outerMembers, id, &OuterMember::id);
    const bool isOuter = outer != outerMembers.end();
    std::optional<MemberPlace> place;
    if (!isOuter && !(place = placeOf(project.casework, id)))
        return noSuchMember();
    if (delta.isZero())
        return unmoved(project, {});
    return isOuter ? dragOuter(project, outer->side, delta)
                   : dragBetween(project, std::move(*place), delta);
}

} // namespace frontwright
