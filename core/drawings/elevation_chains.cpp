#include "core/drawings/elevation_chains.h"

#include "core/lengths/format.h"
#include "core/plan/facing.h"

#include <algorithm>
#include <unordered_set>

namespace frontwright {

namespace {

/// An opening or a member: where it reaches along the axis, and where it lies across it.
struct Item {
    Span along;
    Span across;
    Quantity quantity;
};

Item itemOf(Axis axis, const CaseRect& rect, Quantity quantity) {
    if (axis == Axis::Widths)
        return {rect.across(), rect.upright(), quantity};
    return {rect.upright(), rect.across(), quantity};
}

bool isOpening(const Item& item) {
    return item.quantity.kind != QuantityKind::MemberWidth;
}

Part partOf(const Plan& plan, const Item& item) {
    const std::uint32_t i = item.quantity.item;
    if (!isOpening(item))
        return {std::nullopt, plan.members[i].id, "member width"};
    const QuantityKind kind = item.quantity.kind;
    const bool isWidth = kind == QuantityKind::OpeningWidth || kind == QuantityKind::SpaceWidth;
    const bool isSpace = kind == QuantityKind::SpaceWidth || kind == QuantityKind::SpaceHeight;
    return {isSpace ? plan.spaces[i].opening : plan.fronts[i].opening, std::nullopt,
            isWidth ? "opening width" : "opening height"};
}

bool runsAcross(Axis axis, MemberKind kind) {
    return isUpright(kind) == (axis == Axis::Widths);
}

/// Openings first: what they do not bring along is left to the members.
std::vector<Item> itemsOf(const Plan& plan, Axis axis) {
    const bool isWidths = axis == Axis::Widths;
    const auto opening = isWidths ? QuantityKind::OpeningWidth : QuantityKind::OpeningHeight;
    std::vector<Item> items;
    const auto space = isWidths ? QuantityKind::SpaceWidth : QuantityKind::SpaceHeight;
    items.reserve(plan.fronts.size() + plan.spaces.size() + plan.members.size());
    for (std::uint32_t i = 0; i < plan.fronts.size(); ++i)
        items.push_back(itemOf(axis, plan.fronts[i].openingRect, {opening, i, 0}));
    for (std::uint32_t i = 0; i < plan.spaces.size(); ++i)
        items.push_back(itemOf(axis, plan.spaces[i].rect, {space, i, 0}));
    for (std::uint32_t i = 0; i < plan.members.size(); ++i)
        // Where no shelf lies between two openings there is nothing to measure.
        if (runsAcross(axis, plan.members[i].kind) && widthOf(plan.members[i]) > Length{})
            items.push_back(itemOf(axis, plan.members[i].rect, {QuantityKind::MemberWidth, i, 0}));
    return items;
}

struct SpanHash {
    std::size_t operator()(const Span& span) const {
        // The golden ratio in 64 bits spreads what differs in a few bits only.
        const auto low = static_cast<std::uint64_t>(span.low.nanometres());
        const auto high = static_cast<std::uint64_t>(span.high.nanometres());
        return ((low * 0x9e3779b97f4a7c15U) ^ high) * 0x9e3779b97f4a7c15U >> 16U;
    }
};

/// Adds chains one by one and remembers which stretches have been dimensioned.
class Chains {
public:
    Chains(const Plan& plan, Axis axis, LengthStyle style)
        : m_plan(plan),
          m_items(itemsOf(plan, axis)),
          m_style(style),
          m_across(axis == Axis::Widths ? plan.outline.upright() : plan.outline.across()) {}

    void layOn(DimensionRows& nearSide, DimensionRows& farSide) {
        addWhole(nearSide, [&](const Item& item) { return fromNear(item); });
        std::vector<const Item*> rest;
        for (const Item& item : m_items)
            if (!isSeen(item))
                rest.push_back(&item);
        std::stable_sort(rest.begin(), rest.end(), [&](const Item* a, const Item* b) {
            return isOpening(*a) != isOpening(*b) ? isOpening(*a) : toSide(*a) < toSide(*b);
        });
        bool isFarBegun = false;
        for (const Item* item : rest) {
            if (isSeen(*item))
                continue;
            const bool isNear = fromNear(*item) < fromFar(*item);
            const Length cut = isNear ? item->across.low + hair : item->across.high - hair;
            const Keep keep = isNear || isFarBegun ? Keep::Unseen : Keep::All;
            isFarBegun = isFarBegun || !isNear;
            add(isNear ? nearSide : farSide, cut, keep);
        }
    }

private:
    enum class Keep : std::uint8_t { All, Unseen };
    static constexpr Length hair = Length::fromNanometres(1);

    [[nodiscard]] Length fromNear(const Item& item) const { return item.across.low - m_across.low; }
    [[nodiscard]] Length fromFar(const Item& item) const {
        return m_across.high - item.across.high;
    }
    [[nodiscard]] Length toSide(const Item& item) const {
        return least(fromNear(item), fromFar(item));
    }
    [[nodiscard]] bool isSeen(const Item& item) const { return m_seen.contains(item.along); }

    /// The chain through the opening that is nearest by `distance`, just inside its edge.
    template<class Distance>
    void addWhole(DimensionRows& rows, Distance distance) {
        const Item* nearest = nullptr;
        for (const Item& item : m_items)
            if (isOpening(item) && (nearest == nullptr || distance(item) < distance(*nearest)))
                nearest = &item;
        if (nearest != nullptr)
            add(rows, nearest->across.low + hair, Keep::All);
    }

    void add(DimensionRows& rows, Length cut, Keep keep) {
        std::vector<const Item*> met;
        for (const Item& item : m_items)
            if (item.across.low < cut && cut < item.across.high &&
                (keep == Keep::All || !isSeen(item)))
                met.push_back(&item);
        std::sort(met.begin(), met.end(),
                  [](const Item* a, const Item* b) { return a->along.low < b->along.low; });
        std::vector<Measured> chain;
        for (const Item* item : met) {
            m_seen.insert(item->along);
            chain.push_back({item->along.low.inMillimetres(), item->along.high.inMillimetres(),
                             shownBare(item->along.size(), m_style), item->quantity,
                             partOf(m_plan, *item)});
        }
        rows.addChain(std::move(chain));
    }

    const Plan& m_plan;
    std::vector<Item> m_items;
    LengthStyle m_style;
    Span m_across;
    std::unordered_set<Span, SpanHash> m_seen; ///< asked for each item, never gone through
};

} // namespace

void addChains(const Plan& plan, Axis axis, LengthStyle style, DimensionRows& nearSide,
               DimensionRows& farSide) {
    Chains(plan, axis, style).layOn(nearSide, farSide);
}

} // namespace frontwright
