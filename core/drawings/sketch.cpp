#include "core/drawings/sketch.h"

#include "core/drawings/dimension_marks.h"
#include "core/drawings/lettering.h"

namespace frontwright {

namespace {

/// Grows a box by one mark after the other.
class Measurer {
public:
    explicit Measurer(double paperScale) : m_paperScale(paperScale) {}
    void operator()(const LineMark& line) {
        m_box.extend(line.from);
        m_box.extend(line.to);
    }
    void operator()(const PathMark& path) { (*this)(path.points); }
    void operator()(const CircleMark& circle) {
        const PointMm reach(circle.radius, circle.radius);
        m_box.extend(circle.centre - reach);
        m_box.extend(circle.centre + reach);
    }
    void operator()(const HatchMark& hatch) { (*this)(hatch.outline); }
    void operator()(const TextMark& text) { m_box.extend(textBox(text, m_paperScale)); }
    void operator()(const DimensionMark& mark) {
        const DimensionFigure figure = figureOf(mark, m_paperScale);
        for (const LineMark& line : figure.extensions)
            (*this)(line);
        (*this)(figure.line);
        for (const auto& tick : figure.ticks)
            for (const PointMm& p : tick)
                m_box.extend(p);
        (*this)(figure.text);
    }
    void operator()(const ToneMark& wash) { (*this)(wash.points); }
    [[nodiscard]] const BoxMm& box() const { return m_box; }

private:
    void operator()(const std::vector<PointMm>& points) {
        for (const PointMm& p : points)
            m_box.extend(p);
    }
    double m_paperScale;
    BoxMm m_box;
};

} // namespace

void Sketch::line(Layer layer, const PointMm& from, const PointMm& to, const Part& part) {
    add({layer, LineMark{from, to}, part});
}

void Sketch::path(Layer layer, std::vector<PointMm> points, PathMark::End end, const Part& part) {
    add({layer, PathMark{std::move(points), end}, part});
}

void Sketch::rectangle(Layer layer, const BoxMm& box, const Part& part) {
    path(layer, cornersOf(box), PathMark::End::Closed, part);
}

void Sketch::circle(Layer layer, const PointMm& centre, double radius, const Part& part) {
    add({layer, CircleMark{centre, radius}, part});
}

void Sketch::text(Layer layer, TextMark text, const Part& part) {
    add({layer, std::move(text), part});
}

void Sketch::wash(std::vector<PointMm> outline, Tone tone, const Part& part) {
    add({Layer::Wash, ToneMark{std::move(outline), tone, 0}, part});
}

void Sketch::stroke(std::vector<PointMm> points, Tone tone, double width, const Part& part) {
    add({Layer::Wash, ToneMark{std::move(points), tone, width}, part});
}

void Sketch::add(const Drawing& other) {
    m_drawing.marks.insert(m_drawing.marks.end(), other.marks.begin(), other.marks.end());
}

Drawing Sketch::finishedNow(double margin) {
    Drawing drawing = std::move(m_drawing);
    drawing.extent = extentOf(drawing);
    if (!drawing.extent.isEmpty()) {
        const PointMm free(forPaper(margin), forPaper(margin));
        drawing.extent = BoxMm(drawing.extent.min() - free, drawing.extent.max() + free);
    }
    return drawing;
}

std::vector<PointMm> cornersOf(const BoxMm& box) {
    const PointMm low = box.min(), high = box.max();
    return {low, {high.x(), low.y()}, high, {low.x(), high.y()}};
}

BoxMm extentOf(const Drawing& drawing) {
    Measurer measurer(drawing.paperScale);
    for (const Mark& mark : drawing.marks)
        std::visit(measurer, mark.shape);
    return measurer.box();
}

} // namespace frontwright
