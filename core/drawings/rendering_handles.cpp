#include "core/drawings/fitting_shapes.h"
#include "core/drawings/handle_shapes.h"
#include "core/drawings/rendering_parts.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace frontwright {

namespace {

using Outline = std::vector<PointMm>;

// Satin metal, our own choice, by eye.
constexpr Tone dark{78, 73, 70, 255};
constexpr Tone middle{154, 148, 144, 255};
constexpr Tone bright{232, 227, 222, 255};
constexpr Tone rim{44, 41, 37, 255};
constexpr Tone shadow{26, 18, 10, 255};
constexpr Tone card{243, 238, 224, 255}; // paper in a label holder

Outline ring(const CircleMark& circle, double paperScale) {
    const double onPaper = circle.radius * paperScale;
    const int count = std::clamp(static_cast<int>(12 + onPaper * 8), 16, 64);
    Outline points;
    for (int i = 0; i < count; ++i) {
        const double angle = 2 * std::numbers::pi * i / count;
        points.emplace_back(circle.centre +
                            circle.radius * PointMm(std::cos(angle), std::sin(angle)));
    }
    return points;
}

/// The closed shapes of what is sketched, the outermost first.
std::vector<Outline> shapesOf(const Sketch& sketch) {
    std::vector<Outline> shapes;
    for (const Mark& mark : sketch.marks()) {
        if (const auto* circle = std::get_if<CircleMark>(&mark.shape))
            shapes.push_back(ring(*circle, sketch.paperScale()));
        else if (const auto* path = std::get_if<PathMark>(&mark.shape))
            shapes.push_back(path->points);
    }
    return shapes;
}

std::vector<Outline> shapesOf(const HardwareForm& form, const PointMm& centre, double paperScale) {
    Sketch sketch(paperScale);
    drawHandle(sketch, form, centre, {});
    return shapesOf(sketch);
}

BoxMm boxOf(const Outline& outline) {
    BoxMm box;
    for (const PointMm& p : outline)
        box.extend(p);
    return box;
}

/// Drawn in by `by` on all sides, then moved.
Outline drawnIn(const Outline& outline, double by, const PointMm& moved) {
    const BoxMm box = boxOf(outline);
    const PointMm centre = box.center(), size = box.sizes();
    const PointMm scale(std::max(0.0, 1 - 2 * by / size.x()), std::max(0.0, 1 - 2 * by / size.y()));
    Outline result;
    for (const PointMm& p : outline)
        result.emplace_back(centre + (p - centre).cwiseProduct(scale) + moved);
    return result;
}

class Metal {
public:
    Metal(Sketch& sketch, const Part& part) : m_sketch(sketch), m_part(part) {}

