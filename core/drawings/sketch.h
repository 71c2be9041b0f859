#pragma once

#include "core/drawings/drawing.h"

namespace frontwright {

/// A drawing while it is being made: takes marks in drawn mm and knows how much of them a
/// millimetre of paper is.
class Sketch {
public:
    explicit Sketch(double paperScale) { m_drawing.paperScale = paperScale; }

    [[nodiscard]] double paperScale() const { return m_drawing.paperScale; }
    /// Drawn mm that show as `mm` on paper.
    [[nodiscard]] double forPaper(double mm) const { return mm / m_drawing.paperScale; }

    /// Makes room for so many more marks at once.
    void expect(std::size_t marks) { m_drawing.marks.reserve(m_drawing.marks.size() + marks); }
    void add(Mark mark) { m_drawing.marks.push_back(std::move(mark)); }
    void line(Layer layer, const PointMm& from, const PointMm& to, const Part& part);
    void path(Layer layer, std::vector<PointMm> points, PathMark::End end, const Part& part);
    void rectangle(Layer layer, const BoxMm& box, const Part& part);
    void circle(Layer layer, const PointMm& centre, double radius, const Part& part);
    void text(Layer layer, TextMark text, const Part& part);
    void wash(std::vector<PointMm> outline, Tone tone, const Part& part);
    /// A line in a tone, `width` drawn mm wide.
    void stroke(std::vector<PointMm> points, Tone tone, double width, const Part& part);
    void add(const Drawing& other);

    [[nodiscard]] const std::vector<Mark>& marks() const { return m_drawing.marks; }

    /// The drawing, with its extent and `margin` mm of paper left free round it.
    [[nodiscard]] Drawing finished(double margin) && { return finishedNow(margin); }
    /// The same without its extent: a part of a drawing, on its way to the screen or into the
    /// whole.
    [[nodiscard]] Drawing unmeasured() && { return std::move(m_drawing); }
    [[nodiscard]] Drawing finished(double margin) const& {
        return Sketch(*this).finishedNow(margin);
    }

private:
    Drawing finishedNow(double margin);

    Drawing m_drawing;
};

/// Lower left, lower right, upper right, upper left.
std::vector<PointMm> cornersOf(const BoxMm& box);

/// Of all marks, with texts and dimensions at the drawing's scale; line widths are not counted.
/// Empty where there are none.
BoxMm extentOf(const Drawing&);

} // namespace frontwright
