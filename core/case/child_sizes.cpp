#include "core/case/child_sizes.h"

#include "core/lengths/format.h"
#include "core/words/figure.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace frontwright {
namespace {

constexpr Wide floorDivided(Wide a, Wide b) {
    // Dividing 64 bits is several times as fast, and nearly always enough.
    const auto a64 = static_cast<std::int64_t>(a);
    const auto b64 = static_cast<std::int64_t>(b);
    if (a64 == a && b64 == b && a64 >= 0)
        return a64 / b64;
    const Wide quotient = a / b;
    return quotient * b > a ? quotient - 1 : quotient;
}
constexpr Wide ceilDivided(Wide a, Wide b) {
    return -floorDivided(-a, b);
}

Wide stepOfGrid(Length grid) {
    return grid.nanometres() > 0 ? grid.nanometres() : 1;
}

Length lengthOf(Wide nm) {
    return Length::fromNanometres(static_cast<std::int64_t>(nm));
}

/// factor^exponent by squaring: the same bits on every machine, which std::pow does not promise.
double power(double factor, std::int64_t exponent) {
    double result = 1;
    for (; exponent > 0; exponent /= 2, factor *= factor)
        if (exponent % 2 == 1)
            result *= factor;
    return result;
}

/// ratio^0, ratio^1, … as whole numbers in exact proportion where they stay under 2^53; those of
/// longer runs are in proportion to about one part in a million million, and at least 1.
class GeometricWeights {
public:
    GeometricWeights(std::int64_t ratioMillionths, std::int64_t places) : m_places(places) {
        const std::int64_t ratio = std::max<std::int64_t>(ratioMillionths, 1);
        const std::int64_t divisor = std::gcd(ratio, std::int64_t{1'000'000});
        m_over = ratio / divisor;
        m_under = 1'000'000 / divisor;
        m_factor = static_cast<double>(ratio) / 1e6;
        const auto greatest = static_cast<double>(std::max(m_over, m_under));
        m_isExact = power(greatest, places - 1) < exactBelow;
        for (std::int64_t k = 1; k < places && m_isExact; ++k)
            m_weight *= m_under;
    }

    Wide next() {
        const std::int64_t k = m_place++;
        if (!m_isExact) {
            const double part =
                m_factor > 1 ? 1 / power(m_factor, m_places - 1 - k) : power(m_factor, k);
            return std::max<std::int64_t>(static_cast<std::int64_t>(part * scale), 1);
        }
        const Wide weight = m_weight;
        m_weight = weight / m_under * m_over;
        return weight;
    }

private:
    static constexpr double exactBelow = 9007199254740992.0; // 2^53
    static constexpr double scale = 1099511627776.0;         // 2^40
    std::int64_t m_places = 0;
    std::int64_t m_place = 0;
    std::int64_t m_over = 1;
    std::int64_t m_under = 1;
    double m_factor = 1;
    bool m_isExact = true;
    Wide m_weight = 1;
};

/// A flexible child's size before rounding: (perRoom · room + offset) / divisor.
struct Ideal {
    Wide perRoom = 0;
    Wide offset = 0;
    Wide divisor = 1;
};

/// Goes through a split's flexible children in listed order.
class Ideals {
public:
    Ideals(const Split& split, const Demand& demand)
        : m_places(demand.places),
          m_flexible(demand.flexible()) {
        m_share = {1, 0, demand.shareWeight};
        if (demand.places == 0)
            return;
        m_share = {demand.shares, 0, demand.shareWeight * m_flexible};
        if (!split.graduation)
            return;
        if (const auto* arithmetic = std::get_if<ArithmeticRun>(&*split.graduation))
            m_step = arithmetic->step.length.nanometres();
        if (const auto* geometric = std::get_if<GeometricRun>(&*split.graduation))
            m_geometric.emplace(geometric->ratioMillionths, demand.places);
        std::optional<GeometricWeights> weights = m_geometric;
        for (std::int64_t k = 0; k < demand.places && weights; ++k)
            m_runWeight += weights->next();
    }

    /// Precondition: the rule is flexible, and the calls follow the listed order.
    Ideal next(const SizeRule& rule) {
        if (const auto* share = std::get_if<Share>(&rule))
            return {m_share.perRoom * share->weight, 0, m_share.divisor};
        if (m_geometric)
            return {m_places * m_geometric->next(), 0, m_runWeight * m_flexible};
        const Wide twicePlace = 2 * m_place - m_places + 1;
        ++m_place;
        return {2, m_step * twicePlace * m_flexible, 2 * m_flexible};
    }

private:
    Wide m_places;
    Wide m_flexible;
    Ideal m_share;
    Wide m_step = 0;
    Wide m_place = 0;
    Wide m_runWeight = 0;
    std::optional<GeometricWeights> m_geometric;
};

/// The greatest room over `start` that any flexible child asks for.
template<class RoomFor>
Wide greatestRoom(const Split& split, const Demand& demand, Wide start, const RoomFor& roomFor) {
    Ideals ideals(split, demand);
    Wide room = start;
    for (std::size_t i = 0; i < split.children.size(); ++i)
        if (isFlexible(split.children[i].rule))
            room = std::max(room, roomFor(i, ideals.next(split.children[i].rule)));
    return room;
}

/// "2 members", "1 member and 2 fixed sizes"
Phrase takersOf(std::int64_t members, std::int64_t fixed) {
    Phrase ofMembers =
        members == 1 ? Phrase(text("1 member")) : phrase("%1 members", std::to_string(members));
    if (fixed == 0)
        return ofMembers;
    return phrase("%1 and %2", std::move(ofMembers),
                  fixed == 1 ? Phrase(text("1 fixed size"))
                             : phrase("%1 fixed sizes", std::to_string(fixed)));
}

} // namespace

