#pragma once

#include "core/case/layout.h"
#include "tests/core/plan/small_case.h"
#include "tests/core/shorthand.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

// Reading a laid-out case in tests, and random divisions with every kind of rule.
namespace frontwright::testing {

inline Child place(RegionPtr region) {
    return {GraduatedPlace{}, std::move(region)};
}
inline RegionPtr graduated(const RegionPtr& region, Graduation graduation) {
    Region copy = *region;
    std::get<Split>(copy.content).graduation = graduation;
    return std::make_shared<const Region>(std::move(copy));
}

/// Of one that must succeed.
inline Layout layoutOf(const Project& project) {
    auto layout = layOut(project.casework);
    EXPECT_TRUE(layout.ok()) << (layout.ok() ? std::string() : layout.error().sentence().english());
    return layout.ok() ? std::move(layout).value() : Layout{};
}
inline std::vector<Length> widths(const Project& project) {
    std::vector<Length> sizes;
    for (const PlacedOpening& opening : layoutOf(project).openings)
        sizes.push_back(opening.rect.width());
    return sizes;
}
inline std::vector<Length> heights(const Project& project) {
    std::vector<Length> sizes;
    for (const PlacedOpening& opening : layoutOf(project).openings)
        sizes.push_back(opening.rect.height());
    return sizes;
}
/// In reading order.
inline OpeningId openingAt(const Project& project, std::size_t index) {
    return layoutOf(project).openings.at(index).id;
}
/// Of the members between openings, in the layout's order.
inline MemberId memberAt(const Project& project, std::size_t index) {
    return layoutOf(project).members.at(4 + index).id;
}

inline bool sameLayout(const Project& a, const Project& b) {
    const Layout first = layoutOf(a);
    const Layout second = layoutOf(b);
    const auto sameOpening = [](const PlacedOpening& p, const PlacedOpening& q) {
        return p.id == q.id && p.rect == q.rect && p.bounds == q.bounds;
    };
    const auto sameMember = [](const PlacedMember& p, const PlacedMember& q) {
        return p.id == q.id && p.kind == q.kind && p.rect == q.rect;
    };
    return std::ranges::equal(first.openings, second.openings, sameOpening) &&
           std::ranges::equal(first.members, second.members, sameMember);
}

/// The same ids in the same order, and no edge further from where it was than `tolerance`.
inline bool nearlySameLayout(const Project& a, const Project& b, Length tolerance) {
    const Layout first = layoutOf(a);
    const Layout second = layoutOf(b);
    const auto isNear = [&](Length x, Length y) { return (x - y).magnitude() <= tolerance; };
    return std::ranges::equal(
        first.openings, second.openings, [&](const PlacedOpening& p, const PlacedOpening& q) {
            return p.id == q.id && isNear(p.rect.left, q.rect.left) &&
                   isNear(p.rect.right, q.rect.right) && isNear(p.rect.top, q.rect.top) &&
                   isNear(p.rect.bottom, q.rect.bottom);
        });
}

/// A region with rules of every kind that has room in width × height, each opening at least
/// `least` wide and high.
inline RegionPtr anyRegion(Dice& dice, Length width, Length height, Length least, int depth) {
    const bool isRows = dice.between(0, 1) == 0;
    const Length total = isRows ? height : width;
    const Length grid = Length::fromSixtyFourths(4);
    if (depth == 0)
        return opening();
    Split split;
    split.direction = isRows ? Direction::Rows : Direction::Columns;
    const auto count = static_cast<std::size_t>(dice.between(2, 5));
    const std::int64_t kinds = dice.between(1, 3);
    for (std::size_t i = 0; i < count; ++i) {
        const std::int64_t kind = dice.between(0, kinds);
        SizeRule rule = Share{dice.between(1, 3)};
        if (kind == 2 && i > 0)
            rule = FixedSize{dice.sixtyFourths(least.nanometres() / 396'875 + 1, 800)};
        if (kind == 3)
            rule = GraduatedPlace{};
        split.children.push_back({rule, nullptr});
        if (i > 0)
            split.members.push_back({{}, dice.sixtyFourths(16, 128)});
    }
    if (dice.between(0, 1) == 0)
        split.graduation = ArithmeticRun{dice.sixtyFourths(-40, 80)};
    else
        split.graduation = GeometricRun{dice.between(900'000, 1'300'000)};
    split.remainderChild = static_cast<std::size_t>(dice.between(0, split.members.size()));
    const auto sizes = childSizes(split, total, grid);
    if (!sizes.ok() || *std::ranges::min_element(sizes.value()) < least)
        return opening();
    for (std::size_t i = 0; i < count; ++i)
        split.children[i].region =
            isRows ? anyRegion(dice, width, sizes.value()[i], least, depth - 1)
                   : anyRegion(dice, sizes.value()[i], height, least, depth - 1);
    return std::make_shared<const Region>(Region{std::move(split)});
}

/// A case 30 to 130 in wide and high with such divisions; its openings are at least 3 in.
inline Project anyProject(std::uint64_t seed) {
    Dice dice(seed);
    const Length width = dice.sixtyFourths(30 * 64, 130 * 64);
    const Length height = dice.sixtyFourths(30 * 64, 130 * 64);
    return projectWith(anyRegion(dice, width, height, in(3), 4), width + in(3), height + in(3));
}

} // namespace frontwright::testing
