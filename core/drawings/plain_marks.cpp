#include "core/drawings/plain_marks.h"

#include "core/drawings/dimension_marks.h"
#include "core/drawings/hatch.h"

#include <array>
#include <map>

namespace frontwright {

namespace {

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
    }
    void operator()(const ToneMark& wash) {
        m_plain.washes.push_back({wash.points, wash.tone, wash.width, m_mark->part});
    }

    void resolve(const Mark& mark) {
        m_mark = &mark;
        std::visit(*this, mark.shape);
    }
    PlainMarks take() { return std::move(m_plain); }

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

    double m_paperScale;
    const Mark* m_mark = nullptr;
    PlainMarks m_plain;
    std::map<std::array<double, 5>, std::size_t> m_extensions; ///< by layer, start, direction
};

} // namespace

PlainMarks plain(const Drawing& drawing) {
    Resolver resolver(drawing.paperScale);
    for (const Mark& mark : drawing.marks)
        resolver.resolve(mark);
    return resolver.take();
}

} // namespace frontwright