std::optional<std::size_t> remainderTaker(const Split& split) {
    const auto& children = split.children;
    if (split.remainderChild < children.size() && isFlexible(children[split.remainderChild].rule))
        return split.remainderChild;
    for (std::size_t i = children.size(); i-- > 0;)
        if (isFlexible(children[i].rule))
            return i;
    return std::nullopt;
}

Demand demandOf(const Split& split) {
    Demand demand;
    for (const Member& member : split.members) {
        demand.taken += member.width.length.nanometres();
        demand.sound = demand.sound && member.width.length >= Length();
    }
    for (const Child& child : split.children) {
        if (const auto* share = std::get_if<Share>(&child.rule)) {
            demand.shareWeight += share->weight;
            ++demand.shares;
            demand.sound = demand.sound && 0 < share->weight && share->weight <= mostShareWeight;
        } else if (const auto* fixed = std::get_if<FixedSize>(&child.rule)) {
            demand.taken += fixed->size.length.nanometres();
            demand.sound = demand.sound && fixed->size.length > Length();
        } else {
            ++demand.places;
        }
    }
    return demand;
}

bool appendSizes(const Split& split, Length total, Length grid, std::vector<Length>& sizes) {
    const Demand demand = demandOf(split);
    const Wide room = total.nanometres() - demand.taken;
    const bool hasRoom = demand.flexible() > 0 ? room > 0 : room == 0;
    if (!demand.sound || !hasRoom)
        return false;
    const Wide step = stepOfGrid(grid);
    Ideals ideals(split, demand);
    const std::size_t start = sizes.size();
    const std::size_t taker = start + remainderTaker(split).value_or(0);
    Wide rest = room;
    bool works = true;
    for (const Child& child : split.children) {
        if (const auto* fixed = std::get_if<FixedSize>(&child.rule)) {
            sizes.push_back(fixed->size.length);
            continue;
        }
        const Ideal ideal = ideals.next(child.rule);
        const Wide size =
            step * floorDivided(ideal.perRoom * room + ideal.offset, ideal.divisor * step);
        rest -= size;
        works = works && (size > 0 || sizes.size() == taker);
        sizes.push_back(lengthOf(size));
    }
    if (demand.flexible() > 0)
        sizes[taker] += lengthOf(rest);
    works = works && sizes[taker] > Length();
    if (!works)
        sizes.resize(start);
    return works;
}

Length leastTotal(const Split& split, std::span<const Length> least, Length grid) {
    const Demand demand = demandOf(split);
    const Wide step = stepOfGrid(grid);
    const std::optional<std::size_t> taker = remainderTaker(split);
    const Wide room = greatestRoom(split, demand, 0, [&](std::size_t i, const Ideal& ideal) {
        Wide size = least.empty() ? step : std::max<Wide>(least[i].nanometres(), 1);
        if (i != taker)
            size = step * ceilDivided(size, step);
        return ceilDivided(size * ideal.divisor - ideal.offset, ideal.perRoom);
    });
    return lengthOf(demand.taken + room);
}

std::optional<Length> mostTotal(const Split& split, std::span<const std::optional<Length>> most,
                                Length grid) {
    const Demand demand = demandOf(split);
    if (demand.flexible() == 0)
        return lengthOf(demand.taken);
    const Wide step = stepOfGrid(grid);
    const std::optional<std::size_t> taker = remainderTaker(split);
    constexpr Wide unlimited = std::numeric_limits<std::int64_t>::max();
    // The least of all limits is the negative of the greatest negative one.
    const Wide room =
        -greatestRoom(split, demand, -unlimited, [&](std::size_t i, const Ideal& ideal) {
            if (!most[i])
                return -unlimited;
            Wide size = most[i]->nanometres();
            if (i == taker) // it may get almost a grid step from each of the others
                size -= step * (demand.flexible() - 1);
            else // just below the next step is still rounded down
                size = step * (floorDivided(size, step) + 1) - 1;
            return -floorDivided(size * ideal.divisor - ideal.offset, ideal.perRoom);
        });
    return room == unlimited ? std::nullopt : std::optional(lengthOf(demand.taken + room));
}

Unit unitOfGrid(Length grid) {
    return grid.nanometres() % Length::nanometresPer64th == 0 ? Unit::Inch : Unit::Millimetre;
}

Error whyNoRoom(const Split& split, Length total, Length grid, Phrase place) {
    const Demand demand = demandOf(split);
    if (!demand.sound)
        return {std::move(place),
                text("a size or a share is not more than 0, or a member is negative"),
                text("give every opening a size over 0")};
    const auto say = [style = LengthStyle{unitOfGrid(grid), 64}](Length length) {
        return figure(shown(length, style));
    };
    const auto members = static_cast<std::int64_t>(split.members.size());
    const auto fixed = static_cast<std::int64_t>(split.children.size()) - demand.flexible();
    const Phrase account = phrase("%1 take %2 of %3", takersOf(members, fixed),
                                  say(lengthOf(demand.taken)), say(total));
    const Length needed = leastTotal(split, {}, grid);
    if (demand.flexible() == 0 && total > needed)
        return {std::move(place), phrase("%1 is left over: %2", say(total - needed), account),
                text("let one of the sizes be a share")};
    return {std::move(place), phrase("%1 of room is missing: %2", say(needed - total), account),
            text("make the case larger or a size smaller")};
}

Result<std::vector<Length>> childSizes(const Split& split, Length total, Length grid) {
    std::vector<Length> sizes;
    sizes.reserve(split.children.size());
    if (!appendSizes(split, total, grid, sizes))
        return whyNoRoom(split, total, grid, {});
    return sizes;
}

} // namespace frontwright
