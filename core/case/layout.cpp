#include "core/case/layout.h"

#include "core/case/child_sizes.h"
#include "core/lengths/format.h"
#include "core/words/figure.h"

#include <algorithm>
#include <span>

namespace frontwright {
namespace {

using Bounds = PerSide<std::uint32_t>;

Text namesOf(Direction direction) {
    return direction == Direction::Rows ? text("rows") : text("columns");
}

std::size_t openingsIn(const Region& region) {
    const auto* split = std::get_if<Split>(&region.content);
    if (split == nullptr)
        return 1;
    std::size_t count = 0;
    for (const Child& child : split->children)
        count += openingsIn(*child.region);
    return count;
}

class LayoutMaker {
public:
    LayoutMaker(Length grid, std::size_t openings) : m_grid(grid) {
        m_layout.openings.reserve(openings);
        m_layout.members.reserve(openings + 3); // a split has one member fewer than children
    }

    void addFrame(const Case& casework, const CaseRect& inside) {
        const Length width = casework.width;
        const Length height = casework.height;
        const Length none;
        m_layout.members = {
            {leftStile, MemberKind::OuterStile, {none, none, inside.left, height}},
            {rightStile, MemberKind::OuterStile, {inside.right, none, width, height}},
            {bottomRail, MemberKind::OuterRail, {inside.left, none, inside.right, inside.bottom}},
            {topRail, MemberKind::OuterRail, {inside.left, inside.top, inside.right, height}}};
    }

    /// False where there is no room; `error` then tells where.
    bool place(const Region& region, const CaseRect& rect, const Bounds& bounds, int depth) {
        if (const auto* opening = std::get_if<Opening>(&region.content)) {
            m_layout.openings.push_back({opening->id, opening, rect, bounds, m_face});
            return true;
        }
        const auto& split = std::get<Split>(region.content);
        if (split.divides == Divides::Face && !m_face)
            return placeFace(region, rect, bounds, depth);
        return placeSplit(split, rect, bounds, depth);
    }

    Layout& layout() { return m_layout; }
    Error& error() { return m_error; }

private:
    /// The outermost split of a divided face, with all that it divides.
    bool placeFace(const Region& region, const CaseRect& rect, const Bounds& bounds, int depth) {
        const auto first = static_cast<std::uint32_t>(m_layout.openings.size());
        m_face = static_cast<std::uint32_t>(m_layout.faces.size());
        m_layout.faces.push_back({rect, first, 0});
        const bool placed = placeSplit(std::get<Split>(region.content), rect, bounds, depth);
        m_face.reset();
        if (!placed)
            return false;
        const auto fronts = std::span(m_layout.openings).subspan(first);
        m_layout.faces.back().count = static_cast<std::uint32_t>(fronts.size());
        const OpeningUse use = fronts.front().opening->use;
        if (hasFront(use) && std::ranges::all_of(fronts, [&](const PlacedOpening& front) {
                return front.opening->use == use;
            }))
            return true;
        m_error = {
            text("a divided face"),
            text("its openings are not all for drawers, all for doors or all for fixed fronts"),
            text("give them one use")};
        return false;
    }

    bool placeSplit(const Split& split, const CaseRect& rect, const Bounds& bounds, int depth) {
        const Length total = split.direction == Direction::Rows ? rect.height() : rect.width();
        const std::size_t start = m_sizes.size();
        if (depth == deepestDivisions) {
            m_error = {namesOf(split.direction),
                       phrase("divisions lie more than %1 deep", std::to_string(deepestDivisions)),
                       {}};
            return false;
        }
        if (!appendSizes(split, total, m_grid, m_sizes)) {
            m_error = whyNoRoom(split, total, m_grid, namesOf(split.direction));
            return false;
        }
        const bool placed = placeChildren(split, start, rect, bounds, depth);
        m_sizes.resize(start);
        return placed;
    }

