#include "core/drawings/plain_marks.h"

#include "core/drawings/dimension_marks.h"
#include "core/drawings/hatch.h"
#include "core/drawings/lettering.h"

#include <algorithm>
#include <array>
#include <map>

namespace frontwright {

namespace {

/// What a line has outside a box, in order.
std::vector<LineMark> outsideOf(const BoxMm& box, const LineMark& line) {
    // Liang–Barsky: between `enters` and `leaves`, parts of its length, it lies inside.
    const PointMm run = line.to - line.from;
    double enters = 0, leaves = 1;
    for (const int axis : {0, 1}) {
        const double low = box.min()[axis] - line.from[axis];
        const double high = box.max()[axis] - line.from[axis];
        if (run[axis] == 0) {
            if (low >= 0 || high <= 0)
                return {line};
            continue;
        }
        const auto [first, last] = std::minmax({low / run[axis], high / run[axis]});
        enters = std::max(enters, first);
        leaves = std::min(leaves, last);
    }
    if (enters >= leaves)
        return {line};
    std::vector<LineMark> seen;
    if (enters > 0)
        seen.push_back({line.from, line.from + enters * run});
    if (leaves < 1)
        seen.push_back({line.from + leaves * run, line.to});
    return seen;
}

std::vector<LineMark> outsideOf(const BoxMm& box, const std::vector<LineMark>& lines) {
    std::vector<LineMark> seen;
    for (const LineMark& line : lines)
        for (const LineMark& part : outsideOf(box, line))
            seen.push_back(part);
    return seen;
}

/// Turns one mark after the other into plain ones.
class Resolver {
public:
    explicit Resolver(double paperScale) : m_paperScale(paperScale) {}

    void operator()(const LineMark& line) { stroke({line.from, line.to}, PathMark::End::Open); }
    void operator()(const PathMark& path) {
        if (!path.points.empty())
            stroke(path.points, path.end);
    }
    void operator()(const CircleMark& circle) {
        m_plain.rounds.push_back({m_mark->layer, circle.centre, circle.radius, m_mark->part});
    }
    void operator()(const HatchMark& hatch) {
        for (const LineMark& line : hatchLines(hatch, m_paperScale))
            stroke({line.from, line.to}, PathMark::End::Open);
    }
    void operator()(const TextMark& text) {
        m_plain.labels.push_back({m_mark->layer, text, m_mark->part, std::nullopt});
    }
    void operator()(const DimensionMark& dimension) {
        const DimensionFigure figure = figureOf(dimension, m_paperScale);
        for (const LineMark& line : figure.extensions)
            extension(line);
        stroke({figure.line.from, figure.line.to}, PathMark::End::Open);
        for (const auto& tick : figure.ticks)
            m_plain.fills.push_back({m_mark->layer, {tick.begin(), tick.end()}});
        m_plain.labels.push_back({m_mark->layer, figure.text, m_mark->part, dimension.quantity});
        const PointMm free = PointMm::Constant(besideText / m_paperScale);
        const BoxMm text = textBox(figure.text, m_paperScale);
        m_figures.emplace_back(text.min() - free, text.max() + free);
    }
    void operator()(const ToneMark& wash) {
        m_plain.washes.push_back({wash.points, wash.tone, wash.width, m_mark->part});
    }

    void resolve(const Mark& mark) {
        m_mark = &mark;
        std::visit(*this, mark.shape);
    }
    PlainMarks take() {
        breakExtensions();
        return std::move(m_plain);
    }

private:
    void stroke(std::vector<PointMm> points, PathMark::End end) {
        m_plain.strokes.push_back({m_mark->layer, std::move(points), end, m_mark->part});
    }
    /// Neighbours in a chain, and the rows one behind the other, share an extension line: the
    /// longest is drawn once, for lines drawn twice look wider.
    void extension(const LineMark& line) {
        const PointMm run = line.to - line.from;
        const double far = run.norm();
        const PointMm way = far > 0 ? PointMm(run / far) : run;
        const std::array key{static_cast<double>(m_mark->layer), line.from.x(), line.from.y(),
                             way.x(), way.y()};
        const auto [known, isNew] = m_extensions.try_emplace(key, m_plain.strokes.size());
        if (isNew)
            return stroke({line.from, line.to}, PathMark::End::Open);
        std::vector<PointMm>& drawn = m_plain.strokes[known->second].points;
        if ((drawn[1] - drawn[0]).norm() < far)
            drawn[1] = line.to;
    }

    /// Where an extension line would run through figures it is interrupted (ISO 129-1, from
    /// memory).
    void breakExtensions() {
        for (const auto& [key, index] : m_extensions) {
            std::vector<LineMark> seen{
                {m_plain.strokes[index].points[0], m_plain.strokes[index].points[1]}};
            for (const BoxMm& figure : m_figures)
                seen = outsideOf(figure, seen);
            // The whole of a short one may be hidden.
            m_plain.strokes[index].points.clear();
            for (std::size_t i = 0; i < seen.size(); ++i) {
                const std::vector<PointMm> points{seen[i].from, seen[i].to};
                if (i == 0)
                    m_plain.strokes[index].points = points;
                else
                    m_plain.strokes.push_back({m_plain.strokes[index].layer, points,
                                               PathMark::End::Open, m_plain.strokes[index].part});
            }
        }
        std::erase_if(m_plain.strokes, [](const StrokeMark& s) { return s.points.empty(); });
    }

    static constexpr double besideText = 0.4; ///< of paper, kept free of extension lines

    double m_paperScale;
    const Mark* m_mark = nullptr;
    PlainMarks m_plain;
    std::map<std::array<double, 5>, std::size_t> m_extensions; ///< by layer, start, direction
    std::vector<BoxMm> m_figures;                              ///< what dimensions say
};

} // namespace

PlainMarks plain(const Drawing& drawing) {
    Resolver resolver(drawing.paperScale);
    for (const Mark& mark : drawing.marks)
        resolver.resolve(mark);
    return resolver.take();
}

} // namespace frontwright
