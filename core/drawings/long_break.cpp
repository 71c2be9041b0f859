#include "core/drawings/long_break.h"

#include "core/drawings/sketch.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace frontwright {

namespace {

using Points = std::vector<PointMm>;

// mm on paper
constexpr double kept = 2.5;       ///< on both sides, up to the zigzag
constexpr double shownGap = 2.5;   ///< between the zigzags
constexpr double leastLeftOut = 8; ///< a shorter stretch is drawn whole
constexpr double beyond = 2;       ///< by which a zigzag passes the part
constexpr double zig = 1.2;

/// What is looked at: never broken, however long.
bool isWhole(Layer layer) {
    return layer == Layer::Handle || layer == Layer::Fastener || layer == Layer::Hole ||
           layer == Layer::Counterbore || layer == Layer::AccessHole;
}

bool isOpenPath(const Mark& mark) {
    const auto* path = std::get_if<PathMark>(&mark.shape);
    return path != nullptr && path->end == PathMark::End::Open;
}

/// Along x, stretches in which something begins, ends or is looked at.
class Busy {
public:
    void add(const Mark& mark) {
        // A break that is there already begins and ends nothing.
        if (mark.layer == Layer::MemberEdge && isOpenPath(mark))
            return;
        const BoxMm box = extentOf({{mark}, {}, 1});
        if (box.isEmpty())
            return;
        if (isWhole(mark.layer) || std::holds_alternative<CircleMark>(mark.shape))
            m_at.push_back({box.min().x(), box.max().x()});
        else if (const auto* line = std::get_if<LineMark>(&mark.shape))
            addAll({line->from, line->to});
        else if (const auto* path = std::get_if<PathMark>(&mark.shape))
            addAll(path->points);
    }
    [[nodiscard]] std::vector<std::pair<double, double>> sorted() && {
        std::sort(m_at.begin(), m_at.end());
        return std::move(m_at);
    }

private:
    void addAll(const Points& points) {
        for (const PointMm& p : points)
            m_at.push_back({p.x(), p.x()});
    }
    std::vector<std::pair<double, double>> m_at;
};

PointMm at(const PointMm& a, const PointMm& b, double x) {
    return a + (b - a) * ((x - a.x()) / (b.x() - a.x()));
}

/// What of a closed outline lies to one side of an upright line (Sutherland and Hodgman).
Points cutAt(const Points& outline, double x, double side) {
    Points left;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const PointMm& a = outline[i];
        const PointMm& b = outline[(i + 1) % outline.size()];
        const bool isIn = (a.x() - x) * side >= 0, isNextIn = (b.x() - x) * side >= 0;
        if (isIn)
            left.push_back(a);
        if (isIn != isNextIn)
            left.push_back(at(a, b, x));
    }
    return left;
}

} // namespace

/// Cuts marks into what is kept between the gaps.
class Breaker {
public:
    explicit Breaker(const LongBreak& breaks)
        : m_breaks(breaks),
          m_low(breaks.m_gaps.size(), std::numeric_limits<double>::infinity()),
          m_high(breaks.m_gaps.size(), -std::numeric_limits<double>::infinity()) {}

    void add(const Mark& mark) {
        m_mark = &mark;
        std::visit([this](const auto& shape) { cut(shape); }, mark.shape);
    }
    std::vector<Mark> withZigzags() && {
        const double scale = m_breaks.m_paperScale;
        for (std::size_t i = 0; i < m_low.size(); ++i)
            if (m_low[i] <= m_high[i])
                for (const double x : {m_breaks.m_gaps[i].from, m_breaks.m_gaps[i].to})
                    zigzag(m_breaks.placed(x), m_low[i] - beyond / scale,
                           m_high[i] + beyond / scale, zig / scale);
        return std::move(m_marks);
    }

private:
    void keep(auto shape) { m_marks.push_back({m_mark->layer, std::move(shape), m_mark->part}); }
    [[nodiscard]] PointMm moved(const PointMm& p) const { return {m_breaks.placed(p.x()), p.y()}; }
    [[nodiscard]] Points moved(Points points) const {
        for (PointMm& p : points)
            p = moved(p);
        return points;
    }
    void crosses(std::size_t gap, double y) {
        m_low[gap] = std::min(m_low[gap], y);
        m_high[gap] = std::max(m_high[gap], y);
    }

    /// Pieces of a to b outside the gaps, in their order.
    std::vector<std::pair<PointMm, PointMm>> pieces(PointMm a, PointMm b) {
        const bool isBackward = a.x() > b.x();
        if (isBackward)
            std::swap(a, b);
        std::vector<std::pair<PointMm, PointMm>> found;
        bool isOver = false;
        for (std::size_t i = 0; i < m_breaks.m_gaps.size() && !isOver; ++i) {
            const auto& gap = m_breaks.m_gaps[i];
            if (b.x() <= gap.from || a.x() >= gap.to)
                continue;
            if (a.x() < gap.from)
                found.emplace_back(a, at(a, b, gap.from));
            crosses(i, at(a, b, std::max(a.x(), gap.from)).y());
            isOver = b.x() <= gap.to;
            if (!isOver)
                a = at(a, b, gap.to);
        }
        if (!isOver)
            found.emplace_back(a, b);
        if (isBackward) {
            std::reverse(found.begin(), found.end());
            for (auto& [from, to] : found)
                std::swap(from, to);
        }
        return found;
    }

