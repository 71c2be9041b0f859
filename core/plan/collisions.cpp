#include "core/plan/collisions.h"

#include <algorithm>
#include <tuple>

namespace frontwright {
namespace {

/// Columns and rows of the grid that a rectangle touches, both ends included.
struct Cells {
    std::uint32_t left = 1;
    std::uint32_t right = 0;
    std::uint32_t bottom = 1;
    std::uint32_t top = 0;

    [[nodiscard]] std::size_t count() const {
        return std::size_t{right - left + 1} * (top - bottom + 1);
    }
};

bool hasArea(const CaseRect& r) {
    return r.left < r.right && r.bottom < r.top;
}

/// One axis of the grid: as many even parts as rectangles of mean size have room in it.
class Axis {
public:
    /// `sum` of the rectangles' sizes; `count` of them.
    Axis(Span extent, Length sum, std::int64_t count) : m_extent(extent) {
        const std::int64_t mean = count == 0 ? 1 : sum.nanometres() / count;
        const std::int64_t parts = extent.size().nanometres() / std::max<std::int64_t>(1, mean);
        setParts(std::clamp<std::int64_t>(parts, 1, std::max<std::int64_t>(1, 4 * count)));
    }
    [[nodiscard]] std::int64_t parts() const { return m_parts; }
    void coarsen() { setParts((m_parts + 1) / 2); }
    [[nodiscard]] std::uint32_t partOf(Length v) const {
        const std::int64_t part = (v - m_extent.low).nanometres() / m_partSize;
        return static_cast<std::uint32_t>(std::clamp<std::int64_t>(part, 0, m_parts - 1));
    }

private:
    void setParts(std::int64_t parts) {
        m_parts = parts;
        m_partSize = m_extent.size().nanometres() / parts + 1;
    }
    Span m_extent;
    std::int64_t m_parts = 1;
    std::int64_t m_partSize = 1;
};

/// A grid whose cells list the rectangles that touch them. It has at most four cells a rectangle,
/// and is so coarse that the lists together are no longer than a few times the rectangles.
class Grid {
public:
    explicit Grid(std::span<const CaseRect> rects)
        : m_rects(rects),
          m_cells(rects.size()),
          m_columns(axis(Direction::Columns)),
          m_rows(axis(Direction::Rows)) {
        const std::size_t most = 16 * rects.size();
        while (cellCount() > std::max<std::size_t>(1, 4 * rects.size()))
            coarsen();
        while (setCells() > most && cellCount() > 1)
            coarsen();
        fill();
    }

    [[nodiscard]] std::vector<Collision> collisions() const {
        std::vector<Collision> result;
        const auto columns = static_cast<std::size_t>(m_columns.parts());
        for (std::size_t cell = 0; cell + 1 < m_starts.size(); ++cell) {
            const auto x = static_cast<std::uint32_t>(cell % columns);
            const auto y = static_cast<std::uint32_t>(cell / columns);
            for (std::size_t i = m_starts[cell]; i < m_starts[cell + 1]; ++i)
                for (std::size_t j = i + 1; j < m_starts[cell + 1]; ++j)
                    if (result.size() < mostCollisions)
                        compare(m_items[i], m_items[j], x, y, result);
        }
        return result;
    }

private:
    [[nodiscard]] Axis axis(Direction direction) const {
        Span extent{};
        std::int64_t count = 0;
        Length sum;
        for (const CaseRect& r : m_rects) {
            if (!hasArea(r))
                continue;
            const Span span = direction == Direction::Columns ? r.across() : r.upright();
            extent = count == 0
                         ? span
                         : Span{least(extent.low, span.low), greatest(extent.high, span.high)};
            sum += span.size();
            ++count;
        }
        return {extent, sum, count};
    }
    [[nodiscard]] std::size_t cellCount() const {
        return static_cast<std::size_t>(m_columns.parts() * m_rows.parts());
    }
    void coarsen() {
        if (m_columns.parts() > m_rows.parts())
            m_columns.coarsen();
        else
            m_rows.coarsen();
    }
    std::size_t setCells() {
        std::size_t total = 0;
        for (std::size_t i = 0; i < m_rects.size(); ++i) {
            const CaseRect& r = m_rects[i];
            if (!hasArea(r))
                continue;
            m_cells[i] = {m_columns.partOf(r.left), m_columns.partOf(r.right),
                          m_rows.partOf(r.bottom), m_rows.partOf(r.top)};
            total += m_cells[i].count();
        }
        return total;
    }
    template<class Visit>
    void visitCells(std::size_t rect, Visit visit) const {
        const Cells& cells = m_cells[rect];
        const auto columns = static_cast<std::size_t>(m_columns.parts());
        for (std::size_t y = cells.bottom; y <= cells.top; ++y)
            for (std::size_t x = cells.left; x <= cells.right; ++x)
                visit(y * columns + x);
    }
    void fill() {
        m_starts.resize(cellCount() + 1);
        for (std::size_t i = 0; i < m_rects.size(); ++i)
            visitCells(i, [&](std::size_t cell) { ++m_starts[cell + 1]; });
        for (std::size_t cell = 1; cell < m_starts.size(); ++cell)
            m_starts[cell] += m_starts[cell - 1];
        m_items.resize(m_starts.back());
        std::vector<std::size_t> next(m_starts.begin(), m_starts.end() - 1);
        for (std::size_t i = 0; i < m_rects.size(); ++i)
            visitCells(i, [&](std::size_t cell) {
                m_items[next[cell]++] = static_cast<std::uint32_t>(i);
            });
    }
    /// Both may touch many cells; the one with the common part's lower left corner tells of them.
    void compare(std::uint32_t a, std::uint32_t b, std::uint32_t x, std::uint32_t y,
                 std::vector<Collision>& result) const {
        const Cells &ofA = m_cells[a], &ofB = m_cells[b];
        if (std::max(ofA.left, ofB.left) != x || std::max(ofA.bottom, ofB.bottom) != y)
            return;
        const CaseRect common = m_rects[a].common(m_rects[b]);
        if (hasArea(common))
            result.push_back({a, b, common});
    }

    std::span<const CaseRect> m_rects;
    std::vector<Cells> m_cells;
    Axis m_columns;
    Axis m_rows;
    std::vector<std::size_t> m_starts; ///< cell by cell, row by row
    std::vector<std::uint32_t> m_items;
};

} // namespace

std::vector<Collision> collisionsAmong(std::span<const CaseRect> rects) {
    std::vector<Collision> result = Grid(rects).collisions();
    std::sort(result.begin(), result.end(), [](const Collision& a, const Collision& b) {
        return std::tie(a.first, a.second) < std::tie(b.first, b.second);
    });
    return result;
}

} // namespace frontwright
