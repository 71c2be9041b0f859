#include "core/drawings/handle_shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace frontwright {

namespace {

using Points = std::vector<PointMm>;
constexpr auto layer = Layer::Handle;

struct Size {
    double width = 0;
    double height = 0;
    [[nodiscard]] double least() const { return std::min(width, height); }
};
Size footprintSize(const HardwareForm& form) {
    const double width = form.footprint.width.inMillimetres();
    return {width, form.footprint.shape == FootprintShape::Round
                       ? width
                       : form.footprint.height.inMillimetres()};
}
/// Whether lines so far apart (drawn mm) are told apart on paper; details that are not are left
/// out.
bool isSeen(const Sketch& sketch, double apart) {
    constexpr double leastOnPaper = 0.35;
    return apart * sketch.paperScale() >= leastOnPaper;
}
BoxMm boxRound(const PointMm& centre, const Size& size) {
    const PointMm half(size.width / 2, size.height / 2);
    return {centre - half, centre + half};
}

/// Part of an ellipse, from one angle to another, in degrees anticlockwise from x.
void addArc(Points& points, const PointMm& centre, const Size& radii, double from, double to) {
    constexpr int steps = 24;
    for (int i = 0; i <= steps; ++i) {
        const double angle = (from + (to - from) * i / steps) * std::numbers::pi / 180;
        points.push_back(centre +
                         PointMm(radii.width * std::cos(angle), radii.height * std::sin(angle)));
    }
}

/// A bar with round ends, lying or standing.
Points barOutline(const PointMm& centre, const Size& size) {
    const double r = size.least() / 2;
    const PointMm half(size.width / 2 - r, size.height / 2 - r);
    Points points;
    if (size.width >= size.height) {
        addArc(points, centre + half, {r, r}, -90, 90);
        addArc(points, centre - half, {r, r}, 90, 270);
    } else {
        addArc(points, centre + half, {r, r}, 0, 180);
        addArc(points, centre - half, {r, r}, 180, 360);
    }
    return points;
}

void drawFootprint(Sketch& sketch, const HardwareForm& form, const PointMm& centre,
                   const Part& part) {
    const Size size = footprintSize(form);
    if (form.footprint.shape == FootprintShape::Round)
        sketch.circle(layer, centre, size.width / 2, part);
    else
        sketch.rectangle(layer, boxRound(centre, size), part);
}

void drawKnob(Sketch& sketch, const HardwareForm& form, const PointMm& centre, const Part& part) {
    const double radius = footprintSize(form).least() / 2;
    drawFootprint(sketch, form, centre, part);
    if (form.footprint.shape == FootprintShape::Rectangle)
        sketch.circle(layer, centre, radius * 0.9, part);
    if (isSeen(sketch, radius * 0.38))
        sketch.circle(layer, centre, radius * 0.62, part);
}

void drawPull(Sketch& sketch, const HardwareForm& form, const PointMm& centre, const Part& part) {
    const Size size = footprintSize(form);
    const double foot = size.least() / 2;
    if (form.footprint.shape == FootprintShape::Round)
        return drawKnob(sketch, form, centre, part);
    sketch.path(layer, barOutline(centre, size), PathMark::End::Closed, part);
    if (!isSeen(sketch, foot * 0.38))
        return;
    for (const FrontPoint& hole : form.holes)
        sketch.circle(layer, centre + toMm(hole), foot * 0.62, part);
}

void drawCupPull(Sketch& sketch, const HardwareForm& form, const PointMm& centre,
                 const Part& part) {
    const Size size = footprintSize(form);
    const PointMm low = centre - PointMm(0, size.height / 2);
    const double lip = size.least() * 0.16;
    Points shell{low + PointMm(size.width / 2, 0)};
    addArc(shell, low + PointMm(0, lip), {size.width / 2, size.height - lip}, 0, 180);
    shell.push_back(low - PointMm(size.width / 2, 0));
    sketch.path(layer, shell, PathMark::End::Closed, part);
    if (!isSeen(sketch, lip))
        return;
    Points rim;
    addArc(rim, low + PointMm(0, lip), {size.width / 2 - lip, size.height - 2 * lip}, 0, 180);
    sketch.path(layer, rim, PathMark::End::Closed, part);
}

void drawRingPull(Sketch& sketch, const HardwareForm& form, const PointMm& centre,
                  const Part& part) {
    const double least = footprintSize(form).least();
    const double outer = least * 0.36, thickness = least * 0.07, boss = least * 0.11;
    drawFootprint(sketch, form, centre, part);
    const PointMm post = centre + PointMm(0, outer * 0.55);
    const PointMm ring = post - PointMm(0, outer - thickness / 2);
    sketch.circle(layer, ring, outer, part);
    if (isSeen(sketch, thickness))
        sketch.circle(layer, ring, outer - thickness, part);
    sketch.circle(layer, post, boss, part);
}

// From the side: x is how far out of the face (0 … 1 of the projection), y the height from the
// centre (−1 … 1 of half the footprint's height). Upper halves; the lower ones mirror them.
using Section = std::vector<std::pair<double, double>>;
const Section& knobSection() {
    static const Section section{{0, 0.62},   {0.12, 0.55}, {0.3, 0.4}, {0.45, 0.42},
                                 {0.6, 0.75}, {0.75, 0.97}, {0.85, 1},  {0.93, 0.9},
                                 {0.98, 0.6}, {1, 0.25},    {1, 0}};
    return section;
}
const Section& barSection() {
    static const Section section{{0, 0.9},  {0.1, 0.6},  {0.55, 0.55}, {0.62, 0.95}, {0.7, 1},
                                 {0.92, 1}, {0.98, 0.9}, {1, 0.5},     {1, 0}};
    return section;
}
const Section& plateSection() {
    static const Section section{{0, 1}, {0.12, 1}, {0.12, 0.3}, {0.6, 0.3}, {0.6, 0}};
    return section;
}

void drawMirrored(Sketch& sketch, const Section& section, double face, double height,
                  const Size& size, const Part& part) {
    Points points;
    const auto point = [&](const std::pair<double, double>& p, double sign) -> PointMm {
        return {face - p.first * size.width, height + sign * p.second * size.height / 2};
    };
    for (const auto& p : section)
        points.push_back(point(p, 1));
    for (auto p = section.rbegin(); p != section.rend(); ++p)
        points.push_back(point(*p, -1));
    sketch.path(layer, std::move(points), PathMark::End::Closed, part);
}

/// Feet at the holes, a bar over them.
void drawPullFromAbove(Sketch& sketch, const HardwareForm& form, double face, double along,
                       const Size& size, const Part& part) {
    const double thick = std::min(size.width * 0.35, footprintSize(form).least());
    const double foot = std::min(footprintSize(form).least(), size.height) * 0.35;
    for (const FrontPoint& hole : form.holes) {
        const double y = along + hole.x.inMillimetres();
        sketch.path(layer,
                    {{face, y - foot},
                     {face - size.width + thick, y - foot},
                     {face - size.width + thick, y + foot},
                     {face, y + foot}},
                    PathMark::End::Open, part);
    }
    sketch.path(layer, barOutline({face - size.width + thick / 2, along}, {thick, size.height}),
                PathMark::End::Closed, part);
}

void drawCupFromAbove(Sketch& sketch, double face, double along, const Size& size,
                      const Part& part) {
    Points shell{{face, along - size.height / 2}};
    addArc(shell, {face, along}, {size.width, size.height / 2}, 270, 90);
    sketch.path(layer, shell, PathMark::End::Closed, part);
}

void drawCupFromSide(Sketch& sketch, double face, double height, const Size& size,
                     const Part& part) {
    const PointMm low(face, height - size.height / 2);
    Points shell{low};
    addArc(shell, low, size, 180, 90);
    sketch.path(layer, shell, PathMark::End::Closed, part);
}

void drawRingFromSide(Sketch& sketch, double face, double height, const Size& size,
                      const Part& part) {
    drawMirrored(sketch, plateSection(), face, height, size, part);
    const double least = size.height;
    const PointMm top(face - size.width * 0.8, height + least * 0.3);
    const double half = std::min(size.width * 0.2, least * 0.04);
    sketch.path(layer, barOutline(top - PointMm(0, least * 0.33), {2 * half, least * 0.7}),
                PathMark::End::Closed, part);
}

} // namespace

