#include "core/drawings/section_parts.h"

#include <algorithm>
#include <cmath>

namespace frontwright {

namespace {

using Points = std::vector<PointMm>;

// Each cut part has its own hatch, so that neighbours are told apart.
struct Hatching {
    double angle = 45;
    double spacing = 2;
};
constexpr Hatching frontHatching{45, 2.2};
constexpr Hatching neighbourHatching{45, 2.2};
constexpr Hatching wallHatching{135, 2.2};
constexpr Hatching memberHatching{60, 2.8};
constexpr Hatching bottomHatching{30, 1.4};

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

/// A closed outline, or as many open ones as fasteners cut it into.
void drawCutEdge(Sketch& sketch, const Points& outline, const std::vector<FastenerBody>& bodies,
                 const Part& part) {
    Points run{outline.front()};
    bool isWhole = true;
    for (std::size_t i = 0; i < outline.size(); ++i) {
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
    if (isWhole)
        run.pop_back();
    sketch.path(Layer::CutEdge, run, isWhole ? PathMark::End::Closed : PathMark::End::Open, part);
}

void drawHatch(Sketch& sketch, Points outline, const Hatching& hatching,
               std::vector<Points> without, const Part& part) {
    sketch.add({Layer::CutHatch,
                HatchMark{std::move(outline), hatching.spacing, hatching.angle, std::move(without)},
                part});
}

/// Heights at which a front's face is sampled: the ends, and the profiles' run at either edge.
std::vector<Length> faceHeights(const FrontPlan& front, Span part) {
    constexpr std::int64_t steps = 24;
    const Length height = front.rect.height();
    const Length width = front.profile->width.length;
    std::vector<Length> heights{part.low, part.high};
    const auto add = [&](Length distance) {
        for (const Length y : {distance, height - distance})
            if (part.low < y && y < part.high)
                heights.push_back(y);
    };
    if (front.profile->family != ProfileFamily::Square) {
        for (std::int64_t i = 1; i <= steps; ++i)
            add(Length::fromNanometres(width.nanometres() / steps * i));
        add(width - Length::fromNanometres(1)); // the foot of a step at the field
        add(width);
    }
    std::sort(heights.begin(), heights.end());
    heights.erase(std::unique(heights.begin(), heights.end()), heights.end());
    return heights;
}

/// The back from the top down, then the face from the bottom up, of that part of a front's height,
/// cut at x in its own frame. Runs of equal thickness become one straight line.
Points frontOutline(const FrontPlan& front, Length x, Span part) {
    const FrontRect whole = FrontRect::atOrigin(front.rect.width(), front.rect.height());
    Points outline{{0, part.high.inMillimetres()}, {0, part.low.inMillimetres()}};
    for (const Length y : faceHeights(front, part)) {
        const double t =
            localThickness(*front.profile, whole, front.thickness, {x, y}).inMillimetres();
        const std::size_t n = outline.size();
        if (n > 3 && outline[n - 1].x() == -t && outline[n - 2].x() == -t)
            outline.pop_back();
        outline.emplace_back(-t, y.inMillimetres());
    }
    return outline;
}

/// The edge of the front above or below, so that the gap is seen; broken off.
void drawNeighbour(Sketch& sketch, const SectionSubject& subject, Side side) {
    constexpr double mostOnPaper = 9;
    const auto index = subject.front.neighbours[side].front;
    if (!index)
        return;
    const FrontPlan& other = subject.plan.fronts[*index];
    const Length height = other.rect.height();
    const Length x = subject.front.rect.left + subject.cutAt() - other.rect.left;
    const Length most = least(height, Length::nearestToMillimetres(sketch.forPaper(mostOnPaper)));
    if (x <= Length{} || other.rect.width() <= x || height <= Length{})
        return;
    const bool isAbove = side == Side::Top;
    const Span part = isAbove ? Span{{}, most} : Span{height - most, height};
    // Frames lie flush: what differs is how far each front stands back from the frame's face.
    const PointMm shift((other.box.setback - subject.front.box.setback).inMillimetres(),
                        (other.rect.bottom - subject.front.rect.bottom).inMillimetres());
    Points outline = frontOutline(other, x, part);
    for (PointMm& p : outline)
        p += shift;
    const Part named{other.opening, std::nullopt, isAbove ? "front above" : "front below"};
    drawHatch(sketch, outline, neighbourHatching, {}, named);
    // Open at the break: the outline runs from its upper end down the back, along the lower edge
    // and up the face.
    Points edge = outline;
    if (!isAbove) {
        edge.assign(outline.begin() + 2, outline.end());
        edge.push_back(outline[0]);
        edge.push_back(outline[1]);
    }
    sketch.path(Layer::CutEdge, std::move(edge),
                most < height ? PathMark::End::Open : PathMark::End::Closed, named);
}

void drawFront(Sketch& sketch, const SectionSubject& subject, const FastenerShapes& fasteners,
               const std::vector<Points>& free) {
    const Part part{subject.front.opening, std::nullopt, "front"};
    const Points outline =
        frontOutline(subject.front, subject.cutAt(), {{}, subject.front.rect.height()});
    drawHatch(sketch, outline, frontHatching, free, part);
    drawCutEdge(sketch, outline, fasteners.bodies, part);
}

/// The bottom's groove reaches half the wall's thickness (common practice, no source).
BoxMm bottomBox(const SectionSubject& subject) {
    const BoxPlan& box = subject.front.box;
    return {PointMm(subject.wall() / 2, subject.boxFoot() + box.bottomUnderside.inMillimetres()),
            PointMm(subject.boxEnd(), subject.boxFoot() + box.bottomTop.inMillimetres())};
}

/// Cut panel and the box's side beyond it, both broken off at the same line.
void drawBoxInside(Sketch& sketch, const SectionSubject& subject, const std::vector<Points>& free) {
    const Part part{subject.front.opening, std::nullopt, "bottom"};
    const Part sidePart{subject.front.opening, std::nullopt, "box side"};
    const BoxMm bottom = bottomBox(subject);
    const double end = subject.boxEnd(), foot = subject.boxFoot();
    const double top = foot + subject.front.box.height.inMillimetres();
    if (bottom.min().y() < bottom.max().y()) {
        drawHatch(sketch, cornersOf(bottom), bottomHatching, free, part);
        sketch.path(Layer::CutEdge,
                    {{end, bottom.min().y()},
                     bottom.min(),
                     {bottom.min().x(), bottom.max().y()},
                     bottom.max()},
                    PathMark::End::Open, part);
    }
    for (const double y : {foot, top})
        sketch.line(Layer::MemberEdge, {subject.wall(), y}, {end, y}, sidePart);
    const double beyond = sketch.forPaper(2), zig = sketch.forPaper(1.5);
    const double middle = (foot + top) / 2;
    sketch.path(Layer::MemberEdge,
                {{end, foot - beyond},
                 {end, middle - zig},
                 {end - zig, middle - zig / 2},
                 {end + zig, middle + zig / 2},
                 {end, middle + zig},
                 {end, top + beyond}},
                PathMark::End::Open, sidePart);
}

void drawWall(Sketch& sketch, const SectionSubject& subject, const FastenerShapes& fasteners,
              std::vector<Points> free) {
    const BoxPlan& box = subject.front.box;
    if (box.wall.isEmpty() || box.wallThickness <= Length{})
        return;
    const Part part{subject.front.opening, std::nullopt, "wall"};
    const double foot = subject.boxFoot();
    const BoxMm wall(PointMm(0, foot), PointMm(subject.wall(), foot + box.height.inMillimetres()));
    drawBoxInside(sketch, subject, free);
    free.push_back(cornersOf(bottomBox(subject)));
    drawHatch(sketch, cornersOf(wall), wallHatching, std::move(free), part);
    // The panel's own edge is drawn where it fills the groove.
    std::vector<FastenerBody> hiding = fasteners.bodies;
    const BoxMm bottom = bottomBox(subject);
    if (bottom.min().y() < bottom.max().y())
        hiding.push_back({cornersOf(bottom), bottom.center().y()});
    drawCutEdge(sketch, cornersOf(wall), hiding, part);
}

/// The member at the front's lower or upper edge, as far as a little of it is to be seen. Its face
/// lies at x = −setback.
void drawMember(Sketch& sketch, const SectionSubject& subject, Side side) {
    constexpr double mostOnPaper = 22;
    const MemberPlan& member = subject.plan.members[subject.front.neighbours[side].member];
    const double depth = subject.project.casework.frameThickness.length.inMillimetres();
    if (!(depth > 0))
        return;
    const bool isBelow = side == Side::Bottom;
    const double origin = subject.front.rect.bottom.inMillimetres();
    const double low = member.rect.bottom.inMillimetres() - origin;
    const double high = member.rect.top.inMillimetres() - origin;
    const double near = isBelow ? high : low;
    const double most = sketch.forPaper(mostOnPaper);
    const bool isBroken = high - low > most;
    const double far = isBelow ? std::max(low, high - most) : std::min(high, low + most);
    const double face = -subject.front.box.setback.inMillimetres();
    const Points outline{{face, far}, {face, near}, {face + depth, near}, {face + depth, far}};
    const Part part{std::nullopt, member.id, isBelow ? "member below" : "member above"};
    drawHatch(sketch, outline, memberHatching, {}, part);
    sketch.path(Layer::CutEdge, outline, isBroken ? PathMark::End::Open : PathMark::End::Closed,
                part);
}

} // namespace

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

void drawWood(Sketch& sketch, const SectionSubject& subject, const FastenerShapes& fasteners) {
    std::vector<Points> free = fasteners.voids;
    for (const FastenerBody& body : fasteners.bodies)
        free.push_back(body.outline);
    for (const Side side : {Side::Bottom, Side::Top}) {
        drawMember(sketch, subject, side);
        drawNeighbour(sketch, subject, side);
    }
    drawWall(sketch, subject, fasteners, free);
    drawFront(sketch, subject, fasteners, free);
}

} // namespace frontwright
