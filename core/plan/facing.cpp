#include "core/plan/facing.h"

#include <algorithm>
#include <span>

namespace frontwright {
namespace {

enum class Beside : std::uint8_t { Lower, Upper };

/// The openings at the two sides of every member, each list ascending along the member.
class Besides {
public:
    explicit Besides(const Layout& layout)
        : m_layout(layout),
          m_starts(2 * layout.members.size() + 1) {
        for (const PlacedOpening& opening : layout.openings)
            for (Side side : allSides)
                ++m_starts[list(opening, side) + 1];
        for (std::size_t i = 1; i < m_starts.size(); ++i)
            m_starts[i] += m_starts[i - 1];
        fill();
        for (std::size_t i = 0; i + 1 < m_starts.size(); ++i)
            putInOrder(i);
    }

    [[nodiscard]] std::span<const std::uint32_t> at(std::size_t member, Beside beside) const {
        return at(2 * member + static_cast<std::size_t>(beside));
    }

private:
    static std::size_t list(const PlacedOpening& opening, Side side) {
        const bool isLower = side == Side::Right || side == Side::Top;
        return 2 * std::size_t{opening.bounds[side]} + (isLower ? 0 : 1);
    }
    [[nodiscard]] std::span<const std::uint32_t> at(std::size_t list) const {
        return std::span(m_items).subspan(m_starts[list], m_starts[list + 1] - m_starts[list]);
    }
    void fill() {
        m_items.resize(m_starts.back());
        std::vector<std::uint32_t> next(m_starts.begin(), m_starts.end() - 1);
        for (std::uint32_t i = 0; i < m_layout.openings.size(); ++i)
            for (Side side : allSides)
                m_items[next[list(m_layout.openings[i], side)]++] = i;
    }
    /// Reading order already ascends along a rail and descends along a stile.
    void putInOrder(std::size_t list) {
        const MemberKind kind = m_layout.members[list / 2].kind;
        const auto first = m_items.begin() + m_starts[list];
        const auto last = m_items.begin() + m_starts[list + 1];
        const auto startsBefore = [&](std::uint32_t a, std::uint32_t b) {
            return alongMember(kind, m_layout.openings[a].rect).low <
                   alongMember(kind, m_layout.openings[b].rect).low;
        };
        if (isUpright(kind))
            std::reverse(first, last);
        if (!std::is_sorted(first, last, startsBefore))
            std::sort(first, last, startsBefore);
    }

    const Layout& m_layout;
    std::vector<std::uint32_t> m_starts;
    std::vector<std::uint32_t> m_items;
};

} // namespace

std::vector<Facing> facingOpenings(const Layout& layout) {
    const Besides besides(layout);
    std::vector<Facing> result;
    result.reserve(2 * layout.openings.size());
    for (std::uint32_t m = 0; m < layout.members.size(); ++m) {
        const auto lower = besides.at(m, Beside::Lower), upper = besides.at(m, Beside::Upper);
        const auto along = [&](std::uint32_t front) {
            return alongMember(layout.members[m].kind, layout.openings[front].rect);
        };
        for (std::size_t i = 0, j = 0; i < lower.size() && j < upper.size();) {
            const Span ofLower = along(lower[i]), ofUpper = along(upper[j]);
            if (ofLower.common(ofUpper).size() > Length{})
                result.push_back({m, lower[i], upper[j]});
            if (ofLower.high < ofUpper.high)
                ++i;
            else
                ++j;
        }
    }
    return result;
}

} // namespace frontwright
