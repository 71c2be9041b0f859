#include "core/drawings/plain_marks.h"

#include "core/drawings/dimension_marks.h"
#include "core/drawings/hatch.h"

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
            stroke({line.from, line.to}, PathMark::End::Open);
        stroke({figure.line.from, figure.line.to}, PathMark::End::Open);
        for (const auto& tick : figure.ticks)
            m_plain.fills.push_back({m_mark->layer, {tick.begin(), tick.end()}});
        m_plain.labels.push_back({m_mark->layer, figure.text, m_mark->part, dimension.quantity});
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
    double m_paperScale;
    const Mark* m_mark = nullptr;
    PlainMarks m_plain;
};

} // namespace

PlainMarks plain(const Drawing& drawing) {
    Resolver resolver(drawing.paperScale);
    for (const Mark& mark : drawing.marks)
        resolver.resolve(mark);
    return resolver.take();
}

} // namespace frontwright