    bool placeChildren(const Split& split, std::size_t start, CaseRect rect, Bounds bounds,
                       int depth) {
        const bool isRows = split.direction == Direction::Rows;
        const Bounds outer = bounds;
        const CaseRect all = rect;
        for (std::size_t i = 0; i < split.children.size(); ++i) {
            if (isRows)
                rect.bottom = rect.top - m_sizes[start + i];
            else
                rect.right = rect.left + m_sizes[start + i];
            const bool isLast = i + 1 == split.children.size();
            const std::uint32_t after = isLast
                                            ? (isRows ? outer.bottom : outer.right)
                                            : static_cast<std::uint32_t>(m_layout.members.size());
            (isRows ? bounds.bottom : bounds.right) = after;
            const CaseRect child = rect;
            if (!isLast)
                rect = addMember(split.members[i], split.direction, rect, all);
            if (!place(*split.children[i].region, child, bounds, depth + 1)) {
                const std::string number = std::to_string(i + 1);
                m_error.place = split.direction == Direction::Rows
                                    ? phrase("%1 of row %2", std::move(m_error.place), number)
                                    : phrase("%1 of column %2", std::move(m_error.place), number);
                return false;
            }
            (isRows ? bounds.top : bounds.left) = after;
        }
        return true;
    }

    /// Adds the member behind `child` and returns where the next child begins.
    CaseRect addMember(const Member& member, Direction direction, const CaseRect& child,
                       const CaseRect& all) {
        CaseRect rect = child;
        CaseRect next = all;
        if (direction == Direction::Rows) {
            rect.top = child.bottom;
            rect.bottom = rect.top - member.width;
            next.top = rect.bottom;
        } else {
            rect.left = child.right;
            rect.right = rect.left + member.width;
            next.left = rect.right;
        }
        m_layout.members.push_back({member.id, kindOf(direction), rect});
        return next;
    }

    [[nodiscard]] MemberKind kindOf(Direction direction) const {
        if (direction == Direction::Rows)
            return m_face ? MemberKind::NoRail : MemberKind::Rail;
        return m_face ? MemberKind::NoStile : MemberKind::Stile;
    }

    Length m_grid;
    Layout m_layout;
    std::optional<std::uint32_t> m_face; ///< the one being placed
    std::vector<Length> m_sizes;         ///< of the splits on the way down, one behind the other
    Error m_error;
};

std::optional<Error> frameError(const Case& casework, const CaseRect& inside) {
    for (const Side side : allSides)
        if (casework.frame[side].length < Length())
            return Error{text("case"), text("a frame member is narrower than 0"),
                         text("give it a width")};
    if (!(inside.left < inside.right) || !(inside.bottom < inside.top)) {
        const LengthStyle style{unitOfGrid(casework.grid), 64};
        const bool isWide = inside.left < inside.right;
        const Length missing = casework.grid - (isWide ? inside.height() : inside.width());
        const Phrase amount = figure(shown(missing, style, Rounding::Up));
        return Error{text("case"),
                     isWide
                         ? phrase("%1 of height is missing: the frame leaves nothing open", amount)
                         : phrase("%1 of width is missing: the frame leaves nothing open", amount),
                     text("make the case larger or its frame narrower")};
    }
    return std::nullopt;
}

} // namespace

CaseRect insideFrame(const Case& casework) {
    const auto& frame = casework.frame;
    return {frame.left, frame.bottom, casework.width.length - frame.right,
            casework.height.length - frame.top};
}

Result<Layout> layOut(const Case& casework) {
    const CaseRect inside = insideFrame(casework);
    if (std::optional<Error> error = frameError(casework, inside))
        return std::move(*error);
    LayoutMaker maker(casework.grid, openingsIn(*casework.divisions));
    maker.addFrame(casework, inside);
    if (!maker.place(*casework.divisions, inside, {0, 1, 2, 3}, 0)) {
        maker.error().place = phrase("%1 of the case", std::move(maker.error().place));
        return std::move(maker.error());
    }
    return std::move(maker.layout());
}

Layout withFrontsOnly(Layout layout) {
    const auto isOpen = [](const PlacedOpening& opening) {
        return !hasFront(opening.opening->use);
    };
    if (std::ranges::none_of(layout.openings, isOpen))
        return layout;
    std::uint32_t done = 0; // openings that were looked at
    std::uint32_t gone = 0; // of them without a front
    for (DividedFace& face : layout.faces) {
        for (; done < face.first; ++done)
            gone += isOpen(layout.openings[done]) ? 1 : 0;
        face.first -= gone;
    }
    std::erase_if(layout.openings, isOpen);
    return layout;
}

} // namespace frontwright
