#include "core/drawings/section_parts.h"

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

using Points = std::vector<PointMm>;

constexpr Hatching frontHatching{45, 2.2};
constexpr Hatching wallHatching{135, 2.2};

/// The part of the uprights that bodies do not hide, in the order from → to.
std::vector<LineMark> seenOf(const PointMm& from, const PointMm& to,
                             const std::vector<FastenerBody>& bodies) {
    std::vector<std::pair<double, double>> seen{std::minmax(from.y(), to.y())};
    for (const FastenerBody& body : bodies) {
        const double half = body.halfHeightAt(from.x());
        std::vector<std::pair<double, double>> rest;
        for (const auto& [low, high] : seen) {
            const double gapLow = body.axis - half, gapHigh = body.axis + half;
            if (half <= 0 || gapHigh <= low || high <= gapLow) {
                rest.emplace_back(low, high);
                continue;
            }
            if (low < gapLow)
                rest.emplace_back(low, gapLow);
            if (gapHigh < high)
                rest.emplace_back(gapHigh, high);
        }
        seen = rest;
    }
    std::sort(seen.begin(), seen.end());
    std::vector<LineMark> lines;
    for (const auto& [low, high] : seen)
        lines.push_back({{from.x(), low}, {from.x(), high}});
    if (from.y() > to.y()) {
        std::reverse(lines.begin(), lines.end());
        for (LineMark& line : lines)
            std::swap(line.from, line.to);
    }
    return lines;
}

void drawFront(Sketch& sketch, const SectionSubject& subject, const FastenerShapes& fasteners,
               const std::vector<Points>& free) {
    const Part part{subject.front.opening, std::nullopt, "front"};
    const Points outline =
        frontOutline(subject.front, subject.plane, subject.cutAt(), {{}, subject.length()});
    drawHatch(sketch, outline, frontHatching, free, part);
    drawCutEdge(sketch, outline, fasteners.bodies, part);
}

void drawWall(Sketch& sketch, const SectionSubject& subject, const FastenerShapes& fasteners,
              std::vector<Points> free) {
    const BoxPlan& box = subject.front.box;
    if (!subject.front.hasBox() || box.wall.isEmpty() || box.wallThickness <= Length{})
        return;
    const Part part{subject.front.opening, std::nullopt, "wall"};
    const double foot = subject.boxFoot();
    const BoxMm wall(PointMm(0, foot), PointMm(subject.wall(), foot + subject.boxLength()));
    drawBoxInside(sketch, subject, free);
    const BoxMm bottom = bottomBox(subject);
    if (!bottom.isEmpty())
        free.push_back(cornersOf(bottom));
    drawHatch(sketch, cornersOf(wall), wallHatching, std::move(free), part);
    // The panel's own edge is drawn where it fills the groove.
    std::vector<FastenerBody> hiding = fasteners.bodies;
    if (!bottom.isEmpty() && bottom.min().y() < bottom.max().y())
        hiding.push_back({cornersOf(bottom), bottom.center().y()});
    drawCutEdge(sketch, cornersOf(wall), hiding, part);
}

} // namespace

void drawCutEdge(Sketch& sketch, const Points& outline, const std::vector<FastenerBody>& bodies,
                 const Part& part, PathMark::End end) {
    const bool isClosed = end == PathMark::End::Closed;
    Points run{outline.front()};
    bool isWhole = true;
    for (std::size_t i = 0; i + (isClosed ? 0 : 1) < outline.size(); ++i) {
        const PointMm& from = outline[i];
        const PointMm& to = outline[(i + 1) % outline.size()];
        if (from.x() != to.x()) {
            run.push_back(to);
            continue;
        }
        for (const LineMark& line : seenOf(from, to, bodies)) {
            if (line.from != run.back()) {
                isWhole = false;
                if (run.size() > 1)
                    sketch.path(Layer::CutEdge, run, PathMark::End::Open, part);
                run = {line.from};
            }
            run.push_back(line.to);
        }
    }
    if (isWhole && isClosed)
        run.pop_back();
    sketch.path(Layer::CutEdge, run, isWhole ? end : PathMark::End::Open, part);
}

double FastenerBody::halfHeightAt(double x) const {
    double half = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const PointMm& p = outline[i];
        const PointMm& q = outline[(i + 1) % outline.size()];
        if (x < std::min(p.x(), q.x()) || std::max(p.x(), q.x()) < x)
            continue;
        const double share = p.x() == q.x() ? 0 : (x - p.x()) / (q.x() - p.x());
        half = std::max(half, std::abs(p.y() + share * (q.y() - p.y()) - axis));
    }
    return half;
}

std::vector<Points> freeOf(const FastenerShapes& fasteners) {
    std::vector<Points> free = fasteners.voids;
    for (const FastenerBody& body : fasteners.bodies)
        free.push_back(body.outline);
    return free;
}

void drawWood(Sketch& sketch, const SectionSubject& subject, const FastenerShapes& fasteners) {
    const std::vector<Points> free = freeOf(fasteners);
    for (const Side side : {subject.lowSide(), subject.highSide()}) {
        drawSurround(sketch, subject, side);
        drawMember(sketch, subject, side, fasteners);
        drawNeighbour(sketch, subject, side);
    }
    drawMembersAlong(sketch, subject, fasteners);
    drawRunner(sketch, subject);
    drawSystemRows(sketch, subject);
    drawWall(sketch, subject, fasteners, free);
    drawFront(sketch, subject, fasteners, free);
}

} // namespace frontwright