void drawHandle(Sketch& sketch, const HardwareForm& form, const PointMm& centre, const Part& part) {
    switch (form.kind) {
    case HardwareKind::Knob:
        return drawKnob(sketch, form, centre, part);
    case HardwareKind::Pull:
        return drawPull(sketch, form, centre, part);
    case HardwareKind::CupPull:
        return drawCupPull(sketch, form, centre, part);
    case HardwareKind::RingPull:
        return drawRingPull(sketch, form, centre, part);
    }
}

void drawHandleFromSide(Sketch& sketch, const HardwareForm& form, double face, double centreHeight,
                        const Part& part) {
    const Size size{form.projection.inMillimetres(), footprintSize(form).height};
    if (!(size.width > 0) || !(size.height > 0))
        return;
    switch (form.kind) {
    case HardwareKind::Knob:
        return drawMirrored(sketch, knobSection(), face, centreHeight, size, part);
    case HardwareKind::Pull:
        return drawMirrored(sketch, barSection(), face, centreHeight, size, part);
    case HardwareKind::CupPull:
        return drawCupFromSide(sketch, face, centreHeight, size, part);
    case HardwareKind::RingPull:
        return drawRingFromSide(sketch, face, centreHeight, size, part);
    }
}

void drawHandleFromAbove(Sketch& sketch, const HardwareForm& form, double face, double along,
                         const Part& part) {
    const Size size{form.projection.inMillimetres(), footprintSize(form).width};
    if (!(size.width > 0) || !(size.height > 0))
        return;
    switch (form.kind) {
    case HardwareKind::Knob:
        return drawMirrored(sketch, knobSection(), face, along, size, part);
    case HardwareKind::Pull:
        return drawPullFromAbove(sketch, form, face, along, size, part);
    case HardwareKind::CupPull:
        return drawCupFromAbove(sketch, face, along, size, part);
    case HardwareKind::RingPull:
        return drawRingFromSide(sketch, face, along, size, part);
    }
}

} // namespace frontwright