    void cut(const LineMark& line) {
        for (const auto& [from, to] : pieces(line.from, line.to))
            keep(LineMark{moved(from), moved(to)});
    }
    void cut(const PathMark& path) {
        Points whole = path.points;
        if (path.end == PathMark::End::Closed && !whole.empty())
            whole.push_back(whole.front());
        Points run;
        bool isCut = false;
        const auto end = [&](PathMark::End how) {
            if (run.size() > 1)
                keep(PathMark{moved(std::move(run)), how});
            run.clear();
        };
        for (std::size_t i = 1; i < whole.size(); ++i) {
            for (const auto& [from, to] : pieces(whole[i - 1], whole[i])) {
                if (run.empty() || run.back() != from) {
                    isCut = isCut || !run.empty() || from != whole.front();
                    end(PathMark::End::Open);
                    run.push_back(from);
                }
                run.push_back(to);
            }
        }
        const bool isWholeStill = !isCut && !run.empty() && run.back() == whole.back();
        if (isWholeStill && path.end == PathMark::End::Closed)
            run.pop_back();
        end(isWholeStill ? path.end : PathMark::End::Open);
    }
    void cut(const HatchMark& hatch) {
        double from = -std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i <= m_breaks.m_gaps.size(); ++i) {
            const bool isLast = i == m_breaks.m_gaps.size();
            const double to =
                isLast ? std::numeric_limits<double>::infinity() : m_breaks.m_gaps[i].from;
            HatchMark part = hatch;
            part.outline = between(hatch.outline, from, to);
            for (Points& outline : part.without)
                outline = between(outline, from, to);
            std::erase_if(part.without, [](const Points& outline) { return outline.size() < 3; });
            if (part.outline.size() > 2)
                keep(std::move(part));
            if (!isLast)
                from = m_breaks.m_gaps[i].to;
        }
    }
    [[nodiscard]] Points between(Points outline, double from, double to) const {
        if (from > -std::numeric_limits<double>::infinity())
            outline = cutAt(outline, from, 1);
        if (to < std::numeric_limits<double>::infinity())
            outline = cutAt(outline, to, -1);
        return moved(std::move(outline));
    }
    void cut(const CircleMark& circle) { keep(CircleMark{moved(circle.centre), circle.radius}); }
    void cut(TextMark text) {
        text.at = moved(text.at);
        keep(std::move(text));
    }
    void cut(ToneMark tone) {
        tone.points = moved(std::move(tone.points));
        keep(std::move(tone));
    }
    /// They are laid afterwards.
    void cut(const DimensionMark& dimension) { keep(dimension); }

    void zigzag(double x, double low, double high, double reach) {
        const double middle = (low + high) / 2;
        m_marks.push_back({Layer::MemberEdge,
                           PathMark{{{x, low},
                                     {x, middle - reach},
                                     {x - reach, middle - reach / 2},
                                     {x + reach, middle + reach / 2},
                                     {x, middle + reach},
                                     {x, high}},
                                    PathMark::End::Open},
                           {{}, {}, "break"}});
    }

    const LongBreak& m_breaks;
    const Mark* m_mark = nullptr;
    std::vector<Mark> m_marks;
    std::vector<double> m_low, m_high; ///< of what is cut at each gap
};

LongBreak::LongBreak(const std::vector<Mark>& marks, double paperScale) : m_paperScale(paperScale) {
    Busy busy;
    for (const Mark& mark : marks)
        busy.add(mark);
    std::optional<double> reached;
    for (const auto& [from, to] : std::move(busy).sorted()) {
        if (reached && (from - *reached) * paperScale > 2 * kept + leastLeftOut)
            m_gaps.push_back({*reached + kept / paperScale, from - kept / paperScale});
        reached = reached ? std::max(*reached, to) : to;
    }
}

double LongBreak::placed(double x) const {
    const double shown = shownGap / m_paperScale;
    double left = 0;
    for (const Stretch& gap : m_gaps) {
        if (x <= gap.from)
            break;
        const double length = gap.to - gap.from;
        left += std::min(x - gap.from, length) * (1 - shown / length);
    }
    return x - left;
}

std::vector<Mark> LongBreak::applied(const std::vector<Mark>& marks) const {
    if (isEmpty())
        return marks;
    Breaker breaker(*this);
    for (const Mark& mark : marks)
        breaker.add(mark);
    return std::move(breaker).withZigzags();
}

} // namespace frontwright
