#include "core/edits/kept_sizes.h"

#include <algorithm>

namespace frontwright {
namespace {

bool isOnGrid(Length length, Length grid) {
    return grid <= Length() || length.nanometres() % grid.nanometres() == 0;
}

bool comesOutAt(const Split& split, std::span<const Length> sizes, Length total, Length grid) {
    const auto present = childSizes(split, total, grid);
    return present.ok() && std::ranges::equal(present.value(), sizes);
}

bool isShare(const Child& child) {
    return std::holds_alternative<Share>(child.rule);
}

void placeRemainder(Split& split, std::span<const Length> sizes, Length grid) {
    const std::optional<std::size_t> taker = remainderTaker(split);
    if (!taker)
        return;
    split.remainderChild = *taker;
    if (!isOnGrid(sizes[*taker], grid))
        return;
    for (std::size_t i = 0; i < split.children.size(); ++i)
        if (isShare(split.children[i]) && !isOnGrid(sizes[i], grid))
            split.remainderChild = i;
}

Wide greatestCommonDivisor(Wide a, Wide b) {
    while (b != 0) {
        const Wide rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

/// Sets the shares' weights to whole numbers in proportion to `weights` (0 where not a share).
void setWeights(Split& split, const std::vector<Wide>& weights) {
    Wide divisor = 0;
    Wide greatest = 1;
    for (const Wide weight : weights) {
        divisor = greatestCommonDivisor(weight, divisor);
        greatest = std::max(greatest, weight);
    }
    if (divisor == 0)
        return;
    const Wide tooLargeBy = greatest / divisor / mostShareWeight + 1;
    for (std::size_t i = 0; i < split.children.size(); ++i)
        if (auto* share = std::get_if<Share>(&split.children[i].rule)) {
            const Wide weight = weights[i] / divisor / tooLargeBy;
            share->weight = std::max<std::int64_t>(static_cast<std::int64_t>(weight), 1);
        }
}

/// The shares' ideal sizes (see childSizes) as whole numbers, all to one scale. Beside a graduated
/// run the shares' part of the room is s/(n + s) of it, which the rounded sizes miss by a little;
/// the difference goes to the remainder's share, or evenly to all, each less than a grid step.
std::vector<Wide> idealWeights(const Split& split, std::span<const Length> sizes, Length total,
                               Length grid) {
    const Demand demand = demandOf(split);
    const Wide shares = demand.shares;
    const Wide scale = demand.places == 0 ? Wide{1} : shares * demand.flexible();
    std::vector<Wide> weights(sizes.size(), 0);
    Wide sum = 0;
    for (std::size_t i = 0; i < sizes.size(); ++i)
        if (isShare(split.children[i])) {
            weights[i] = scale * sizes[i].nanometres();
            sum += weights[i];
        }
    if (demand.places == 0)
        return weights;
    const Wide room = total.nanometres() - demand.taken;
    const Wide difference = room * shares * shares - sum;
    const Wide roundingAtMost = scale * demand.flexible() * grid.nanometres();
    const std::size_t taker = split.remainderChild;
    if (difference > roundingAtMost || -difference > roundingAtMost)
        return weights;
    if (isShare(split.children[taker])) {
        weights[taker] = std::max<Wide>(weights[taker] + difference, 1);
    } else if (difference > 0) {
        for (Wide& weight : weights)
            weight += weight > 0 ? difference / shares : 0;
    }
    return weights;
}

} // namespace

void keepSizes(Split& split, std::span<const Length> sizes, Length total, Length grid) {
    if (comesOutAt(split, sizes, total, grid))
        return;
    placeRemainder(split, sizes, grid);
    setWeights(split, idealWeights(split, sizes, total, grid));
}

void keepSizesWithEquals(Split& split, std::span<const Length> sizes,
                         std::span<const std::size_t> equals, Length total, Length grid) {
    if (equals.empty()) {
        keepSizes(split, sizes, total, grid);
        return;
    }
    const std::optional<std::size_t> taker = remainderTaker(split);
    split.remainderChild = equals.back();
    if (taker && !isOnGrid(sizes[*taker], grid))
        split.remainderChild = *taker;
    std::vector<Wide> weights = idealWeights(split, sizes, total, grid);
    Wide sum = 0;
    for (const std::size_t i : equals)
        sum += weights[i];
    for (Wide& weight : weights)
        weight *= static_cast<Wide>(equals.size());
    for (const std::size_t i : equals)
        weights[i] = sum;
    setWeights(split, weights);
}

std::optional<Error> runChanges(const Split& split, std::span<const Length> sizes, Length total,
                                Length grid) {
    const auto now = childSizes(split, total, grid);
    if (!now.ok())
        return now.error();
    const std::optional<std::size_t> taker = remainderTaker(split);
    const Length remainder = grid * demandOf(split).flexible();
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        const Length rounding = i == taker ? remainder : grid;
        if (std::holds_alternative<GraduatedPlace>(split.children[i].rule) &&
            (now.value()[i] - sizes[i]).magnitude() > rounding)
            return Error{{},
                         text("the graduated run in the same split would change its sizes"),
                         text("end the graduation first")};
    }
    return std::nullopt;
}

SizeRange sizeRange(const Region& region, Direction direction, Length leastOpening, Length grid) {
    const auto* split = std::get_if<Split>(&region.content);
    if (split == nullptr)
        return {leastOpening, std::nullopt};
    std::vector<Length> least;
    std::vector<std::optional<Length>> most;
    for (const Child& child : split->children) {
        const SizeRange range = sizeRange(*child.region, direction, leastOpening, grid);
        least.push_back(range.least);
        most.push_back(range.most);
    }
    if (split->direction == direction)
        return {leastTotal(*split, least, grid), mostTotal(*split, most, grid)};
    SizeRange common{*std::ranges::max_element(least), std::nullopt};
    for (const std::optional<Length>& limit : most)
        if (limit && (!common.most || *limit < *common.most))
            common.most = limit;
    return common;
}

} // namespace frontwright