    /// Rounded all over: tones from the rim to a light towards the upper left. `roundness` is the
    /// part of the half width that is curved.
    void dome(const Outline& outline, double roundness) {
        const double half = boxOf(outline).sizes().minCoeff() / 2;
        const int steps =
            std::clamp(static_cast<int>(half * m_sketch.paperScale() / 0.22), 1, mostSteps);
        edge(outline);
        m_sketch.wash(outline, steps > 1 ? mixed(dark, middle, 0.35) : middle, m_part);
        const PointMm towardsLight(-0.30, 0.42);
        for (int i = 1; i <= steps; ++i) {
            const double share = static_cast<double>(i) / (steps + 1);
            const double by = half * roundness * share;
            const Tone tone = share < 0.5 ? mixed(mixed(dark, middle, 0.35), middle, 2 * share)
                                          : mixed(middle, bright, 2 * share - 1);
            m_sketch.wash(drawnIn(outline, by, towardsLight * by), tone, m_part);
        }
    }
    /// A flat plate with a bevelled rim.
    void plate(const Outline& outline) {
        const double half = boxOf(outline).sizes().minCoeff() / 2;
        const double bevel = half * 0.08;
        edge(outline);
        m_sketch.wash(outline, mixed(dark, middle, 0.45), m_part);
        m_sketch.wash(drawnIn(outline, bevel, PointMm(-0.5, 0.7) * bevel), bright, m_part);
        m_sketch.wash(drawnIn(outline, bevel * 1.3, PointMm(0, 0)), mixed(middle, bright, 0.3),
                      m_part);
    }
    void edge(const Outline& outline) {
        Outline closed = outline;
        closed.push_back(outline.front());
        m_sketch.stroke(std::move(closed), thin(rim, 0.75), m_sketch.forPaper(0.22), m_part);
    }
    /// A round bar bent to a ring.
    void bow(Outline outline, double thickness) {
        outline.push_back(outline.front());
        m_sketch.stroke(outline, thin(rim, 0.85), thickness + m_sketch.forPaper(0.2), m_part);
        m_sketch.stroke(outline, mixed(dark, middle, 0.7), thickness, m_part);
        const PointMm up = PointMm(-0.3, 0.42) * thickness * 0.4;
        for (PointMm& p : outline)
            p += up;
        m_sketch.stroke(outline, mixed(middle, bright, 0.75), thickness * 0.38, m_part);
    }
    /// The shadow of a ring on its plate.
    void fallen(const Outline& line, double width) {
        m_sketch.stroke(line, thin(shadow, 0.28), width, m_part);
    }
    void hollow(const Outline& outline, double strength) {
        m_sketch.wash(outline, thin(shadow, strength), m_part);
    }

private:
    static constexpr int mostSteps = 16;
    Sketch& m_sketch;
    const Part& m_part;
};

void drawKnob(Metal& metal, const std::vector<Outline>& shapes, FootprintShape footprint) {
    if (footprint == FootprintShape::Rectangle)
        metal.plate(shapes.front());
    const std::size_t disc = footprint == FootprintShape::Rectangle && shapes.size() > 1 ? 1 : 0;
    metal.dome(shapes[disc], 0.9);
    if (shapes.size() > disc + 1)
        metal.dome(shapes[disc + 1], 0.75);
}

/// A half-round shell over the fingers: its mouth, below, is dark.
void drawCup(Metal& metal, const std::vector<Outline>& shapes) {
    metal.dome(shapes.front(), 0.62);
    const BoxMm box = boxOf(shapes.front());
    const double lip = std::min(box.sizes().x(), box.sizes().y()) * 0.13;
    const PointMm low = box.min();
    metal.hollow({low,
                  {box.max().x(), low.y()},
                  {box.max().x() - lip, low.y() + lip},
                  {low.x() + lip, low.y() + lip}},
                 0.5);
}

void drawRing(Metal& metal, const std::vector<Outline>& shapes) {
    metal.plate(shapes.front());
    if (shapes.size() < 3)
        return;
    // Outer and, where it can be told apart, inner edge of the ring; the boss comes last.
    const BoxMm outer = boxOf(shapes[1]);
    const double thickness = outer.sizes().x() * 0.5 * (0.07 / 0.36);
    const Outline middleLine = drawnIn(shapes[1], thickness / 2, PointMm(0, 0));
    Outline fallen;
    for (const PointMm& p : middleLine)
        fallen.emplace_back(p + PointMm(0.3, -0.42) * thickness * 1.6);
    fallen.push_back(fallen.front());
    metal.fallen(fallen, thickness);
    metal.bow(middleLine, thickness);
    metal.dome(shapes.back(), 0.9);
}

std::vector<Outline> shapesOf(const FittingPlan& fitting, const PointMm& origin,
                              double paperScale) {
    Sketch sketch(paperScale);
    drawFitting(sketch, fitting, origin, {});
    return shapesOf(sketch);
}

} // namespace

void drawShadow(Sketch& sketch, const std::vector<PointMm>& outline, double reach, double strength,
                const Part& part) {
    constexpr int layers = 4;
    const PointMm way(0.62, -0.85);
    for (int i = 0; i < layers; ++i) {
        const double share = 1 - 0.5 * i / (layers - 1);
        Outline moved;
        for (const PointMm& p : outline)
            moved.emplace_back(p + way * reach * share);
        sketch.wash(std::move(moved), thin(shadow, strength / layers), part);
    }
}

void drawHandleTones(Sketch& sketch, const HardwareForm& form, const PointMm& centre,
                     const Part& part) {
    const std::vector<Outline> shapes = shapesOf(form, centre, sketch.paperScale());
    if (shapes.empty())
        return;
    drawShadow(sketch, shapes.front(), shadowPerMm * form.projection.inMillimetres(), 0.62,
               {part.opening, part.member, part.name + " shadow"});
    Metal metal(sketch, part);
    switch (form.kind) {
    case HardwareKind::Knob:
        return drawKnob(metal, shapes, form.footprint.shape);
    case HardwareKind::Pull:
        return metal.dome(shapes.front(), 0.92);
    case HardwareKind::CupPull:
        return drawCup(metal, shapes);
    case HardwareKind::RingPull:
        return drawRing(metal, shapes);
    }
}

void drawFittingTones(Sketch& sketch, const FittingPlan& fitting, const PointMm& centre,
                      const Part& part) {
    if (const auto handle = likeHandle(*fitting.form))
        return drawHandleTones(sketch, *handle, centre, part);
    const std::vector<Outline> shapes =
        shapesOf(fitting, centre - toMm(fitting.centre), sketch.paperScale());
    if (shapes.empty())
        return;
    Metal metal(sketch, part);
    if (fitting.form->kind == FittingKind::Lock)
        return metal.hollow(shapes.front(), 0.9);
    drawShadow(sketch, shapes.front(), shadowPerMm * fitting.form->projection.inMillimetres(), 0.5,
               {part.opening, part.member, part.name + " shadow"});
    metal.plate(shapes.front());
    if (fitting.form->kind == FittingKind::LabelHolder && shapes.size() > 1)
        sketch.wash(shapes[1], card, part);
    else if (fitting.form->kind == FittingKind::EdgePull && shapes.size() > 1 &&
             fitting.form->bearsOn == FrontFace::Show)
        metal.hollow(shapes[1], 0.55);
}

} // namespace frontwright
